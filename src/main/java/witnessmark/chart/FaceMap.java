package witnessmark.chart;

import java.awt.Shape;
import java.util.List;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;

/**
 * What stands on the map of a face; places in millimetres from the front end and the inlet edge. Every text is ready to be
 * read.
 *
 * @param edges how large it is, and what its edges are called
 * @param holes through it
 * @param values readings, in the order they are gone through
 * @param areas low areas and marks
 * @param lines of a straightedge
 * @param zones the words of its low zones
 * @param shading filled in between the readings, or null
 * @param before the same for the look it is held against, of which only what was low is outlined; or null
 * @param words the whole of it, for those who do not see it
 */
public record FaceMap(
        Edges edges,
        List<Hole> holes,
        List<Value> values,
        List<Area> areas,
        List<Line> lines,
        List<Zone> zones,
        @Nullable FaceShading shading,
        @Nullable FaceShading before,
        String words) {
    public FaceMap {
        holes = List.copyOf(holes);
        values = List.copyOf(values);
        areas = List.copyOf(areas);
        lines = List.copyOf(lines);
        zones = List.copyOf(zones);
    }

    /** The same with every text that is drawn respelled, as where letters are missing. */
    public FaceMap spelled(UnaryOperator<String> letters) {
        return new FaceMap(
                new Edges(
                        edges.length(),
                        edges.width(),
                        letters.apply(edges.front()),
                        letters.apply(edges.inlet()),
                        letters.apply(edges.exhaust())),
                holes.stream()
                        .map(hole ->
                                new Hole(hole.x(), hole.y(), hole.diameter(), letters.apply(hole.name()), hole.bore()))
                        .toList(),
                values.stream()
                        .map(value -> new Value(
                                value.x(),
                                value.y(),
                                letters.apply(value.label()),
                                letters.apply(value.then()),
                                value.level(),
                                value.readout()))
                        .toList(),
                areas.stream()
                        .map(area -> new Area(
                                area.sign(),
                                area.x(),
                                area.y(),
                                area.along(),
                                area.across(),
                                area.corners(),
                                letters.apply(area.label()),
                                area.other()))
                        .toList(),
                lines.stream()
                        .map(line -> new Line(
                                line.fromX(),
                                line.fromY(),
                                line.toX(),
                                line.toY(),
                                letters.apply(line.label()),
                                line.goes()))
                        .toList(),
                zones.stream()
                        .map(zone -> new Zone(zone.x(), zone.y(), letters.apply(zone.word()), zone.level()))
                        .toList(),
                shading,
                before,
                words);
    }

    /**
     * The edges.
     *
     * @param length along the bores
     * @param width across them
     */
    public record Edges(double length, double width, String front, String inlet, String exhaust) {}

    /**
     * A hole.
     *
     * @param name written in it; empty for none
     * @param bore whether it is a bore
     */
    public record Hole(double x, double y, double diameter, String name, boolean bore) {}

    /** How a reading stands. */
    public enum Level {
        HEALTHY,
        LOW,
        OVER,
        /** Typed, and not in the logbook yet. */
        TYPED,
        /** Of the look it is held against. */
        BEFORE
    }

    /**
     * A reading.
     *
     * @param label its figure
     * @param then the figure of the look it is held against, or empty
     * @param readout the whole of it
     */
    public record Value(double x, double y, String label, String then, Level level, String readout) {}

    /**
     * A mark.
     *
     * @param sign its shape, about the origin and reaching one to each side
     * @param along how long, 0 for a point
     * @param across how wide, 0 for a point
     * @param corners x and y of each; none for a point or an ellipse
     * @param label its word
     * @param other whether it belongs to the look it is held against
     */
    public record Area(
            Shape sign,
            double x,
            double y,
            double along,
            double across,
            List<double[]> corners,
            String label,
            boolean other) {
        public Area {
            corners = List.copyOf(corners);
        }
    }

    /** A line of a straightedge; {@code goes} where a feeler goes under it. */
    public record Line(double fromX, double fromY, double toX, double toY, String label, boolean goes) {}

    /** The word of a low zone at its deepest place. */
    public record Zone(double x, double y, String word, Level level) {}
}
