package witnessmark.logbook.sheets;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import witnessmark.domain.DynoSheet;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Id;
import witnessmark.domain.Run;
import witnessmark.domain.RunKind;

/** Runs on the dyno, and the sheets there are of them. */
final class DynoRuns {
    /** Runs on the track that somebody may look for in vain: those of the last weekends. */
    private static final int LATEST = 30;

    private DynoRuns() {}

    private static Stream<Entry<Run>> newestFirst(SheetSight sight, boolean dyno) {
        return sight.facts()
                .of(Run.class)
                .inForce()
                .filter(run -> (run.fact().kind() == RunKind.DYNO) == dyno)
                .sorted(Comparator.comparing((Entry<Run> run) -> run.fact().start(), Comparator.reverseOrder()));
    }

    static boolean hasSheet(SheetSight sight, Entry<Run> run) {
        return sight.facts()
                .of(DynoSheet.class)
                .inForce()
                .anyMatch(sheet -> sheet.fact().run().equals(run.id()));
    }

    /** The newest first. */
    static List<Entry<Run>> withoutSheet(SheetSight sight) {
        return newestFirst(sight, true).filter(run -> !hasSheet(sight, run)).toList();
    }

    /** Those without a sheet first, the newest first among each. */
    static List<Choice> choices(SheetSight sight) {
        List<Entry<Run>> without = withoutSheet(sight);
        return Stream.concat(without.stream(), newestFirst(sight, true).filter(run -> !without.contains(run)))
                .map(run -> Choice.of(run.id().text(), Incidents.run(sight, run.fact())))
                .toList();
    }

    /** The latest that were not on the dyno, which have no sheet of it. */
    static Map<Choice, SheetNote> onTrack(SheetSight sight) {
        Map<Choice, SheetNote> runs = new LinkedHashMap<>();
        newestFirst(sight, false)
                .limit(LATEST)
                .forEach(run -> runs.put(
                        Choice.of(run.id().text(), Incidents.run(sight, run.fact())), SheetNote.of("not_on_the_dyno")));
        return runs;
    }

    static List<DynoSheet> sheetsOf(SheetSight sight, Id<Engine> engine) {
        return sight.facts()
                .of(DynoSheet.class)
                .inForce()
                .map(Entry::fact)
                .filter(sheet -> engineOf(sight, sheet).filter(engine::equals).isPresent())
                .toList();
    }

    private static Optional<Id<Engine>> engineOf(SheetSight sight, DynoSheet sheet) {
        return sight.facts()
                .of(Run.class)
                .find(sheet.run())
                .map(run -> run.fact().engine());
    }

    /** Of the latest run that has one. */
    static Optional<DynoSheet> lastSheet(SheetSight sight) {
        return sight.facts()
                .of(DynoSheet.class)
                .inForce()
                .map(Entry::fact)
                .filter(sheet -> sight.facts().of(Run.class).find(sheet.run()).isPresent())
                .max(Comparator.comparing(
                        sheet -> sight.facts().of(Run.class).get(sheet.run()).start()));
    }

    /** Every dyno there is a sheet of. */
    static List<String> dynos(SheetSight sight) {
        return sight.facts()
                .of(DynoSheet.class)
                .inForce()
                .map(sheet -> sheet.fact().dyno())
                .distinct()
                .toList();
    }
}
