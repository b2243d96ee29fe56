package witnessmark.logbook.run;

import java.util.EnumMap;
import java.util.Map;
import java.util.UUID;
import witnessmark.domain.Car;
import witnessmark.domain.Coded;
import witnessmark.domain.DriverAsked;
import witnessmark.domain.Engine;
import witnessmark.domain.Event;
import witnessmark.domain.Fact;
import witnessmark.domain.Facts;
import witnessmark.domain.HowKnown;
import witnessmark.domain.Id;
import witnessmark.domain.Person;
import witnessmark.domain.PlannedRun;

/**
 * What was picked, held against what the logbook has now: a draft may name an event that was taken back since. Such a
 * choice is left out, as if nothing were picked.
 */
final class Picked {
    private final Facts facts;

    Picked(Facts facts) {
        this.facts = facts;
    }

    /** The same fields without the choices that name nothing, or a planned run of another event. */
    Map<RunField, String> sound(Map<RunField, String> typed) {
        Map<RunField, String> sound = new EnumMap<>(RunField.class);
        typed.forEach((field, text) -> {
            if (!field.chosen() || isSound(field, text)) {
                sound.put(field, text);
            }
        });
        Keys.planned(sound.getOrDefault(RunField.PLANNED, ""))
                .filter(planned ->
                        !facts.of(PlannedRun.class).get(planned).event().text().equals(sound.get(RunField.EVENT)))
                .ifPresent(other -> sound.remove(RunField.PLANNED));
        return sound;
    }

    private boolean isSound(RunField field, String key) {
        String name = key.substring(key.indexOf(':') + 1);
        return switch (field) {
            case CAR -> Keys.isCar(key) ? has(Car.class, name) : Keys.isEngine(key) && has(Engine.class, name);
            case EVENT -> has(Event.class, key);
            case PLANNED ->
                Keys.isPlanned(key)
                        ? has(PlannedRun.class, name)
                        : Keys.kind(key).isPresent();
            case DRIVER -> has(Person.class, key);
            case KNOWN -> isCode(HowKnown.values(), key);
            case DRIVER_ASKED -> isCode(DriverAsked.values(), key);
            default -> true;
        };
    }

    private <F extends Fact> boolean has(Class<F> kind, String id) {
        try {
            return facts.of(kind).find(new Id<F>(UUID.fromString(id))).isPresent();
        } catch (IllegalArgumentException notAnId) {
            return false;
        }
    }

    private static boolean isCode(Coded[] all, String code) {
        for (Coded each : all) {
            if (each.code().equals(code)) {
                return true;
            }
        }
        return false;
    }
}
