package witnessmark.logbook.port;

/**
 * A picture to be shown.
 *
 * @param width 1 or more
 * @param height 1 or more
 * @param rgb row by row, the first at the top; red, green and blue in eight bits each
 */
@SuppressWarnings("ArrayRecordComponent") // made once, shown, and let go of
public record Pixels(int width, int height, int[] rgb) {
    public Pixels {
        if (width < 1 || height < 1 || rgb.length != width * height) {
            throw new IllegalArgumentException(width + " by " + height + " is not " + rgb.length);
        }
    }
}
