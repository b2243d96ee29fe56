package witnessmark.domain;

/** How a build came to be proven. */
public enum ProofKind implements Coded {
    MEASURED("measured"),
    /** A person took it as proven, with a reason. */
    BY_HAND("by hand");

    private final String code;

    ProofKind(String code) {
        this.code = code;
    }

    @Override
    public String code() {
        return code;
    }
}
