package witnessmark.logbook.proof;

import java.util.List;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Entry;
import witnessmark.domain.FaceLook;
import witnessmark.domain.FaceMark;
import witnessmark.domain.Incident;
import witnessmark.domain.Part;
import witnessmark.fit.result.face.Face;
import witnessmark.fit.result.face.LowZone;

/**
 * Marks that incidents left on heads, gaskets and blocks, in the one frame of their faces.
 *
 * @param face on which they all lie; null where there are none, or they lie on faces of different engines
 * @param cases one for each incident, in the order asked
 */
public record MarksOfCases(@Nullable Face face, List<OfCase> cases) {
    public MarksOfCases {
        cases = List.copyOf(cases);
    }

    /** Whether more than one incident left a mark. */
    public boolean severally() {
        return cases.stream().filter(each -> !each.marks().isEmpty()).count() > 1;
    }

    /** What one left. */
    public record OfCase(Entry<Incident> incident, List<Marked> marks) {
        public OfCase {
            marks = List.copyOf(marks);
        }
    }

    /**
     * A mark, or a low zone where no mark says it.
     *
     * @param part on which
     * @param look seen at which look
     * @param mark or null for a low zone
     * @param low or null for a mark
     */
    public record Marked(
            Entry<Part> part,
            Entry<FaceLook> look,
            @Nullable FaceMark mark,
            @Nullable LowZone low) {}
}
