package witnessmark.domain;

/** How bad an incident was, the least first. */
public enum Severity implements Coded {
    NOTE("note"),
    LOST_TIME("lost time"),
    LOST_RUN("lost run"),
    RETIRED("retired"),
    WITHDRAWN_BY_US("withdrawn by us"),
    STOPPED_BY_OFFICIALS("stopped by officials"),
    DID_NOT_START("did not start"),
    ENGINE_DESTROYED("engine destroyed");

    private final String code;

    Severity(String code) {
        this.code = code;
    }

    @Override
    public String code() {
        return code;
    }
}
