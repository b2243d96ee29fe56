package witnessmark.logbook.sheets;

import static witnessmark.logbook.sheets.SheetField.choice;
import static witnessmark.logbook.sheets.SheetField.text;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Car;
import witnessmark.domain.Engine;
import witnessmark.domain.EngineInCar;
import witnessmark.domain.Entry;
import witnessmark.domain.Event;
import witnessmark.domain.EventEntry;
import witnessmark.domain.Fact;
import witnessmark.domain.Id;
import witnessmark.domain.MissedHow;
import witnessmark.domain.MissedRun;
import witnessmark.domain.PlannedRun;
import witnessmark.domain.Run;
import witnessmark.outcome.ProblemKind;
import witnessmark.quantity.Moment;

/** Logs a start that was not taken, with the reason. It is no run. */
public final class LogMissed implements LogSheet {
    public static final SheetField EVENT = choice("missed_event", 1);
    public static final SheetField CAR = choice("missed_car", 1);
    public static final SheetField PLANNED = choice("missed_planned", 1);
    public static final SheetField HOW = choice("missed_how", 1);
    public static final SheetField WORDS = text("missed_words", 4);

    @Override
    public String key() {
        return "log_missed";
    }

    @Override
    public List<SheetGroup> groups() {
        return List.of(SheetGroup.of("missed", List.of(EVENT, CAR, PLANNED, HOW), List.of(WORDS)));
    }

    @Override
    public Map<SheetField, String> fresh(SheetSight sight) {
        return Map.of(EVENT, last(sight), PLANNED, SheetWord.WHOLE_EVENT.key(), HOW, MissedHow.DID_NOT_START.code());
    }

    @Override
    public List<Choice> choices(SheetField field, SheetTyped typed, SheetSight sight) {
        return switch (field.key()) {
            case "missed_event" -> EnterCar.events(sight);
            case "missed_car" -> cars(typed, sight);
            case "missed_how" -> Choice.words(MissedHow.values());
            case "missed_planned" -> {
                List<Choice> runs = new ArrayList<>(List.of(SheetWord.WHOLE_EVENT.choice()));
                sight.find(Event.class, typed.text(EVENT))
                        .ifPresent(event ->
                                sight
                                        .facts()
                                        .of(PlannedRun.class)
                                        .where(run -> run.event().equals(event.id()))
                                        .stream()
                                        .sorted(Comparator.comparingInt(
                                                run -> run.fact().ordinal()))
                                        .forEach(run ->
                                                runs.add(Choice.of(run.id().text(), run.fact()))));
                yield runs;
            }
            default -> List.of();
        };
    }

    /** The cars that are entered; all of them when none is. */
    private static List<Choice> cars(SheetTyped typed, SheetSight sight) {
        List<Id<Car>> entered =
                sight
                        .facts()
                        .of(EventEntry.class)
                        .where(entry -> entry.event().text().equals(typed.text(EVENT)))
                        .stream()
                        .map(entry -> entry.fact().car())
                        .toList();
        return sight.facts().of(Car.class).where(car -> true).stream()
                .filter(car -> entered.isEmpty() || entered.contains(car.id()))
                .map(car -> Choice.of(car.id().text(), car.fact()))
                .toList();
    }

