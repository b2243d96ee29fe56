package witnessmark.logbook.run;

import java.time.LocalDate;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Car;
import witnessmark.domain.Engine;
import witnessmark.domain.EngineInCar;
import witnessmark.domain.Entry;
import witnessmark.domain.Facts;
import witnessmark.domain.Id;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;

/** Why a run has no engine: none was in the car, or one went in that day without a time, which means in the evening. */
final class NoEngine {
    private NoEngine() {}

    static Problem in(Facts facts, @Nullable Id<Car> car, @Nullable LocalDate day) {
        String name = car == null ? "" : facts.of(Car.class).get(car).name();
        Optional<EngineInCar> thatEvening = facts.of(EngineInCar.class)
                .inForce()
                .map(Entry::fact)
                .filter(in -> in.car().equals(car))
                .filter(in -> in.from().dayOnly() && in.from().day().equals(day))
                .findFirst();
        return thatEvening
                .map(in -> Problem.of(
                        ProblemKind.ENGINE_IN_THAT_EVENING,
                        name,
                        facts.of(Engine.class).get(in.engine()).number(),
                        in.from().day()))
                .orElse(Problem.of(ProblemKind.NO_ENGINE_IN_CAR, name));
    }
}
