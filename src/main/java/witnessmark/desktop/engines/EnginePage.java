package witnessmark.desktop.engines;

/** What {@link EnginesPlace#open} is given besides the identities of engines, builds and parts. */
public final class EnginePage {
    private static final String PAGE = "page of ";
    private static final String DYNO = "dyno sheet ";
    private static final String TRENDS = "trends of ";

    private EnginePage() {}

    /**
     * The page of a part, also of one that is in an engine.
     *
     * @param part the text form of its identity
     */
    public static String ofPart(String part) {
        return PAGE + part;
    }

    /**
     * A dyno sheet under its engine.
     *
     * @param sheet the text form of its identity
     */
    public static String ofDynoSheet(String sheet) {
        return DYNO + sheet;
    }

    /**
     * Where the readings of an engine are going.
     *
     * @param engine the text form of its identity
     */
    public static String ofTrends(String engine) {
        return TRENDS + engine;
    }

    /** Whether it is one of these, and no bare identity. */
    static boolean isPage(String record) {
        return isPart(record) || isDynoSheet(record) || isTrends(record);
    }

    static boolean isTrends(String record) {
        return record.startsWith(TRENDS);
    }

    static boolean isPart(String record) {
        return record.startsWith(PAGE);
    }

    static boolean isDynoSheet(String record) {
        return record.startsWith(DYNO);
    }

    /** The identity a page is of. */
    static String identity(String record) {
        String head = isPart(record) ? PAGE : isDynoSheet(record) ? DYNO : TRENDS;
        return record.substring(head.length());
    }
}
