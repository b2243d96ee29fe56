package witnessmark.logbook.sheets;

import org.jspecify.annotations.Nullable;
import witnessmark.domain.Fitment;
import witnessmark.domain.Id;
import witnessmark.domain.Part;
import witnessmark.outcome.ProblemKind;
import witnessmark.quantity.Moment;

/** When something that was written down ends. */
final class Ending {
    private Ending() {}

    /**
     * When it is to have begun so that it ends later: two days alone that are one day keep their order, and so does a day
     * alone before a time of that day while nothing ran from then on. Null, and noted, when it would end before it begins.
     *
     * @param when the field of its end
     */
    static @Nullable Moment begun(ReadSheet in, SheetField when, Moment from, Moment to) {
        if (from.isBefore(to)) {
            return from;
        }
        if (from.equals(to) && to.dayOnly()) {
            return from.before();
        }
        if (EarlierThatDay.isUntimed(from, to) && !EarlierThatDay.ranSince(in.sight(), to)) {
            return to.before();
        }
        in.wrong(when, ProblemKind.EARLIER_THAN, when, to, from);
        return null;
    }

    /** What ended when this began still does: where that was moved, a part comes off a moment earlier too. */
    static void makeRoom(ReadSheet in, SheetField when, @Nullable Id<Part> part, Moment from, Moment begun) {
        if (part == null || begun.equals(from)) {
            return;
        }
        in.sight()
                .facts()
                .of(Fitment.class)
                .where(fitment -> fitment.part().equals(part)
                        && from.equals(fitment.to())
                        && fitment.from().isBefore(begun))
                .forEach(entry -> in.change(
                        when,
                        entry,
                        Places.ended(
                                entry.fact(),
                                begun,
                                entry.fact().why(),
                                entry.fact().condition())));
    }
}
