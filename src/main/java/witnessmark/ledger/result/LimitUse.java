package witnessmark.ledger.result;

import org.jspecify.annotations.Nullable;
import witnessmark.domain.Car;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Id;
import witnessmark.domain.Limit;
import witnessmark.domain.Part;
import witnessmark.domain.Position;
import witnessmark.domain.RunOn;
import witnessmark.quantity.Moment;

/**
 * A limit and how much of it is used. A limit on age stands in months; its use and its amount here are in days.
 *
 * @param limit which limit
 * @param part the part it falls on, or null when it falls on an engine or a car as a whole
 * @param engine the engine, or the one the part is in; null when there is none
 * @param car the car, or the one the part is in or its engine is in; null when there is none
 * @param position where the part sits, or null
 * @param used what was used since the limit was last reset
 * @param amount how much may be used, in the unit of the use
 * @param since when it was last reset, or null when it never was
 * @param runOn the decision to go on past it that counts, or null
 */
public record LimitUse(
        Entry<Limit> limit,
        @Nullable Id<Part> part,
        @Nullable Id<Engine> engine,
        @Nullable Id<Car> car,
        @Nullable Id<Position> position,
        Life used,
        long amount,
        @Nullable Moment since,
        @Nullable Entry<RunOn> runOn)
        implements MarkReason {
    public LimitUse {
        if (used.counter() != limit.fact().counter()) {
            throw new IllegalArgumentException("a limit is judged by its own counter");
        }
    }

    /** What is left in the counter's unit, told running at its high end; less than 0 once it is past. */
    public long left() {
        return Math.subtractExact(amount, used.highest());
    }

    /** Where it stands without looking ahead. Used up to the limit exactly is over. */
    @Override
    public MarkState state() {
        if (left() <= 0) {
            return runOn != null && used.highest() < runOn.fact().upTo() ? MarkState.RUN_ON : MarkState.OVER;
        }
        return used.complete() ? MarkState.WITHIN : MarkState.NOT_KNOWN;
    }

    /** Whether it is past only if told running is taken at its high end. */
    public boolean perhapsOver() {
        return state() == MarkState.OVER && used.lowest() < amount;
    }
}
