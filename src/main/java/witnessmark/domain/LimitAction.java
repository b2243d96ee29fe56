package witnessmark.domain;

/** What falls due at a limit. */
public enum LimitAction implements Coded {
    /** Open it, look, measure. */
    LOOK("look"),
    /** Tested for cracks; looking alone does not do. */
    CRACK_TEST("crack test"),
    RENEW("renew");

    private final String code;

    LimitAction(String code) {
        this.code = code;
    }

    @Override
    public String code() {
        return code;
    }
}
