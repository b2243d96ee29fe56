package witnessmark.desktop.faces;

import java.util.List;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.FaceKind;
import witnessmark.domain.FaceMarkKind;
import witnessmark.fit.result.face.Face;

/**
 * What stands on a face map; places in millimetres from the front end and the inlet edge. Every text is ready to be read.
 *
 * @param face its outline and holes
 * @param kind which face, for how it lies
 * @param values readings, in the order they are gone through
 * @param areas low areas and marks
 * @param edges lines of a straightedge
 * @param shading filled in between the readings, or null
 * @param words the whole of it, for those who do not see it
 */
record MapModel(
        Face face,
        FaceKind kind,
        List<Value> values,
        List<Area> areas,
        List<Edge> edges,
        @Nullable Shading shading,
        String words) {
    MapModel {
        values = List.copyOf(values);
        areas = List.copyOf(areas);
        edges = List.copyOf(edges);
    }

    /** How a reading stands. */
    enum Level {
        HEALTHY,
        LOW,
        OVER,
        /** Typed, and not in the logbook yet. */
        TYPED
    }

    /**
     * A reading.
     *
     * @param label its figure
     * @param then the figure of the look it is held against, or empty
     * @param deepest whether it names a zone
     * @param readout the whole of it
     */
    record Value(double x, double y, String label, String then, Level level, boolean deepest, String readout) {}

    /**
     * A mark.
     *
     * @param along how long, 0 for a point
     * @param across how wide, 0 for a point
     * @param corners x and y of each; none for a point or an ellipse
     * @param label its word
     * @param other whether it belongs to the look it is held against
     */
    record Area(
            FaceMarkKind kind,
            double x,
            double y,
            double along,
            double across,
            List<double[]> corners,
            String label,
            boolean other) {
        Area {
            corners = List.copyOf(corners);
        }
    }

    /** A line of a straightedge; {@code goes} where a feeler goes under it. */
    record Edge(double fromX, double fromY, double toX, double toY, String label, boolean goes) {}
}
