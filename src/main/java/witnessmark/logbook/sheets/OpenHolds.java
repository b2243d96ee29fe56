package witnessmark.logbook.sheets;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Engine;
import witnessmark.domain.Hold;
import witnessmark.domain.Id;
import witnessmark.domain.Part;
import witnessmark.domain.PartDesign;
import witnessmark.domain.Reading;
import witnessmark.domain.TriggerKind;
import witnessmark.ledger.result.HeldBy;
import witnessmark.quantity.EngineSpeed;
import witnessmark.quantity.Pressure;
import witnessmark.quantity.Temperature;

/** What holds something now, as it can be picked to be signed clear: line by line, and all that one cause held. */
final class OpenHolds {
    private final SheetSight sight;
    private final Map<String, HeldBy> lines = new LinkedHashMap<>();
    private final Map<String, List<HeldBy>> causes = new LinkedHashMap<>();

    OpenHolds(SheetSight sight) {
        this.sight = sight;
        for (HeldBy by : sight.standing().open()) {
            lines.put(cause(by) + text(by.part()), by);
            causes.computeIfAbsent(cause(by), key -> new ArrayList<>()).add(by);
        }
    }

    /**
     * What a clearance is to answer.
     *
     * @param by what holds
     * @param all whether all that it held is signed clear, rather than the one part
     */
    record Picked(HeldBy by, boolean all) {
        Id<?> cause() {
            return by.cause().id();
        }

        @Nullable
        Id<Part> part() {
            return all ? null : by.part();
        }

        /** What is to be looked at before it may be cleared. */
        String asks() {
            return by.asks();
        }
    }

    List<Choice> choices() {
        List<Choice> choices = new ArrayList<>();
        causes.forEach((cause, held) -> {
            if (held.size() > 1) {
                choices.add(Choice.of(
                        cause,
                        SheetNote.of(
                                "held_all", happened(held.get(0)), held.get(0).since(), held.size())));
            }
            held.forEach(by -> choices.add(Choice.of(cause + text(by.part()), line(by))));
        });
        return choices;
    }

    Optional<Picked> picked(String key) {
        List<HeldBy> all = causes.getOrDefault(key, List.of());
        return all.size() > 1
                ? Optional.of(new Picked(all.get(0), true))
                : Optional.ofNullable(lines.get(key)).map(by -> new Picked(by, false));
    }

    /** All that is to be signed clear by it. */
    List<HeldBy> held(Picked picked) {
        return picked.all() ? List.copyOf(causes.getOrDefault(cause(picked.by()), List.of())) : List.of(picked.by());
    }

    /** What is held, by its name. */
    String name(Picked picked) {
        Id<Part> part = picked.part();
        Id<Engine> engine = picked.by().engine();
        return part != null
                ? sight.name(Part.class, part)
                : engine != null
                        ? sight.name(Engine.class, engine)
                        : sight.name(
                                Part.class, Objects.requireNonNull(picked.by().part()));
    }

    private SheetNote line(HeldBy by) {
        Id<Part> part = by.part();
        if (part == null) {
            return SheetNote.of(
                    "held_engine",
                    happened(by),
                    by.since(),
                    by.engine() == null ? "" : sight.name(Engine.class, by.engine()));
        }
        Part held = sight.facts().of(Part.class).get(part);
        return SheetNote.of(
                "held_part",
                happened(by),
                by.since(),
                sight.facts().of(PartDesign.class).get(held.design()).kind(),
                held.mark());
    }

    /** What happened: a figure of a run, a grade, or what somebody saw. */
    private Object happened(HeldBy by) {
        TriggerKind kind = by.rule() == null ? null : by.rule().fact().kind();
        if (by.figure() != null && kind != null) {
            return reached(kind, by.figure());
        }
        if (by.cause().fact() instanceof Reading reading && reading.grade() != null) {
            return SheetNote.of(
                    kind == TriggerKind.WORSE_TWICE ? "worse_twice" : "graded", reading.kind(), reading.grade());
        }
        return by.cause().fact() instanceof Hold hold ? hold.why() : nameOf(by);
    }

    private static Object reached(TriggerKind kind, long figure) {
        return switch (kind) {
            case SPEED_ABOVE -> new EngineSpeed(Math.toIntExact(figure));
            case WATER_ABOVE -> SheetNote.of("water", new Temperature(figure));
            case OIL_ABOVE -> SheetNote.of("oil", new Temperature(figure));
            case OIL_PRESSURE_BELOW -> SheetNote.of("oil_pressure", new Pressure(figure));
            case GRADED, WORSE_TWICE -> throw new IllegalArgumentException("a grade is no figure");
        };
    }

    private static String nameOf(HeldBy by) {
        return by.rule() == null ? "" : by.rule().fact().name();
    }

    private static String cause(HeldBy by) {
        return by.cause().id().text() + "|"
                + text(by.rule() == null ? null : by.rule().id()) + "|";
    }

    private static String text(@Nullable Id<?> id) {
        return id == null ? "" : id.text();
    }
}
