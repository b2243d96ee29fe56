package witnessmark.domain;

/** What was seen of the shadow after a pass of the cutter. */
public enum SkimShadow implements Coded {
    LEFT("shadow left"),
    CLEAN("clean"),
    NOT_SAID("not said");

    private final String code;

    SkimShadow(String code) {
        this.code = code;
    }

    @Override
    public String code() {
        return code;
    }
}
