package witnessmark.chart;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RoundRectangle2D;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Draws a {@link FaceMap}: blue where a plate would touch, bare and hatched where the face is low, every reading with its
 * figure, marks by their shape and word.
 */
public final class DrawnFaceMap {
    /** Half of a mark, in pixels of the design. */
    private static final int MARK = 9;

    /** From one line of a hatching to the next. */
    private static final int HATCH = 6;

    private static final int LOW_HATCH = 9;

    private final FaceMap map;
    private final FacePlane plane;
    private final FaceMapStyle style;

    public DrawnFaceMap(FaceMap map, FacePlane plane, FaceMapStyle style) {
        this.map = map;
        this.plane = plane;
        this.style = style;
    }

    /** @param inHand the reading in hand, or −1 */
    public void draw(Graphics2D g, int inHand) {
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        g.setFont(style.base().text());
        Shape edges = edges();
        ground(g, edges);
        before(g, edges);
        holes(g);
        g.setColor(style.base().ink2());
        g.setStroke(stroke(1.4));
        g.draw(edges);
        sides(g);
        List<Rectangle2D> boxes = boxes(g.getFontMetrics());
        FaceLabels labels = new FaceLabels(plane.box(), style.base().sheet(), style.scale(), boxes);
        map.lines().forEach(line -> line(g, line, labels));
        map.areas().forEach(area -> area(g, area, labels));
        map.zones().forEach(zone -> zone(g, zone, boxes, labels));
        map.areas().forEach(area -> {
            g.setColor(ink(area));
            labels.beside(g, area.label(), plane.x(area.x()), plane.y(area.y()));
        });
        for (int i = 0; i < map.values().size(); i++) {
            value(g, map.values().get(i), boxes.get(i), i == inHand);
        }
    }

    /** The reading at a point of the drawing; −1 for none. */
    public int at(FontMetrics letters, double x, double y) {
        List<Rectangle2D> boxes = boxes(letters);
        for (int i = boxes.size() - 1; i >= 0; i--) {
            if (boxes.get(i).contains(x, y)) {
                return i;
            }
        }
        return -1;
    }

    /** Draws a legend of the levels in a room, the low one first. */
    public static void legend(Graphics2D g, FaceMapStyle style, Rectangle2D room) {
        int levels = style.levels().size();
        double each = room.getWidth() / levels;
        for (int i = 0; i < levels; i++) {
            g.setColor(style.levels().get(levels - 1 - i));
            g.fill(new Rectangle2D.Double(room.getX() + i * each, room.getY(), each, room.getHeight()));
        }
        Path2D lines = new Path2D.Double();
        FaceShading.strokes(
                lines, room.getX(), room.getX() + each, room.getY(), room.getMaxY(), LOW_HATCH * style.scale());
        lowHatch(g, style, lines);
        g.setColor(style.base().ink2());
        g.setStroke(new BasicStroke((float) style.scale()));
        g.draw(room);
    }

    private RoundRectangle2D edges() {
        Rectangle2D box = plane.box();
        double arc = px(14);
        return new RoundRectangle2D.Double(box.getX(), box.getY(), box.getWidth(), box.getHeight(), arc, arc);
    }

