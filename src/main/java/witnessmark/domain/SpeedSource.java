package witnessmark.domain;

/** What the highest engine speed was read from. */
public enum SpeedSource implements Coded {
    LOGGER("logger"),
    TELL_TALE("tell-tale"),
    DRIVER("driver");

    private final String code;

    SpeedSource(String code) {
        this.code = code;
    }

    @Override
    public String code() {
        return code;
    }
}
