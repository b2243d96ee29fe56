package witnessmark.ledger;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import witnessmark.domain.Entry;
import witnessmark.domain.Id;
import witnessmark.domain.Reading;
import witnessmark.domain.ReadingKind;

/**
 * What is read again and again: the same kind, at the same place, on the same thing.
 *
 * @param kind what is read
 * @param on the part, or the engine where it is the engine's
 * @param place where, as the crew says it
 * @param readings those that count, at least one, in the order they were read
 */
public record ReadingSeries(ReadingKind kind, Id<?> on, String place, List<Entry<Reading>> readings) {
    private static final Comparator<Entry<Reading>> AS_READ = Comparator.comparing(
                    (Entry<Reading> reading) -> reading.fact().at())
            .thenComparing(Entry::id);

    public ReadingSeries {
        readings = List.copyOf(readings);
    }

    private record Key(ReadingKind kind, Id<?> on, String place) {}

    /** Every series up to the ledger's day, in the order they were begun. */
    public static List<ReadingSeries> all(LifeLedger ledger) {
        Map<Key, List<Entry<Reading>>> series = new LinkedHashMap<>();
        ledger.facts()
                .of(Reading.class)
                .inForce()
                .filter(reading -> ledger.asOf().counts(reading.fact().at()))
                .sorted(AS_READ)
                .forEach(reading -> series.computeIfAbsent(key(reading.fact()), key -> new ArrayList<>())
                        .add(reading));
        return series.entrySet().stream()
                .map(each -> new ReadingSeries(
                        each.getKey().kind(), each.getKey().on(), each.getKey().place(), each.getValue()))
                .toList();
    }

    private static Key key(Reading reading) {
        Id<?> on = reading.part() != null ? reading.part() : reading.engine();
        return new Key(reading.kind(), Objects.requireNonNull(on), reading.place());
    }

    public Entry<Reading> last() {
        return readings.get(readings.size() - 1);
    }

    /** What the last one is held against: the last that was marked as baseline, else the first. */
    public Entry<Reading> baseline() {
        Entry<Reading> base = readings.get(0);
        for (Entry<Reading> reading : readings) {
            base = reading.fact().baseline() ? reading : base;
        }
        return base;
    }

    /** The first so many of it. */
    public ReadingSeries upTo(int count) {
        return new ReadingSeries(kind, on, place, readings.subList(0, count));
    }

    /** Whether the last grade is worse than the one before, and that worse than the one before it. */
    public boolean worseTwice() {
        int size = readings.size();
        return kind.graded()
                && size >= 3
                && badness(size - 1) > badness(size - 2)
                && badness(size - 2) > badness(size - 3);
    }

    private int badness(int i) {
        return Objects.requireNonNull(readings.get(i).fact().grade()).badness();
    }
}
