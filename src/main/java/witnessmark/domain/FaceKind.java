package witnessmark.domain;

/** Which face of a joint between head and block. */
public enum FaceKind implements Coded {
    HEAD("head, face to the block"),
    GASKET_TO_HEAD("gasket, side to the head"),
    GASKET_TO_BLOCK("gasket, side to the block"),
    DECK("block, face to the head");

    private final String code;

    FaceKind(String code) {
        this.code = code;
    }

    @Override
    public String code() {
        return code;
    }
}
