package witnessmark.logbook.run;

import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Car;
import witnessmark.domain.Entry;
import witnessmark.domain.Event;
import witnessmark.domain.Id;
import witnessmark.domain.PlannedRun;
import witnessmark.domain.Run;
import witnessmark.domain.RunKind;
import witnessmark.ledger.AsOf;
import witnessmark.ledger.Coherence;
import witnessmark.logbook.Desk;
import witnessmark.logbook.View;
import witnessmark.logbook.port.Ids;
import witnessmark.logbook.port.Written;
import witnessmark.outcome.Outcome;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;
import witnessmark.quantity.Moment;
import witnessmark.quantity.RunningTime;

/**
 * Logs a run: fills in what can be known before anybody types, reads what is typed, shows what the run would do to
 * every fitted part, and saves it. Text in, answers out; the sheet keeps nothing that was typed between calls. All but
 * {@link #save} may be called from any thread.
 */
public final class RunSheet {
    private static final Set<ProblemKind> SAID_UNDER_A_FIELD = Set.of(
            ProblemKind.RUN_IN_FUTURE,
            ProblemKind.RUN_LENGTH_UNUSUAL,
            ProblemKind.RUN_TOO_LONG,
            ProblemKind.LONGER_THAN_RUN);

    private final Desk desk;
    private final Ids ids;

    private final FieldUnits units;
    private final Figures figures;
    private volatile @Nullable RunsBefore before;

    public RunSheet(Desk desk, Ids ids, FieldUnits units) {
        this.desk = desk;
        this.ids = ids;
        this.units = units;
        this.figures = new Figures(units);
    }

    /** The units of bare figures. */
    public FieldUnits units() {
        return units;
    }

    /**
     * What stands in the sheet before anybody types.
     *
     * @param car the car to log, or null for the car logged last
     */
    public Map<RunField, String> fresh(@Nullable Id<Car> car) {
        return defaults().fill(car, desk.day());
    }

    /** The car to log after this one: the next in the team's order, round again after the last. */
    public @Nullable Id<Car> nextCar(Map<RunField, String> typed) {
        List<Id<Car>> cars = desk.view().facts().of(Car.class).where(c -> true).stream()
                .map(Entry::id)
                .toList();
        int at = cars.indexOf(car(typed).orElse(null));
        return cars.isEmpty() ? null : cars.get((at + 1) % cars.size());
    }

    /** The car picked, none for an engine on the dyno. */
    public Optional<Id<Car>> car(Map<RunField, String> typed) {
        return Keys.car(sound(typed).getOrDefault(RunField.CAR, ""));
    }

    /**
     * What changes in other fields when a person picks or types another car, event, run or date: to be put where the
     * person has not typed.
     */
    public Map<RunField, String> follows(RunField changed, Map<RunField, String> asTyped) {
        Map<RunField, String> typed = sound(asTyped);
        RunDefaults defaults = defaults();
        LocalDate today = desk.day();
        @Nullable LocalDate day = whichOf(typed).day();
        @Nullable Id<Car> car = Keys.car(typed.getOrDefault(RunField.CAR, "")).orElse(null);
        String event = typed.getOrDefault(RunField.EVENT, "");
        @Nullable Id<Event> eventId = event.isEmpty() ? null : Id.parse(event);
        return switch (changed) {
            case CAR -> {
                Map<RunField, String> all = new EnumMap<>(defaults.forEvent(eventId, car, day, today));
                all.putAll(defaults.forCar(car));
                yield all;
            }
            case EVENT -> defaults.forEvent(eventId, car, day, today);
            case DATE -> day == null ? Map.of() : defaults.forDay(car, day, today);
            case PLANNED -> {
                String which = typed.getOrDefault(RunField.PLANNED, "");
                @Nullable Id<PlannedRun> planned = Keys.planned(which).orElse(null);
                yield defaults.forPlanned(
                        planned == null
                                ? null
                                : desk.view().facts().of(PlannedRun.class).get(planned),
                        Keys.kind(which).orElse(RunKind.OTHER),
                        today);
            }
            default -> Map.of();
        };
    }

    /** What can be picked in a field. */
    public List<Choice> choices(RunField field, Map<RunField, String> asTyped) {
        Map<RunField, String> typed = sound(asTyped);
        View view = desk.view();
        LocalDate day = whichOf(typed).day();
        return new Choices(view.facts(), before(view))
                .of(field, typed, Moment.endOf(day == null ? view.day() : day, view.zone()));
    }

    /**
     * The text after stepping with the arrow keys: a date by days, the time out by five minutes.
     *
     * @param by 1 for the next, -1 for the one before
     * @return the text as it is for any other field
     */
    public String stepped(RunField field, Map<RunField, String> asTyped, int by) {
        Map<RunField, String> typed = sound(asTyped);
        String text = typed.getOrDefault(field, "");
        return switch (field) {
            case DATE -> Steps.day(text, desk.day(), units.days(), by);
            case OUT_AT -> {
                Moment start = whichOf(typed).start();
                yield Steps.clock(
                        text, start == null ? LocalTime.NOON : start.wallClock().toLocalTime(), by);
            }
            default -> text;
        };
    }

