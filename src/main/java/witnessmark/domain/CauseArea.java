package witnessmark.domain;

/** Where a cause lies, as a team would set about it. */
public enum CauseArea implements Coded {
    RUN_PAST_ITS_LIMIT("run past its limit"),
    WEAR("wear"),
    PART_AS_MADE("part as made"),
    DESIGN("design"),
    ASSEMBLY("assembly"),
    UPKEEP("upkeep"),
    RECORDS("records"),
    TOOLS_AND_MEASURING("tools and measuring"),
    OIL_SYSTEM("oil system"),
    COOLING("cooling"),
    FUEL_AND_MIXTURE("fuel and mixture"),
    WIRING("wiring"),
    DRIVER("driver"),
    FROM_OUTSIDE("from outside"),
    NOT_FOUND("not found");

    private final String code;

    CauseArea(String code) {
        this.code = code;
    }

    @Override
    public String code() {
        return code;
    }
}
