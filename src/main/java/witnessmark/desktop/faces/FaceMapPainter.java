package witnessmark.desktop.faces;

import com.formdev.flatlaf.util.UIScale;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Component;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Area;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RoundRectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import javax.swing.UIManager;
import org.jspecify.annotations.Nullable;
import witnessmark.desktop.form.Palette;
import witnessmark.desktop.form.SeamIcon;
import witnessmark.desktop.form.SeamState;
import witnessmark.domain.FaceHole;
import witnessmark.domain.HoleKind;

/**
 * Paints a face map: blue where a plate would touch, bare where the face is low, every reading with its figure, marks by
 * their shape and word.
 */
final class FaceMapPainter {
    private static final double MILLIMETRE = 1_000_000;
    private static final int RINGS = 4;
    /** Half of a mark, in pixels of the design. */
    private static final int MARK = 9;

    private static final double[] BLUE = {0.72, 0.52, 0.34, 0.16, 0};

    private final Component on;
    private final MapModel model;
    private final MapPlane plane;
    private final Function<String, String> words;

    /**
     * @param on what it is painted on
     * @param words the words of edges and bores, by key
     */
    FaceMapPainter(Component on, MapModel model, MapPlane plane, Function<String, String> words) {
        this.on = on;
        this.model = model;
        this.plane = plane;
        this.words = words;
    }

    /** @param inHand the reading in hand, or −1 */
    void paint(Graphics2D g, int inHand) {
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        Object hints = UIManager.get("awt.font.desktophints");
        if (hints instanceof Map<?, ?> map) {
            g.addRenderingHints(map);
        }
        Font font = UIManager.getFont("Label.font");
        g.setFont(font.deriveFont(font.getSize2D() * 12 / 13));
        Shape edges = edges();
        ground(g, edges);
        holes(g);
        g.setColor(Palette.INK2.colour());
        g.setStroke(new BasicStroke(px(1.4f)));
        g.draw(edges);
        sides(g);
        List<Rectangle2D> boxes = boxes(g.getFontMetrics());
        List<Rectangle2D> taken = new ArrayList<>(boxes);
        model.edges().forEach(edge -> edge(g, edge, taken));
        model.areas().forEach(area -> area(g, area, taken));
        model.areas().forEach(area -> named(g, area, taken));
        for (int i = 0; i < model.values().size(); i++) {
            value(g, model.values().get(i), boxes.get(i), i == inHand);
        }
    }

    /** The reading at a point of the drawing; −1 for none. */
    int at(FontMetrics letters, double x, double y) {
        List<Rectangle2D> boxes = boxes(letters);
        for (int i = boxes.size() - 1; i >= 0; i--) {
            if (boxes.get(i).contains(x, y)) {
                return i;
            }
        }
        return -1;
    }

    private RoundRectangle2D edges() {
        Rectangle2D box = plane.box();
        double arc = px(14);
        return new RoundRectangle2D.Double(box.getX(), box.getY(), box.getWidth(), box.getHeight(), arc, arc);
    }

