package witnessmark.desktop.photos;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Point;
import java.awt.event.KeyEvent;
import java.awt.event.MouseEvent;
import java.awt.event.MouseListener;
import java.awt.event.MouseMotionListener;
import java.awt.image.BufferedImage;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import witnessmark.desktop.form.Keys;
import witnessmark.desktop.testing.Ui;
import witnessmark.desktop.testing.UiTest;

/** A photo looked at closely is moved within its view; the view stays where it is on the page. */
@UiTest
class PhotoViewTest {
    private static final int WIDE = 400;
    private static final int HIGH = 200;

    private final PhotoView view = new PhotoView();

    @BeforeEach
    void closer() {
        BufferedImage photo = new BufferedImage(WIDE, HIGH, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = photo.createGraphics();
        g.setColor(Color.RED);
        g.fillRect(0, 0, WIDE / 2, HIGH);
        g.setColor(Color.BLUE);
        g.fillRect(WIDE / 2, 0, WIDE / 2, HIGH);
        g.dispose();
        view.setBounds(30, 40, WIDE, HIGH);
        view.show(photo, "shell of 3");
        for (int i = 0; i < 4; i++) {
            Ui.press(view, Keys.plain(KeyEvent.VK_PLUS));
        }
    }

    @Test
    void shift_and_the_arrows_show_what_lies_beside() {
        int before = edge();
        Ui.press(view, Keys.shift(KeyEvent.VK_RIGHT));
        assertThat(edge()).isEqualTo(before - 60);
        Ui.press(view, Keys.shift(KeyEvent.VK_LEFT));
        assertThat(edge()).isEqualTo(before);
        assertThat(view.getLocation()).isEqualTo(new Point(30, 40));
    }

    @Test
    void what_is_dragged_follows_the_pointer_and_the_photo_never_leaves_its_view() {
        int before = edge();
        drag(200, 225);
        assertThat(edge()).isEqualTo(before + 25);
        drag(200, 9_000);
        assertThat(colourAt(seen(), 0))
                .as("its left end at the left of the view")
                .isEqualTo(Color.RED);
        assertThat(view.getLocation()).isEqualTo(new Point(30, 40));
    }

    @Test
    void it_is_whole_again_in_one_step_and_says_whether_it_was_not() {
        drag(200, 225);
        int moved = edge();
        assertThat(view.showWhole()).isTrue();
        assertThat(edge()).isEqualTo(WIDE / 2).isNotEqualTo(moved);
        assertThat(view.showWhole()).isFalse();
        for (int i = 0; i < 7; i++) {
            Ui.press(view, Keys.plain(KeyEvent.VK_PLUS));
        }
        for (int i = 0; i < 7; i++) {
            Ui.press(view, Keys.plain(KeyEvent.VK_MINUS));
        }
        assertThat(view.showWhole()).as("there and back").isFalse();
    }

    private void drag(int from, int to) {
        for (MouseListener each : view.getMouseListeners()) {
            each.mousePressed(mouse(MouseEvent.MOUSE_PRESSED, from));
        }
        for (MouseMotionListener each : view.getMouseMotionListeners()) {
            each.mouseDragged(mouse(MouseEvent.MOUSE_DRAGGED, to));
        }
    }

    private MouseEvent mouse(int id, int x) {
        return new MouseEvent(view, id, 0L, 0, x, HIGH / 2, 1, false, MouseEvent.BUTTON1);
    }

    /** Where red becomes blue, in the view; its width where all is red. */
    private int edge() {
        BufferedImage seen = seen();
        for (int x = 0; x < WIDE; x++) {
            Color colour = colourAt(seen, x);
            if (colour.getBlue() > colour.getRed()) {
                return x;
            }
        }
        return WIDE;
    }

    private BufferedImage seen() {
        BufferedImage seen = new BufferedImage(WIDE, HIGH, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = seen.createGraphics();
        view.paint(g);
        g.dispose();
        return seen;
    }

    private static Color colourAt(BufferedImage seen, int x) {
        return new Color(seen.getRGB(x, HIGH / 2));
    }
}
