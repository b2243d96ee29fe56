package witnessmark.exchange;

/** How a figure stands in a file when its column does not name the unit, because rows of the file differ in it. */
interface FigureText {
    /** The figure as it is written, with its unit. */
    String of(long figure);

    /**
     * Reads a figure.
     *
     * @throws IllegalArgumentException or ArithmeticException if it is none, or finer than it is kept
     */
    long read(String text);

    /** One that can be read, for the sentence when another cannot. */
    String form();
}
