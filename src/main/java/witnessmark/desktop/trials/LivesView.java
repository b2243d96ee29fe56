package witnessmark.desktop.trials;

import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import witnessmark.chart.ChartStyle;
import witnessmark.chart.DrawnLivesChart;
import witnessmark.chart.LivesChart;
import witnessmark.desktop.form.ChartLook;
import witnessmark.desktop.form.PaintedRows;
import witnessmark.desktop.form.Palette;

/** Lives side by side, each leading to its part. */
final class LivesView extends PaintedRows {
    private static final int PAPER = 960;
    private static final int MARGIN = 16;
    private static final int BARE = 100;

    private transient @Nullable LivesChart chart;

    LivesView(String name, Consumer<String> open, Consumer<String> readout) {
        super(name, open, readout);
    }

    /** @param words the whole of it in a sentence */
    void show(LivesChart next, String words) {
        chart = next;
        show(
                next.strips().stream()
                        .map(strip -> new Row(strip.words(), strip.record()))
                        .toList(),
                words);
    }

    @Override
    protected int at(int y) {
        LivesChart now = chart;
        return now == null ? -1 : drawn(now).at(y);
    }

    @Override
    protected int high() {
        LivesChart now = chart;
        return now == null ? BARE : DrawnLivesChart.height(now);
    }

    @Override
    protected void paint(Graphics2D g, int chosen) {
        LivesChart now = chart;
        if (now != null) {
            drawn(now).draw(g, chosen);
        }
    }

    private DrawnLivesChart drawn(LivesChart now) {
        return new DrawnLivesChart(now, ChartLook.now(), Palette.WITHIN.colour(), Palette.OVER.colour(), getWidth());
    }

    /** What it looks like on paper, in light colours; null where nothing is shown. */
    @Nullable
    BufferedImage picture() {
        LivesChart now = chart;
        if (now == null) {
            return null;
        }
        int high = DrawnLivesChart.height(now);
        BufferedImage image =
                new BufferedImage(2 * (PAPER + 2 * MARGIN), 2 * (high + 2 * MARGIN), BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        g.scale(2, 2);
        ChartStyle style = ChartLook.onPaper();
        g.setColor(style.sheet());
        g.fillRect(0, 0, PAPER + 2 * MARGIN, high + 2 * MARGIN);
        g.translate(MARGIN, MARGIN);
        new DrawnLivesChart(now, style, style.series().get(0), style.series().get(1), PAPER).draw(g, -1);
        g.dispose();
        return image;
    }
}