    private void ground(Graphics2D g, Shape edges) {
        Shading shading = model.shading();
        g.setColor(Palette.TRACK.colour());
        g.fill(edges);
        if (shading == null) {
            return;
        }
        Shape before = g.getClip();
        g.clip(edges);
        Object smooth = g.getRenderingHint(RenderingHints.KEY_ANTIALIASING);
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_OFF);
        Color[] colours = colours();
        double wide = plane.length() / shading.columns();
        double high = plane.width() / shading.rows();
        for (int row = 0; row < shading.rows(); row++) {
            int from = 0;
            for (int column = 1; column <= shading.columns(); column++) {
                if (column == shading.columns() || shading.level(column, row) != shading.level(from, row)) {
                    g.setColor(colours[shading.level(from, row)]);
                    stretch(g, from * wide, column * wide, row * high, (row + 1) * high);
                    from = column;
                }
            }
        }
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, smooth);
        g.setClip(before);
    }

    private void stretch(Graphics2D g, double fromX, double toX, double fromY, double toY) {
        int left = (int) Math.floor(Math.min(plane.x(fromX), plane.x(toX)));
        int right = (int) Math.ceil(Math.max(plane.x(fromX), plane.x(toX)));
        int top = (int) Math.floor(Math.min(plane.y(fromY), plane.y(toY)));
        int bottom = (int) Math.ceil(Math.max(plane.y(fromY), plane.y(toY)));
        g.fillRect(left, top, right - left, bottom - top);
    }

    /** From blue to the bare sheet. */
    static Color[] colours() {
        Color[] colours = new Color[Shading.LEVELS];
        for (int i = 0; i < colours.length; i++) {
            colours[i] = Palette.MARK.mixedWith(Palette.SHEET, BLUE[i]);
        }
        return colours;
    }

    private void holes(Graphics2D g) {
        for (FaceHole hole : model.face().holes()) {
            double radius = hole.diameter().nanometres() / MILLIMETRE / 2 * plane.scale();
            double x = plane.x(hole.x().nanometres() / MILLIMETRE);
            double y = plane.y(hole.y().nanometres() / MILLIMETRE);
            Ellipse2D round = new Ellipse2D.Double(x - radius, y - radius, 2 * radius, 2 * radius);
            g.setColor(Palette.SHEET.colour());
            g.fill(round);
            boolean bore = hole.kind() == HoleKind.BORE;
            g.setColor(bore ? Palette.INK2.colour() : Palette.FIELD_BORDER.colour());
            g.setStroke(new BasicStroke(px(bore ? 1.4f : 0.8f)));
            g.draw(round);
            if (bore && hole.number() != null) {
                String name = words.apply("bore") + " " + hole.number();
                g.setColor(Palette.INK2.colour());
                FontMetrics letters = g.getFontMetrics();
                g.drawString(
                        name, (float) (x - letters.stringWidth(name) / 2.0), (float) (y + letters.getAscent() / 2.5));
            }
        }
    }

    /** The words of the edges stand within the face, in the corners where the least is drawn. */
    private void sides(Graphics2D g) {
        FontMetrics letters = g.getFontMetrics();
        Rectangle2D box = plane.box();
        double high = letters.getHeight();
        double top = box.getY() - px(5);
        double bottom = box.getMaxY() + letters.getAscent() + px(3);
        g.setColor(Palette.INK2.colour());
        String front = model.face().outline().frontEnd();
        String exhaust = words.apply("exhaust");
        String inlet = words.apply("inlet");
        String above = plane.exhaustBelow() ? inlet : exhaust;
        String below = plane.exhaustBelow() ? exhaust : inlet;
        g.drawString(above, (float) (box.getCenterX() - letters.stringWidth(above) / 2.0), (float) top);
        g.drawString(below, (float) (box.getCenterX() - letters.stringWidth(below) / 2.0), (float) bottom);
        double at = plane.frontLeft() ? box.getX() : box.getMaxX() - letters.stringWidth(front);
        g.drawString(front, (float) at, (float) top);
        if (high > 0) {
            g.setStroke(new BasicStroke(px(3)));
            double x = plane.frontLeft() ? box.getX() : box.getMaxX();
            g.draw(new Line2D.Double(x, box.getY() + px(10), x, box.getMaxY() - px(10)));
        }
    }

    /** Where the readings stand: each at its place, or beside a mark that has the same. */
    private List<Rectangle2D> boxes(FontMetrics letters) {
        List<Rectangle2D> boxes = new ArrayList<>();
        for (MapModel.Value value : model.values()) {
            Rectangle2D box = box(letters, value);
            for (MapModel.Area area : model.areas()) {
                double half = px(MARK) + px(2);
                double x = plane.x(area.x());
                double y = plane.y(area.y());
                if (box.intersects(x - half, y - half, 2 * half, 2 * half)) {
                    boolean below = y + half + box.getHeight() < plane.box().getMaxY() && box.getCenterY() >= y;
                    double top = below ? y + half : y - half - box.getHeight();
                    box.setRect(box.getX(), top, box.getWidth(), box.getHeight());
                }
            }
            boxes.add(box);
        }
        return boxes;
    }

    private Rectangle2D box(FontMetrics letters, MapModel.Value value) {
        double wide = Math.max(letters.stringWidth(value.label()), letters.stringWidth(value.then())) + px(10);
        double high = letters.getHeight() * (value.then().isEmpty() ? 1 : 2) + px(2);
        double x = plane.x(value.x()) - wide / 2;
        double y = plane.y(value.y()) - high / 2;
        Rectangle2D face = plane.box();
        x = Math.max(face.getX() + px(2), Math.min(x, face.getMaxX() - wide - px(2)));
        y = Math.max(face.getY() + px(2), Math.min(y, face.getMaxY() - high - px(2)));
        return new Rectangle2D.Double(x, y, wide, high);
    }

    private void value(Graphics2D g, MapModel.Value value, Rectangle2D box, boolean inHand) {
        FontMetrics letters = g.getFontMetrics();
        double arc = px(4);
        Shape round = new RoundRectangle2D.Double(box.getX(), box.getY(), box.getWidth(), box.getHeight(), arc, arc);
        g.setColor(Palette.SHEET.colour());
        g.fill(round);
        Color ink = switch (value.level()) {
            case HEALTHY -> Palette.INK.colour();
            case LOW -> Palette.DUE.colour();
            case OVER -> Palette.OVER.colour();
            case TYPED -> Palette.MARK.colour();
        };
        g.setColor(value.level() == MapModel.Level.HEALTHY ? Palette.FIELD_BORDER.colour() : ink);
        g.setStroke(new BasicStroke(px(value.level() == MapModel.Level.HEALTHY ? 1f : 2f)));
        g.draw(round);
        if (inHand) {
            lit(g, box);
        }
        g.setColor(ink);
        Font plain = g.getFont();
        g.setFont(plain.deriveFont(Font.BOLD));
        centred(g, value.label(), box, box.getY() + letters.getAscent() + px(1));
        g.setFont(plain);
        if (!value.then().isEmpty()) {
            g.setColor(Palette.INK2.colour());
            centred(g, value.then(), box, box.getY() + letters.getAscent() + letters.getHeight() + px(1));
        }
        if (value.deepest() && value.level() == MapModel.Level.OVER) {
            int side = UIScale.scale(18);
            new SeamIcon(SeamState.OVER, 18)
                    .paintIcon(on, g, (int) (box.getCenterX() - side / 2.0), (int) (box.getY() - side - px(2)));
        }
    }

    private void lit(Graphics2D g, Rectangle2D box) {
        g.setColor(Palette.MARK.colour());
        g.setStroke(new BasicStroke(px(2.5f)));
        double off = px(4);
        g.draw(new RoundRectangle2D.Double(
                box.getX() - off, box.getY() - off, box.getWidth() + 2 * off, box.getHeight() + 2 * off, px(8), px(8)));
    }

    private static void centred(Graphics2D g, String text, Rectangle2D box, double y) {
        g.drawString(text, (float) (box.getCenterX() - g.getFontMetrics().stringWidth(text) / 2.0), (float) y);
    }

    private void edge(Graphics2D g, MapModel.Edge edge, List<Rectangle2D> taken) {
        double fromX = plane.x(edge.fromX());
        double fromY = plane.y(edge.fromY());
        double toX = plane.x(edge.toX());
        double toY = plane.y(edge.toY());
        g.setColor(edge.goes() ? Palette.DUE.colour() : Palette.INK2.colour());
        g.setStroke(
                edge.goes()
                        ? new BasicStroke(px(2))
                        : new BasicStroke(
                                px(1.2f),
                                BasicStroke.CAP_BUTT,
                                BasicStroke.JOIN_MITER,
                                10f,
                                new float[] {px(6), px(4)},
                                0f));
        g.draw(new Line2D.Double(fromX, fromY, toX, toY));
        for (double share : new double[] {0.5, 0.3, 0.7, 0.15, 0.85}) {
            if (label(
                    g,
                    edge.label(),
                    fromX + (toX - fromX) * share,
                    fromY + (toY - fromY) * share,
                    taken,
                    share == 0.85)) {
                return;
            }
        }
    }

    private void area(Graphics2D g, MapModel.Area area, List<Rectangle2D> taken) {
        Color ink = area.other() ? Palette.INK2.colour() : Palette.INK.colour();
        g.setColor(ink);
        double x = plane.x(area.x());
        double y = plane.y(area.y());
        Shape extent = extent(area);
        if (extent != null) {
            hatch(g, extent, ink);
        }
        double half = px(MARK);
        g.setColor(Palette.SHEET.colour());
        g.fill(new Ellipse2D.Double(x - half * 1.3, y - half * 1.3, half * 2.6, half * 2.6));
        g.setColor(ink);
        g.setStroke(new BasicStroke(px(2)));
        g.draw(AffineTransform.getTranslateInstance(x, y).createTransformedShape(MarkShapes.of(area.kind(), half)));
        taken.add(new Rectangle2D.Double(x - half, y - half, 2 * half, 2 * half));
    }

    /** Its word stands on the nearest free side of it. */
    private void named(Graphics2D g, MapModel.Area area, List<Rectangle2D> taken) {
        g.setColor(area.other() ? Palette.INK2.colour() : Palette.INK.colour());
        double x = plane.x(area.x());
        double y = plane.y(area.y());
        double away = px(16) + g.getFontMetrics().stringWidth(area.label()) / 2.0;
        double line = g.getFontMetrics().getHeight() + px(4);
        double[][] around = {
            {away, 0}, {-away, 0}, {0, line}, {0, -line}, {away, line}, {away, -line}, {-away, line}, {-away, -line}
        };
        for (int ring = 1; ring <= RINGS; ring++) {
            for (double[] side : around) {
                boolean last = ring == RINGS && side == around[around.length - 1];
                if (label(g, area.label(), x + side[0], y + side[1] * ring, taken, last)) {
                    return;
                }
            }
        }
    }

    private @Nullable Shape extent(MapModel.Area area) {
        if (area.along() > 0) {
            double wide = area.along() * plane.scale();
            double high = area.across() * plane.scale();
            return new Ellipse2D.Double(plane.x(area.x()) - wide / 2, plane.y(area.y()) - high / 2, wide, high);
        }
        if (area.corners().isEmpty()) {
            return null;
        }
        Path2D path = new Path2D.Double();
        for (double[] corner : area.corners()) {
            if (path.getCurrentPoint() == null) {
                path.moveTo(plane.x(corner[0]), plane.y(corner[1]));
            } else {
                path.lineTo(plane.x(corner[0]), plane.y(corner[1]));
            }
        }
        path.closePath();
        return path;
    }

    private void hatch(Graphics2D g, Shape extent, Color ink) {
        Shape before = g.getClip();
        Area within = new Area(extent);
        g.clip(within);
        g.setStroke(new BasicStroke(px(1)));
        Rectangle2D box = extent.getBounds2D();
        for (double at = box.getX() - box.getHeight(); at < box.getMaxX(); at += px(6)) {
            g.draw(new Line2D.Double(at, box.getMaxY(), at + box.getHeight(), box.getY()));
        }
        g.setClip(before);
        g.setColor(ink);
        g.setStroke(new BasicStroke(px(1.4f)));
        g.draw(extent);
    }

    /** Writes words about a place where nothing stands yet; the last try is written whatever stands there. */
    private boolean label(Graphics2D g, String text, double x, double y, List<Rectangle2D> taken, boolean whatever) {
        FontMetrics letters = g.getFontMetrics();
        double wide = letters.stringWidth(text) + px(6);
        double high = letters.getHeight();
        Rectangle2D face = plane.box();
        double left = Math.max(face.getX() + px(1), Math.min(x - wide / 2, face.getMaxX() - wide - px(1)));
        double top = Math.max(face.getY() + px(1), Math.min(y - high / 2, face.getMaxY() - high - px(1)));
        Rectangle2D box = new Rectangle2D.Double(left, top, wide, high);
        if (!whatever && taken.stream().anyMatch(box::intersects)) {
            return false;
        }
        Color ink = g.getColor();
        g.setColor(Palette.SHEET.colour());
        g.fill(box);
        g.setColor(ink);
        centred(g, text, box, box.getY() + letters.getAscent());
        taken.add(box);
        return true;
    }

    private static float px(double pixels) {
        return (float) UIScale.scale((float) pixels);
    }
}
