package witnessmark.logbook.faces;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Build;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Facts;
import witnessmark.domain.MeasureKind;
import witnessmark.domain.Measurement;
import witnessmark.domain.Part;
import witnessmark.domain.PartKind;
import witnessmark.domain.Skim;
import witnessmark.domain.SkimPass;
import witnessmark.domain.Work;
import witnessmark.domain.WorkKind;
import witnessmark.domain.WorkResult;
import witnessmark.fit.SkimEffects;
import witnessmark.fit.face.CleanUps;
import witnessmark.fit.result.face.SkimEffect;
import witnessmark.logbook.View;
import witnessmark.logbook.measuring.SeeBuildSheet;
import witnessmark.quantity.Length;
import witnessmark.quantity.Moment;

/** Gathers the skims of a part and what each did to its engine. */
final class SkimLines {
    private static final List<MeasureKind> VALVES =
            List.of(MeasureKind.VALVE_TO_PISTON_INLET, MeasureKind.VALVE_TO_PISTON_EXHAUST);

    private final View view;
    private final Facts facts;
    private final FacePages pages;

    SkimLines(View view, FacePages pages) {
        this.view = view;
        this.facts = view.facts();
        this.pages = pages;
    }

    /** The latest first. */
    List<SkimLine> of(Entry<Part> part, PartKind kind, FaceLimits limits) {
        List<Entry<Work>> works = facts.of(Work.class)
                .inForce()
                .filter(work -> part.id().equals(work.fact().part())
                        && work.fact().kind() == WorkKind.SKIM
                        && work.fact().result() != WorkResult.FAILED
                        && view.ledger().asOf().counts(work.fact().at()))
                .sorted(Comparator.comparing(work -> work.fact().at()))
                .toList();
        List<SkimLine> lines = new ArrayList<>();
        for (int i = 0; i < works.size(); i++) {
            Moment before = i == 0 ? null : works.get(i - 1).fact().at();
            Moment next = i + 1 == works.size() ? null : works.get(i + 1).fact().at();
            lines.add(0, line(part, kind, limits, works.get(i), before, next));
        }
        return lines;
    }

    private SkimLine line(
            Entry<Part> part,
            PartKind kind,
            FaceLimits limits,
            Entry<Work> work,
            @Nullable Moment before,
            @Nullable Moment next) {
        Entry<Skim> skim = facts.of(Skim.class).where(each -> each.work().equals(work.id())).stream()
                .reduce((one, other) -> other)
                .orElse(null);
        List<SkimPass> passes = skim == null ? List.of() : passes(skim);
        Length removed = work.fact().removed() != null
                ? work.fact().removed()
                : passes.isEmpty() ? null : CleanUps.total(passes);
        Length left = work.fact().left();
        return new SkimLine(
                work,
                skim,
                passes,
                CleanUps.of(passes),
                removed,
                less(limits.thickness(), left),
                less(left, limits.least()),
                before == null
                        ? null
                        : RunBetween.of(
                                view.ledger(), part.id(), before, work.fact().at()),
                kind != PartKind.HEAD || removed == null ? null : effect(part, work, skim, removed, before, next));
    }

    private List<SkimPass> passes(Entry<Skim> skim) {
        return facts.of(SkimPass.class).where(pass -> pass.skim().equals(skim.id())).stream()
                .map(Entry::fact)
                .sorted(Comparator.comparingInt(SkimPass::number))
                .toList();
    }

    private static @Nullable Length less(@Nullable Length from, @Nullable Length less) {
        return from == null || less == null ? null : new Length(from.nanometres() - less.nanometres());
    }

    private @Nullable SkimEffect effect(
            Entry<Part> part,
            Entry<Work> work,
            @Nullable Entry<Skim> skim,
            Length removed,
            @Nullable Moment before,
            @Nullable Moment next) {
        Moment at = work.fact().at();
        Entry<Engine> engine = pages.engine(part.id(), at);
        List<Entry<Build>> builds = engine == null ? List.of() : builds(engine);
        return sheetOf(builds, at)
                .map(build -> SkimEffects.of(
                        SeeBuildSheet.sheet(view, build),
                        new SkimEffects.Measured(
                                removed,
                                skim == null ? null : skim.fact().chamberBefore(),
                                skim == null ? null : skim.fact().chamberAfter(),
                                valves(builds, before, at, true),
                                valves(builds, at, next, false))))
                .orElse(null);
    }

    private List<Entry<Build>> builds(Entry<Engine> engine) {
        return facts.of(Build.class)
                .inForce()
                .filter(build -> build.fact().engine().equals(engine.id())
                        && view.ledger().asOf().counts(build.fact().opened()))
                .sorted(Comparator.comparing(build -> build.fact().opened()))
                .toList();
    }

    /** The build whose sheet says how the engine stands: the last before the skim on which decks were measured, or the first. */
    private Optional<Entry<Build>> sheetOf(List<Entry<Build>> builds, Moment at) {
        List<Entry<Build>> measured = builds.stream()
                .filter(build ->
                        !pages.figures(build.id(), MeasureKind.DECK_CLEARANCE).isEmpty())
                .toList();
        return measured.stream()
                .filter(build -> !build.fact().opened().isAfter(at))
                .reduce((one, other) -> other)
                .or(() -> measured.stream().findFirst())
                .or(() -> builds.stream().findFirst());
    }

    /** The least clearance of each row of valves: of the last sheet between two moments, or of the first. */
    private Map<MeasureKind, Length> valves(
            List<Entry<Build>> builds, @Nullable Moment from, @Nullable Moment to, boolean last) {
        Map<MeasureKind, Length> least = new HashMap<>();
        for (MeasureKind kind : VALVES) {
            for (Entry<Build> build : builds) {
                Optional<Length> found = pages.figures(build.id(), kind).stream()
                        .filter(figure -> (from == null || figure.at().isAfter(from))
                                && (to == null || !figure.at().isAfter(to)))
                        .min(Comparator.comparingLong(Measurement::value))
                        .map(figure -> new Length(figure.value()));
                if (found.isPresent() && (last || !least.containsKey(kind))) {
                    least.put(kind, found.get());
                }
            }
        }
        return least;
    }
}
