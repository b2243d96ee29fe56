package witnessmark.domain;

/** How the time a run started is known. It is never simply the time of typing. */
public enum StartKnown implements Coded {
    TIMETABLE("timetable"),
    TRACE("trace"),
    TYPED("typed"),
    ESTIMATE("estimate");

    private final String code;

    StartKnown(String code) {
        this.code = code;
    }

    @Override
    public String code() {
        return code;
    }
}
