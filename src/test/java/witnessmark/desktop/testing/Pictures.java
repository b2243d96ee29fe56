package witnessmark.desktop.testing;

import java.awt.Component;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.imageio.ImageIO;

/**
 * Paints components, and with {@code -Dpictures=true} keeps them as PNG files under {@code target/pictures}, for people
 * to look at. Packing them costs more than painting them, so a plain run of the tests leaves it out.
 */
public final class Pictures {
    private Pictures() {}

    /** The component as laid out, at its own size. */
    public static BufferedImage write(String name, Component component) {
        return write(name, component, 1);
    }

    /** @param scale 2 for a picture twice as fine */
    public static BufferedImage write(String name, Component component, int scale) {
        BufferedImage image = paint(component, scale);
        if (Boolean.getBoolean("pictures")) {
            keep(name, image);
        }
        return image;
    }

    private static void keep(String name, BufferedImage image) {
        Path folder = Path.of(System.getProperty("project.build.directory", "target"), "pictures");
        try {
            Files.createDirectories(folder);
            ImageIO.write(image, "png", folder.resolve(name + ".png").toFile());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    public static BufferedImage paint(Component component, int scale) {
        BufferedImage image = new BufferedImage(
                component.getWidth() * scale, component.getHeight() * scale, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        g.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        g.scale(scale, scale);
        component.paint(g);
        g.dispose();
        return image;
    }

    /** How many different colours there are, counted up to the limit. */
    public static int colours(BufferedImage image, int limit) {
        java.util.Set<Integer> seen = new java.util.HashSet<>();
        for (int y = 0; y < image.getHeight(); y++) {
            for (int x = 0; x < image.getWidth(); x++) {
                seen.add(image.getRGB(x, y));
                if (seen.size() >= limit) {
                    return seen.size();
                }
            }
        }
        return seen.size();
    }
}
