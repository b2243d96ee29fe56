package witnessmark.picture;

import java.io.EOFException;
import java.io.IOException;

/** The headers of GIF (CompuServe, GIF89a) and Windows bitmap files. */
final class PlainFiles {
    private static final int PICTURE = 0x2C;
    private static final int EXTENSION = 0x21;
    private static final int END = 0x3B;
    /** So many are enough to say that it moves. */
    private static final int COUNTED = 10_000;

    private PlainFiles() {}

    static Picture gif(Reading in) throws IOException {
        int width = 0;
        int height = 0;
        int frames = 0;
        boolean whole = false;
        try {
            in.skip(6);
            width = in.twoLow();
            height = in.twoLow();
            int packed = in.one();
            in.skip(2);
            colours(in, packed);
            int block = in.one();
            while (block != END && frames < COUNTED) {
                if (block == PICTURE) {
                    frames++;
                    in.skip(8);
                    colours(in, in.one());
                    in.one();
                } else if (block == EXTENSION) {
                    in.one();
                } else {
                    throw new EOFException();
                }
                for (int size = in.one(); size > 0; size = in.one()) {
                    in.skip(size);
                }
                block = in.one();
            }
            whole = true;
        } catch (EOFException e) {
            whole = false;
        }
        return new Picture(Media.GIF, width, height, 1, null, null, Math.max(1, frames), whole, false, false);
    }

    private static void colours(Reading in, int packed) throws IOException {
        if ((packed & 0x80) != 0) {
            in.skip(3L << ((packed & 7) + 1));
        }
    }

    /** @param size of the file, bytes */
    static Picture bmp(Reading in, long size) throws IOException {
        int width = 0;
        int height = 0;
        boolean whole = false;
        try {
            in.skip(2);
            whole = in.fourLow() <= size;
            in.skip(8);
            if (in.fourLow() == 12) {
                width = in.twoLow();
                height = in.twoLow();
            } else {
                width = (int) in.fourLow();
                height = (int) in.fourLow();
            }
        } catch (EOFException e) {
            whole = false;
        }
        return new Picture(
                Media.BMP,
                Math.max(0, width),
                height == Integer.MIN_VALUE ? Integer.MAX_VALUE : Math.abs(height),
                1,
                null,
                null,
                1,
                whole,
                false,
                false);
    }
}
