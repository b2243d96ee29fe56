package witnessmark.chart;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import org.jfree.chart.ChartRenderingInfo;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.IntervalMarker;
import org.jfree.chart.plot.ValueMarker;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.chart.renderer.xy.XYStepRenderer;
import org.jfree.chart.ui.Layer;
import org.jfree.chart.ui.RectangleInsets;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;

/** A chart as the library holds it: axes, lines, marks. Titles and names are written by {@link Lettered}. */
final class Plotted {
    private final Chart chart;
    private final XYPlot plot = new XYPlot();
    private final JFreeChart drawn;
    private final NumberAxis across;
    private final NumberAxis up;

    Plotted(Chart chart) {
        this.chart = chart;
        this.across = new WordedAxis(chart.across());
        this.up = new WordedAxis(chart.up());
        plot.setDomainAxis(across);
        plot.setRangeAxis(up);
        for (int i = 0; i < chart.lines().size(); i++) {
            Line line = chart.lines().get(i);
            plot.setDataset(2 * i, collection(line));
            plot.setRenderer(2 * i, renderer(line));
            plot.setDataset(2 * i + 1, line.quiet() ? null : collection(line));
            plot.setRenderer(2 * i + 1, new XYLineAndShapeRenderer(false, true));
        }
        this.drawn = new JFreeChart(null, null, plot, false);
        drawn.setPadding(RectangleInsets.ZERO_INSETS);
    }

    /** Sets which part is seen. */
    void range(double from, double to, double low, double high) {
        across.setRange(from, to);
        up.setRange(low, high);
    }

    void style(ChartStyle style) {
        drawn.setNotify(false);
        drawn.setBackgroundPaint(style.sheet());
        plot.setBackgroundPaint(style.sheet());
        plot.setOutlineVisible(false);
        plot.setAxisOffset(RectangleInsets.ZERO_INSETS);
        BasicStroke hair = new BasicStroke((float) style.scale());
        plot.setDomainGridlinePaint(style.rule());
        plot.setDomainGridlineStroke(hair);
        plot.setRangeGridlinePaint(style.rule());
        plot.setRangeGridlineStroke(hair);
        axis(across, style);
        axis(up, style);
        int colour = 0;
        for (int i = 0; i < chart.lines().size(); i++) {
            Line line = chart.lines().get(i);
            line(i, line.quiet() ? -1 : colour, style);
            colour += line.quiet() ? 0 : 1;
        }
        marks(style);
        drawn.setNotify(true);
    }

    /** Draws into an area and returns where the values stand in it. */
    Rectangle2D draw(Graphics2D g, Rectangle2D area, double rightOfValues, double aboveValues) {
        plot.setInsets(new RectangleInsets(aboveValues, 0, 0, rightOfValues));
        ChartRenderingInfo info = new ChartRenderingInfo();
        drawn.draw(g, area, info);
        return info.getPlotInfo().getDataArea();
    }

    private static void axis(NumberAxis axis, ChartStyle style) {
        axis.setAxisLineVisible(false);
        axis.setTickMarksVisible(false);
        axis.setTickLabelFont(style.text());
        axis.setTickLabelPaint(style.ink2());
        axis.setLabelFont(style.text());
        axis.setLabelPaint(style.ink2());
        double gap = 4 * style.scale();
        axis.setTickLabelInsets(new RectangleInsets(gap, gap, gap, 1.5 * gap));
    }

    private void line(int index, int colour, ChartStyle style) {
        XYLineAndShapeRenderer lines = (XYLineAndShapeRenderer) plot.getRenderer(2 * index);
        XYLineAndShapeRenderer shapes = (XYLineAndShapeRenderer) plot.getRenderer(2 * index + 1);
        Color ink = colour < 0 ? style.ink2() : style.series().get(colour);
        lines.setAutoPopulateSeriesPaint(false);
        lines.setAutoPopulateSeriesStroke(false);
        lines.setSeriesPaint(0, ink);
        lines.setSeriesStroke(
                0, colour < 0 ? SeriesLook.quiet(style.scale()) : SeriesLook.stroke(colour, style.scale()));
        shapes.setAutoPopulateSeriesPaint(false);
        shapes.setAutoPopulateSeriesShape(false);
        shapes.setSeriesPaint(0, ink);
        shapes.setSeriesShape(0, SeriesLook.shape(Math.max(0, colour), style.scale()));
    }

    private void marks(ChartStyle style) {
        plot.clearDomainMarkers();
        plot.clearRangeMarkers();
        for (Chart.Band band : chart.bands()) {
            IntervalMarker marker = new IntervalMarker(band.from(), band.to(), style.band());
            marker.setAlpha(1);
            marker.setOutlinePaint(null);
            plot.addDomainMarker(marker, Layer.BACKGROUND);
        }
        float unit = (float) style.scale();
        BasicStroke dashed = new BasicStroke(
                1.5f * unit, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 10f, new float[] {4 * unit, 3 * unit}, 0f);
        for (Chart.Mark upright : chart.uprights()) {
            plot.addDomainMarker(new ValueMarker(upright.at(), style.ink2(), dashed), Layer.BACKGROUND);
        }
        for (Chart.Mark level : chart.levels()) {
            plot.addRangeMarker(new ValueMarker(level.at(), style.ink(), new BasicStroke(2 * unit)), Layer.BACKGROUND);
        }
    }

    private static XYLineAndShapeRenderer renderer(Line line) {
        return line.path() == Line.Path.STEP ? new XYStepRenderer() : new XYLineAndShapeRenderer(true, false);
    }

    private static XYSeriesCollection collection(Line line) {
        XYSeries series = new XYSeries(line.id(), false, true);
        for (Dot dot : line.dots()) {
            series.add(dot.across(), dot.height(), false);
        }
        return new XYSeriesCollection(series);
    }
}
