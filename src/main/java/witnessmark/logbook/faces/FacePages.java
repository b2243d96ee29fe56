package witnessmark.logbook.faces;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Build;
import witnessmark.domain.Engine;
import witnessmark.domain.EngineDesign;
import witnessmark.domain.Entry;
import witnessmark.domain.FaceHole;
import witnessmark.domain.FaceOutline;
import witnessmark.domain.Facts;
import witnessmark.domain.Id;
import witnessmark.domain.MeasureKind;
import witnessmark.domain.Measurement;
import witnessmark.domain.Part;
import witnessmark.domain.PartKind;
import witnessmark.domain.SizeLimit;
import witnessmark.fit.result.face.Face;
import witnessmark.ledger.LifeLedger;
import witnessmark.ledger.result.Stay;
import witnessmark.logbook.View;
import witnessmark.quantity.Counter;
import witnessmark.quantity.Length;
import witnessmark.quantity.Moment;

/** Gathers what is known of the face of a part. */
final class FacePages {
    private final View view;
    private final Facts facts;
    private final LifeLedger ledger;
    private final Map<Id<Build>, List<Measurement>> measured;

    FacePages(View view) {
        this.view = view;
        this.facts = view.facts();
        this.ledger = view.ledger();
        this.measured = facts.of(Measurement.class)
                .inForce()
                .map(Entry::fact)
                .filter(figure -> figure.inUse() && ledger.asOf().counts(figure.at()))
                .collect(Collectors.groupingBy(Measurement::build));
    }

    FacePage page(Entry<Part> part) {
        PartKind kind = SeeFaces.kind(view, part);
        Entry<Engine> engine = engine(part.id(), ledger.asOf().last());
        Entry<EngineDesign> design = design(engine);
        Face face = design == null ? null : face(facts, design.id()).orElse(null);
        FaceLimits limits = limits(kind, design);
        List<SkimLine> skims = new SkimLines(view, this).of(part, kind, limits);
        Moment skimmed = skims.isEmpty() ? null : skims.get(0).work().fact().at();
        return new FacePage(
                part,
                kind,
                engine,
                design,
                face,
                limits,
                new LookLines(view, face, limits).of(part.id(), skims),
                skims,
                thickness(part.id(), kind, skims),
                skimmed == null
                        ? whole(part.id())
                        : RunBetween.of(
                                ledger, part.id(), skimmed, ledger.asOf().last()),
                ledger.stays(part.id()).stream()
                        .sorted(Comparator.comparing(Stay::from))
                        .toList());
    }

    private RunBetween whole(Id<Part> part) {
        var cycles = ledger.life(part, Counter.HEAT_CYCLES);
        return new RunBetween(ledger.life(part, Counter.RUNNING).total(), cycles.total(), cycles.complete());
    }

    /** The engine a part is in at a moment, was in before it, or goes into first; null when it never was in one. */
    @Nullable
    Entry<Engine> engine(Id<Part> part, Moment at) {
        List<Stay> stays = ledger.stays(part).stream()
                .filter(stay -> stay.fitment().fact().engine() != null)
                .sorted(Comparator.comparing(Stay::from))
                .toList();
        Optional<Stay> before =
                stays.stream().filter(stay -> !stay.from().isAfter(at)).reduce((one, other) -> other);
        return before.or(() -> stays.stream().findFirst())
                .flatMap(stay -> facts.of(Engine.class)
                        .find(Objects.requireNonNull(stay.fitment().fact().engine())))
                .orElse(null);
    }

    /** The design of its engine; of a part that was in none the team's only one. */
    private @Nullable Entry<EngineDesign> design(@Nullable Entry<Engine> engine) {
        if (engine != null) {
            return facts.of(EngineDesign.class).find(engine.fact().design()).orElse(null);
        }
        List<Entry<EngineDesign>> all = facts.of(EngineDesign.class).inForce().toList();
        return all.size() == 1 ? all.get(0) : null;
    }

