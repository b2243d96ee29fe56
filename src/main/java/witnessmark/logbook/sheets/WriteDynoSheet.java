package witnessmark.logbook.sheets;

import static witnessmark.logbook.sheets.SheetField.choice;
import static witnessmark.logbook.sheets.SheetField.text;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import witnessmark.domain.AirPressure;
import witnessmark.domain.CorrectionKind;
import witnessmark.domain.DynoFigures;
import witnessmark.domain.DynoPoint;
import witnessmark.domain.DynoSheet;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Fact;
import witnessmark.domain.Id;
import witnessmark.domain.Run;
import witnessmark.domain.RunInStep;
import witnessmark.logbook.dyno.PullText;
import witnessmark.logbook.dyno.RunInText;
import witnessmark.logbook.dyno.WrittenPulls;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;
import witnessmark.quantity.RunningTime;

/**
 * Writes down what a dyno wrote of a run on it: the air it ran in, its pulls a line for each speed, and the steps of
 * running in. Opened again it shows its points and steps as lines, and amends only what differs.
 */
public final class WriteDynoSheet implements LogSheet {
    public static final SheetField RUN = choice("dyno_run", 2);
    public static final SheetField DYNO = text("dyno", 1);
    public static final SheetField OPERATOR = text("dyno_operator", 1);
    public static final SheetField FIGURES = choice("dyno_figures", 1);
    public static final SheetField CORRECTION = choice("dyno_correction", 1);
    public static final SheetField FACTOR = text("dyno_factor", 1);
    public static final SheetField SWEEP = text("dyno_sweep", 1);
    public static final SheetField PRESSURE = text("air_pressure", 1);
    public static final SheetField PRESSURE_IS = choice("air_pressure_is", 1);
    public static final SheetField AIR = text("air_temperature", 1);
    public static final SheetField HUMIDITY = text("humidity", 1);
    public static final SheetField PULLS = new SheetField("dyno_pulls", FieldKind.LINES, 4);
    public static final SheetField STEPS = new SheetField("run_in_steps", FieldKind.LINES, 4);
    public static final SheetField FUEL = text("dyno_fuel", 1);
    public static final SheetField OIL = text("dyno_oil", 1);
    public static final SheetField PLUGS = text("dyno_plugs", 1);
    public static final SheetField MAP = text("dyno_map", 1);
    public static final SheetField BASELINE = choice("dyno_baseline", 1);
    public static final SheetField VERDICT = text("dyno_verdict", 3);
    public static final SheetField NOTE = text("dyno_note", 4);

    private static final Id<DynoSheet> UNWRITTEN = new Id<>(new UUID(0, 0));

    @Override
    public String key() {
        return "write_dyno_sheet";
    }

    @Override
    public List<SheetGroup> groups() {
        return List.of(
                SheetGroup.of("dyno_run", List.of(RUN, DYNO, OPERATOR)),
                SheetGroup.of(
                        "dyno_air",
                        List.of(FIGURES, CORRECTION, FACTOR, SWEEP),
                        List.of(PRESSURE, PRESSURE_IS, AIR, HUMIDITY)),
                SheetGroup.of("dyno_pulls", List.of(PULLS)),
                SheetGroup.of("dyno_run_in", List.of(STEPS)),
                SheetGroup.of("dyno_with", List.of(FUEL, OIL, PLUGS, MAP)),
                SheetGroup.of("dyno_verdict", List.of(BASELINE, VERDICT), List.of(NOTE)));
    }

    @Override
    public Map<SheetField, String> fresh(SheetSight sight) {
        Map<SheetField, String> out = new HashMap<>();
        Optional<DynoSheet> last = DynoRuns.lastSheet(sight);
        Optional<Entry<Run>> run = DynoRuns.withoutSheet(sight).stream().findFirst();
        out.put(RUN, run.map(entry -> entry.id().text()).orElse(""));
        out.put(DYNO, last.map(DynoSheet::dyno).orElse(""));
        out.put(
                FIGURES,
                last.map(DynoSheet::figures).orElse(DynoFigures.OBSERVED).code());
        out.put(
                CORRECTION,
                last.map(DynoSheet::correction).orElse(CorrectionKind.SAE_J1349).code());
        out.put(
                PRESSURE_IS,
                last.map(DynoSheet::pressureIs).orElse(AirPressure.TOTAL).code());
        out.put(BASELINE, run.map(entry -> baseline(sight, entry.fact())).orElse(SheetWord.NO.key()));
        return out;
    }

    /** The first sheet of an engine is its baseline, until somebody says otherwise. */
    private static String baseline(SheetSight sight, Run run) {
        return AsText.yes(DynoRuns.sheetsOf(sight, run.engine()).stream().noneMatch(DynoSheet::baseline));
    }

    @Override
    public Map<SheetField, String> picksFor(Id<Engine> engine, SheetSight sight) {
        return DynoRuns.withoutSheet(sight).stream()
                .filter(run -> run.fact().engine().equals(engine))
                .findFirst()
                .map(run -> Map.of(RUN, run.id().text(), BASELINE, baseline(sight, run.fact())))
                .orElse(Map.of());
    }

    @Override
    public Map<SheetField, String> follows(SheetField picked, SheetTyped typed, SheetSight sight) {
        return picked.equals(RUN)
                ? sight.find(Run.class, typed.text(RUN))
                        .map(run -> Map.of(BASELINE, baseline(sight, run.fact())))
                        .orElse(Map.of())
                : Map.of();
    }

