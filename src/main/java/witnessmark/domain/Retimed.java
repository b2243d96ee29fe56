package witnessmark.domain;

/** Whether cams were timed again after a skim. */
public enum Retimed implements Coded {
    YES("timed again"),
    NO("not timed again"),
    NOT_SAID("not said");

    private final String code;

    Retimed(String code) {
        this.code = code;
    }

    @Override
    public String code() {
        return code;
    }
}
