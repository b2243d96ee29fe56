package witnessmark.logbook.run;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Car;
import witnessmark.domain.Coded;
import witnessmark.domain.Entry;
import witnessmark.domain.Event;
import witnessmark.domain.Id;
import witnessmark.domain.PlannedRun;
import witnessmark.domain.Run;
import witnessmark.domain.RunKind;
import witnessmark.domain.Standing;
import witnessmark.ledger.AsOf;
import witnessmark.logbook.Desk;
import witnessmark.logbook.View;
import witnessmark.logbook.port.Ids;
import witnessmark.logbook.port.Written;
import witnessmark.outcome.Outcome;
import witnessmark.quantity.RunningTime;

/**
 * Logs a run: fills in what can be known before anybody types, reads what is typed, shows what the run would do to
 * every fitted part, and saves it. A written run is corrected with {@link CorrectRun}.
 */
public final class RunSheet implements TypedRun {
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

    /**
     * What stands in the sheet before anybody types.
     *
     * @param car the car to log, or null for the car logged last
     */
    public Map<RunField, String> fresh(@Nullable Id<Car> car) {
        return defaults().fill(car, desk.today().day());
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
        return Keys.car(reader(desk.view()).sound(typed).getOrDefault(RunField.CAR, ""));
    }

    /** To be put where the person has not typed. */
    @Override
    public Map<RunField, String> follows(RunField changed, Map<RunField, String> asTyped) {
        ReadSheet reader = reader(desk.view());
        Map<RunField, String> typed = reader.sound(asTyped);
        RunDefaults defaults = defaults();
        LocalDate today = desk.today().day();
        @Nullable LocalDate day = reader.whichOf(typed).day();
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

    /**
     * The run of the timetable that a typed time out belongs to, as its field holds it: the nearest of that day this car
     * has not taken, within two hours; where there is none, a run outside the timetable.
     */
    public String plannedAt(Map<RunField, String> asTyped) {
        View view = desk.view();
        ReadSheet reader = reader(view);
        Map<RunField, String> typed = reader.sound(asTyped);
        Which which = reader.whichOf(typed);
        if (which.event() == null || which.day() == null || which.start() == null) {
            return typed.getOrDefault(RunField.PLANNED, "");
        }
        return new NextRun(view.facts())
                .near(
                        which.event(),
                        which.car(),
                        which.day(),
                        which.start().wallClock().toLocalTime())
                .map(planned -> Keys.planned(planned.id()))
                .orElse(Keys.kind(RunKind.OTHER));
    }

    /**
     * A run by its name in the timetable of the event on the sheet, one of the day on it before any other, whether it is
     * logged already or not; else a kind of run by its word. Empty when it is neither.
     */
    public Optional<String> plannedNamed(Map<RunField, String> asTyped, String name) {
        View view = desk.view();
        ReadSheet reader = reader(view);
        Which which = reader.whichOf(reader.sound(asTyped));
        List<Entry<PlannedRun>> timetable =
                which.event() == null ? List.of() : new NextRun(view.facts()).timetable(which.event());
        return timetable.stream()
                .filter(planned -> planned.fact().name().equalsIgnoreCase(name))
                .min(Comparator.comparing(planned -> !planned.fact().day().equals(which.day())))
                .map(planned -> Keys.planned(planned.id()))
                .or(() ->
                        Coded.find(RunKind.class, name.toLowerCase(Locale.ROOT)).map(Keys::kind));
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

    @Override
    public RunReading read(Map<RunField, String> asTyped) {
        View view = desk.view();
        ReadSheet reader = reader(view);
        Map<RunField, String> typed = reader.sound(asTyped);
        Map<RunField, FieldReading> fields = new EnumMap<>(RunField.class);
        @Nullable RunningTime running = ReadRunning.read(typed.getOrDefault(RunField.RUNNING, ""), fields);
        Which which = reader.which(typed, running, fields);
        Map<RunField, Object> values = reader.values(which, typed, fields);
        new WhichNotes(view, before(view)).add(which, typed, values, fields);
        UntimedChange.ask(view, which, fields);
        StillToCome.ask(desk.today(), which, fields);
        fields.put(RunField.REMARKS, FieldReading.fine(Note.of(Note.Kind.NONE)));
        if (running != null) {
            PartsOfRunning.check(running, values, fields);
            new UsualPace(before(view), which).check(running, values, fields);
        }
        if (running == null || which.engine() == null || which.start() == null) {
            return new RunReading(fields, null, List.of());
        }
        Run run = new WriteRun(view.facts(), figures, values).run(which, running, fields, typed);
        Entry<Run> entry = SameRun.marked(view.facts(), new Entry<>(ids.next(), run, Standing.IN_FORCE, null, 1));
        AsOf today = new AsOf(desk.today().day(), view.zone());
        return new RunReading(fields, entry, WholeRun.problems(view.facts(), entry, today));
    }

    @Override
    public Optional<RunDoes> does(RunReading reading) {
        Entry<Run> run = reading.run();
        return run == null || reading.of(RunField.DATE).stops()
                ? Optional.empty()
                : Optional.of(new Forecast(desk.view().ledger()).of(run));
    }

    /**
     * Saves the run; blocks. Queries are saved as overruled; what stops is not saved. One that may be the same as
     * another is saved marked, and counts nowhere until somebody decides.
     *
     * @param why the words for the history
     */
    public Outcome<Written> save(Map<RunField, String> typed, String why) {
        return toWrite(typed).then(run -> desk.write(why, List.of(run)));
    }

    /** The run as it would be saved, for who writes more with it; what stops is not. */
    public Outcome<Entry<Run>> toWrite(Map<RunField, String> typed) {
        RunReading reading = read(typed);
        Entry<Run> run = reading.run();
        return reading.stops() || run == null ? Outcome.didNot(ReadSheet.stopping(reading)) : Outcome.worked(run);
    }

    private ReadSheet reader(View view) {
        return new ReadSheet(desk, view, before(view), units, figures);
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
}
