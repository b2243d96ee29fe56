package witnessmark.logbook.sheets;

import static witnessmark.logbook.sheets.SheetField.choice;
import static witnessmark.logbook.sheets.SheetField.of;
import static witnessmark.logbook.sheets.SheetField.text;

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
import witnessmark.domain.EngineDesign;
import witnessmark.domain.Entry;
import witnessmark.domain.Event;
import witnessmark.domain.Id;
import witnessmark.domain.LimitRank;
import witnessmark.domain.Trigger;
import witnessmark.domain.TriggerKind;
import witnessmark.ledger.Possible;
import witnessmark.outcome.ProblemKind;
import witnessmark.quantity.EngineSpeed;
import witnessmark.quantity.Moment;

/** Adds an engine: its design, the hours it has so far, and the car it is in. */
public final class AddEngine implements LogSheet {
    public static final SheetField NUMBER = text("number", 1);
    public static final SheetField OWNER = text("owner", 1);
    public static final SheetField NOTE = text("note", 2);
    public static final SheetField DESIGN = choice("design", 1);
    public static final SheetField DESIGN_NAME = text("design_name", 3);
    public static final SheetField CYLINDERS = text("cylinders", 1);
    public static final SheetField LIMITER = of("limiter", FieldKind.SPEED);
    public static final SheetField OVER_REV = of("over_rev", FieldKind.SPEED);
    public static final SheetField CAR = choice("car", 1);
    public static final SheetField SINCE = of("since", FieldKind.DAY);
    public static final SheetField SINCE_TIME = of("since_time", FieldKind.CLOCK);
    /** How known its hours are; then {@code hours}, {@code hours_lowest}, {@code hours_highest}, {@code hours_as_of}. */
    public static final SheetField HOURS_HOW = HoursSoFar.HOW;

    public static final SheetField HOURS = HoursSoFar.HOURS;
    public static final SheetField HOURS_LOWEST = HoursSoFar.LOWEST;
    public static final SheetField HOURS_HIGHEST = HoursSoFar.HIGHEST;
    public static final SheetField HOURS_AS_OF = HoursSoFar.AS_OF;

    /** What the team can call otherwise on the trigger's own sheet. */
    private static final String LOOK_AFTER = "over-rev";

    @Override
    public String key() {
        return "add_engine";
    }

    @Override
    public List<SheetGroup> groups() {
        return List.of(
                SheetGroup.of("engine", List.of(NUMBER, OWNER, NOTE)),
                SheetGroup.of("engine_design", List.of(DESIGN, DESIGN_NAME), List.of(CYLINDERS, LIMITER, OVER_REV)),
                HoursSoFar.group(),
                SheetGroup.of("in_car", List.of(CAR, SINCE, SINCE_TIME)));
    }

    @Override
    public Map<SheetField, String> fresh(SheetSight sight) {
        Map<SheetField, String> out = new HashMap<>();
        List<Entry<EngineDesign>> designs = sight.facts().of(EngineDesign.class).where(d -> true);
        out.put(
                DESIGN,
                designs.isEmpty()
                        ? SheetWord.NEW_DESIGN.key()
                        : designs.get(designs.size() - 1).id().text());
        HoursSoFar.fresh(out, SheetWord.KNOWN, sight);
        carWithout(sight).ifPresent(car -> out.put(CAR, car.id().text()));
        out.put(SINCE, since(sight).toString());
        return out;
    }

    /** Yesterday, after its last run; while an event runs the day before it, or its runs so far could not be logged. */
    private static LocalDate since(SheetSight sight) {
        return sight.facts()
                .of(Event.class)
                .inForce()
                .map(event -> event.fact())
                .filter(event -> !event.firstDay().isAfter(sight.today())
                        && !event.lastDay().isBefore(sight.today()))
                .map(Event::firstDay)
                .min(Comparator.naturalOrder())
                .orElse(sight.today())
                .minusDays(1);
    }

    /** The one car that has no engine yet, when there is one such car. */
    private static Optional<Entry<Car>> carWithout(SheetSight sight) {
        Moment now = Moment.endOf(sight.today(), sight.view().zone());
        List<Entry<Car>> without = sight.facts().of(Car.class).where(car -> true).stream()
                .filter(car -> InCar.inCar(sight, car.id(), now).isEmpty())
                .toList();
        return without.size() == 1 ? Optional.of(without.get(0)) : Optional.empty();
    }

    @Override
    public List<Choice> choices(SheetField field, SheetTyped typed, SheetSight sight) {
        List<Choice> choices = new ArrayList<>();
        if (field.equals(DESIGN)) {
            choices.addAll(sight.all(EngineDesign.class, design -> true));
            choices.add(SheetWord.NEW_DESIGN.choice());
        } else if (field.equals(CAR)) {
            choices.add(SheetWord.NONE.choice());
            choices.addAll(sight.all(Car.class, car -> true));
        } else if (field.equals(HoursSoFar.HOW)) {
            choices.addAll(HoursSoFar.choices());
        }
        return choices;
    }

