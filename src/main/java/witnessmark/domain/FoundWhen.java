package witnessmark.domain;

/** When an incident showed itself. */
public enum FoundWhen implements Coded {
    ON_A_RUN("on a run"),
    AT_A_CHECK("at a check"),
    AT_STRIP("at strip");

    private final String code;

    FoundWhen(String code) {
        this.code = code;
    }

    @Override
    public String code() {
        return code;
    }
}
