package witnessmark.desktop.photos;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Image;
import java.awt.Toolkit;
import java.awt.datatransfer.DataFlavor;
import java.awt.datatransfer.Transferable;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Locale;
import javax.imageio.ImageIO;
import javax.swing.TransferHandler.TransferSupport;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import witnessmark.desktop.shell.Theme;
import witnessmark.desktop.testing.GoldenText;
import witnessmark.desktop.testing.Looks;
import witnessmark.desktop.testing.UiTest;
import witnessmark.domain.Photo;
import witnessmark.logbook.Desk;
import witnessmark.sample.SampleBooks;
import witnessmark.wording.Texts;

/** A picture without a file becomes one off the event thread, which is there no longer than it is needed. */
@UiTest
class PicturesDroppedTest {
    @TempDir
    private Path folder;

    private Desk desk;
    private PhotosWindow window;

    @BeforeEach
    void open() throws IOException {
        desk = new SampleBooks(folder).open();
        window = new PhotosWindow(desk, Looks.look(Theme.LIGHT, 1), Texts.in(Locale.UK));
        window.root();
    }

    @AfterEach
    void close() {
        window.close();
        desk.logbook().close();
    }

    private void drop(Image image) {
        boolean taken = window.strip
                .getTransferHandler()
                .importData(new TransferSupport(window.strip, new Transferable() {
                    @Override
                    public DataFlavor[] getTransferDataFlavors() {
                        return new DataFlavor[] {DataFlavor.imageFlavor};
                    }

                    @Override
                    public boolean isDataFlavorSupported(DataFlavor flavor) {
                        return flavor.equals(DataFlavor.imageFlavor);
                    }

                    @Override
                    public Object getTransferData(DataFlavor flavor) {
                        return image;
                    }
                }));
        assertThat(taken).isTrue();
    }

    private static BufferedImage halfCovered() {
        BufferedImage image = new BufferedImage(40, 20, BufferedImage.TYPE_INT_ARGB);
        Graphics2D g = image.createGraphics();
        g.setColor(Color.RED);
        g.fillRect(0, 0, 20, 20);
        g.dispose();
        return image;
    }

    private Path dropped() {
        drop(halfCovered());
        assertThat(window.aside).as("drawn on the event thread").isNull();
        window.tasks.awaitIdle();
        return ((BringInPage) window.aside()).files().get(0);
    }

    @Test
    void where_it_does_not_cover_it_is_white() throws IOException {
        BufferedImage drawn = ImageIO.read(dropped().toFile());
        assertThat(drawn.getRGB(30, 10)).isEqualTo(Color.WHITE.getRGB());
        assertThat(drawn.getRGB(10, 10)).isEqualTo(Color.RED.getRGB());
    }

    @Test
    void its_file_goes_with_the_page_whatever_takes_the_place_of_it() {
        Path file = dropped();
        assertThat(file).exists();
        window.stand(null);
        assertThat(file.getParent()).doesNotExist();
    }

    @Test
    void its_file_stays_until_it_was_taken_in() {
        Path file = dropped();
        ((BringInPage) window.aside()).keep();
        window.stand(null);
        window.tasks.awaitIdle();
        assertThat(desk.view().facts().of(Photo.class).inForce()).hasSize(1);
        assertThat(file.getParent()).doesNotExist();
    }

    @Test
    void one_that_does_not_say_how_large_it_is_is_refused_with_a_sentence() {
        drop(Toolkit.getDefaultToolkit().createImage(new byte[0]));
        window.tasks.awaitIdle();
        assertThat(window.aside).isNull();
        assertThat(GoldenText.of(window.root())).contains("That picture cannot be read from there");
    }
}
