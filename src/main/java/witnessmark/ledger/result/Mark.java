package witnessmark.ledger.result;

import org.jspecify.annotations.Nullable;
import witnessmark.domain.Car;
import witnessmark.domain.Engine;
import witnessmark.domain.Id;
import witnessmark.domain.Part;
import witnessmark.domain.Position;
import witnessmark.quantity.Counter;

/**
 * How a part, an engine or a car stands in one respect, and why.
 *
 * @param state where it stands, what is to come included
 * @param reason why
 * @param part the part, or null when it is an engine or a car as a whole
 * @param engine the engine, or the one the part is in; null when there is none
 * @param car the car, or the one the part is in or its engine is in; null when there is none
 * @param position where the part sits, or null
 * @param canWreck its failure can wreck the engine: not known then weighs as much as over
 * @param runsOut where it runs out, or null when it lasts through the next event and one more like it, or nothing says
 * @param expected what the next event is expected to take of the counter it is held against, or null
 */
public record Mark(
        MarkState state,
        MarkReason reason,
        @Nullable Id<Part> part,
        @Nullable Id<Engine> engine,
        @Nullable Id<Car> car,
        @Nullable Id<Position> position,
        boolean canWreck,
        @Nullable RunsOut runsOut,
        @Nullable Expected expected) {
    /** The use of a limit that is the reason, or null when it is another. */
    public @Nullable LimitUse use() {
        return reason instanceof LimitUse use ? use : null;
    }

    /**
     * What is left of its limit once the next event is over, in the counter's unit; null when it is not expected to last
     * through it, or its limit is a date or an age, of which nothing is used up there.
     */
    public @Nullable Long leftAfter() {
        RunsOut out = runsOut;
        LimitUse use = use();
        if (out == null || use == null || !out.after() || use.used().counter() == Counter.AGE) {
            return null;
        }
        return out.leftAfter() > 0 ? (Long) out.leftAfter() : null;
    }

    /** Whether more may have been used than is known, and the limit is past only if so. */
    public boolean perhapsOver() {
        LimitUse use = use();
        return use != null && state == MarkState.OVER && use.perhapsOver();
    }

    /** What it weighs in an order of worst first: the less, the worse. */
    public int weight() {
        return (state == MarkState.NOT_KNOWN && canWreck ? MarkState.OVER : state).ordinal();
    }
}
