package witnessmark.domain;

/** What an action is for. */
public enum ActionKind implements Coded {
    /** So that nothing more breaks until the cause is known. */
    CONTAINMENT("containment"),
    /** On this engine. */
    CORRECTIVE("corrective"),
    /** On every engine, or in how the team works. */
    PREVENTIVE("preventive");

    private final String code;

    ActionKind(String code) {
        this.code = code;
    }

    @Override
    public String code() {
        return code;
    }
}
