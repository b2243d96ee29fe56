package witnessmark.logbook.faces;

import java.util.List;
import witnessmark.domain.Entry;
import witnessmark.domain.FaceLine;
import witnessmark.domain.FaceLook;
import witnessmark.domain.FaceMark;
import witnessmark.domain.FacePoint;
import witnessmark.fit.result.face.Flat;
import witnessmark.fit.result.face.LowPoint;
import witnessmark.fit.result.face.ZoneFinding;

/**
 * One look at a face with what it gave.
 *
 * @param look when, how, by whom
 * @param points readings of its grid, as written
 * @param lines straightedge readings
 * @param marks low areas and other marks
 * @param low every measured place, low areas too, with the name of where it lies
 * @param flat how flat it is by the grid
 * @param findings its low zones held against the looks before, the worst first
 */
public record LookLine(
        Entry<FaceLook> look,
        List<Entry<FacePoint>> points,
        List<Entry<FaceLine>> lines,
        List<Entry<FaceMark>> marks,
        List<LowPoint> low,
        Flat flat,
        List<ZoneFinding> findings) {
    public LookLine {
        points = List.copyOf(points);
        lines = List.copyOf(lines);
        marks = List.copyOf(marks);
        low = List.copyOf(low);
        findings = List.copyOf(findings);
    }
}
