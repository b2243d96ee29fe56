package witnessmark.exchange;

/**
 * What one reading takes at most, so that no folder can fill the memory or keep the program busy for ever. Twenty
 * seasons of a busy team are about 200 000 rows and 50 MB.
 */
final class Limits {
    /** Bytes of all files of a folder together. */
    static final long BYTES = 128L << 20;

    /** Bytes of everything kept beside the records of a folder, together; each has a limit of its own. */
    static final long KEPT = 8L << 30;

    /** Rows of all files of a folder together. */
    static final int ROWS = 500_000;

    /** Columns of one file. */
    static final int COLUMNS = 1_000;

    /** Characters of one field. */
    static final int FIELD = 1_000_000;

    /** Characters of a field that is no free text: the time to read a number grows with the square of its length. */
    static final int FIGURE = 1_000;

    /** Characters of a text repeated in a problem. */
    static final int SHOWN = 200;

    /** Problems after which a folder is not taken at all. */
    static final int PROBLEMS = 1_000;

    private Limits() {}

    /** A text short enough to be repeated in a problem. */
    static String shown(String text) {
        return text.length() <= SHOWN ? text : text.substring(0, SHOWN) + "…";
    }
}
