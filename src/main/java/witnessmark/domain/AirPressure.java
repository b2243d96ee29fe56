package witnessmark.domain;

/** What an air pressure is the pressure of. */
public enum AirPressure implements Coded {
    /** As a barometer reads it, water vapour included. */
    TOTAL("total"),
    /** Without the water vapour. */
    DRY("dry");

    private final String code;

    AirPressure(String code) {
        this.code = code;
    }

    @Override
    public String code() {
        return code;
    }
}
