package witnessmark.desktop.shell;

/** The places, in the order of the rail. The digit goes with Ctrl, or Cmd on a Mac. */
public enum PlaceId {
    BEFORE_WE_GO("beforeWeGo", 1, PlaceGroup.TRACK),
    RUN_SHEET("runSheet", 2, PlaceGroup.TRACK),
    INCIDENTS("incidents", 3, PlaceGroup.TRACK),
    ENGINES("engines", 4, PlaceGroup.WORKSHOP),
    PARTS_SHELF("partsShelf", 5, PlaceGroup.WORKSHOP),
    MEASURING_BENCH("measuringBench", 6, PlaceGroup.WORKSHOP),
    SEASON_LEDGER("seasonLedger", 8, PlaceGroup.OFFICE);

    private final String name;
    private final int digit;
    private final PlaceGroup group;

    PlaceId(String name, int digit, PlaceGroup group) {
        this.name = name;
        this.digit = digit;
        this.group = group;
    }

    /** The key of its title: {@code shell.place.runSheet}. */
    public String key() {
        return "shell.place." + name;
    }

    /** The stem of its help: {@code help.runSheet}. */
    public String helpKey() {
        return "help." + name;
    }

    public int digit() {
        return digit;
    }

    public PlaceGroup group() {
        return group;
    }
}
