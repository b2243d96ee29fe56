package witnessmark.picture;

import java.time.LocalDateTime;
import java.time.ZoneOffset;
import org.jspecify.annotations.Nullable;

/**
 * What a file says of its picture, read without drawing it.
 *
 * @param media what it is
 * @param width pixels as stored, 0 where it does not say
 * @param height pixels as stored, 0 where it does not say
 * @param turn how it is to be turned to stand upright, from 1 (as it is) to 8: Exif orientation
 * @param taken when the camera says it was taken, by the camera's clock; null where it does not say
 * @param offset what that clock is ahead of UTC; null where it does not say
 * @param frames how many pictures follow each other, 1 or more
 * @param whole whether it ends where such a file ends
 * @param located whether it says where on earth it was taken
 * @param progressive whether all of it is needed before any of it can be drawn
 */
public record Picture(
        Media media,
        int width,
        int height,
        int turn,
        @Nullable LocalDateTime taken,
        @Nullable ZoneOffset offset,
        int frames,
        boolean whole,
        boolean located,
        boolean progressive) {
    /** Larger than any camera makes, pixels. */
    public static final long MOST = 400_000_000L;

    /** No side is longer, pixels. */
    public static final int LONGEST = 100_000;

    /** Of what has to be unpacked as a whole, pixels. */
    static final long MOST_AT_ONCE = 50_000_000L;

    /** How many pixels it has. */
    public long pixels() {
        return (long) width * height;
    }

    /** Whether it claims to be larger than a picture can be. */
    public boolean isTooLarge() {
        return width > LONGEST || height > LONGEST || pixels() > MOST;
    }

    /** Whether it is drawn in the memory there is. */
    public boolean isDrawn() {
        return media.isDrawn() && width > 0 && height > 0 && !isTooLarge() && !(atOnce() && pixels() > MOST_AT_ONCE);
    }

    private boolean atOnce() {
        return progressive || media == Media.BMP;
    }

    /** Whether it lies on its side. */
    public boolean onItsSide() {
        return turn >= 5;
    }
}
