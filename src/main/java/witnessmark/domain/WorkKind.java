package witnessmark.domain;

/** Work done on a part or engine. */
public enum WorkKind implements Coded {
    /** Metal taken off a face. */
    SKIM("skim"),
    CRACK_TEST("crack test"),
    /** Opened and looked at. */
    LOOK("look"),
    MEASURE("measure"),
    REPAIR("repair"),
    CLEAN("clean"),
    OIL_CHANGE("oil change");

    private final String code;

    WorkKind(String code) {
        this.code = code;
    }

    @Override
    public String code() {
        return code;
    }
}
