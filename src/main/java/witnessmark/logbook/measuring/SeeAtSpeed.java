package witnessmark.logbook.measuring;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Build;
import witnessmark.domain.Engine;
import witnessmark.domain.EngineDesign;
import witnessmark.domain.Entry;
import witnessmark.domain.Fastener;
import witnessmark.domain.Id;
import witnessmark.domain.MeasureKind;
import witnessmark.domain.Measurement;
import witnessmark.domain.OverRev;
import witnessmark.domain.PartKind;
import witnessmark.domain.Run;
import witnessmark.domain.SpeedFigures;
import witnessmark.fit.Checks;
import witnessmark.fit.Sheet;
import witnessmark.fit.Trying;
import witnessmark.fit.result.Answer;
import witnessmark.fit.result.Conditions;
import witnessmark.fit.result.Pull;
import witnessmark.fit.result.RodLoad;
import witnessmark.fit.result.SpeedAnswer;
import witnessmark.fit.result.WhatIf;
import witnessmark.fit.speed.Marks;
import witnessmark.fit.speed.RodLoads;
import witnessmark.fit.speed.SpeedChecks;
import witnessmark.logbook.View;

/** Sees the fit at speed of an engine as of the day looked at. Reads and computes only; what is tried is never written. */
public final class SeeAtSpeed {
    private SeeAtSpeed() {}

    /** A build's fit at speed; empty where the day has no such build. */
    public static Optional<SpeedPage> of(View view, Id<Build> id, WhatIf whatIf) {
        return view.facts()
                .of(Build.class)
                .find(id)
                .filter(build -> build.inForce()
                        && view.ledger().asOf().counts(build.fact().opened()))
                .map(build -> page(view, build, whatIf));
    }

    private static SpeedPage page(View view, Entry<Build> build, WhatIf whatIf) {
        BuildSheets sheets = new BuildSheets(view);
        Entry<Engine> engine =
                view.facts().of(Engine.class).find(build.fact().engine()).orElseThrow();
        Sheet sheet = Trying.on(sheets.sheet(build), whatIf);
        EngineDesign design = sheets.design(build.fact());
        SpeedFigures figures = sheets.made(engine.fact().design());
        List<Integer> overRevs = overRevs(view, engine.id());
        Integer seen = seen(view, engine.id(), overRevs);
        Integer redLine = whatIf.redLine() != null
                ? whatIf.redLine()
                : design.redLine() == null
                        ? null
                        : Integer.valueOf(design.redLine().rpm());
        SpeedAnswer answer = SpeedChecks.of(sheet, figures, redLine, seen, measuredAt(sheets, build));
        List<Integer> speeds = new ArrayList<>();
        Stream.of(Optional.ofNullable(redLine), Optional.ofNullable(seen))
                .flatMap(Optional::stream)
                .distinct()
                .forEach(speeds::add);
        speeds.addAll(overRevs);
        Fastener bolts = sheets.fastener(build.fact(), PartKind.ROD_BOLTS);
        List<RodLoad> loads = RodLoads.at(sheet, figures, bolts, pull(sheets, build), speeds);
        List<Answer> atRest = Checks.of(sheet);
        return new SpeedPage(
                build,
                engine,
                whatIf,
                answer,
                answer(atRest, MeasureKind.CROWN_TO_HEAD),
                answer(atRest, MeasureKind.COMPRESSION_RATIO),
                loads,
                loads.isEmpty() ? 0 : overRevs.size(),
                Marks.of(sheet).orElse(null));
    }

    private static @Nullable Answer answer(List<Answer> answers, MeasureKind kind) {
        return answers.stream()
                .filter(answer -> answer.kind() == kind)
                .findFirst()
                .orElse(null);
    }

    /** What the rod bolts pull with, by the last stage they were tightened by. */
    private static Pull.@Nullable Range pull(BuildSheets sheets, Entry<Build> build) {
        return sheets.pulls(build, sheets.sheet(build)).stream()
                .filter(pull -> pull.joint().fasteners() == PartKind.ROD_BOLTS)
                .map(Pull::each)
                .flatMap(each -> Stream.ofNullable(each))
                .findFirst()
                .orElse(null);
    }

    /** The peaks of every over-rev the engine is known to have had, in the order they happened. */
    private static List<Integer> overRevs(View view, Id<Engine> engine) {
        return view.facts()
                .of(OverRev.class)
                .inForce()
                .map(Entry::fact)
                .filter(overRev -> {
                    Run run = view.facts().of(Run.class).get(overRev.run());
                    return run.engine().equals(engine) && view.ledger().asOf().counts(run.start());
                })
                .map(overRev -> overRev.peak().rpm())
                .toList();
    }

    private static @Nullable Integer seen(View view, Id<Engine> engine, List<Integer> overRevs) {
        Stream<Integer> runs = view.facts()
                .of(Run.class)
                .inForce()
                .map(Entry::fact)
                .filter(run ->
                        run.engine().equals(engine) && view.ledger().asOf().counts(run.start()))
                .flatMap(run -> Stream.ofNullable(run.highest()))
                .map(speed -> speed.rpm());
        return Stream.concat(runs, overRevs.stream()).max(Integer::compare).orElse(null);
    }

    /** The mean temperature the sheet was measured at; where nobody wrote it down, that of ISO 1. */
    private static double measuredAt(BuildSheets sheets, Entry<Build> build) {
        return sheets.measured(build.id()).stream()
                .map(Entry::fact)
                .map(Measurement::temperature)
                .flatMap(Stream::ofNullable)
                .mapToDouble(temperature -> temperature.inCelsius().doubleValue())
                .average()
                .orElse(Conditions.REFERENCE);
    }
}
