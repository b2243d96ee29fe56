package witnessmark.logbook.sheets;

import static witnessmark.logbook.sheets.SheetField.choice;
import static witnessmark.logbook.sheets.SheetField.of;
import static witnessmark.logbook.sheets.SheetField.text;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Build;
import witnessmark.domain.Car;
import witnessmark.domain.Engine;
import witnessmark.domain.EngineInCar;
import witnessmark.domain.Entry;
import witnessmark.domain.Id;
import witnessmark.domain.JointMethod;
import witnessmark.domain.TrackRepair;
import witnessmark.domain.Zone;
import witnessmark.outcome.ProblemKind;
import witnessmark.quantity.Moment;

/**
 * A repair in the paddock, on one page: what was opened, what came out, what went in, what went back, with what it was
 * tightened, who else looked. One sign-off: closed at the track, not measured. The build stays unproven.
 */
public final class RepairAtTrack implements LogSheet {
    public static final SheetField ENGINE = choice("repaired", 1);
    public static final SheetField ZONES = text("zones", 3);
    public static final SheetField WHY = text("repair_why", 4);
    public static final SheetField DAY = of("repair_day", FieldKind.DAY);
    public static final SheetField OPENED = of("repair_opened", FieldKind.CLOCK);
    public static final SheetField CLOSED = of("repair_closed", FieldKind.CLOCK);
    public static final SheetField BACK = text("went_back", 4);
    public static final SheetField WRENCH = RepairWrench.WRENCH;
    public static final SheetField TIGHTENED = RepairWrench.TIGHTENED;
    /** Why what the wrench tightened is not written down. */
    public static final SheetField UNTOLD = RepairWrench.UNTOLD;

    public static final SheetField SECOND = text("second_eyes", 1);
    public static final SheetField SIGNED = text("repair_signed", 2);

    private static final int ROWS = 6;
    private static final List<RepairRow> PARTS =
            IntStream.rangeClosed(1, ROWS).mapToObj(RepairRow::numbered).toList();

    @Override
    public String key() {
        return "track_repair";
    }

    @Override
    public List<SheetGroup> groups() {
        return List.of(
                SheetGroup.of("repair", List.of(ENGINE, ZONES), List.of(WHY), List.of(DAY, OPENED, CLOSED)),
                new SheetGroup(
                        "repair_parts", PARTS.stream().map(RepairRow::fields).toList()),
                SheetGroup.of(
                        "repair_closed",
                        List.of(BACK),
                        List.of(WRENCH, TIGHTENED, RepairWrench.METHOD, RepairWrench.VALUE),
                        List.of(UNTOLD),
                        List.of(SECOND, SIGNED)));
    }

    @Override
    public Map<SheetField, String> fresh(SheetSight sight) {
        Map<SheetField, String> out = new HashMap<>();
        out.put(DAY, sight.today().toString());
        out.put(RepairWrench.METHOD, JointMethod.TORQUE.code());
        out.put(SIGNED, sight.who());
        return out;
    }

    @Override
    public Map<SheetField, String> picksFor(Id<Engine> engine, SheetSight sight) {
        return Map.of(ENGINE, engine.text());
    }

    @Override
    public List<Choice> choices(SheetField field, SheetTyped typed, SheetSight sight) {
        if (field.equals(ENGINE)) {
            return engines(sight, opened(typed, sight));
        }
        Optional<List<Choice>> ofWrench = RepairWrench.choices(field, sight);
        if (ofWrench.isPresent()) {
            return ofWrench.get();
        }
        Optional<RepairRow> row = row(field);
        Optional<Places.Place> place = place(typed, sight);
        if (row.isEmpty() || place.isEmpty()) {
            return List.of();
        }
        return field.equals(row.get().part())
                ? row.get().parts(typed, sight, place, opened(typed, sight))
                : positions(row.get(), place.get(), typed, sight);
    }

    @Override
    public boolean asks(SheetField field, SheetTyped typed, SheetSight sight) {
        RepairRow row = row(field).orElse(null);
        if (row == null) {
            return RepairWrench.asks(field, typed);
        }
        int number = PARTS.indexOf(row);
        boolean isReached = number == 0 || PARTS.get(number - 1).isFilled(typed);
        return isReached
                && (field.equals(row.position())
                        || row.isFilled(typed)
                                && row.asks(field, typed, sight, place(typed, sight), opened(typed, sight)));
    }

