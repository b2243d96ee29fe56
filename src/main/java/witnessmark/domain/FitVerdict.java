package witnessmark.domain;

/** How a figure stands against its limits. */
public enum FitVerdict implements Coded {
    /** Inside its limits, and inside what is aimed at where that is set. */
    INSIDE("inside"),
    /** Inside its limits, outside what is aimed at. */
    OFF_AIM("off aim"),
    /** Outside a limit. */
    OUTSIDE("outside"),
    /** Nothing is set to hold it against. */
    NO_LIMIT("no limit"),
    /** Something it needs is missing. */
    NOT_MEASURED("not measured");

    private final String code;

    FitVerdict(String code) {
        this.code = code;
    }

    @Override
    public String code() {
        return code;
    }
}
