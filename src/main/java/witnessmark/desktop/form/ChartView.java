package witnessmark.desktop.form;

import com.formdev.flatlaf.util.UIScale;
import java.awt.BasicStroke;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.awt.event.KeyEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.awt.event.MouseWheelEvent;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.function.Consumer;
import javax.swing.JPanel;
import org.jspecify.annotations.Nullable;
import witnessmark.chart.Chart;
import witnessmark.chart.Dot;
import witnessmark.chart.DrawnChart;

/**
 * A chart that is looked at and gone over. Left and Right go from point to point, Up and Down from line to line, Home
 * and End to the ends, Plus, Minus and the wheel look closer and from further away, 0 shows all, Enter opens the record.
 */
public final class ChartView extends JPanel {
    private static final double CLOSER = 0.7;
    private static final double NEAR = 14;

    private final transient Consumer<String> readout;
    private final transient Consumer<Dot> open;
    private transient @Nullable DrawnChart drawn;
    private transient @Nullable ChartPointer pointer;
    private transient Consumer<DrawnChart> seen = chart -> {};
    private int dragged;

    /**
     * @param readout told the words of the point in hand
     * @param open told the point whose record is opened
     */
    public ChartView(Consumer<String> readout, Consumer<Dot> open) {
        this.readout = readout;
        this.open = open;
        setOpaque(false);
        setFocusable(true);
        bindKeys();
        Mouse mouse = new Mouse();
        addMouseListener(mouse);
        addMouseMotionListener(mouse);
        addMouseWheelListener(mouse);
        addFocusListener(new FocusAdapter() {
            @Override
            public void focusGained(FocusEvent e) {
                repaint();
            }

            @Override
            public void focusLost(FocusEvent e) {
                repaint();
            }
        });
    }

    public void show(Chart chart) {
        DrawnChart next = new DrawnChart(chart, ChartLook.now());
        drawn = next;
        pointer = new ChartPointer(next);
        getAccessibleContext().setAccessibleName(chart.finding());
        getAccessibleContext().setAccessibleDescription(chart.describe());
        readout.accept("");
        repaint();
    }

    public void clear() {
        drawn = null;
        pointer = null;
        readout.accept("");
        repaint();
    }

    public void showAll() {
        with(DrawnChart::showAll);
    }

    /** Is told what was looked at more closely or moved along, so that others beside it show the same stretch. */
    public void onSeen(Consumer<DrawnChart> told) {
        seen = told;
    }

    /** Shows the stretch that another chart shows. */
    public void see(DrawnChart other) {
        DrawnChart now = drawn;
        if (now != null && (now.from() != other.from() || now.to() != other.to())) {
            now.see(other.from(), other.to());
            repaint();
        }
    }

    /** What is drawn, or null while there is nothing. */
    public @Nullable DrawnChart drawn() {
        return drawn;
    }

    /** The chart as it leaves the program: on paper, 160 by 90 mm, twice as fine. */
    public @Nullable ChartCopy copy() {
        DrawnChart now = drawn;
        return now == null
                ? null
                : new ChartCopy(
                        new DrawnChart(now.chart(), ChartLook.onPaper()).picture(960, 540, 2),
                        now.chart().table().tabbed());
    }

    @Override
    public Dimension getPreferredSize() {
        return UIScale.scale(new Dimension(600, 200));
    }

    @Override
    public Dimension getMinimumSize() {
        return UIScale.scale(new Dimension(0, 170));
    }

    @Override
    public @Nullable String getToolTipText(MouseEvent e) {
        DrawnChart now = drawn;
        return now == null
                ? null
                : now.nearest(e.getX(), e.getY(), UIScale.scale((float) NEAR))
                        .map(place -> now.dot(place).words())
                        .orElse(null);
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        super.paintComponent(graphics);
        DrawnChart now = drawn;
        Graphics2D g = (Graphics2D) graphics.create();
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        int inset = UIScale.scale(4);
        if (now != null) {
            now.restyle(ChartLook.now());
            now.draw(g, new Rectangle2D.Double(inset, inset, getWidth() - 2.0 * inset, getHeight() - 2.0 * inset));
            paintInHand(g, now);
        }
        if (isFocusOwner()) {
            g.setColor(Palette.MARK.colour());
            g.setStroke(new BasicStroke(UIScale.scale(2f)));
            float edge = UIScale.scale(1f);
            g.draw(new Rectangle2D.Float(edge, edge, getWidth() - 2 * edge, getHeight() - 2 * edge));
        }
        g.dispose();
    }

