package witnessmark.logbook.sheets;

import static witnessmark.logbook.sheets.SheetField.choice;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Car;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Event;
import witnessmark.domain.EventEntry;
import witnessmark.domain.Fact;
import witnessmark.domain.image.RecordTypes;
import witnessmark.outcome.ProblemKind;

/** Enters a car in an event, with the engine meant for it. */
public final class EnterCar implements LogSheet {
    public static final SheetField EVENT = choice("entry_event", 1);
    public static final SheetField CAR = choice("entry_car", 1);
    public static final SheetField ENGINE = choice("entry_engine", 1);

    @Override
    public String key() {
        return "enter_car";
    }

    @Override
    public List<SheetGroup> groups() {
        return List.of(SheetGroup.of("event_entry", List.of(EVENT, CAR, ENGINE)));
    }

    @Override
    public Map<SheetField, String> fresh(SheetSight sight) {
        return Map.of(EVENT, next(sight), ENGINE, SheetWord.ENGINE_OPEN.key());
    }

    @Override
    public Set<SheetField> kept() {
        return Set.of(EVENT);
    }

    @Override
    public boolean oneAfterTheOther() {
        return true;
    }

    @Override
    public List<Choice> choices(SheetField field, SheetTyped typed, SheetSight sight) {
        if (field.equals(EVENT)) {
            return events(sight);
        }
        if (field.equals(CAR)) {
            return sight.all(Car.class, car -> true);
        }
        List<Choice> engines = new ArrayList<>(List.of(SheetWord.ENGINE_OPEN.choice()));
        engines.addAll(sight.all(Engine.class, engine -> true));
        return engines;
    }

    @Override
    public void read(ReadSheet in) {
        @Nullable Entry<Event> event = in.chosen(EVENT, Event.class);
        @Nullable Entry<Car> car = in.chosen(CAR, Car.class);
        @Nullable Entry<Engine> engine = in.is(ENGINE, SheetWord.ENGINE_OPEN) ? null : in.chosen(ENGINE, Engine.class);
        in.note(ENGINE, SheetNote.of("entry_engine"));
        if (event == null || car == null) {
            return;
        }
        if (entered(in.sight(), event, car)) {
            in.wrong(
                    CAR,
                    ProblemKind.NAME_TAKEN,
                    RecordTypes.of(EventEntry.class),
                    car.fact().name());
        }
        if (in.fine()) {
            in.make(CAR, new EventEntry(event.id(), car.id(), engine == null ? null : engine.id()));
        }
    }

    @Override
    public Optional<Map<SheetField, String>> written(Fact fact, SheetSight sight) {
        if (!(fact instanceof EventEntry entry)) {
            return Optional.empty();
        }
        Map<SheetField, String> out = new HashMap<>();
        out.put(EVENT, entry.event().text());
        out.put(CAR, entry.car().text());
        out.put(
                ENGINE,
                entry.engine() == null
                        ? SheetWord.ENGINE_OPEN.key()
                        : entry.engine().text());
        return Optional.of(out);
    }

    @Override
    public List<String> about(SheetTyped typed, SheetSight sight) {
        return List.of(
                sight.find(Car.class, typed.text(CAR))
                        .map(car -> car.fact().name())
                        .orElse(""),
                sight.find(Event.class, typed.text(EVENT))
                        .map(event -> event.fact().name())
                        .orElse(""));
    }

    static boolean entered(SheetSight sight, Entry<Event> event, Entry<Car> car) {
        return !sight.facts()
                .of(EventEntry.class)
                .where(entry -> entry.event().equals(event.id()) && entry.car().equals(car.id()))
                .isEmpty();
    }

    /** All events, the last first. */
    static List<Choice> events(SheetSight sight) {
        return sight.facts().of(Event.class).where(event -> true).stream()
                .sorted(Comparator.comparing(
                                (Entry<Event> event) -> event.fact().firstDay())
                        .reversed())
                .map(event -> Choice.of(event.id().text(), event.fact()))
                .toList();
    }

    /** The event that goes on, or the next one; empty when there is none. */
    static String next(SheetSight sight) {
        LocalDate today = sight.today();
        return sight.facts().of(Event.class).where(event -> !event.lastDay().isBefore(today)).stream()
                .min(Comparator.comparing((Entry<Event> event) -> event.fact().firstDay()))
                .map(event -> event.id().text())
                .orElse("");
    }
}
