package witnessmark.ledger;

import java.time.Duration;
import java.util.Set;
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
    private static final Set<String> NAMES = Set.of("name", "number", "mark");
    private static final int LONGEST_NAME = 100;

    private final Clashes clashes;

    FigureChecks(Clashes clashes) {
        this.clashes = clashes;
    }

    /** Holds every figure of an entry against what is possible. */
    void check(Entry<?> entry) {
        Class<? extends Fact> kind = entry.fact().getClass();
        for (Component component : RecordTypes.of(kind).components()) {
            Object value = component.value(entry.fact());
            if (value instanceof String name && NAMES.contains(component.name())) {
                checkName(entry, new FieldOf(kind, component), name);
            }
            if (value == null) {
                continue;
            }
            Possible.of(kind, component.name())
                    .filter(range -> !range.holds(value))
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

    /** What a thing is called stands in lists and in sentences. */
    private void checkName(Entry<?> entry, FieldOf field, String name) {
        int letters = name.codePointCount(0, name.length());
        if (letters > LONGEST_NAME) {
            clashes.addIn(entry, field.component().name(), ProblemKind.NAME_TOO_LONG, field, letters, LONGEST_NAME);
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
