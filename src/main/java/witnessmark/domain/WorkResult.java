package witnessmark.domain;

/** How a work ended. Failed work resets nothing. */
public enum WorkResult implements Coded {
    DONE("done"),
    FAILED("failed");

    private final String code;

    WorkResult(String code) {
        this.code = code;
    }

    @Override
    public String code() {
        return code;
    }
}
