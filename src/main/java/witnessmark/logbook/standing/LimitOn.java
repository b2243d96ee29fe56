package witnessmark.logbook.standing;

import org.jspecify.annotations.Nullable;
import witnessmark.domain.Limit;
import witnessmark.domain.PartKind;
import witnessmark.ledger.result.LimitUse;
import witnessmark.ledger.result.MarkState;

/**
 * A recorded limit, how much of it is used, and by whom, in the words of the crew.
 *
 * @param use the limit and what was run against it
 * @param mark the part's mark, or null when the limit falls on an engine or car as a whole
 * @param kind what kind of part, or null
 * @param canWreck whether the part's failure can wreck the engine
 * @param engine the engine's number, or null when it is on no engine
 * @param car the car's name, or null when it is in no car
 */
public record LimitOn(
        LimitUse use,
        @Nullable String mark,
        @Nullable PartKind kind,
        boolean canWreck,
        @Nullable String engine,
        @Nullable String car) {
    public Limit limit() {
        return use.limit().fact();
    }

    public MarkState state() {
        return use.state();
    }

    /** The text of the identity of what the limit falls on: the part, else the engine, else the car. */
    public String subject() {
        if (use.part() != null) {
            return use.part().text();
        }
        if (use.engine() != null) {
            return use.engine().text();
        }
        return use.car() == null ? use.limit().id().text() : use.car().text();
    }

    /** Whether more may have been used than is known, and the limit is past only if so. */
    public boolean perhapsOver() {
        return state() == MarkState.OVER && use.used().lowest() < use.amount();
    }
}
