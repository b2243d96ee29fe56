package witnessmark.ledger;

import java.time.Duration;
import witnessmark.domain.Entry;
import witnessmark.domain.Fact;
import witnessmark.domain.ToldRunning;
import witnessmark.domain.image.Component;
import witnessmark.domain.image.FieldOf;
import witnessmark.domain.image.RecordTypes;
import witnessmark.outcome.ProblemKind;
import witnessmark.quantity.RunningTime;

/** Figures that no engine can have. */
final class FigureChecks {
    private final Clashes clashes;

    FigureChecks(Clashes clashes) {
        this.clashes = clashes;
    }

    /** Holds every figure of an entry against what is possible. */
    void check(Entry<?> entry) {
        Class<? extends Fact> kind = entry.fact().getClass();
        for (Component component : RecordTypes.of(kind).components()) {
            Object value = component.value(entry.fact());
            Possible.of(kind, component.name())
                    .filter(range -> value != null && !range.holds(value))
                    .ifPresent(range -> clashes.addIn(
                            entry,
                            component.name(),
                            ProblemKind.OUT_OF_RANGE,
                            new FieldOf(kind, component),
                            value,
                            range.low(),
                            range.high()));
        }
    }

    /** Nothing runs longer than the time told of lasted. */
    void checkTold(Entry<ToldRunning> entry) {
        ToldRunning told = entry.fact();
        RunningTime lasted = new RunningTime(
                Duration.between(told.from().instant(), told.to().instant()).toMillis());
        if (told.highest().compareTo(lasted) > 0) {
            clashes.addIn(
                    entry,
                    "highest",
                    ProblemKind.TOLD_LONGER_THAN_TIME,
                    told.highest(),
                    told.from(),
                    told.to(),
                    lasted);
        }
    }
}
