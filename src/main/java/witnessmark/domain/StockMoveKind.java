package witnessmark.domain;

/** Why items came to the shelf or left it. */
public enum StockMoveKind implements Coded {
    BOUGHT("bought"),
    /** A count of the shelf that differed from what was written. */
    COUNTED("counted"),
    USED("used"),
    PUT_BACK("put back"),
    SPOILT("spoilt");

    private final String code;

    StockMoveKind(String code) {
        this.code = code;
    }

    @Override
    public String code() {
        return code;
    }
}
