package witnessmark.desktop.engines;

/** What {@link EnginesPlace#open} is given besides the identities of engines, builds and parts. */
public final class EnginePage {
    private static final String PAGE = "page of ";
    private static final String DYNO = "dyno sheet ";

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

    static boolean isPart(String record) {
        return record.startsWith(PAGE);
    }

    static boolean isDynoSheet(String record) {
        return record.startsWith(DYNO);
    }

    /** The identity a page is of. */
    static String identity(String record) {
        return record.substring((isPart(record) ? PAGE : DYNO).length());
    }
}