    @Override
    public void read(ReadSheet in) {
        Entry<Engine> engine = in.chosen(ENGINE, Engine.class);
        Set<Zone> zones = ZonesTyped.read(in, ZONES);
        String why = in.needed(WHY);
        ReadValues values = new ReadValues(in);
        Moment closed = values.moment(DAY, CLOSED);
        Moment opened = in.text(OPENED).isEmpty() ? closed : values.moment(DAY, OPENED);
        if (in.text(OPENED).isEmpty()) {
            in.note(OPENED, SheetNote.of("if_known"));
        }
        in.blame(CLOSED, ProblemKind.CHANGE_INSIDE_RUN);
        RepairWrench wrench = RepairWrench.read(in, closed);
        TightenJoint.second(in, SECOND, SIGNED);
        String signed = in.needed(SIGNED);
        in.note(SIGNED, SheetNote.of("stays_unproven"));
        if (engine == null || opened == null || closed == null) {
            return;
        }
        if (closed.isBefore(opened)) {
            in.wrong(CLOSED, ProblemKind.ENDS_BEFORE_IT_BEGINS, engine.fact().number(), opened, closed);
        }
        Places.Place place = new Places.Place(engine, null);
        Set<String> before = new HashSet<>();
        List<RepairRow> rows = rows(in.typed());
        rows.forEach(row -> row.read(in, place, opened, before));
        if (!in.fine() || zones.isEmpty()) {
            return;
        }
        int number = WriteBuild.next(in.sight(), engine.id());
        in.note(ENGINE, SheetNote.of("build_number", number));
        Id<Build> build = in.make(CLOSED, new Build(engine.id(), number, zones, opened, closed, signed, why));
        in.make(BACK, new TrackRepair(build, in.text(BACK), wrench.tool(), in.text(SECOND), wrench.untold()));
        wrench.write(in, engine.id(), build, closed, signed, in.text(SECOND));
        RepairRow.Repair repair = new RepairRow.Repair(place, engine.id(), build, opened, closed, why, signed);
        rows.forEach(row -> row.write(in, repair));
    }

    @Override
    public List<String> about(SheetTyped typed, SheetSight sight) {
        return List.of(place(typed, sight).map(Places.Place::name).orElse(""));
    }

    /** The rows in use: up to the first in which no position stands. */
    private static List<RepairRow> rows(SheetTyped typed) {
        return PARTS.stream().takeWhile(row -> row.isFilled(typed)).toList();
    }

    private static Optional<RepairRow> row(SheetField field) {
        return PARTS.stream().filter(row -> row.fields().contains(field)).findFirst();
    }

    /** The engines in cars first, for that is where they break. */
    private static List<Choice> engines(SheetSight sight, Moment at) {
        List<Choice> inCars = new ArrayList<>();
        List<Choice> others = new ArrayList<>();
        for (Entry<Engine> engine : sight.facts().of(Engine.class).where(each -> true)) {
            @Nullable
            Entry<EngineInCar> stay = InCar.ofEngine(sight, engine.id(), at).orElse(null);
            if (stay == null) {
                others.add(Choice.of(engine.id().text(), engine.fact()));
            } else {
                String car = sight.name(Car.class, stay.fact().car());
                inCars.add(Choice.of(
                        engine.id().text(),
                        SheetNote.of("engine_in_car", engine.fact().number(), car)));
            }
        }
        inCars.addAll(others);
        return inCars;
    }

    private static List<Choice> positions(RepairRow row, Places.Place place, SheetTyped typed, SheetSight sight) {
        Set<String> others = new HashSet<>();
        PARTS.stream().filter(other -> !other.equals(row)).forEach(other -> others.add(typed.text(other.position())));
        List<Choice> choices = new ArrayList<>(List.of(SheetWord.NONE.choice()));
        for (Choice choice : Places.positions(sight, place)) {
            if (!others.contains(choice.key())) {
                choices.add(choice);
            }
        }
        return choices;
    }

    private static Optional<Places.Place> place(SheetTyped typed, SheetSight sight) {
        return sight.find(Engine.class, typed.text(ENGINE)).map(engine -> new Places.Place(engine, null));
    }

    private static Moment opened(SheetTyped typed, SheetSight sight) {
        SheetField clock = typed.text(OPENED).isEmpty() ? CLOSED : OPENED;
        return SheetMoments.of(typed, DAY, clock, sight).orElse(sight.now());
    }
}
