package witnessmark.domain;

/** Whether an entry counts. */
public enum Standing implements Coded {
    IN_FORCE("in force"),
    /** Taken out with a reason; kept, shown struck through, and can be restored. */
    STRUCK_OUT("struck out"),
    /** Two laptops wrote against each other; people settle it. */
    IN_CONFLICT("in conflict");

    private final String code;

    Standing(String code) {
        this.code = code;
    }

    @Override
    public String code() {
        return code;
    }
}
