package witnessmark.picture;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Iterator;
import java.util.Locale;
import java.util.Optional;
import javax.imageio.ImageIO;
import javax.imageio.ImageReadParam;
import javax.imageio.ImageReader;
import javax.imageio.ImageTypeSpecifier;
import javax.imageio.stream.FileImageInputStream;

/**
 * Draws a picture from a file in memory that goes by the size wanted, not by that of the picture: of the rows and columns only
 * every so many are kept while it is unpacked. Only the formats looked at are asked, and of them no more than the picture.
 */
final class Drawing {
    /** Kept while unpacking, for each pixel wanted along a side. */
    private static final int FINER = 2;

    private Drawing() {}

    static Optional<BufferedImage> of(Path file, Picture picture, int longest) throws IOException {
        String format = picture.media().name().toLowerCase(Locale.ROOT);
        Iterator<ImageReader> readers = ImageIO.getImageReadersByFormatName(format);
        if (!readers.hasNext()) {
            return Optional.empty();
        }
        ImageReader reader = readers.next();
        try (FileImageInputStream in = new FileImageInputStream(file.toFile())) {
            reader.setInput(in, true, true);
            return unpacked(reader, longest).map(image -> upright(image, picture, longest));
        } catch (RuntimeException e) { // readers of pictures trust what they read
            return Optional.empty();
        } finally {
            reader.dispose();
        }
    }

    /** Into an image of ours, so that of a file that breaks off there is what was read. */
    private static Optional<BufferedImage> unpacked(ImageReader reader, int longest) {
        BufferedImage into = null;
        try {
            int width = reader.getWidth(0);
            int height = reader.getHeight(0);
            int every = Math.max(1, Math.max(width, height) / (longest * FINER));
            Iterator<ImageTypeSpecifier> types = reader.getImageTypes(0);
            if (width < 1 || height < 1 || !types.hasNext()) {
                return Optional.empty();
            }
            into = types.next().createBufferedImage((width + every - 1) / every, (height + every - 1) / every);
            ImageReadParam how = reader.getDefaultReadParam();
            how.setSourceSubsampling(every, every, 0, 0);
            how.setDestination(into);
            reader.read(0, how);
            return Optional.of(into);
        } catch (IOException e) {
            return Optional.ofNullable(into);
        }
    }

    private static BufferedImage upright(BufferedImage from, Picture picture, int longest) {
        BufferedImage image = from;
        while (Math.max(image.getWidth(), image.getHeight()) >= 2 * longest) {
            image = drawn(image, (image.getWidth() + 1) / 2, (image.getHeight() + 1) / 2);
        }
        double by = Math.min(1, (double) longest / Math.max(image.getWidth(), image.getHeight()));
        int width = Math.max(1, (int) Math.round(image.getWidth() * by));
        int height = Math.max(1, (int) Math.round(image.getHeight() * by));
        return turned(drawn(image, width, height), picture);
    }

    private static BufferedImage drawn(BufferedImage from, int width, int height) {
        BufferedImage to = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = to.createGraphics();
        try {
            g.setColor(Color.WHITE); // shines through where the picture does not cover
            g.fillRect(0, 0, width, height);
            g.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
            g.drawImage(from, 0, 0, width, height, null);
        } finally {
            g.dispose();
        }
        return to;
    }

    /** The eight ways of Exif: 2 mirrored, 3 half round, 4 upside down, 5 to 8 on its side. */
    private static BufferedImage turned(BufferedImage from, Picture picture) {
        if (picture.turn() == 1) {
            return from;
        }
        int w = from.getWidth();
        int h = from.getHeight();
        AffineTransform how = switch (picture.turn()) {
            case 2 -> new AffineTransform(-1, 0, 0, 1, w, 0);
            case 3 -> new AffineTransform(-1, 0, 0, -1, w, h);
            case 4 -> new AffineTransform(1, 0, 0, -1, 0, h);
            case 5 -> new AffineTransform(0, 1, 1, 0, 0, 0);
            case 6 -> new AffineTransform(0, 1, -1, 0, h, 0);
            case 7 -> new AffineTransform(0, -1, -1, 0, h, w);
            default -> new AffineTransform(0, -1, 1, 0, 0, w);
        };
        BufferedImage to =
                new BufferedImage(picture.onItsSide() ? h : w, picture.onItsSide() ? w : h, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = to.createGraphics();
        try {
            g.drawImage(from, how, null);
        } finally {
            g.dispose();
        }
        return to;
    }
}
