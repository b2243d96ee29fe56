package witnessmark.logbook.faces;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Entry;
import witnessmark.domain.FaceLine;
import witnessmark.domain.FaceLook;
import witnessmark.domain.FaceMark;
import witnessmark.domain.FaceMarkKind;
import witnessmark.domain.FacePoint;
import witnessmark.domain.Facts;
import witnessmark.domain.Id;
import witnessmark.domain.Part;
import witnessmark.fit.face.Findings;
import witnessmark.fit.face.Flatnesses;
import witnessmark.fit.result.face.Face;
import witnessmark.fit.result.face.LowPoint;
import witnessmark.fit.result.face.ZoneFinding;
import witnessmark.ledger.LifeLedger;
import witnessmark.logbook.View;
import witnessmark.quantity.Length;
import witnessmark.quantity.Moment;

/** Gathers the looks at the faces of a part, each held against those before it. */
final class LookLines {
    private final Facts facts;
    private final LifeLedger ledger;
    private final @Nullable Face face;
    private final FaceLimits limits;

    LookLines(View view, @Nullable Face face, FaceLimits limits) {
        this.facts = view.facts();
        this.ledger = view.ledger();
        this.face = face;
        this.limits = limits;
    }

    /** @param skims the latest first */
    List<LookLine> of(Id<Part> part, List<SkimLine> skims) {
        List<LookLine> lines = new ArrayList<>();
        facts.of(FaceLook.class)
                .inForce()
                .filter(look -> look.fact().part().equals(part)
                        && ledger.asOf().counts(look.fact().at()))
                .sorted(Comparator.comparing(look -> look.fact().at()))
                .forEach(look -> lines.add(0, line(look, List.copyOf(lines), skims)));
        return lines;
    }

    private LookLine line(Entry<FaceLook> look, List<LookLine> before, List<SkimLine> skims) {
        List<Entry<FacePoint>> points =
                facts.of(FacePoint.class).where(point -> point.look().equals(look.id()));
        List<Entry<FaceMark>> marks =
                facts.of(FaceMark.class).where(mark -> mark.look().equals(look.id()));
        List<LowPoint> grid = face == null
                ? List.of()
                : points.stream()
                        .map(Entry::fact)
                        .map(point -> face.point(point.x(), point.y(), point.depth()))
                        .toList();
        List<LowPoint> low = face == null
                ? List.of()
                : Stream.concat(grid.stream(), areas(marks)).toList();
        return new LookLine(
                look,
                points,
                facts.of(FaceLine.class).where(line -> line.look().equals(look.id())),
                marks,
                low,
                Flatnesses.of(grid, look.fact().finest()),
                face == null || low.isEmpty() ? List.of() : findings(face, look, low, before, skims));
    }

    private Stream<LowPoint> areas(List<Entry<FaceMark>> marks) {
        return marks.stream()
                .map(Entry::fact)
                .filter(mark -> mark.kind() == FaceMarkKind.LOW)
                .flatMap(mark -> {
                    Length depth = mark.depth();
                    return depth == null || face == null
                            ? Stream.empty()
                            : Stream.of(face.point(mark.x(), mark.y(), depth));
                });
    }

    /** @param before the latest first */
    private List<ZoneFinding> findings(
            Face on, Entry<FaceLook> look, List<LowPoint> low, List<LookLine> before, List<SkimLine> skims) {
        Moment at = look.fact().at();
        List<LookLine> measured = before.stream()
                .filter(line -> !line.low().isEmpty()
                        && line.look().fact().face() == look.fact().face())
                .sorted(Comparator.comparing(line -> line.look().fact().at()))
                .toList();
        SkimLine skim = skims.stream()
                .filter(line -> line.work().fact().at().isBefore(at))
                .findFirst()
                .orElse(null);
        Moment skimmed = skim == null ? null : skim.work().fact().at();
        Moment from = skimmed != null
                ? skimmed
                : measured.isEmpty()
                        ? null
                        : measured.get(measured.size() - 1).look().fact().at();
        RunBetween run = from == null ? null : RunBetween.of(ledger, look.fact().part(), from, at);
        return Findings.of(
                on,
                new Findings.Look(low, look.fact().finest()),
                new Findings.Past(
                        looks(measured, line -> skimmed == null || line.isBefore(skimmed)),
                        looks(measured, line -> skimmed != null && !line.isBefore(skimmed)),
                        skimmed != null,
                        skim == null || skim.skim() == null
                                ? null
                                : skim.skim().fact().flatAfter(),
                        new Findings.Run(
                                run == null ? null : Double.valueOf(run.hours()),
                                run == null || !run.cyclesKnown() ? null : Long.valueOf(run.cycles())),
                        limits.flat()));
    }

    private static List<Findings.Look> looks(List<LookLine> lines, Predicate<Moment> when) {
        return lines.stream()
                .filter(line -> when.test(line.look().fact().at()))
                .map(line -> new Findings.Look(line.low(), line.look().fact().finest()))
                .toList();
    }
}
