package witnessmark.domain;

/** What a rate is for. */
public enum RateKind implements Coded {
    OWN_LABOUR("own labour"),
    ENGINE_RUNNING("engine running");

    private final String code;

    RateKind(String code) {
        this.code = code;
    }

    @Override
    public String code() {
        return code;
    }
}
