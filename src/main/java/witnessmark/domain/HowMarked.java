package witnessmark.domain;

/** How far a mark has gone, from nothing up. */
public enum HowMarked implements Coded {
    NONE("as it should be"),
    LIGHT("light"),
    CLEAR("clear"),
    HEAVY("heavy"),
    FAILED("failed");

    private final String code;

    HowMarked(String code) {
        this.code = code;
    }

    @Override
    public String code() {
        return code;
    }
}
