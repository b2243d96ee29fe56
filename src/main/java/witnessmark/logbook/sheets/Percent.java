package witnessmark.logbook.sheets;

import org.jspecify.annotations.Nullable;
import witnessmark.domain.Cause;
import witnessmark.outcome.ProblemKind;

/**
 * A share of a whole.
 *
 * @param hundredths of a percent, 0 to the whole
 */
public record Percent(int hundredths) {
    /**
     * A share typed in percent, echoed under its field; null when it is empty or cannot be, and the latter is noted.
     *
     * @param least the least it can be, in hundredths of a percent
     */
    static @Nullable Integer read(ReadSheet in, SheetField field, int least) {
        Long share = new ReadValues(in).read(field, ReadingFigure::percent);
        if (share == null) {
            return null;
        }
        if (share < least || share > Cause.WHOLE) {
            Percent given = new Percent(Math.toIntExact(Math.min(share, Integer.MAX_VALUE)));
            in.wrong(field, ProblemKind.OUT_OF_RANGE, field, given, new Percent(least), new Percent(Cause.WHOLE));
            return null;
        }
        Percent understood = new Percent(share.intValue());
        in.note(field, SheetNote.echo("understood", understood));
        return understood.hundredths();
    }
}
