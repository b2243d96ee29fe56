package witnessmark.trace;

/** Follows long work, and can end it. */
@FunctionalInterface
public interface Watch {
    /**
     * Called after each piece that was read.
     *
     * @param bytes of the text read so far, unpacked
     * @return whether to go on
     */
    boolean goOn(long bytes);

    /** Lets everything go on to its end. */
    static Watch none() {
        return bytes -> true;
    }
}