    @Override
    public List<Choice> choices(SheetField field, SheetTyped typed, SheetSight sight) {
        return switch (field.key()) {
            case "dyno_run" -> DynoRuns.choices(sight);
            case "dyno_figures" -> Choice.words(DynoFigures.values());
            case "dyno_correction" -> Choice.words(CorrectionKind.values());
            case "air_pressure_is" -> Choice.words(AirPressure.values());
            case "dyno_baseline" -> List.of(SheetWord.NO.choice(), SheetWord.YES.choice());
            default -> List.of();
        };
    }

    @Override
    public Map<Choice, SheetNote> notOffered(SheetField field, SheetTyped typed, SheetSight sight) {
        return field.equals(RUN) ? DynoRuns.onTrack(sight) : Map.of();
    }

    /** Only a dyno that corrects by itself has a factor to write down. */
    @Override
    public boolean asks(SheetField field, SheetTyped typed, SheetSight sight) {
        return !field.equals(FACTOR) || typed.text(FIGURES).equals(DynoFigures.CORRECTED.code());
    }

    @Override
    public void read(ReadSheet in) {
        Entry<Run> run = in.chosen(RUN, Run.class);
        if (run != null && DynoRuns.hasSheet(in.sight(), run)) {
            in.note(RUN, SheetNote.of("dyno_sheet_there"));
        }
        DynoSheet sheet = run == null ? null : new DynoCell(in).read(run.id(), dyno(in));
        PullText.Read pulls = pulls(in);
        List<RunInStep> steps = run == null ? List.of() : steps(in, run);
        if (sheet != null && run != null) {
            DynoSeen.say(in, sheet, run, pulls);
        }
        if (in.fine() && sheet != null) {
            Id<DynoSheet> written = in.make(PULLS, sheet);
            DynoLines.write(in, written, PullText.read(in.text(PULLS), written).points(), steps);
        }
    }

    /** A dyno has one name however it is typed, since only sheets of one dyno are compared. */
    private static String dyno(ReadSheet in) {
        String typed = in.needed(DYNO);
        Optional<String> known = DynoRuns.dynos(in.sight()).stream()
                .filter(dyno -> dyno.equalsIgnoreCase(typed))
                .findFirst();
        if (known.isEmpty() && !typed.isEmpty() && !DynoRuns.dynos(in.sight()).isEmpty()) {
            in.note(DYNO, SheetNote.of("dyno_new"));
        }
        return known.orElse(typed);
    }

    private static PullText.Read pulls(ReadSheet in) {
        in.note(PULLS, SheetNote.of("dyno_pulls_example"));
        in.needed(PULLS);
        PullText.Read read = PullText.read(in.text(PULLS), UNWRITTEN);
        Optional<Problem> first = read.problems().stream().findFirst();
        first.ifPresent(problem -> in.wrong(PULLS, problem));
        if (first.isEmpty() && !in.text(PULLS).isEmpty() && read.points().isEmpty()) {
            in.wrong(PULLS, ProblemKind.NEEDED, PULLS);
        } else if (first.isEmpty()) {
            DynoSeen.oneSpeed(read.points()).ifPresent(pull -> in.wrong(PULLS, ProblemKind.DYNO_ONE_SPEED, pull));
        }
        return read;
    }

    private static List<RunInStep> steps(ReadSheet in, Entry<Run> run) {
        in.note(STEPS, SheetNote.of("run_in_example"));
        List<RunInText.Line> lines = RunInText.read(in.text(STEPS), run.id());
        List<RunInStep> steps = RunInText.steps(lines);
        RunningTime together = steps.stream().map(RunInStep::lasted).reduce(RunningTime.NONE, RunningTime::plus);
        Optional<Problem> first = lines.stream()
                .map(RunInText.Line::problem)
                .filter(problem -> problem != null)
                .findFirst();
        if (first.isPresent()) {
            in.wrong(STEPS, first.get());
        } else if (together.compareTo(run.fact().running()) > 0) {
            in.wrong(
                    STEPS,
                    ProblemKind.LONGER_THAN_RUN,
                    STEPS,
                    together,
                    run.fact().running());
        } else if (!steps.isEmpty()) {
            in.note(STEPS, SheetNote.echo("run_in_read", steps.size(), together));
        }
        return steps;
    }

    @Override
    public Optional<Map<SheetField, String>> written(Fact fact, SheetSight sight) {
        return fact instanceof DynoSheet sheet
                ? sight.facts().of(DynoSheet.class).all().stream()
                        .filter(entry -> entry.fact().equals(sheet))
                        .findFirst()
                        .flatMap(entry -> written(entry, sight))
                : Optional.empty();
    }

    @Override
    public Optional<Map<SheetField, String>> written(Entry<?> entry, SheetSight sight) {
        if (!(entry.fact() instanceof DynoSheet sheet)) {
            return Optional.empty();
        }
        Map<SheetField, String> out = new HashMap<>(DynoCell.written(sheet, sight));
        out.put(RUN, sheet.run().text());
        out.put(DYNO, sheet.dyno());
        List<DynoPoint> points = DynoLines.points(sight, new Id<>(entry.id().value())).stream()
                .map(Entry::fact)
                .toList();
        out.put(PULLS, WrittenPulls.text(points));
        out.put(
                STEPS,
                RunInText.text(DynoLines.steps(sight, sheet.run()).stream()
                        .map(Entry::fact)
                        .toList()));
        return Optional.of(out);
    }

    @Override
    public List<String> about(SheetTyped typed, SheetSight sight) {
        return List.of(sight.find(Run.class, typed.text(RUN))
                .map(run -> sight.name(Engine.class, run.fact().engine()))
                .orElse(""));
    }
}
