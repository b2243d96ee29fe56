package witnessmark.fit.result;

/**
 * A line of the column a check adds up.
 *
 * @param given the figure it comes of
 * @param part how much of the figure counts
 * @param counts what it adds, in whole parts of the check's dimension, so that the lines make the sum exactly
 */
public record Term(Given given, Part part, long counts) {
    /** How a figure goes into a sum. */
    public enum Part {
        PLUS,
        MINUS,
        PLUS_HALF,
        MINUS_HALF,
        /** A volume made of a height or a thickness. */
        AS_VOLUME,
        /** One of the two volumes a ratio is of. */
        OF_RATIO
    }

    /** A figure as it goes in; halves are rounded half up. */
    public static Term of(Given given, Part part) {
        long value = given.value();
        return new Term(
                given,
                part,
                switch (part) {
                    case PLUS, AS_VOLUME, OF_RATIO -> value;
                    case MINUS -> -value;
                    case PLUS_HALF -> Math.floorDiv(value + 1, 2);
                    case MINUS_HALF -> -Math.floorDiv(value, 2);
                });
    }
}
