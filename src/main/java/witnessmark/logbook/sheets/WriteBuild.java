package witnessmark.logbook.sheets;

import static witnessmark.logbook.sheets.SheetField.choice;
import static witnessmark.logbook.sheets.SheetField.of;
import static witnessmark.logbook.sheets.SheetField.text;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Build;
import witnessmark.domain.Car;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Fact;
import witnessmark.domain.Id;
import witnessmark.domain.Zone;
import witnessmark.outcome.ProblemKind;
import witnessmark.quantity.Moment;

/** Writes down a build: what was opened, when it was opened and closed, who signed it. */
public final class WriteBuild implements LogSheet {
    public static final SheetField ENGINE = choice("engine", 1);
    public static final SheetField ZONES = text("zones", 3);
    public static final SheetField OPENED = of("opened", FieldKind.DAY);
    public static final SheetField OPENED_TIME = of("opened_time", FieldKind.CLOCK);
    public static final SheetField CLOSED = of("closed", FieldKind.DAY);
    public static final SheetField CLOSED_TIME = of("closed_time", FieldKind.CLOCK);
    public static final SheetField SIGNED = text("signed_by", 1);
    public static final SheetField NOTE = text("build_note", 3);

    @Override
    public String key() {
        return "write_build";
    }

    @Override
    public List<SheetGroup> groups() {
        return List.of(SheetGroup.of(
                "build",
                List.of(ENGINE, ZONES),
                List.of(OPENED, OPENED_TIME, CLOSED, CLOSED_TIME),
                List.of(SIGNED, NOTE)));
    }

    @Override
    public Map<SheetField, String> fresh(SheetSight sight) {
        return Map.of(OPENED, sight.today().toString());
    }

    @Override
    public Map<SheetField, String> picksFor(Id<Engine> engine, SheetSight sight) {
        return Map.of(ENGINE, engine.text());
    }

    @Override
    public boolean asks(SheetField field, SheetTyped typed, SheetSight sight) {
        return !field.equals(CLOSED_TIME) || !typed.text(CLOSED).isEmpty();
    }

    @Override
    public List<Choice> choices(SheetField field, SheetTyped typed, SheetSight sight) {
        return field.equals(ENGINE) ? sight.all(Engine.class, engine -> true) : List.of();
    }

    @Override
    public void read(ReadSheet in) {
        ReadValues values = new ReadValues(in);
        @Nullable Entry<Engine> engine = in.chosen(ENGINE, Engine.class);
        Set<Zone> zones = ZonesTyped.read(in, ZONES);
        Moment opened = values.moment(OPENED, OPENED_TIME);
        boolean open = in.text(CLOSED).isEmpty();
        Moment closed = open ? null : values.moment(CLOSED, CLOSED_TIME);
        if (open) {
            in.note(CLOSED, SheetNote.of("still_open"));
        }
        if (opened != null && closed != null && closed.isBefore(opened)) {
            in.wrong(CLOSED, ProblemKind.ENDS_BEFORE_IT_BEGINS, "", opened, closed);
        }
        if (!in.fine() || engine == null || opened == null || zones.isEmpty()) {
            return;
        }
        int number = next(in.sight(), engine.id());
        in.note(ENGINE, SheetNote.of("build_number", number));
        Build build = new Build(engine.id(), number, zones, opened, closed, in.text(SIGNED), in.text(NOTE));
        if (closed != null && !build.signedBy().isEmpty() && !in.isCorrecting()) {
            Lessons.stop(in, SIGNED, build, closed);
        }
        if (in.fine() && closed == null && zones.contains(Zone.OUT_OF_CAR)) {
            inCar(in, engine.id(), opened);
        }
        if (in.fine()) {
            in.make(OPENED, build);
        }
    }

    /**
     * Out of its car to be opened, it stays in it here: mostly it goes back, and a run while it is open is asked about. Where
     * another takes its place that is written when that goes in.
     */
    private static void inCar(ReadSheet in, Id<Engine> engine, Moment opened) {
        in.sight()
                .view()
                .ledger()
                .carOf(engine, opened)
                .ifPresent(stay -> in.note(
                        OPENED,
                        SheetNote.of(
                                "in_car_here",
                                in.sight().name(Car.class, stay.fact().car()))));
    }

    /** The number of the next build of an engine. */
    static int next(SheetSight sight, Id<Engine> engine) {
        return 1
                + sight.facts().of(Build.class).all().stream()
                        .filter(build -> build.fact().engine().equals(engine))
                        .mapToInt(build -> build.fact().number())
                        .max()
                        .orElse(0);
    }

    @Override
    public Optional<Map<SheetField, String>> written(Fact fact, SheetSight sight) {
        if (!(fact instanceof Build build)) {
            return Optional.empty();
        }
        Map<SheetField, String> out = new HashMap<>();
        out.put(ENGINE, build.engine().text());
        out.put(ZONES, AsText.codes(List.copyOf(build.zones())));
        out.put(OPENED, AsText.day(build.opened()));
        out.put(OPENED_TIME, AsText.clock(build.opened()));
        out.put(CLOSED, AsText.day(build.closed()));
        out.put(CLOSED_TIME, AsText.clock(build.closed()));
        out.put(SIGNED, build.signedBy());
        out.put(NOTE, build.note());
        return Optional.of(out);
    }

    @Override
    public List<String> about(SheetTyped typed, SheetSight sight) {
        return List.of(sight.find(Engine.class, typed.text(ENGINE))
                .map(engine -> engine.fact().number())
                .orElse(""));
    }
}