    /** The face of a design's engines, when it is written down. */
    static Optional<Face> face(Facts facts, Id<EngineDesign> design) {
        return facts.of(FaceOutline.class)
                .inForce()
                .filter(outline -> outline.fact().design().equals(design))
                .reduce((one, other) -> other)
                .map(outline -> new Face(
                        outline.fact(),
                        facts.of(FaceHole.class)
                                .inForce()
                                .map(Entry::fact)
                                .filter(hole -> hole.outline().equals(outline.id()))
                                .toList()));
    }

    private FaceLimits limits(PartKind kind, @Nullable Entry<EngineDesign> design) {
        if (design == null || kind != PartKind.HEAD && kind != PartKind.BLOCK) {
            return new FaceLimits(null, null, null);
        }
        MeasureKind thickness = thickness(kind);
        MeasureKind flat = kind == PartKind.HEAD ? MeasureKind.HEAD_FLATNESS : MeasureKind.DECK_FLATNESS;
        return new FaceLimits(
                stated(design.id(), thickness)
                        .map(SizeLimit::designed)
                        .filter(Objects::nonNull)
                        .findFirst()
                        .map(Length::new)
                        .orElse(null),
                stated(design.id(), thickness)
                        .map(SizeLimit::atLeast)
                        .filter(Objects::nonNull)
                        .max(Comparator.naturalOrder())
                        .map(Length::new)
                        .orElse(null),
                stated(design.id(), flat)
                        .map(SizeLimit::atMost)
                        .filter(Objects::nonNull)
                        .min(Comparator.naturalOrder())
                        .map(Length::new)
                        .orElse(null));
    }

    private static MeasureKind thickness(PartKind kind) {
        return kind == PartKind.HEAD ? MeasureKind.HEAD_THICKNESS : MeasureKind.BLOCK_HEIGHT;
    }

    private Stream<SizeLimit> stated(Id<EngineDesign> design, MeasureKind kind) {
        return facts.of(SizeLimit.class)
                .inForce()
                .map(Entry::fact)
                .filter(limit -> limit.kind() == kind
                        && design.equals(limit.design())
                        && !limit.validFrom().isAfter(view.day())
                        && (limit.validTo() == null || !limit.validTo().isBefore(view.day())));
    }

    /** What the last skim left, or what was measured on a build sheet since; the least of the corners. */
    private @Nullable Length thickness(Id<Part> part, PartKind kind, List<SkimLine> skims) {
        SkimLine last = skims.stream()
                .filter(skim -> skim.work().fact().left() != null)
                .findFirst()
                .orElse(null);
        return ledger.stays(part).stream()
                .flatMap(stay -> measured(stay, thickness(kind)))
                .filter(sheet ->
                        last == null || sheet.at().isAfter(last.work().fact().at()))
                .max(Comparator.comparing(Sheet::at))
                .map(Sheet::least)
                .orElse(last == null ? null : last.work().fact().left());
    }

    /** The least thickness measured on one build sheet. */
    private record Sheet(Moment at, Length least) {}

    /** Sheets of builds at whose end the part was in the engine. */
    private Stream<Sheet> measured(Stay stay, MeasureKind kind) {
        Id<Build> in = stay.fitment().fact().buildIn();
        return in == null ? Stream.empty() : sheet(in, kind).stream();
    }

    private Optional<Sheet> sheet(Id<Build> build, MeasureKind kind) {
        List<Measurement> figures = figures(build, kind);
        return figures.stream()
                .min(Comparator.comparingLong(Measurement::value))
                .map(least -> new Sheet(
                        figures.stream()
                                .map(Measurement::at)
                                .max(Comparator.naturalOrder())
                                .orElseThrow(),
                        new Length(least.value())));
    }

    /** What counts of a kind on the sheet of a build, up to the day looked at. */
    List<Measurement> figures(Id<Build> build, MeasureKind kind) {
        return measured.getOrDefault(build, List.of()).stream()
                .filter(figure -> figure.kind() == kind)
                .toList();
    }
}
