package witnessmark.logbook.run;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.StringJoiner;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Car;
import witnessmark.domain.Coded;
import witnessmark.domain.DriverAsked;
import witnessmark.domain.Entry;
import witnessmark.domain.HowKnown;
import witnessmark.domain.Id;
import witnessmark.domain.KnownBy;
import witnessmark.domain.PlannedRun;
import witnessmark.domain.Run;
import witnessmark.domain.RunKind;
import witnessmark.domain.SpeedSource;
import witnessmark.domain.Standing;
import witnessmark.ledger.AsOf;
import witnessmark.ledger.Coherence;
import witnessmark.ledger.RunEffect;
import witnessmark.ledger.result.EffectOfRun;
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
 * every fitted part, and saves it. Text in, answers out; the sheet keeps nothing between calls.
 */
public final class RunSheet {
    private final Desk desk;
    private final Ids ids;

    private final FieldUnits units;
    private final Figures figures;

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
        return new RunDefaults(desk.view().facts()).fill(car, desk.day());
    }

    /** The car to log after this one: the next in the team's order, round again after the last. */
    public @Nullable Id<Car> nextCar(Map<RunField, String> typed) {
        List<Id<Car>> cars = desk.view().facts().of(Car.class).where(c -> true).stream()
                .map(Entry::id)
                .toList();
        int at = cars.indexOf(Keys.car(typed.getOrDefault(RunField.CAR, "")).orElse(null));
        return cars.isEmpty() ? null : cars.get((at + 1) % cars.size());
    }

    /**
     * What changes in other fields when a person picks or types another car, event, run or date: to be put where the
     * person has not typed.
     */
    public Map<RunField, String> follows(RunField changed, Map<RunField, String> typed) {
        RunDefaults defaults = new RunDefaults(desk.view().facts());
        @Nullable Id<Car> car = Keys.car(typed.getOrDefault(RunField.CAR, "")).orElse(null);
        String event = typed.getOrDefault(RunField.EVENT, "");
        return switch (changed) {
            case CAR, EVENT -> defaults.forEvent(event.isEmpty() ? null : Id.parse(event), car);
            case DATE -> {
                LocalDate day = whichOf(typed).day();
                yield day == null ? Map.of() : defaults.forDay(car, day);
            }
            case PLANNED -> {
                @Nullable
                Id<PlannedRun> planned =
                        Keys.planned(typed.getOrDefault(RunField.PLANNED, "")).orElse(null);
                yield defaults.forPlanned(
                        planned == null
                                ? null
                                : desk.view().facts().of(PlannedRun.class).get(planned));
            }
            default -> Map.of();
        };
    }

    /** What can be picked in a field. */
    public List<Choice> choices(RunField field, Map<RunField, String> typed) {
        View view = desk.view();
        LocalDate day = whichOf(typed).day();
        return new Choices(view.facts()).of(field, typed, Moment.endOf(day == null ? view.day() : day, view.zone()));
    }

    /** What the typed text comes to. */
    public RunReading read(Map<RunField, String> typed) {
        View view = desk.view();
        RunsBefore before = new RunsBefore(view.facts());
        Map<RunField, FieldReading> fields = new EnumMap<>(RunField.class);
        @Nullable RunningTime running = ReadRunning.read(typed.getOrDefault(RunField.RUNNING, ""), fields);
        Which which = new ReadWhich(view, before, desk.today().day(), units.days()).read(typed, running, fields);
        ReadFigure reader = new ReadFigure(before, which.engine(), which.onDyno());
        Map<RunField, Object> values = new EnumMap<>(RunField.class);
        for (Figure<?> figure : figures.all()) {
            ReadFigure.Result<?> result = reader.read(figure, typed.getOrDefault(figure.field(), ""));
            fields.put(figure.field(), result.reading());
            if (result.value() != null) {
                values.put(figure.field(), result.value());
            }
        }
        new WhichNotes(view, before).add(which, typed, fields);
        if (running == null || which.engine() == null || which.start() == null) {
            return new RunReading(fields, null, List.of());
        }
        PartsOfRunning.check(running, values, fields);
        Entry<Run> run = entry(which, running, values, fields, typed);
        return new RunReading(
                fields,
                run,
                Coherence.forRun(view.facts(), run, new AsOf(desk.today().day(), view.zone())));
    }

    /** What the run would do to the engine and to every fitted part; empty while it cannot be told. */
    public java.util.Optional<EffectOfRun> effects(RunReading reading) {
        Entry<Run> run = reading.run();
        FieldReading date = reading.fields().get(RunField.DATE);
        if (run == null || date == null || date.stops()) {
            return java.util.Optional.empty();
        }
        View view = desk.view();
        return java.util.Optional.of(RunEffect.of(view.ledger(), run));
    }

    /**
     * Saves the run. Queries are saved as overruled; what stops is not saved.
     *
     * @param why the words for the history
     */
    public Outcome<Written> save(Map<RunField, String> typed, String why) {
        RunReading reading = read(typed);
        Entry<Run> run = reading.run();
        if (reading.stops() || run == null) {
            return Outcome.didNot(stopping(reading));
        }
        return desk.write(why, List.of(SameRun.marked(desk.view().facts(), run)));
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

    private Which whichOf(Map<RunField, String> typed) {
        View view = desk.view();
        return new ReadWhich(view, new RunsBefore(view.facts()), desk.today().day(), units.days())
                .read(typed, null, new EnumMap<>(RunField.class));
    }

    private Entry<Run> entry(
            Which which,
            RunningTime running,
            Map<RunField, Object> values,
            Map<RunField, FieldReading> fields,
            Map<RunField, String> typed) {
        String queried = fields.entrySet().stream()
                .filter(field -> field.getValue().problem() != null)
                .map(field -> field.getKey().key())
                .collect(Collectors.joining(" "));
        Run run = new Run(
                java.util.Objects.requireNonNull(which.engine()),
                which.car(),
                which.event(),
                which.planned(),
                which.kind(),
                name(which),
                java.util.Objects.requireNonNull(which.start()),
                which.startKnown(),
                null,
                which.driver(),
                running,
                KnownBy.all(Coded.of(HowKnown.class, typed.getOrDefault(RunField.KNOWN, HowKnown.TIMED.code()))),
                value(values, figures.track),
                value(values, figures.warmUp),
                value(values, figures.loaded),
                null,
                value(values, figures.distance),
                value(values, figures.laps),
                value(values, figures.raceStarts),
                null,
                value(values, figures.heatCycles),
                null,
                value(values, figures.overRevs),
                value(values, figures.highest),
                values.containsKey(RunField.HIGHEST) ? SpeedSource.LOGGER : null,
                value(values, figures.water),
                value(values, figures.oil),
                value(values, figures.oilPressure),
                value(values, figures.oilAdded),
                value(values, figures.ambient),
                Coded.of(DriverAsked.class, typed.getOrDefault(RunField.DRIVER_ASKED, DriverAsked.NOT_ASKED.code())),
                typed.getOrDefault(RunField.REMARKS, "").strip(),
                asTyped(typed),
                queried,
                null);
        return new Entry<>(ids.next(), run, Standing.IN_FORCE, null, 1);
    }

    private String name(Which which) {
        Id<PlannedRun> planned = which.planned();
        if (planned != null) {
            return desk.view().facts().of(PlannedRun.class).get(planned).name();
        }
        RunKind kind = which.kind();
        return kind.code().substring(0, 1).toUpperCase(java.util.Locale.ROOT)
                + kind.code().substring(1);
    }

    @SuppressWarnings("unchecked") // each figure's value was put under its own field
    private static <T> @Nullable T value(Map<RunField, Object> values, Figure<T> figure) {
        return (T) values.get(figure.field());
    }

    private static String asTyped(Map<RunField, String> typed) {
        StringJoiner lines = new StringJoiner("\n");
        typed.forEach((field, text) -> {
            if (field.measured() && field != RunField.REMARKS && !text.isBlank()) {
                lines.add(field.key() + "=" + text.strip());
            }
        });
        return lines.toString();
    }
}
