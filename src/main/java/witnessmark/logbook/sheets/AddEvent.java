package witnessmark.logbook.sheets;

import static witnessmark.logbook.sheets.SheetField.of;
import static witnessmark.logbook.sheets.SheetField.text;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Car;
import witnessmark.domain.Entry;
import witnessmark.domain.Event;
import witnessmark.domain.EventEntry;
import witnessmark.domain.Id;
import witnessmark.domain.PlannedRun;
import witnessmark.domain.image.RecordTypes;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;
import witnessmark.quantity.Moment;
import witnessmark.quantity.typed.Typed;
import witnessmark.quantity.typed.TypedClock;
import witnessmark.quantity.typed.TypedDate;

/** Adds an event with its timetable. */
public final class AddEvent implements LogSheet {
    public static final SheetField NAME = text("name", 2);
    public static final SheetField CIRCUIT = text("circuit", 2);
    public static final SheetField FIRST = of("first_day", FieldKind.DAY);
    public static final SheetField LAST = of("last_day", FieldKind.DAY);
    public static final SheetField TRUCK = of("truck", FieldKind.DAY);
    public static final SheetField TRUCK_TIME = of("truck_time", FieldKind.CLOCK);
    public static final SheetField CARS = text("cars_entered", 4);
    public static final SheetField TIMETABLE = new SheetField("timetable", FieldKind.LINES, 4);

    private static final int LONGEST_DAYS = 60;

    @Override
    public String key() {
        return "add_event";
    }

    @Override
    public List<SheetGroup> groups() {
        return List.of(
                SheetGroup.of("event", List.of(NAME, CIRCUIT), List.of(FIRST, LAST, TRUCK, TRUCK_TIME), List.of(CARS)),
                SheetGroup.of("event_timetable", List.of(TIMETABLE)));
    }

    @Override
    public Map<SheetField, String> fresh(SheetSight sight) {
        return Map.of();
    }

    @Override
    public List<Choice> choices(SheetField field, SheetTyped typed, SheetSight sight) {
        return List.of();
    }

    @Override
    public void read(ReadSheet in) {
        ReadValues values = new ReadValues(in);
        String name = in.newName(NAME, Event.class);
        LocalDate first = values.plannedDay(FIRST);
        LocalDate last = in.text(LAST).isEmpty()
                ? first
                : values.echoed(
                        LAST,
                        text -> values.planned(text, first == null ? in.sight().today() : first));
        if (in.text(LAST).isEmpty()) {
            in.note(LAST, SheetNote.of("same_day"));
        }
        if (first != null && last != null && last.isBefore(first)) {
            in.wrong(LAST, ProblemKind.ENDS_BEFORE_IT_BEGINS, in.text(NAME), first, last);
        } else if (first != null && last != null && last.isAfter(first.plusDays(LONGEST_DAYS))) {
            in.wrong(LAST, ProblemKind.OUT_OF_RANGE, LAST, last, first, first.plusDays(LONGEST_DAYS));
        }
        in.blame(TRUCK, ProblemKind.TRUCK_AFTER_BEGIN);
        Moment truck = truck(in, values, first);
        List<Entry<Car>> cars = cars(in);
        in.note(TIMETABLE, SheetNote.of("line_form"));
        List<Timetable.Line> lines =
                first == null || last == null || last.isBefore(first) ? List.of() : timetable(in, first, last);
        if (!in.fine() || first == null || last == null) {
            return;
        }
        Id<Event> event = in.make(
                NAME,
                new Event(name, in.text(CIRCUIT), first, last, in.sight().view().zone(), truck, ""));
        cars.forEach(car -> in.make(CARS, new EventEntry(event, car.id(), null)));
        int turn = 1;
        for (Timetable.Line line : lines) {
            in.make(
                    TIMETABLE,
                    new PlannedRun(event, turn++, line.kind(), line.name(), line.day(), line.out(), line.expected()));
        }
    }

    @Override
    public List<String> about(SheetTyped typed, SheetSight sight) {
        return List.of(typed.text(NAME));
    }