    @Override
    public boolean asks(SheetField field, SheetTyped typed, SheetSight sight) {
        if (List.of(DESIGN_NAME, CYLINDERS, LIMITER, OVER_REV).contains(field)) {
            return typed.is(DESIGN, SheetWord.NEW_DESIGN);
        }
        if (field.equals(SINCE) || field.equals(SINCE_TIME)) {
            return !typed.text(CAR).isEmpty();
        }
        return !field.key().startsWith("hours") || HoursSoFar.asks(field, typed);
    }

    @Override
    public void read(ReadSheet in) {
        ReadValues values = new ReadValues(in);
        String number = in.newName(NUMBER, Engine.class);
        in.note(OWNER, SheetNote.of("owner_team"));
        @Nullable EngineDesign made = in.is(DESIGN, SheetWord.NEW_DESIGN) ? newDesign(in, values) : null;
        @Nullable
        Entry<EngineDesign> known = in.is(DESIGN, SheetWord.NEW_DESIGN) ? null : in.chosen(DESIGN, EngineDesign.class);
        HoursSoFar.Life life = HoursSoFar.read(in, values, null);
        @Nullable Entry<Car> car = in.text(CAR).isEmpty() ? null : in.chosen(CAR, Car.class);
        @Nullable Moment since = car == null ? null : values.moment(SINCE, SINCE_TIME);
        if (car != null && since != null) {
            InCar.inCar(in.sight(), car.id(), since)
                    .ifPresent(stay -> in.note(
                            CAR,
                            SheetNote.of(
                                    "comes_out",
                                    in.sight().name(Engine.class, stay.fact().engine()))));
        }
        if (!in.fine()) {
            return;
        }
        Id<EngineDesign> design;
        if (made != null) {
            design = in.make(DESIGN_NAME, made);
            UsualPositions.make(in, DESIGN_NAME, design);
            if (made.overRevAbove() != null) {
                in.make(OVER_REV, lookAfter(made.overRevAbove(), design, since, in.sight()));
            }
        } else if (known != null) {
            design = known.id();
        } else {
            return;
        }
        String owner = in.text(OWNER);
        Id<Engine> engine = in.make(NUMBER, new Engine(number, design, owner.isEmpty() ? null : owner, in.text(NOTE)));
        HoursSoFar.make(in, life, null, engine);
        if (car != null && since != null) {
            InCar.make(in, SINCE, engine, car.id(), since, "");
        }
    }

    @Override
    public List<String> about(SheetTyped typed, SheetSight sight) {
        return List.of(typed.text(NUMBER));
    }

    /** What the figure is asked for: an engine that turned faster is held until somebody has looked and signs. */
    private static Trigger lookAfter(
            EngineSpeed overRev, Id<EngineDesign> design, @Nullable Moment since, SheetSight sight) {
        LocalDate from = since != null && since.day().isBefore(sight.today()) ? since.day() : sight.today();
        return new Trigger(
                LOOK_AFTER,
                TriggerKind.SPEED_ABOVE,
                design,
                (long) overRev.rpm(),
                null,
                null,
                null,
                Set.of(),
                "",
                LimitRank.OWN,
                "",
                from,
                null);
    }

    private static @Nullable EngineDesign newDesign(ReadSheet in, ReadValues values) {
        String name = in.newName(DESIGN_NAME, EngineDesign.class);
        in.note(DESIGN, SheetNote.of("usual_positions"));
        in.needed(CYLINDERS);
        Integer cylinders = values.count(CYLINDERS);
        if (cylinders != null && !Possible.CYLINDERS.holds(cylinders)) {
            in.wrong(
                    CYLINDERS,
                    ProblemKind.OUT_OF_RANGE,
                    CYLINDERS,
                    cylinders,
                    Possible.CYLINDERS.low(),
                    Possible.CYLINDERS.high());
        }
        EngineSpeed limiter = values.speed(LIMITER);
        EngineSpeed overRev = values.speed(OVER_REV, limiter);
        if (limiter == null && in.text(LIMITER).isEmpty()) {
            in.note(LIMITER, SheetNote.of("if_known"));
        }
        if (overRev == null && in.text(OVER_REV).isEmpty()) {
            in.note(OVER_REV, SheetNote.of("asks_to_look"));
        }
        if (limiter != null && overRev != null && overRev.rpm() < limiter.rpm()) {
            in.wrong(OVER_REV, ProblemKind.UNUSUAL, OVER_REV, overRev, limiter, new EngineSpeed(limiter.rpm() + 1000));
        }
        if (!in.fine() || cylinders == null) {
            return null;
        }
        return new EngineDesign(name, cylinders, "", null, null, null, null, null, limiter, overRev, "", null);
    }
}
