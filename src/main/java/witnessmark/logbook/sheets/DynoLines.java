package witnessmark.logbook.sheets;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.DynoPoint;
import witnessmark.domain.DynoSheet;
import witnessmark.domain.Entry;
import witnessmark.domain.Fact;
import witnessmark.domain.Id;
import witnessmark.domain.Run;
import witnessmark.domain.RunInStep;

/** Points and steps beside those there are: what differs is changed, what is more made, what is gone struck out. */
final class DynoLines {
    private DynoLines() {}

    /** A point is known by its place on the sheet. */
    private record Place(int pull, int rpm) {
        private static Place of(DynoPoint point) {
            return new Place(point.pull(), point.speed().rpm());
        }
    }

    static List<Entry<DynoPoint>> points(SheetSight sight, Id<DynoSheet> sheet) {
        return sight.facts().of(DynoPoint.class).where(point -> point.sheet().equals(sheet));
    }

    static List<Entry<RunInStep>> steps(SheetSight sight, Id<Run> run) {
        return sight.facts().of(RunInStep.class).where(step -> step.run().equals(run)).stream()
                .sorted(Comparator.comparing(step -> step.fact().number()))
                .toList();
    }

    static void write(ReadSheet in, Id<DynoSheet> sheet, List<DynoPoint> points, List<RunInStep> steps) {
        Map<Object, Entry<DynoPoint>> there = new HashMap<>();
        points(in.sight(), sheet).forEach(entry -> there.put(Place.of(entry.fact()), entry));
        points.forEach(point -> write(in, WriteDynoSheet.PULLS, there.remove(Place.of(point)), point));
        there.values().forEach(gone -> strike(in, WriteDynoSheet.PULLS, gone));
        Map<Integer, Entry<RunInStep>> before = new HashMap<>();
        steps.stream()
                .map(RunInStep::run)
                .findFirst()
                .or(() ->
                        in.sight().find(Run.class, in.text(WriteDynoSheet.RUN)).map(Entry::id))
                .ifPresent(run -> steps(in.sight(), run)
                        .forEach(entry -> before.put(entry.fact().number(), entry)));
        steps.forEach(step -> write(in, WriteDynoSheet.STEPS, before.remove(step.number()), step));
        before.values().forEach(gone -> strike(in, WriteDynoSheet.STEPS, gone));
    }

    private static <F extends Fact> void write(ReadSheet in, SheetField field, @Nullable Entry<F> there, F now) {
        if (there == null) {
            in.make(field, now);
        } else if (!there.fact().equals(now)) {
            in.change(field, there, now);
        }
    }

    private static <F extends Fact> void strike(ReadSheet in, SheetField field, Entry<F> gone) {
        if (!in.isCorrecting()) {
            return; // steps of that run that were written before
        }
        String because = in.needed(CorrectSheet.BECAUSE);
        if (!because.isEmpty()) {
            in.strike(field, gone, because);
        }
    }
}
