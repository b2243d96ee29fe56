package witnessmark.domain;

/** What is looked at before every run, whatever ran (common practice, no source). */
public enum UsualLook implements Coded {
    PLUGS("plugs"),
    OIL_AND_WATER("oil and water"),
    TORQUE_STRIPES("torque stripes"),
    FILTER("filter");

    private final String code;

    UsualLook(String code) {
        this.code = code;
    }

    @Override
    public String code() {
        return code;
    }
}
