package witnessmark.desktop.bench;

import com.formdev.flatlaf.ui.FlatUIUtils;
import com.formdev.flatlaf.util.UIScale;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Dimension;
import java.awt.FontMetrics;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import javax.swing.JPanel;
import org.jspecify.annotations.Nullable;
import witnessmark.desktop.form.Palette;
import witnessmark.desktop.form.Styles;
import witnessmark.domain.EngineDesign;
import witnessmark.domain.MeasureKind;
import witnessmark.domain.MeasurePlace;
import witnessmark.domain.PlacedAt;
import witnessmark.domain.Spot;
import witnessmark.wording.Texts;

/**
 * A row of cylinders seen from above, its front at the left, the place that is measured lit. The sides are named as the
 * figure names them: by thrust, or by exhaust and inlet.
 */
final class Plan extends JPanel {
    private static final int WIDE = 176;
    private static final int HIGH = 104;
    private static final double TOP = 20;
    private static final double BOTTOM = 84;
    private static final double LEFT = 20;
    private static final double RIGHT = 174;
    private static final double MIDDLE = (TOP + BOTTOM) / 2;
    private static final double DOT = 4;

    private final transient Texts texts;
    private final transient FigureWords words;
    private @Nullable MeasurePlace lit;
    private int cylinders;
    private int mains;

    Plan(Texts texts, FigureWords words) {
        this.texts = texts;
        this.words = words;
        setOpaque(false);
        setFocusable(false);
        Styles.as(Styles.NOTE, this);
        setVisible(false);
    }

    /** Shows a place of an engine, where its cylinders stand in one row; hidden otherwise. */
    void show(EngineDesign design, @Nullable MeasurePlace place) {
        lit = place;
        cylinders = design.cylinders();
        mains = design.mains() == null ? cylinders + 1 : design.mains();
        setVisible(inRow(design));
        String where = place == null ? texts.get("bench.plan.nothing") : words.where(place);
        getAccessibleContext().setAccessibleName(texts.get("bench.plan", cylinders, where));
        repaint();
    }

    /** As far as the words of its layout say so. */
    private static boolean inRow(EngineDesign design) {
        String layout = design.layout().toLowerCase(java.util.Locale.ROOT);
        return design.cylinders() <= 8
                && List.of("in-line", "inline", "straight").stream().anyMatch(layout::contains);
    }

    @Override
    public Dimension getPreferredSize() {
        return new Dimension(UIScale.scale(WIDE), UIScale.scale(HIGH));
    }

    @Override
    public Dimension getMinimumSize() {
        return getPreferredSize();
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        super.paintComponent(graphics);
        Graphics2D g = (Graphics2D) graphics.create();
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        paintWords(g);
        double scale = UIScale.scale(1f);
        g.scale(scale, scale);
        paintBlock(g);
        MeasurePlace place = lit;
        if (place != null) {
            paintSpot(g, place);
        }
        g.dispose();
    }

    private void paintWords(Graphics2D g) {
        g.setFont(getFont());
        g.setColor(Palette.INK2.colour());
        FontMetrics metrics = g.getFontMetrics();
        boolean thrust = lit != null && (lit.spot() == Spot.THRUST || lit.spot() == Spot.ANTI_THRUST);
        boolean faced =
                lit != null && (lit.kind().placedAt() == PlacedAt.ENGINE && lit.spot() != null || side(lit) != 0);
        String above = thrust ? "bench.plan.anti_thrust" : faced ? "bench.plan.inlet" : "";
        String below = thrust ? "bench.plan.thrust" : faced ? "bench.plan.exhaust" : "";
        centred(g, metrics, above, metrics.getAscent());
        centred(g, metrics, below, UIScale.scale(HIGH) - metrics.getDescent());
        String front = texts.get("bench.plan.front");
        Graphics2D turned = (Graphics2D) g.create();
        turned.rotate(-Math.PI / 2);
        int middle = UIScale.scale((int) MIDDLE);
        FlatUIUtils.drawString(this, turned, front, -middle - metrics.stringWidth(front) / 2, metrics.getAscent());
        turned.dispose();
    }

    private void centred(Graphics2D g, FontMetrics metrics, String key, int y) {
        if (!key.isEmpty()) {
            String said = texts.get(key);
            int middle = UIScale.scale((int) (LEFT + RIGHT) / 2);
            FlatUIUtils.drawString(this, g, said, middle - metrics.stringWidth(said) / 2, y);
        }
    }

    private void paintBlock(Graphics2D g) {
        g.setColor(Palette.BENCH.colour());
        Shape block = new Rectangle2D.Double(LEFT, TOP, RIGHT - LEFT, BOTTOM - TOP);
        g.fill(block);
        g.setColor(Palette.FIELD_BORDER.colour());
        g.setStroke(new BasicStroke(1f));
        g.draw(block);
        boolean bearing = lit != null && lit.kind().placedAt() == PlacedAt.MAIN;
        for (int number = 1; number <= cylinders; number++) {
            boolean here = lit != null
                    && lit.kind().placedAt() == PlacedAt.CYLINDER
                    && Integer.valueOf(number).equals(lit.number());
            Shape bore = bore(number);
            g.setColor(here ? Palette.MARK.colour() : Palette.SHEET.colour());
            g.fill(bore);
            g.setColor(here ? Palette.MARK.colour() : Palette.FIELD_BORDER.colour());
            g.draw(bore);
            if (!bearing) {
                number(g, number, x(number), here ? Palette.MARK_INK.colour() : Palette.INK2.colour());
            }
        }
        if (bearing) {
            paintMains(g);
        }
    }

