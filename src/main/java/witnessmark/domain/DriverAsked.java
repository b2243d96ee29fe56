package witnessmark.domain;

/** Whether the driver was asked about a missed gear, and what he said. */
public enum DriverAsked implements Coded {
    SAID_YES("said yes"),
    SAID_NO("said no"),
    NOT_ASKED("not asked");

    private final String code;

    DriverAsked(String code) {
        this.code = code;
    }

    @Override
    public String code() {
        return code;
    }
}
