package witnessmark.desktop.cases;

import static org.assertj.core.api.Assertions.assertThat;

import com.formdev.flatlaf.util.Graphics2DProxy;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import witnessmark.desktop.testing.UiTest;
import witnessmark.study.result.WayTo.Kind;
import witnessmark.wording.WayLines;

/** What stands on a way to a failure, painted at every width a page may have. */
@UiTest
class WayPainterTest {
    private static final String SEEN = "oil pressure down to 2.1 bar at full load, metal in the filter";

    /** Whole whatever the font: a row is as long as its own font lets it be, and nothing is cut that can wrap. */
    @ParameterizedTest
    @EnumSource(
            value = Kind.class,
            names = {"GOOD", "SYMPTOM", "BROKE", "FAILURE"})
    void what_was_seen_is_whole_at_any_width_its_longest_word_has_room_in(Kind kind) {
        Font small = new Font(Font.DIALOG, Font.PLAIN, 12);
        Font strong = small.deriveFont(Font.BOLD);
        WayLines.Point point = new WayLines.Point("3 May", "5.2 h", "", SEEN, "", List.of(kind), SEEN);
        Graphics2D g = new BufferedImage(400, 400, BufferedImage.TYPE_INT_RGB).createGraphics();
        for (int width = 90; width < 400; width++) {
            Drawn drawn = new Drawn(g);
            new WayPainter(List.of(point), strong, small, g::getFontMetrics, width).paint(drawn, -1, false);
            List<String> rows = drawn.rows.subList(0, drawn.rows.size() - 3);
            assertThat(String.join(" ", rows)).as("%d pixels: %s", width, rows).isEqualTo(SEEN);
            FontMetrics used = g.getFontMetrics(kind == Kind.GOOD ? small : strong);
            int room = width;
            assertThat(rows).allMatch(row -> used.stringWidth(row) <= room);
        }
        g.dispose();
    }

    /** What was written, in its order: what was seen, what was changed, the day and the hours. */
    private static final class Drawn extends Graphics2DProxy {
        private final List<String> rows = new ArrayList<>();

        Drawn(Graphics2D under) {
            super(under);
        }

        @Override
        public void drawString(String words, float x, float y) {
            rows.add(words);
        }
    }
}
