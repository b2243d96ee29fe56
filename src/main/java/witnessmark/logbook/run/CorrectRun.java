package witnessmark.logbook.run;

import java.util.Optional;
import witnessmark.domain.Id;
import witnessmark.domain.Run;
import witnessmark.logbook.Desk;

/** Opens written runs on the sheet, so that what was typed wrong can be put right. */
public final class CorrectRun {
    private final Desk desk;
    private final FieldUnits units;

    public CorrectRun(Desk desk, FieldUnits units) {
        this.desk = desk;
        this.units = units;
    }

    /** The run as it is written now, whatever its standing; empty when there is none with this id. */
    public Optional<WrittenRun> open(Id<Run> id) {
        return desk.view().facts().of(Run.class).find(id).map(entry -> new WrittenRun(desk, units, entry));
    }
}
