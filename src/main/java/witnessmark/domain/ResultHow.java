package witnessmark.domain;

/** How a run ended in the results. */
public enum ResultHow implements Coded {
    FINISHED("finished"),
    RETIRED("retired"),
    DID_NOT_START("did not start"),
    WITHDRAWN_BY_US("withdrawn by us"),
    BLACK_FLAGGED("black-flagged"),
    DISQUALIFIED("disqualified"),
    NOT_ENTERED("not entered");

    private final String code;

    ResultHow(String code) {
        this.code = code;
    }

    @Override
    public String code() {
        return code;
    }
}
