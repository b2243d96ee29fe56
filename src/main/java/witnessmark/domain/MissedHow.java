package witnessmark.domain;

/** Why a planned run was not taken. */
public enum MissedHow implements Coded {
    DID_NOT_START("did not start"),
    WITHDRAWN("withdrawn"),
    NOT_ENTERED("not entered");

    private final String code;

    MissedHow(String code) {
        this.code = code;
    }

    @Override
    public String code() {
        return code;
    }
}