    /** The cars named, with commas between, each once. */
    private static List<Entry<Car>> cars(ReadSheet in) {
        List<Entry<Car>> cars = new ArrayList<>();
        List<String> known = in.sight()
                .facts()
                .of(Car.class)
                .inForce()
                .map(car -> car.fact().name())
                .limit(2)
                .toList();
        in.note(CARS, known.size() < 2 ? SheetNote.of("cars") : SheetNote.of("cars_form", known.get(0), known.get(1)));
        for (String name : in.text(CARS).split("\\s*(,|;|\\band\\b)\\s*")) {
            Optional<Entry<Car>> car = in.sight().facts().of(Car.class).named(name);
            if (car.isPresent() && !cars.contains(car.get())) {
                cars.add(car.get());
            } else if (car.isEmpty() && !name.isBlank()) {
                in.wrong(CARS, ProblemKind.NOT_FOUND, RecordTypes.of(Car.class), name);
            }
        }
        if (!cars.isEmpty()) {
            in.note(
                    CARS,
                    new SheetNote(
                            "line",
                            cars.stream().map(car -> (Object) car.fact().name()).toList(),
                            true));
        }
        return cars;
    }

    private static @Nullable Moment truck(ReadSheet in, ReadValues values, @Nullable LocalDate first) {
        if (in.text(TRUCK).isEmpty()) {
            in.note(TRUCK, SheetNote.of("if_known"));
            if (!in.text(TRUCK_TIME).isEmpty()) {
                in.wrong(TRUCK, ProblemKind.NEEDED, TRUCK);
            }
            return null;
        }
        LocalDate day = values.echoed(TRUCK, text -> truckDay(text, first, values, in.sight()));
        var clock = values.echoed(TRUCK_TIME, TypedClock::read);
        if (day == null) {
            return null;
        }
        return clock == null
                ? Moment.endOf(day, in.sight().view().zone())
                : Moment.of(day.atTime(clock), in.sight().view().zone());
    }

    /** A weekday alone is the last such day up to the event's first, as long as that has not passed. */
    private static Typed<LocalDate> truckDay(
            String text, @Nullable LocalDate first, ReadValues values, SheetSight sight) {
        if (first != null && TypedDate.isWeekday(text)) {
            Typed<LocalDate> before = TypedDate.read(text, first, sight.days());
            if (before.only().filter(day -> day.isBefore(sight.today())).isEmpty()) {
                return before;
            }
        }
        return values.planned(text, sight.today());
    }

    private static List<Timetable.Line> timetable(ReadSheet in, LocalDate first, LocalDate last) {
        Timetable table = new Timetable(TIMETABLE, first, last);
        List<Timetable.Line> lines = new ArrayList<>();
        List<SheetNote> back = new ArrayList<>();
        Problem wrong = null;
        for (String text :
                in.text(TIMETABLE).lines().filter(line -> !line.isBlank()).toList()) {
            Timetable.Read read = table.read(text);
            Timetable.Line line = read.line();
            if (line == null) {
                wrong = wrong == null ? read.problem() : wrong;
                back.add(notRead(text.strip(), read.problem()));
            } else if (lines.stream().anyMatch(other -> other.name().equalsIgnoreCase(line.name()))) {
                wrong = wrong == null
                        ? Problem.of(ProblemKind.NAME_TAKEN, RecordTypes.of(PlannedRun.class), line.name())
                        : wrong;
                back.add(SheetNote.of("line_twice", text.strip()));
            } else {
                lines.add(line);
                back.add(inWords(line));
            }
        }
        if (wrong != null) {
            in.wrong(TIMETABLE, wrong.kind(), wrong.facts().toArray());
        } else {
            in.note(TIMETABLE, lines.isEmpty() ? SheetNote.of("line_form") : SheetNote.echo("lines", lines.size()));
        }
        in.readBack(TIMETABLE, back);
        return lines;
    }

    /** What is wrong with each line is said beside it; under the field there is room for the first alone. */
    private static SheetNote notRead(String text, @Nullable Problem problem) {
        ProblemKind kind = problem == null ? ProblemKind.CANNOT_READ : problem.kind();
        return switch (kind) {
            case OUTSIDE_EVENT -> SheetNote.of("line_outside", text);
            case LINE_WITHOUT_DAY -> SheetNote.of("line_no_day", text);
            case LESS_THAN_NOTHING, RUN_OF_NO_LENGTH -> SheetNote.of("line_no_length", text);
            default -> SheetNote.of("line_not_read", text);
        };
    }

    private static SheetNote inWords(Timetable.Line line) {
        List<Object> facts = new ArrayList<>(List.of(line.name(), line.day()));
        if (line.out() != null) {
            facts.add(line.out());
        }
        if (line.expected() != null) {
            facts.add(line.expected());
        }
        return new SheetNote("line", facts, true);
    }
}
