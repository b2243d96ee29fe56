package witnessmark.domain;

/** What an incident did to a part. */
public enum PartHarm implements Coded {
    FAILED("failed"),
    DAMAGED("damaged"),
    SUSPECTED("suspected");

    private final String code;

    PartHarm(String code) {
        this.code = code;
    }

    @Override
    public String code() {
        return code;
    }
}
