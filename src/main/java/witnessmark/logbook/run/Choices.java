package witnessmark.logbook.run;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Car;
import witnessmark.domain.DriverAsked;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Event;
import witnessmark.domain.Facts;
import witnessmark.domain.HowKnown;
import witnessmark.domain.Id;
import witnessmark.domain.Person;
import witnessmark.domain.RunKind;
import witnessmark.quantity.Moment;

/** What can be picked in each field of the sheet. */
final class Choices {
    private final Facts facts;
    private final RunsBefore before;

    Choices(Facts facts, RunsBefore before) {
        this.facts = facts;
        this.before = before;
    }

    List<Choice> of(RunField field, Map<RunField, String> typed, Moment at) {
        return switch (field) {
            case CAR -> cars(at);
            case EVENT -> events();
            case PLANNED -> planned(typed);
            case DRIVER -> drivers();
            case KNOWN ->
                Arrays.stream(HowKnown.values())
                        .map(how -> Choice.of(how.code(), how))
                        .toList();
            case DRIVER_ASKED ->
                Arrays.stream(DriverAsked.values())
                        .map(asked -> Choice.of(asked.code(), asked))
                        .toList();
            default -> List.of();
        };
    }

    /** Each car with the engine in it, then each engine alone, for the dyno. */
    private List<Choice> cars(Moment at) {
        List<Choice> choices = new ArrayList<>();
        for (Entry<Car> car : facts.of(Car.class).where(c -> true)) {
            Optional<Engine> engine = before.engineIn(car.id(), at)
                    .map(in -> facts.of(Engine.class).get(in.engine()));
            choices.add(
                    engine.isPresent()
                            ? Choice.of(Keys.car(car.id()), car.fact(), engine.get())
                            : Choice.of(Keys.car(car.id()), car.fact()));
        }
        for (Entry<Engine> engine : facts.of(Engine.class).where(e -> true)) {
            choices.add(Choice.of(Keys.engine(engine.id()), engine.fact()));
        }
        return choices;
    }

    private List<Choice> events() {
        List<Choice> choices = new ArrayList<>();
        choices.add(Choice.of(""));
        facts.of(Event.class)
                .inForce()
                .sorted(java.util.Comparator.comparing(event -> event.fact().firstDay()))
                .forEach(event -> choices.add(Choice.of(event.id().text(), event.fact())));
        return choices;
    }

    /** What is left of the timetable, and the run picked although it was logged meanwhile; then the kinds of run. */
    private List<Choice> planned(Map<RunField, String> typed) {
        List<Choice> choices = new ArrayList<>();
        @Nullable Id<Car> car = Keys.car(typed.getOrDefault(RunField.CAR, "")).orElse(null);
        String event = typed.getOrDefault(RunField.EVENT, "");
        String picked = typed.getOrDefault(RunField.PLANNED, "");
        NextRun next = new NextRun(facts);
        if (!event.isEmpty()) {
            Id<Event> id = Id.parse(event);
            next.timetable(id).stream()
                    .filter(planned -> Keys.planned(planned.id()).equals(picked) || !next.taken(planned, car))
                    .forEach(planned -> choices.add(Choice.of(Keys.planned(planned.id()), planned.fact())));
        }
        for (RunKind kind : RunKind.values()) {
            choices.add(Choice.of(Keys.kind(kind), kind));
        }
        return choices;
    }

    private List<Choice> drivers() {
        List<Choice> choices = new ArrayList<>();
        choices.add(Choice.of(""));
        facts.of(Person.class)
                .inForce()
                .forEach(person -> choices.add(Choice.of(person.id().text(), person.fact())));
        return choices;
    }
}
