package witnessmark.ledger;

import java.util.Comparator;
import java.util.Optional;
import java.util.function.BinaryOperator;
import java.util.function.Predicate;
import witnessmark.domain.Entry;
import witnessmark.domain.MeterReading;
import witnessmark.outcome.ProblemKind;

/**
 * Hour meters count on. One that shows less than before was read or typed wrongly, or was changed or set back; a note on
 * the later reading says so, as it does for {@link Meters}.
 */
final class MeterChecks {
    private static final Comparator<Entry<MeterReading>> IN_TIME =
            Comparator.comparing((Entry<MeterReading> each) -> each.fact().at()).thenComparing(Entry::id);

    private final Surroundings around;
    private final Clashes clashes;

    MeterChecks(Surroundings around, Clashes clashes) {
        this.around = around;
        this.clashes = clashes;
    }

    /** Holds a reading against the one before it and the one after it. */
    void check(Entry<MeterReading> reading) {
        nearest(reading, other -> IN_TIME.compare(other, reading) < 0, BinaryOperator.maxBy(IN_TIME))
                .ifPresent(before -> check(reading, before, reading));
        nearest(reading, other -> IN_TIME.compare(other, reading) > 0, BinaryOperator.minBy(IN_TIME))
                .filter(after -> !around.changed(after)) // else it is asked there
                .ifPresent(after -> check(reading, reading, after));
    }

    private Optional<Entry<MeterReading>> nearest(
            Entry<MeterReading> reading,
            Predicate<Entry<MeterReading>> side,
            BinaryOperator<Entry<MeterReading>> nearer) {
        return around
                .facts
                .of(MeterReading.class)
                .where(other -> other.meter().equals(reading.fact().meter()))
                .stream()
                .filter(other -> !other.id().equals(reading.id()) && side.test(other))
                .reduce(nearer);
    }

    private void check(Entry<MeterReading> changed, Entry<MeterReading> from, Entry<MeterReading> to) {
        MeterReading before = from.fact();
        MeterReading after = to.fact();
        if (after.shows().compareTo(before.shows()) < 0 && after.note().isBlank()) {
            clashes.addIn(
                    changed,
                    "shows",
                    ProblemKind.METER_BACKWARDS,
                    around.names.part(before.meter()),
                    before.shows(),
                    before.at(),
                    after.shows(),
                    after.at());
        }
    }
}
