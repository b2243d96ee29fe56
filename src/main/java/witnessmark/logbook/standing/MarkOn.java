package witnessmark.logbook.standing;

import org.jspecify.annotations.Nullable;
import witnessmark.domain.Car;
import witnessmark.domain.Engine;
import witnessmark.domain.Facts;
import witnessmark.domain.Id;
import witnessmark.domain.Part;
import witnessmark.domain.PartDesign;
import witnessmark.domain.PartKind;
import witnessmark.ledger.result.LimitUse;
import witnessmark.ledger.result.Mark;
import witnessmark.ledger.result.MarkState;
import witnessmark.ledger.result.RunsOut;

/**
 * How something stands in one respect, and what that is on, in the words of the crew.
 *
 * @param mark how it stands and why
 * @param serial the part's mark, or null when it is on an engine or car as a whole
 * @param kind what kind of part, or null
 * @param engine the engine's number, or null when it is on no engine
 * @param car the car's name, or null when it is in no car
 */
public record MarkOn(
        Mark mark,
        @Nullable String serial,
        @Nullable PartKind kind,
        @Nullable String engine,
        @Nullable String car) {
    /** A mark with the names of what it is on. */
    public static MarkOn of(Facts facts, Mark mark) {
        Part part = mark.part() == null ? null : facts.of(Part.class).get(mark.part());
        return new MarkOn(
                mark,
                part == null ? null : part.mark(),
                part == null
                        ? null
                        : facts.of(PartDesign.class).get(part.design()).kind(),
                mark.engine() == null
                        ? null
                        : facts.of(Engine.class).get(mark.engine()).number(),
                mark.car() == null ? null : facts.of(Car.class).get(mark.car()).name());
    }

    public MarkState state() {
        return mark.state();
    }

    /** The use of a limit that is the reason, or null when it is another. */
    public @Nullable LimitUse use() {
        return mark.use();
    }

    public @Nullable RunsOut runsOut() {
        return mark.runsOut();
    }

    /** As {@link Mark#leftAfter()}. */
    public @Nullable Long leftAfter() {
        return mark.leftAfter();
    }

    /** Whether it must be done before the team goes: held, over, or not known where that can wreck the engine. */
    public boolean calls() {
        return mark.weight() <= MarkState.OVER.ordinal();
    }

    /** Whether it asks for an eye while the team is there: due, or run on past a limit. */
    public boolean comesDue() {
        return state() == MarkState.DUE || state() == MarkState.RUN_ON;
    }

    /** The text of the identity of what it is on: the part, else the engine, else the car. */
    public String subject() {
        Object subject = mark.part() != null ? mark.part() : mark.engine() != null ? mark.engine() : mark.car();
        return subject instanceof Id<?> id ? id.text() : mark.reason().toString();
    }
}
