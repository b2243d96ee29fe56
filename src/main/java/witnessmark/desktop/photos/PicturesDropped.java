package witnessmark.desktop.photos;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Image;
import java.awt.Toolkit;
import java.awt.datatransfer.DataFlavor;
import java.awt.datatransfer.Transferable;
import java.awt.datatransfer.UnsupportedFlavorException;
import java.awt.image.BufferedImage;
import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javax.imageio.ImageIO;
import javax.swing.TransferHandler;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** Pictures that are dropped, or lie on the clipboard: as files, or as a picture without one, which is made a PNG. */
final class PicturesDropped extends TransferHandler {
    private static final long serialVersionUID = 1;
    private static final Logger LOG = LoggerFactory.getLogger(PicturesDropped.class);

    private final transient Consumer<List<Path>> files;
    private final transient Consumer<Image> picture;

    /**
     * @param files told of files
     * @param picture told of a picture without a file
     */
    PicturesDropped(Consumer<List<Path>> files, Consumer<Image> picture) {
        this.files = files;
        this.picture = picture;
    }

    @Override
    public boolean canImport(TransferSupport dropped) {
        return dropped.isDataFlavorSupported(DataFlavor.javaFileListFlavor)
                || dropped.isDataFlavorSupported(DataFlavor.imageFlavor);
    }

    @Override
    public boolean importData(TransferSupport dropped) {
        return canImport(dropped) && taken(dropped.getTransferable(), files, picture);
    }

    /** Takes what lies on the clipboard. */
    static void pasted(Consumer<List<Path>> files, Consumer<Image> picture, Runnable nothing) {
        Transferable there = null;
        try {
            there = Toolkit.getDefaultToolkit().getSystemClipboard().getContents(null);
        } catch (IllegalStateException e) {
            LOG.info("another program holds the clipboard", e);
        }
        if (there == null || !taken(there, files, picture)) {
            nothing.run();
        }
    }

    private static boolean taken(Transferable from, Consumer<List<Path>> files, Consumer<Image> picture) {
        try {
            if (from.isDataFlavorSupported(DataFlavor.javaFileListFlavor)) {
                List<?> all = (List<?>) from.getTransferData(DataFlavor.javaFileListFlavor);
                files.accept(all.stream().map(file -> ((File) file).toPath()).toList());
                return true;
            }
            if (from.isDataFlavorSupported(DataFlavor.imageFlavor)) {
                picture.accept((Image) from.getTransferData(DataFlavor.imageFlavor));
                return true;
            }
        } catch (UnsupportedFlavorException | IOException e) {
            LOG.warn("what was pasted or dropped cannot be had", e);
        }
        return false;
    }

    /**
     * Makes it a PNG in a file that is to be forgotten once it was taken; white where it does not cover. Blocks.
     *
     * @return empty when it does not say how large it is
     */
    static Optional<Path> file(Image image) throws IOException {
        int width = image.getWidth(null);
        int height = image.getHeight(null);
        if (width < 1 || height < 1) {
            return Optional.empty();
        }
        BufferedImage drawn = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = drawn.createGraphics();
        g.drawImage(image, 0, 0, Color.WHITE, null);
        g.dispose();
        Path file = Files.createTempDirectory("witness-mark").resolve("pasted.png");
        try {
            ImageIO.write(drawn, "png", file.toFile());
        } catch (IOException e) {
            forget(file);
            throw e;
        }
        return Optional.of(file);
    }

    /** Takes a file away that was made for a picture without one. */
    static void forget(Path file) {
        try {
            Files.deleteIfExists(file);
            Path folder = file.getParent();
            if (folder != null) {
                Files.deleteIfExists(folder);
            }
        } catch (IOException e) {
            LOG.info("a pasted picture stays behind: {}", file, e);
        }
    }
}
