package witnessmark.picture;

import java.awt.image.BufferedImage;
import java.io.BufferedInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/** Looks at picture files and draws them. Blocks; nothing of a file is believed before it is read. */
public final class Pictures {
    private Pictures() {}

    /**
     * What a file says of its picture. Read once, to its end.
     *
     * @throws IOException if it cannot be read
     */
    public static Picture look(Path file) throws IOException {
        try (InputStream in = open(file)) {
            Media media = media(in);
            Reading reading = new Reading(in);
            return switch (media) {
                case JPEG -> JpegFile.look(reading);
                case PNG -> PngFile.look(reading);
                case GIF -> PlainFiles.gif(reading);
                case BMP -> PlainFiles.bmp(reading, Files.size(file));
                default -> new Picture(media, 0, 0, 1, null, null, 1, true, false, false);
            };
        }
    }

    /**
     * Draws it upright, no larger than asked for; of one that moves its first picture, of one that breaks off what there
     * is.
     *
     * @param longest of its longer side, pixels, 1 or more
     * @return empty where the program cannot draw it
     * @throws IOException if it cannot be read
     */
    public static Optional<BufferedImage> draw(Path file, int longest) throws IOException {
        Picture picture = look(file);
        return picture.isDrawn() ? Drawing.of(file, picture, longest) : Optional.empty();
    }

    /**
     * The same picture without where it was taken, who took it and with what: its coded part to the last bit.
     *
     * @return empty where that can only be done by drawing it anew
     * @throws IOException if it cannot be read
     */
    public static Optional<byte[]> bare(Path file) throws IOException {
        Media media;
        try (InputStream in = open(file)) {
            media = media(in);
        }
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        if (media == Media.JPEG) {
            Exif exif;
            try (InputStream in = open(file)) {
                exif = JpegFile.exif(new Reading(in));
            }
            try (InputStream in = open(file)) {
                JpegFile.bare(new Reading(in), exif, out);
            }
            return Optional.of(out.toByteArray());
        }
        if (media == Media.PNG) {
            try (InputStream in = open(file)) {
                PngFile.bare(new Reading(in), out);
            }
            return Optional.of(out.toByteArray());
        }
        return Optional.empty();
    }

    private static Media media(InputStream in) throws IOException {
        in.mark(Media.HEAD);
        byte[] head = in.readNBytes(Media.HEAD);
        in.reset();
        return Media.of(head);
    }

    private static InputStream open(Path file) throws IOException {
        return new BufferedInputStream(Files.newInputStream(file), 1 << 16);
    }
}
