package witnessmark.domain;

/** What falls due at a limit, and so what it counts since. */
public enum LimitAction implements Coded {
    /** Open it, look, measure; counts since that was done last. */
    LOOK("look"),
    /** Tested for cracks, since it was last; looking alone does not do. */
    CRACK_TEST("crack test"),
    /** Metal is taken off a face of it, since it was last. */
    SKIM("skim"),
    /** The engine it sits in is rebuilt, since it was last. */
    REBUILD("rebuild"),
    /** Another takes its place: counts its whole life, since new. */
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
