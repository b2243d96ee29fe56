package witnessmark.ledger;

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
import witnessmark.domain.Trigger;
import witnessmark.domain.TriggerKind;

/** Which rules the graded readings raise. */
final class ReadingTriggers {
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
        for (ReadingSeries series : ReadingSeries.all(ledger)) {
            if (!series.kind().graded()) {
                continue;
            }
            for (int i = 0; i < series.readings().size(); i++) {
                ReadingSeries upToIt = series.upTo(i + 1);
                List<Entry<Trigger>> by = rules.stream()
                        .filter(rule -> raises(rule.fact(), upToIt))
                        .toList();
                if (!by.isEmpty()) {
                    raised.put(upToIt.last(), by);
                }
            }
        }
        return raised;
    }

    private boolean raises(Trigger rule, ReadingSeries upToIt) {
        Reading last = upToIt.last().fact();
        if (rule.readingKind() != last.kind()
                || !AsOf.stood(rule, last.at().day())
                || !(rule.design() == null || rule.design().equals(design(last)))) {
            return false;
        }
        if (rule.kind() == TriggerKind.GRADED) {
            Grade grade = Objects.requireNonNull(rule.grade());
            return Objects.requireNonNull(last.grade()).badness() >= grade.badness();
        }
        return upToIt.worseTwice();
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