    /** The time of day now, on the clocks of the event picked. */
    public String clockNow(Map<RunField, String> typed) {
        String event = sound(typed).getOrDefault(RunField.EVENT, "");
        View view = desk.view();
        ZoneId zone = event.isEmpty()
                ? view.zone()
                : view.facts().of(Event.class).get(Id.parse(event)).zone();
        return LocalTime.ofInstant(desk.today().now(), zone)
                .truncatedTo(ChronoUnit.MINUTES)
                .toString();
    }

    /** What the typed text comes to. */
    public RunReading read(Map<RunField, String> asTyped) {
        Map<RunField, String> typed = sound(asTyped);
        View view = desk.view();
        RunsBefore before = before(view);
        Map<RunField, FieldReading> fields = new EnumMap<>(RunField.class);
        @Nullable RunningTime running = ReadRunning.read(typed.getOrDefault(RunField.RUNNING, ""), fields);
        Which which = new ReadWhich(view, before, desk.today().day(), units.days()).read(typed, running, fields);
        ReadFigure reader = new ReadFigure(before, which.engine(), which.onDyno());
        WriteRun writer = new WriteRun(view.facts(), figures);
        for (Figure<?> figure : figures.all()) {
            ReadFigure.Result<?> result = reader.read(figure, typed.getOrDefault(figure.field(), ""));
            fields.put(figure.field(), result.reading());
            if (result.value() != null) {
                writer.put(figure.field(), result.value());
            }
        }
        new WhichNotes(view, before).add(which, typed, writer.values(), fields);
        fields.put(RunField.REMARKS, FieldReading.fine(Note.of(Note.Kind.NONE)));
        if (running != null) {
            PartsOfRunning.check(running, writer.values(), fields);
        }
        if (running == null || which.engine() == null || which.start() == null) {
            return new RunReading(fields, null, List.of());
        }
        Entry<Run> run = SameRun.marked(view.facts(), writer.entry(ids.next(), which, running, fields, typed));
        AsOf today = new AsOf(desk.today().day(), view.zone());
        return new RunReading(fields, run, asAWhole(view, run, today));
    }

    /** What is wrong with the run as a whole: what stands under a field already is not said again. */
    private static List<Problem> asAWhole(View view, Entry<Run> run, AsOf today) {
        List<Problem> problems = new ArrayList<>();
        SameRun.problem(view.facts(), run).ifPresent(problems::add);
        Coherence.forRun(view.facts(), run, today).stream()
                .filter(problem -> !SAID_UNDER_A_FIELD.contains(problem.kind()))
                .forEach(problems::add);
        return problems;
    }

    /** What the run would do to the engine and to every fitted part; empty while it cannot be told. */
    public Optional<RunDoes> does(RunReading reading) {
        Entry<Run> run = reading.run();
        return run == null || reading.of(RunField.DATE).stops()
                ? Optional.empty()
                : Optional.of(new Forecast(desk.view()).of(run));
    }

    /**
     * Saves the run. Queries are saved as overruled; what stops is not saved. One that may be the same as another is
     * saved marked, and counts nowhere until somebody decides.
     *
     * @param why the words for the history
     */
    public Outcome<Written> save(Map<RunField, String> typed, String why) {
        RunReading reading = read(typed);
        Entry<Run> run = reading.run();
        if (reading.stops() || run == null) {
            return Outcome.didNot(stopping(reading));
        }
        return desk.write(why, List.of(run));
    }

    private static List<Problem> stopping(RunReading reading) {
        List<Problem> problems = new ArrayList<>();
        reading.fields().values().forEach(field -> {
            if (field.problem() != null && field.problem().stops()) {
                problems.add(field.problem());
            }
        });
        reading.problems().stream().filter(Problem::stops).forEach(problems::add);
        return problems.isEmpty() ? List.of(Problem.of(ProblemKind.NEEDED, RunField.RUNNING)) : problems;
    }

    private Map<RunField, String> sound(Map<RunField, String> typed) {
        return new Picked(desk.view().facts()).sound(typed);
    }

    private RunDefaults defaults() {
        View view = desk.view();
        return new RunDefaults(view.facts(), before(view));
    }

    /** The runs of these facts in order, sorted once for each revision. */
    private RunsBefore before(View view) {
        RunsBefore last = before;
        if (last != null && last.facts() == view.facts()) {
            return last;
        }
        RunsBefore next = new RunsBefore(view.facts());
        before = next;
        return next;
    }

    private Which whichOf(Map<RunField, String> typed) {
        View view = desk.view();
        return new ReadWhich(view, before(view), desk.today().day(), units.days())
                .read(typed, null, new EnumMap<>(RunField.class));
    }
}