    private void ground(Graphics2D g, Shape edges) {
        FaceShading shading = map.shading();
        g.setColor(shading == null ? style.bare() : style.levels().get(0));
        g.fill(edges);
        if (shading == null) {
            return;
        }
        Shape clip = g.getClip();
        g.clip(edges);
        Object smooth = g.getRenderingHint(RenderingHints.KEY_ANTIALIASING);
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_OFF);
        for (int level = 1; level < FaceShading.LEVELS; level++) {
            g.setColor(style.levels().get(level));
            g.fill(shading.from(level, plane));
        }
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, smooth);
        lowHatch(g, style, shading.hatch(plane, px(LOW_HATCH)));
        g.setClip(clip);
    }

    /** Where the face is low is no bare sheet: lines lie across it, the other way than across what was marked. */
    private static void lowHatch(Graphics2D g, FaceMapStyle style, Shape lines) {
        g.setColor(style.low());
        g.setStroke(new BasicStroke((float) (0.8 * style.scale())));
        g.draw(lines);
    }

    /** What was low at the look it is held against. */
    private void before(Graphics2D g, Shape edges) {
        FaceShading before = map.before();
        if (before != null) {
            Shape clip = g.getClip();
            g.clip(edges);
            g.setColor(style.base().ink());
            g.setStroke(new BasicStroke((float) px(2), BasicStroke.CAP_SQUARE, BasicStroke.JOIN_MITER));
            g.draw(before.aroundLow(plane));
            g.setClip(clip);
        }
    }

    private void holes(Graphics2D g) {
        FontMetrics letters = g.getFontMetrics();
        for (FaceMap.Hole hole : map.holes()) {
            double radius = hole.diameter() / 2 * plane.scale();
            double x = plane.x(hole.x());
            double y = plane.y(hole.y());
            Ellipse2D round = new Ellipse2D.Double(x - radius, y - radius, 2 * radius, 2 * radius);
            g.setColor(style.base().sheet());
            g.fill(round);
            g.setColor(hole.bore() ? style.base().ink2() : style.edge());
            g.setStroke(stroke(hole.bore() ? 1.4 : 0.8));
            g.draw(round);
            if (!hole.name().isEmpty()) {
                g.setColor(style.base().ink2());
                g.drawString(hole.name(), (float) (x - letters.stringWidth(hole.name()) / 2.0), (float)
                        (y + letters.getAscent() / 2.5));
            }
        }
    }

    /** The words of the edges stand outside them, a firm line along the front end. */
    private void sides(Graphics2D g) {
        FontMetrics letters = g.getFontMetrics();
        Rectangle2D box = plane.box();
        float top = (float) (box.getY() - px(5));
        float bottom = (float) (box.getMaxY() + letters.getAscent() + px(3));
        FaceMap.Edges edges = map.edges();
        String above = plane.exhaustBelow() ? edges.inlet() : edges.exhaust();
        String below = plane.exhaustBelow() ? edges.exhaust() : edges.inlet();
        g.setColor(style.base().ink2());
        g.drawString(above, (float) (box.getCenterX() - letters.stringWidth(above) / 2.0), top);
        g.drawString(below, (float) (box.getCenterX() - letters.stringWidth(below) / 2.0), bottom);
        double at = plane.frontLeft() ? box.getX() : box.getMaxX() - letters.stringWidth(edges.front());
        g.drawString(edges.front(), (float) at, top);
        g.setStroke(stroke(3));
        double x = plane.frontLeft() ? box.getX() : box.getMaxX();
        g.draw(new Line2D.Double(x, box.getY() + px(10), x, box.getMaxY() - px(10)));
    }

    /** Where the readings stand: each at its place, or over or under marks that have the same. */
    private List<Rectangle2D> boxes(FontMetrics letters) {
        double half = px(MARK) + px(2);
        List<Rectangle2D> marks = map.areas().stream()
                .<Rectangle2D>map(area ->
                        new Rectangle2D.Double(plane.x(area.x()) - half, plane.y(area.y()) - half, 2 * half, 2 * half))
                .toList();
        return map.values().stream()
                .map(value -> free(box(letters, value), marks))
                .toList();
    }

    private Rectangle2D free(Rectangle2D box, List<Rectangle2D> marks) {
        Rectangle2D face = plane.box();
        return Stream.concat(
                        Stream.of(box.getY()),
                        marks.stream().flatMap(mark -> Stream.of(mark.getMaxY(), mark.getY() - box.getHeight())))
                .sorted(Comparator.comparingDouble(top -> Math.abs(top - box.getY())))
                .<Rectangle2D>map(top -> new Rectangle2D.Double(box.getX(), top, box.getWidth(), box.getHeight()))
                .filter(moved -> moved.getY() >= face.getY()
                        && moved.getMaxY() <= face.getMaxY()
                        && marks.stream().noneMatch(moved::intersects))
                .findFirst()
                .orElse(box);
    }

    private Rectangle2D box(FontMetrics letters, FaceMap.Value value) {
        double wide = Math.max(letters.stringWidth(value.label()), letters.stringWidth(value.then())) + px(10);
        double high = letters.getHeight() * (value.then().isEmpty() ? 1 : 2) + px(2);
        double x = plane.x(value.x()) - wide / 2;
        double y = plane.y(value.y()) - high / 2;
        Rectangle2D face = plane.box();
        x = Math.max(face.getX() + px(2), Math.min(x, face.getMaxX() - wide - px(2)));
        y = Math.max(face.getY() + px(2), Math.min(y, face.getMaxY() - high - px(2)));
        return new Rectangle2D.Double(x, y, wide, high);
    }

    private void value(Graphics2D g, FaceMap.Value value, Rectangle2D box, boolean inHand) {
        FontMetrics letters = g.getFontMetrics();
        double arc = px(4);
        Shape round = new RoundRectangle2D.Double(box.getX(), box.getY(), box.getWidth(), box.getHeight(), arc, arc);
        boolean quiet = value.level() == FaceMap.Level.HEALTHY || value.level() == FaceMap.Level.BEFORE;
        g.setColor(style.base().sheet());
        g.fill(round);
        g.setColor(quiet ? style.edge() : ink(value.level()));
        g.setStroke(stroke(quiet ? 1 : value.level() == FaceMap.Level.OVER ? 2.5 : 1.6));
        g.draw(round);
        if (inHand) {
            lit(g, box);
        }
        g.setColor(ink(value.level()));
        double line = box.getY() + letters.getAscent();
        if (value.level() == FaceMap.Level.BEFORE) {
            FaceLabels.centred(g, value.label(), box, line + px(1));
        } else {
            FaceLabels.bold(g, value.label(), box, line + px(1));
        }
        if (!value.then().isEmpty()) {
            g.setColor(style.base().ink2());
            FaceLabels.centred(g, value.then(), box, line + letters.getHeight() + px(1));
        }
    }

    private Color ink(FaceMap.Level level) {
        return switch (level) {
            case HEALTHY -> style.base().ink();
            case LOW -> style.low();
            case OVER -> style.over();
            case TYPED -> style.typed();
            case BEFORE -> style.base().ink2();
        };
    }

    private void lit(Graphics2D g, Rectangle2D box) {
        g.setColor(style.typed());
        g.setStroke(stroke(2.5));
        double off = px(4);
        g.draw(new RoundRectangle2D.Double(
                box.getX() - off, box.getY() - off, box.getWidth() + 2 * off, box.getHeight() + 2 * off, px(8), px(8)));
    }

    private void zone(Graphics2D g, FaceMap.Zone zone, List<Rectangle2D> boxes, FaceLabels labels) {
        double x = plane.x(zone.x());
        double y = plane.y(zone.y());
        g.setColor(ink(zone.level()));
        labels.at(
                g,
                zone.word(),
                boxes.stream()
                        .filter(box -> box.contains(x, y))
                        .findFirst()
                        .orElseGet(
                                () -> new Rectangle2D.Double(x - px(MARK), y - px(MARK), 2 * px(MARK), 2 * px(MARK))));
    }

    private void line(Graphics2D g, FaceMap.Line line, FaceLabels labels) {
        double fromX = plane.x(line.fromX());
        double fromY = plane.y(line.fromY());
        double toX = plane.x(line.toX());
        double toY = plane.y(line.toY());
        g.setColor(line.goes() ? style.low() : style.base().ink2());
        g.setStroke(line.goes() ? stroke(2) : dashed());
        g.draw(new Line2D.Double(fromX, fromY, toX, toY));
        labels.along(g, line.label(), fromX, fromY, toX, toY);
    }

    private BasicStroke dashed() {
        return new BasicStroke(
                (float) px(1.2),
                BasicStroke.CAP_BUTT,
                BasicStroke.JOIN_MITER,
                10f,
                new float[] {(float) px(6), (float) px(4)},
                0f);
    }

    private Color ink(FaceMap.Area area) {
        return area.other() ? style.base().ink2() : style.base().ink();
    }

    private void area(Graphics2D g, FaceMap.Area area, FaceLabels labels) {
        double x = plane.x(area.x());
        double y = plane.y(area.y());
        Shape extent = extent(area);
        g.setColor(ink(area));
        if (extent != null) {
            hatch(g, extent);
        }
        double half = px(MARK);
        g.setColor(style.base().sheet());
        g.fill(new Ellipse2D.Double(x - half * 1.3, y - half * 1.3, half * 2.6, half * 2.6));
        g.setColor(ink(area));
        g.setStroke(stroke(2));
        AffineTransform to = AffineTransform.getTranslateInstance(x, y);
        to.scale(half, half);
        g.draw(to.createTransformedShape(area.sign()));
        labels.take(new Rectangle2D.Double(x - half, y - half, 2 * half, 2 * half));
    }

    private @Nullable Shape extent(FaceMap.Area area) {
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

    private void hatch(Graphics2D g, Shape extent) {
        Shape clip = g.getClip();
        g.clip(extent);
        g.setStroke(stroke(1));
        Rectangle2D box = extent.getBounds2D();
        for (double at = box.getX() - box.getHeight(); at < box.getMaxX(); at += px(HATCH)) {
            g.draw(new Line2D.Double(at, box.getMaxY(), at + box.getHeight(), box.getY()));
        }
        g.setClip(clip);
        g.setStroke(stroke(1.4));
        g.draw(extent);
    }

    private BasicStroke stroke(double pixels) {
        return new BasicStroke((float) px(pixels));
    }

    private double px(double pixels) {
        return pixels * style.scale();
    }
}
