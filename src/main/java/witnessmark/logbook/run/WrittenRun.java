package witnessmark.logbook.run;

import java.util.Collections;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Entry;
import witnessmark.domain.Facts;
import witnessmark.domain.Run;
import witnessmark.domain.RunKind;
import witnessmark.domain.Standing;
import witnessmark.ledger.AsOf;
import witnessmark.logbook.Desk;
import witnessmark.logbook.View;
import witnessmark.logbook.port.Written;
import witnessmark.outcome.Outcome;
import witnessmark.outcome.Problem;
import witnessmark.quantity.RunningTime;

/**
 * One written run on the sheet, as it was when it was opened. What is typed is read as for a new run, against a logbook
 * that is without it; a field in which nothing else stands keeps its exact value.
 */
public final class WrittenRun implements TypedRun {
    private final Desk desk;
    private final FieldUnits units;
    private final Figures figures;
    private final Entry<Run> entry;
    private final Map<RunField, String> texts;
    private volatile @Nullable Without without;

    /** The logbook without the run, for one revision of it. */
    private record Without(Facts all, Facts others, RunsBefore before) {}

    WrittenRun(Desk desk, FieldUnits units, Entry<Run> entry) {
        this.desk = desk;
        this.units = units;
        this.figures = new Figures(units);
        this.entry = entry;
        this.texts = Collections.unmodifiableMap(new WrittenFields(figures).of(entry.fact()));
    }

    /** The run as it was written when it was opened. */
    public Entry<Run> entry() {
        return entry;
    }

    /** What stands in the fields before anybody types: what was typed, or the value in the field's own unit. */
    public Map<RunField, String> texts() {
        return texts;
    }

    /** The fields in which something else stands than when the run was opened. */
    public Set<RunField> changed(Map<RunField, String> typed) {
        Set<RunField> changed = EnumSet.noneOf(RunField.class);
        for (RunField field : RunField.values()) {
            String was = texts.getOrDefault(field, "");
            String now = typed.getOrDefault(field, "");
            if (!was.equals(now) && (field.chosen() || !was.strip().equals(now.strip()))) {
                changed.add(field);
            }
        }
        return changed;
    }

    /** Whether the logbook says something else about this run by now. */
    public boolean isOutdated() {
        return desk.view()
                .facts()
                .of(Run.class)
                .find(entry.id())
                .filter(now -> now.rev() == entry.rev())
                .isEmpty();
    }

    @Override
    public RunReading read(Map<RunField, String> asTyped) {
        View view = desk.view();
        ReadSheet reader = reader(view);
        Set<RunField> changed = changed(asTyped);
        Map<RunField, String> typed = reader.sound(asTyped);
        Map<RunField, FieldReading> fields = new EnumMap<>(RunField.class);
        @Nullable RunningTime running = running(changed, typed, fields);
        SettleWhich settle = new SettleWhich(view.facts(), entry.fact(), changed);
        Which which = settle.which(reader.which(typed, running, fields), fields);
        Map<RunField, Object> values = reader.values(which, typed, fields);
        keep(values, changed);
        new WhichNotes(view, before(view)).figures(which, values, fields);
        fields.put(RunField.REMARKS, FieldReading.fine(Note.of(Note.Kind.NONE)));
        if (running != null) {
            PartsOfRunning.check(running, values, fields);
            new UsualPace(before(view), which).check(running, values, fields);
        }
        if (running == null || which.engine() == null || which.start() == null) {
            return new RunReading(fields, null, List.of());
        }
        Run run = new WriteRun(view.facts(), figures, values, entry.fact(), changed).run(which, running, fields, typed);
        Entry<Run> next = perhapsSame(view, next(run));
        return new RunReading(fields, next, brought(view, next));
    }

    /** What the correction brings in. What is wrong with the run as it is written does not keep it from being put right. */
    private List<Problem> brought(View view, Entry<Run> next) {
        AsOf today = new AsOf(desk.today().day(), view.zone());
        List<Problem> before = WholeRun.problems(view.facts(), entry, today);
        return WholeRun.problems(view.facts(), next, today).stream()
                .filter(problem -> !before.contains(problem))
                .toList();
    }

    private @Nullable RunningTime running(
            Set<RunField> changed, Map<RunField, String> typed, Map<RunField, FieldReading> fields) {
        RunningTime read = ReadRunning.read(typed.getOrDefault(RunField.RUNNING, ""), fields);
        return changed.contains(RunField.RUNNING) ? read : entry.fact().running();
    }

