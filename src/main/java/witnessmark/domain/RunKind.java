package witnessmark.domain;

/** What a run was for. */
public enum RunKind implements Coded {
    PRACTICE("practice"),
    QUALIFYING("qualifying"),
    RACE("race"),
    TEST("test"),
    /** On the engine or chassis dyno; needs no car. */
    DYNO("dyno"),
    WARM_UP("warm-up"),
    ROAD("road"),
    OTHER("other");

    private final String code;

    RunKind(String code) {
        this.code = code;
    }

    @Override
    public String code() {
        return code;
    }
}