    private void paintMains(Graphics2D g) {
        for (int number = 1; number <= mains; number++) {
            double step = (RIGHT - LEFT - 14) / Math.max(1, mains - 1);
            double at = LEFT + 7 + (number - 1) * step;
            boolean here = lit != null && Integer.valueOf(number).equals(lit.number());
            Rectangle2D bar = new Rectangle2D.Double(at - 6, MIDDLE - 9, 12, 18);
            g.setColor(here ? Palette.MARK.colour() : Palette.SHEET.colour());
            g.fill(bar);
            g.setColor(here ? Palette.MARK.colour() : Palette.FIELD_BORDER.colour());
            g.draw(bar);
            number(g, number, at, here ? Palette.MARK_INK.colour() : Palette.INK2.colour());
        }
    }

    private void number(Graphics2D g, int number, double x, Color ink) {
        g.setColor(ink);
        g.setFont(getFont().deriveFont(getFont().getSize2D() / UIScale.scale(1f)));
        FontMetrics metrics = g.getFontMetrics();
        String said = texts.get("bench.row", number);
        g.drawString(said, (float) (x - metrics.stringWidth(said) / 2.0), (float)
                (MIDDLE + (metrics.getAscent() - metrics.getDescent()) / 2.0));
    }

    private double pitch() {
        return (RIGHT - LEFT) / cylinders;
    }

    private double x(int number) {
        return LEFT + pitch() * (number - 0.5);
    }

    private double radius() {
        return Math.min(pitch() / 2 - 3, (BOTTOM - TOP) / 2 - 8);
    }

    private Shape bore(int number) {
        double r = radius();
        return new Ellipse2D.Double(x(number) - r, MIDDLE - r, 2 * r, 2 * r);
    }

    /** Below for the exhaust, above for the inlet, 0 where the figure is of neither. */
    private static int side(MeasurePlace place) {
        String kind = place.kind().name();
        return kind.endsWith("_EXHAUST") || place.spot() == Spot.EXHAUST
                ? 1
                : kind.endsWith("_INLET") || place.spot() == Spot.INLET ? -1 : 0;
    }

    private void paintSpot(Graphics2D g, MeasurePlace place) {
        g.setColor(Palette.MARK.colour());
        g.setStroke(new BasicStroke(3f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER));
        if (place.kind().placedAt() == PlacedAt.ENGINE && place.spot() != null) {
            paintFace(g, place.spot());
        } else if (place.number() != null && place.kind().placedAt() == PlacedAt.CYLINDER) {
            paintBore(g, place, x(place.number()));
        }
    }

    private void paintBore(Graphics2D g, MeasurePlace place, double x) {
        Spot spot = place.spot();
        double r = radius();
        String name = spot == null ? "" : spot.name();
        boolean bored = place.kind() == MeasureKind.BORE;
        if (spot == Spot.THRUST || spot == Spot.ANTI_THRUST) {
            dot(g, x, MIDDLE + (spot == Spot.THRUST ? r + 1 : -r - 1));
        } else if (bored && name.endsWith("ACROSS")) {
            g.draw(new Line2D.Double(x, TOP + 1, x, MIDDLE - r));
            g.draw(new Line2D.Double(x, MIDDLE + r, x, BOTTOM - 1));
        } else if (bored && name.endsWith("ALONG")) {
            g.draw(new Line2D.Double(x - r - 3, MIDDLE, x - r + 3, MIDDLE));
            g.draw(new Line2D.Double(x + r - 3, MIDDLE, x + r + 3, MIDDLE));
        } else if (spot == Spot.FRONT || spot == Spot.REAR) {
            dot(g, x + (spot == Spot.FRONT ? -r : r), MIDDLE);
        } else if (side(place) != 0) {
            double aside = spot == Spot.VALVE_A ? -r / 2 : spot == Spot.VALVE_B ? r / 2 : 0;
            dot(g, x + aside, MIDDLE + side(place) * (r + 1));
        }
    }

    private void paintFace(Graphics2D g, Spot spot) {
        double in = 5;
        switch (spot) {
            case FRONT_EXHAUST -> dot(g, LEFT + in, BOTTOM - in);
            case FRONT_INLET -> dot(g, LEFT + in, TOP + in);
            case REAR_EXHAUST -> dot(g, RIGHT - in, BOTTOM - in);
            case REAR_INLET -> dot(g, RIGHT - in, TOP + in);
            case EXHAUST_SIDE -> g.draw(new Line2D.Double(LEFT + in, BOTTOM - in, RIGHT - in, BOTTOM - in));
            case INLET_SIDE -> g.draw(new Line2D.Double(LEFT + in, TOP + in, RIGHT - in, TOP + in));
            case FRONT_END -> g.draw(new Line2D.Double(LEFT + in, TOP + in, LEFT + in, BOTTOM - in));
            case REAR_END -> g.draw(new Line2D.Double(RIGHT - in, TOP + in, RIGHT - in, BOTTOM - in));
            case DIAGONAL_FRONT_EXHAUST -> g.draw(new Line2D.Double(LEFT + in, BOTTOM - in, RIGHT - in, TOP + in));
            case DIAGONAL_FRONT_INLET -> g.draw(new Line2D.Double(LEFT + in, TOP + in, RIGHT - in, BOTTOM - in));
            case BETWEEN_BORES, MIDDLE -> g.draw(new Line2D.Double(LEFT + in, MIDDLE, RIGHT - in, MIDDLE));
            default -> {} // of the gasket: no place on the face
        }
    }

    private static void dot(Graphics2D g, double x, double y) {
        g.fill(new Ellipse2D.Double(x - DOT, y - DOT, 2 * DOT, 2 * DOT));
    }
}