    /** A value that nobody touched stays exactly as it is written, whatever its text has room for. */
    private void keep(Map<RunField, Object> values, Set<RunField> changed) {
        for (Figure<?> figure : figures.all()) {
            if (!changed.contains(figure.field())) {
                Object value = figure.of().apply(entry.fact());
                if (value == null) {
                    values.remove(figure.field());
                } else {
                    values.put(figure.field(), value);
                }
            }
        }
    }

    private Entry<Run> next(Run run) {
        return new Entry<>(entry.id(), run, entry.standing(), entry.struckBecause(), entry.rev() + 1);
    }

    /** A run that somebody called one of its own stays so, unless what it is known by was corrected. */
    private Entry<Run> perhapsSame(View view, Entry<Run> next) {
        Run was = entry.fact();
        Run now = next.fact();
        boolean known = now.engine().equals(was.engine())
                && now.start().equals(was.start())
                && now.running().equals(was.running());
        return known ? next : SameRun.marked(without(view).others(), next(now.perhapsSameAs(null)));
    }

    @Override
    public Optional<RunDoes> does(RunReading reading) {
        Entry<Run> run = reading.run();
        if (run == null || !run.inForce() || reading.of(RunField.DATE).stops()) {
            return Optional.empty();
        }
        View view = desk.view();
        return Optional.of(new Forecast(view.ledger().after(without(view).others())).of(run, view.ledger()));
    }

    /** Nothing of a written run changes by itself, but a run of the timetable cannot belong to another event. */
    @Override
    public Map<RunField, String> follows(RunField changed, Map<RunField, String> typed) {
        boolean onDyno = Keys.isEngine(typed.getOrDefault(RunField.CAR, ""));
        RunKind kind = entry.fact().kind();
        return switch (changed) {
            case EVENT ->
                typed.getOrDefault(RunField.EVENT, "").equals(texts.get(RunField.EVENT))
                        ? Map.of(RunField.PLANNED, texts.getOrDefault(RunField.PLANNED, ""))
                        : Map.of(RunField.PLANNED, Keys.kind(kind));
            case CAR -> onDyno ? Map.of(RunField.PLANNED, Keys.kind(RunKind.DYNO)) : Map.of();
            default -> Map.of();
        };
    }

    @Override
    public List<Choice> choices(RunField field, Map<RunField, String> typed) {
        return reader(desk.view()).choices(field, typed);
    }

    @Override
    public String stepped(RunField field, Map<RunField, String> typed, int by) {
        return reader(desk.view()).stepped(field, typed, by);
    }

    @Override
    public String clockNow(Map<RunField, String> typed) {
        return reader(desk.view()).clockNow(typed);
    }

    /**
     * Writes the correction; blocks. Queries are saved as overruled; what stops is not saved, nor is anything when
     * somebody changed the run since it was opened.
     *
     * @param why the words for the history
     * @return what was written; empty when the run is as it was
     * @throws IllegalStateException if the run is struck out: it is restored first
     */
    public Outcome<Optional<Written>> save(Map<RunField, String> typed, String why) {
        if (entry.standing() == Standing.STRUCK_OUT) {
            throw new IllegalStateException("a run that is struck out is restored before it is corrected");
        }
        RunReading reading = read(typed);
        Entry<Run> run = reading.run();
        if (run != null && run.fact().equals(entry.fact())) {
            return Outcome.worked(Optional.empty());
        }
        return reading.stops() || run == null
                ? Outcome.didNot(ReadSheet.stopping(reading))
                : desk.write(why, List.of(run)).map(Optional::of);
    }

    private ReadSheet reader(View view) {
        return new ReadSheet(desk, view, before(view), units, figures);
    }

    private RunsBefore before(View view) {
        return without(view).before();
    }

    /** Everything but this run: where it is held against others, it is as if it had not been written. */
    private Without without(View view) {
        Without last = without;
        if (last != null && last.all() == view.facts()) {
            return last;
        }
        Facts others =
                view.facts().with(List.of(new Entry<>(entry.id(), entry.fact(), Standing.STRUCK_OUT, "", entry.rev())));
        Without next = new Without(
                view.facts(), others, new RunsBefore(others, entry.fact().start()));
        without = next;
        return next;
    }
}