    private void paintInHand(Graphics2D g, DrawnChart now) {
        ChartPointer at = pointer;
        if (at == null || at.place().isEmpty()) {
            return;
        }
        DrawnChart.Place place = at.place().get();
        Point2D point = now.at(place);
        Rectangle2D values = now.values();
        if (point.getX() < values.getX() || point.getX() > values.getMaxX()) {
            return;
        }
        g.setColor(Palette.INK2.colour());
        g.setStroke(new BasicStroke(UIScale.scale(1f)));
        g.draw(new Line2D.Double(point.getX(), values.getY(), point.getX(), values.getMaxY()));
        double half = UIScale.scale(6f);
        g.setColor(now.ink(place.line()));
        g.setStroke(new BasicStroke(UIScale.scale(2f)));
        g.draw(new Ellipse2D.Double(point.getX() - half, point.getY() - half, 2 * half, 2 * half));
    }

    private void bindKeys() {
        bind(KeyEvent.VK_LEFT, "before", () -> point(p -> p.along(-1)));
        bind(KeyEvent.VK_RIGHT, "next", () -> point(p -> p.along(1)));
        bind(KeyEvent.VK_UP, "up", () -> point(p -> p.across(-1)));
        bind(KeyEvent.VK_DOWN, "down", () -> point(p -> p.across(1)));
        bind(KeyEvent.VK_HOME, "first", () -> point(p -> p.end(false)));
        bind(KeyEvent.VK_END, "last", () -> point(p -> p.end(true)));
        for (int key : new int[] {KeyEvent.VK_PLUS, KeyEvent.VK_ADD, KeyEvent.VK_EQUALS}) {
            bind(key, "closer", () -> with(chart -> chart.zoom(CLOSER, about(chart))));
        }
        for (int key : new int[] {KeyEvent.VK_MINUS, KeyEvent.VK_SUBTRACT}) {
            bind(key, "further", () -> with(chart -> chart.zoom(1 / CLOSER, about(chart))));
        }
        for (int key : new int[] {KeyEvent.VK_0, KeyEvent.VK_NUMPAD0}) {
            bind(key, "all", this::showAll);
        }
        bind(KeyEvent.VK_ENTER, "open", () -> {
            ChartPointer at = pointer;
            if (at != null) {
                at.recorded().ifPresent(open);
            }
        });
    }

    private double about(DrawnChart chart) {
        ChartPointer at = pointer;
        double middle = (chart.from() + chart.to()) / 2;
        return at == null
                ? middle
                : at.place().map(place -> chart.dot(place).across()).orElse(middle);
    }

    private void with(Consumer<DrawnChart> work) {
        DrawnChart now = drawn;
        if (now != null) {
            work.accept(now);
            repaint();
            seen.accept(now);
        }
    }

    private void point(Consumer<ChartPointer> work) {
        ChartPointer at = pointer;
        if (at != null) {
            work.accept(at);
            readout.accept(at.words());
            repaint();
            DrawnChart now = drawn;
            if (now != null) {
                seen.accept(now);
            }
        }
    }

    private void bind(int key, String name, Runnable work) {
        FormKeys.bind(this, Keys.plain(key), name, work);
    }

    /** Choosing a point, moving along and looking closer with the mouse. */
    private final class Mouse extends MouseAdapter {
        @Override
        public void mousePressed(MouseEvent e) {
            requestFocusInWindow();
            dragged = e.getX();
            DrawnChart now = drawn;
            if (now != null) {
                now.nearest(e.getX(), e.getY(), UIScale.scale((float) NEAR))
                        .ifPresent(place -> point(p -> p.to(place)));
            }
        }

        @Override
        public void mouseClicked(MouseEvent e) {
            if (e.getClickCount() == 2) {
                showAll();
            }
        }

        @Override
        public void mouseDragged(MouseEvent e) {
            with(chart ->
                    chart.pan((dragged - e.getX()) / Math.max(1, chart.values().getWidth())));
            dragged = e.getX();
        }

        @Override
        public void mouseWheelMoved(MouseWheelEvent e) {
            with(chart -> chart.zoom(Math.pow(CLOSER, -e.getPreciseWheelRotation()), chart.across(e.getX())));
        }
    }
}
