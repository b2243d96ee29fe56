package witnessmark.logbook.sheets;

import java.util.List;
import org.jspecify.annotations.Nullable;
import witnessmark.outcome.Problem;

/**
 * What one field came to.
 *
 * @param note what stands under it when nothing is wrong
 * @param problem what is wrong or asks for a second look, or null
 * @param readBack what was understood line by line, for a field of several lines
 */
public record FieldResult(SheetNote note, @Nullable Problem problem, List<SheetNote> readBack) {
    static final FieldResult EMPTY = new FieldResult(SheetNote.NONE, null, List.of());

    public FieldResult {
        readBack = List.copyOf(readBack);
    }

    public boolean stops() {
        return problem != null && problem.stops();
    }
}
