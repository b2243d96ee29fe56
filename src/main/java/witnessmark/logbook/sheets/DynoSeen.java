package witnessmark.logbook.sheets;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import witnessmark.domain.DynoPoint;
import witnessmark.domain.DynoSheet;
import witnessmark.domain.Entry;
import witnessmark.domain.Id;
import witnessmark.domain.Run;
import witnessmark.domain.Standing;
import witnessmark.logbook.dyno.PullText;
import witnessmark.quantity.EngineSpeed;
import witnessmark.study.dyno.DynoSheets;
import witnessmark.study.result.DynoAnswer;
import witnessmark.study.result.DynoPull;
import witnessmark.study.result.PullPoint;

/** What was understood of the pulls of a dyno sheet, and what their figures are multiplied by. */
final class DynoSeen {
    private DynoSeen() {}

    static void say(ReadSheet in, DynoSheet sheet, Entry<Run> run, PullText.Read pulls) {
        Entry<DynoSheet> unwritten = new Entry<>(new Id<>(run.id().value()), sheet, Standing.IN_FORCE, null, 1);
        DynoAnswer answer = DynoSheets.alone(unwritten, run, pulls.points());
        List<SheetNote> lines = new ArrayList<>();
        lines.add(SheetNote.echo("line", answer.factor()));
        for (DynoPull pull : answer.pulls()) {
            lines.add(line(pull));
        }
        if (!pulls.columns().isEmpty()) {
            lines.add(SheetNote.echo("dyno_columns", new SheetNote("line", List.copyOf(pulls.columns()), true)));
        }
        if (pulls.fromPower()) {
            lines.add(SheetNote.of("dyno_from_power"));
        }
        if (!pulls.notTaken().isEmpty()) {
            lines.add(SheetNote.echo("dyno_not_taken", String.join(", ", pulls.notTaken())));
        }
        if (pulls.problems().size() > 1) {
            List<String> others = pulls.problems().stream()
                    .skip(1)
                    .map(problem -> String.valueOf(problem.facts().get(0)))
                    .toList();
            lines.add(SheetNote.echo("dyno_other_lines", others.size(), String.join(", ", others)));
        }
        in.readBack(WriteDynoSheet.PULLS, lines);
    }

    /** By its highest power, observed where nothing is corrected. */
    private static SheetNote line(DynoPull pull) {
        PullPoint first = pull.points().get(0);
        PullPoint last = pull.points().get(pull.points().size() - 1);
        boolean corrected = !Double.isNaN(first.corrected());
        PullPoint peak = pull.points().stream()
                .max(Comparator.comparingDouble(corrected ? PullPoint::power : PullPoint::observedPower))
                .orElse(first);
        double power = corrected ? peak.power() : peak.observedPower();
        return Double.isNaN(power)
                ? SheetNote.echo("dyno_pull_bare", pull.number(), pull.points().size(), rpm(first), rpm(last))
                : SheetNote.echo(
                        corrected ? "dyno_pull" : "dyno_pull_observed",
                        pull.number(),
                        pull.points().size(),
                        rpm(first),
                        rpm(last),
                        BigDecimal.valueOf(power).setScale(1, RoundingMode.HALF_UP),
                        rpm(peak));
    }

    private static EngineSpeed rpm(PullPoint point) {
        return new EngineSpeed((int) Math.round(point.rpm()));
    }

    /** The first pull that has one speed alone. */
    static Optional<Integer> oneSpeed(List<DynoPoint> points) {
        return points.stream()
                .collect(Collectors.groupingBy(DynoPoint::pull, TreeMap::new, Collectors.counting()))
                .entrySet()
                .stream()
                .filter(pull -> pull.getValue() == 1)
                .map(pull -> pull.getKey())
                .findFirst();
    }
}
