package witnessmark.logbook.run;

import java.util.Arrays;
import java.util.Optional;
import witnessmark.domain.Car;
import witnessmark.domain.Engine;
import witnessmark.domain.Id;
import witnessmark.domain.PlannedRun;
import witnessmark.domain.RunKind;

/** The keys of choices that may be of two kinds: a car or an engine on the dyno, a planned run or a kind of run. */
final class Keys {
    private static final String CAR = "car:";
    private static final String ENGINE = "engine:";
    private static final String PLANNED = "planned:";
    private static final String KIND = "kind:";

    private Keys() {}

    static boolean isCar(String key) {
        return key.startsWith(CAR);
    }

    static boolean isEngine(String key) {
        return key.startsWith(ENGINE);
    }

    static boolean isPlanned(String key) {
        return key.startsWith(PLANNED);
    }

    static String car(Id<Car> id) {
        return CAR + id.text();
    }

    static String engine(Id<Engine> id) {
        return ENGINE + id.text();
    }

    static String planned(Id<PlannedRun> id) {
        return PLANNED + id.text();
    }

    static String kind(RunKind kind) {
        return KIND + kind.code();
    }

    static Optional<Id<Car>> car(String key) {
        return key.startsWith(CAR) ? Optional.of(Id.parse(key.substring(CAR.length()))) : Optional.empty();
    }

    static Optional<Id<Engine>> engine(String key) {
        return key.startsWith(ENGINE) ? Optional.of(Id.parse(key.substring(ENGINE.length()))) : Optional.empty();
    }

    static Optional<Id<PlannedRun>> planned(String key) {
        return key.startsWith(PLANNED) ? Optional.of(Id.parse(key.substring(PLANNED.length()))) : Optional.empty();
    }

    static Optional<RunKind> kind(String key) {
        return key.startsWith(KIND)
                ? Arrays.stream(RunKind.values())
                        .filter(kind -> kind.code().equals(key.substring(KIND.length())))
                        .findFirst()
                : Optional.empty();
    }
}
