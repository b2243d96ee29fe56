package witnessmark.domain;

/** What proof of a fix consists of. */
public enum ProofBy implements Coded {
    /** Running without the trouble. */
    RUNNING("running"),
    /** A look at a stated running. */
    LOOK("look"),
    /** A reading, so many times. */
    READING("reading");

    private final String code;

    ProofBy(String code) {
        this.code = code;
    }

    @Override
    public String code() {
        return code;
    }
}
