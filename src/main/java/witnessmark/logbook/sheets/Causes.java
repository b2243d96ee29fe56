package witnessmark.logbook.sheets;

import java.util.List;
import java.util.function.Predicate;
import witnessmark.domain.Cause;
import witnessmark.domain.Entry;
import witnessmark.domain.Id;
import witnessmark.domain.Incident;

/** Causes to pick from, by the incident they are of. */
final class Causes {
    private Causes() {}

    /** Those of incidents as asked: the mark of the incident first, then the cause in its line. */
    static List<Choice> choices(SheetSight sight, Predicate<Id<Incident>> asked) {
        return sight.facts().of(Cause.class).where(cause -> asked.test(cause.incident())).stream()
                .map(cause -> Choice.of(
                        cause.id().text(),
                        sight.name(Incident.class, cause.fact().incident()),
                        cause.fact().statement()))
                .toList();
    }

    /** The cause in its line. */
    static String name(SheetSight sight, String key) {
        return sight.find(Cause.class, key)
                .map(Entry::fact)
                .map(Cause::statement)
                .orElse("");
    }
}
