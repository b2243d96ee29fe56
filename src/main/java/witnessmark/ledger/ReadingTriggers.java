package witnessmark.ledger;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Engine;
import witnessmark.domain.EngineDesign;
import witnessmark.domain.Entry;
import witnessmark.domain.Grade;
import witnessmark.domain.Id;
import witnessmark.domain.Reading;
import witnessmark.domain.ReadingKind;
import witnessmark.domain.Trigger;
import witnessmark.domain.TriggerKind;

/** Which rules the graded readings raise. */
final class ReadingTriggers {
    /** What is read again and again: the same kind, at the same place, on the same thing. */
    private record Series(ReadingKind kind, @Nullable Id<?> on, String place) {}

    private final LifeLedger ledger;
    private final List<Entry<Trigger>> rules;

    ReadingTriggers(LifeLedger ledger) {
        this.ledger = ledger;
        this.rules = ledger.facts().of(Trigger.class).where(rule -> rule.readingKind() != null);
    }

    /** Each reading that raises a rule, with the rules, in the order they were read. */
    Map<Entry<Reading>, List<Entry<Trigger>>> raised() {
        Map<Entry<Reading>, List<Entry<Trigger>>> raised = new LinkedHashMap<>();
        if (rules.isEmpty()) {
            return raised;
        }
        for (List<Entry<Reading>> series : series().values()) {
            for (int i = 0; i < series.size(); i++) {
                List<Entry<Reading>> upToIt = series.subList(0, i + 1);
                List<Entry<Trigger>> by = rules.stream()
                        .filter(rule -> raises(rule.fact(), upToIt))
                        .toList();
                if (!by.isEmpty()) {
                    raised.put(series.get(i), by);
                }
            }
        }
        return raised;
    }

    private Map<Series, List<Entry<Reading>>> series() {
        Map<Series, List<Entry<Reading>>> series = new LinkedHashMap<>();
        ledger.facts()
                .of(Reading.class)
                .inForce()
                .filter(reading -> reading.fact().grade() != null)
                .filter(reading -> ledger.asOf().counts(reading.fact().at()))
                .sorted(Comparator.comparing(
                                (Entry<Reading> reading) -> reading.fact().at())
                        .thenComparing(Entry::id))
                .forEach(reading -> series.computeIfAbsent(key(reading.fact()), key -> new ArrayList<>())
                        .add(reading));
        return series;
    }

    private static Series key(Reading reading) {
        return new Series(reading.kind(), reading.part() != null ? reading.part() : reading.engine(), reading.place());
    }

    private boolean raises(Trigger rule, List<Entry<Reading>> upToIt) {
        Reading last = upToIt.get(upToIt.size() - 1).fact();
        if (rule.readingKind() != last.kind()
                || !AsOf.stood(rule, last.at().day())
                || !(rule.design() == null || rule.design().equals(design(last)))) {
            return false;
        }
        if (rule.kind() == TriggerKind.GRADED) {
            Grade grade = Objects.requireNonNull(rule.grade());
            return badness(last) >= grade.badness();
        }
        int size = upToIt.size();
        return size >= 3
                && badness(last) > badness(upToIt.get(size - 2).fact())
                && badness(upToIt.get(size - 2).fact())
                        > badness(upToIt.get(size - 3).fact());
    }

    private static int badness(Reading reading) {
        return Objects.requireNonNull(reading.grade()).badness();
    }

    private @Nullable Id<EngineDesign> design(Reading reading) {
        Id<Engine> engine = reading.engine();
        if (engine == null && reading.part() != null) {
            engine = ledger.whereIs(reading.part(), reading.at())
                    .map(there -> there.fact().engine())
                    .orElse(null);
        }
        return engine == null
                ? null
                : ledger.facts()
                        .of(Engine.class)
                        .find(engine)
                        .map(entry -> entry.fact().design())
                        .orElse(null);
    }
}
