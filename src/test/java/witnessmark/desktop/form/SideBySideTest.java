package witnessmark.desktop.form;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Dimension;
import java.awt.EventQueue;
import java.awt.Point;
import java.awt.SecondaryLoop;
import java.awt.Toolkit;
import javax.swing.JFrame;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import witnessmark.desktop.testing.UiTest;

/** Something opened beside a page makes it narrow: what was seen of its main thing is seen of it still, there and back. */
@UiTest(display = true)
class SideBySideTest {
    private static final int ROWS = 120;
    private static final int ROW = 25;

    private final JFrame frame = new JFrame();

    @AfterEach
    void close() {
        frame.dispose();
    }

    @Test
    void what_is_in_view_stays_there_when_the_page_becomes_narrow_and_when_it_is_wide_again() {
        JPanel rows = new JPanel(null);
        rows.setPreferredSize(new Dimension(300, ROWS * ROW));
        JLabel row = new JLabel("row 60");
        row.setBounds(0, 60 * ROW, 200, ROW);
        rows.add(row);
        ScrollPage main = new ScrollPage(rows);
        JPanel side = new JPanel();
        side.setPreferredSize(new Dimension(300, 900));
        ScrollPage page = new ScrollPage(new SideBySide(main, side, 300, 800).mainStays());
        frame.setContentPane(page);
        size(900);
        main.getViewport().setViewPosition(new Point(0, 58 * ROW));
        pump();
        int wide = seenAt(row);
        assertThat(wide).isEqualTo(2 * ROW);

        size(600);
        assertThat(seenAt(row)).as("in the narrow page").isEqualTo(wide);
        size(900);
        assertThat(seenAt(row)).as("in the wide page again").isEqualTo(wide);
    }

    private void size(int width) {
        frame.setSize(width, 500);
        frame.setVisible(true);
        frame.validate();
        pump();
    }

    private int seenAt(JLabel row) {
        return SwingUtilities.convertPoint(row, new Point(), frame.getContentPane()).y;
    }

    /** Lets come what was put off. */
    private static void pump() {
        for (int i = 0; i < 5; i++) {
            SecondaryLoop loop =
                    Toolkit.getDefaultToolkit().getSystemEventQueue().createSecondaryLoop();
            EventQueue.invokeLater(loop::exit);
            loop.enter();
        }
    }
}