    @Override
    public void read(ReadSheet in) {
        @Nullable Entry<Event> event = in.chosen(EVENT, Event.class);
        @Nullable Entry<Car> car = in.chosen(CAR, Car.class);
        @Nullable
        Entry<PlannedRun> planned = in.is(PLANNED, SheetWord.WHOLE_EVENT) ? null : in.chosen(PLANNED, PlannedRun.class);
        MissedHow how = in.word(HOW, MissedHow.class);
        in.needed(WORDS);
        in.note(WORDS, SheetNote.of("missed_words"));
        if (event != null && planned != null && !planned.fact().event().equals(event.id())) {
            in.wrong(PLANNED, ProblemKind.NEEDED, PLANNED);
        }
        if (event == null || car == null) {
            return;
        }
        Moment at = at(event.fact(), planned == null ? null : planned.fact());
        Id<Engine> engine = in
                .sight()
                .facts()
                .of(EngineInCar.class)
                .where(stay -> stay.car().equals(car.id()) && covers(stay, at))
                .stream()
                .findFirst()
                .map(stay -> stay.fact().engine())
                .orElse(null);
        in.note(
                CAR,
                engine == null
                        ? SheetNote.of("no_engine_then")
                        : SheetNote.of("engine_then", in.sight().name(Engine.class, engine)));
        taken(in.sight(), event, car, planned)
                .ifPresent(when -> in.wrong(
                        PLANNED,
                        ProblemKind.PLANNED_RUN_TAKEN,
                        planned == null ? event.fact().name() : planned.fact().name(),
                        car.fact().name(),
                        when));
        if (in.fine() && how != null) {
            in.make(
                    PLANNED,
                    new MissedRun(
                            event.id(),
                            car.id(),
                            engine,
                            planned == null ? null : planned.id(),
                            at,
                            how,
                            in.text(WORDS)));
        }
    }

    @Override
    public Optional<Map<SheetField, String>> written(Fact fact, SheetSight sight) {
        if (!(fact instanceof MissedRun missed)) {
            return Optional.empty();
        }
        Map<SheetField, String> out = new HashMap<>();
        out.put(EVENT, missed.event().text());
        out.put(CAR, missed.car().text());
        out.put(
                PLANNED,
                missed.planned() == null
                        ? SheetWord.WHOLE_EVENT.key()
                        : missed.planned().text());
        out.put(HOW, missed.how().code());
        out.put(WORDS, missed.words());
        return Optional.of(out);
    }

    @Override
    public List<String> about(SheetTyped typed, SheetSight sight) {
        String event = sight.find(Event.class, typed.text(EVENT))
                .map(found -> found.fact().name())
                .orElse("");
        return List.of(
                sight.find(Car.class, typed.text(CAR))
                        .map(car -> car.fact().name())
                        .orElse(""),
                sight.find(PlannedRun.class, typed.text(PLANNED))
                        .map(run -> run.fact().name() + ", " + event)
                        .orElse(event));
    }

    /** When it would have started; without a time of the timetable, after the last run of its day. */
    private static Moment at(Event event, @Nullable PlannedRun planned) {
        LocalDate day = planned == null ? event.firstDay() : planned.day();
        LocalTime out = planned == null ? null : planned.out();
        return out == null ? Moment.endOf(day, event.zone()) : Moment.of(day.atTime(out), event.zone());
    }

    /** When the logbook says already that it ran there or did not. */
    private static Optional<Moment> taken(
            SheetSight sight, Entry<Event> event, Entry<Car> car, @Nullable Entry<PlannedRun> planned) {
        Id<PlannedRun> of = planned == null ? null : planned.id();
        Optional<Moment> ran = sight
                .facts()
                .of(Run.class)
                .where(run -> of != null && of.equals(run.planned()) && car.id().equals(run.car()))
                .stream()
                .map(run -> run.fact().start())
                .findFirst();
        return ran.or(() -> sight
                .facts()
                .of(MissedRun.class)
                .where(missed -> missed.event().equals(event.id())
                        && missed.car().equals(car.id())
                        && Objects.equals(missed.planned(), of))
                .stream()
                .map(missed -> missed.fact().at())
                .findFirst());
    }

    private static boolean covers(EngineInCar stay, Moment at) {
        Moment to = stay.to();
        return !stay.from().isAfter(at) && (to == null || at.isBefore(to));
    }

    /** The event that goes on or was the last to begin; else the next; empty when there is none. */
    private static String last(SheetSight sight) {
        return sight.facts().of(Event.class).where(event -> !event.firstDay().isAfter(sight.today())).stream()
                .max(Comparator.comparing((Entry<Event> event) -> event.fact().firstDay()))
                .map(event -> event.id().text())
                .orElse(EnterCar.next(sight));
    }
}
