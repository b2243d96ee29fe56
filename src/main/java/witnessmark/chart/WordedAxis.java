package witnessmark.chart;

import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import org.jfree.chart.axis.AxisState;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.NumberTick;
import org.jfree.chart.ui.RectangleEdge;
import org.jfree.chart.ui.TextAnchor;

/** An axis of the library whose ticks stand and read as the described axis says. */
final class WordedAxis extends NumberAxis {
    private final transient Axis axis;

    WordedAxis(Axis axis) {
        super(axis.title().isEmpty() ? null : axis.title());
        this.axis = axis;
        setAutoRange(false);
    }

    @Override
    public List<NumberTick> refreshTicks(Graphics2D g, AxisState state, Rectangle2D dataArea, RectangleEdge edge) {
        TextAnchor anchor = RectangleEdge.isTopOrBottom(edge) ? TextAnchor.TOP_CENTER : TextAnchor.CENTER_RIGHT;
        List<NumberTick> ticks = new ArrayList<>();
        for (Tick tick : Ticks.of(axis, getLowerBound(), getUpperBound())) {
            ticks.add(new NumberTick(tick.at(), tick.label(), anchor, TextAnchor.CENTER, 0));
        }
        return ticks;
    }

    @Override
    public boolean equals(Object other) {
        return this == other;
    }

    @Override
    public int hashCode() {
        return System.identityHashCode(this);
    }
}
