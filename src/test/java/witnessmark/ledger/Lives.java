package witnessmark.ledger;

import java.util.ArrayList;
import java.util.List;
import witnessmark.domain.Car;
import witnessmark.domain.Engine;
import witnessmark.domain.Id;
import witnessmark.domain.Part;
import witnessmark.ledger.result.Life;
import witnessmark.quantity.Counter;

/** Every life of a history by every counter, in one list. */
final class Lives {
    private Lives() {}

    static List<Life> of(LifeLedger ledger, History history) {
        List<Life> lives = new ArrayList<>();
        for (Counter counter : Counter.fedByRuns()) {
            for (Id<Part> part : history.parts()) {
                lives.add(ledger.life(part, counter));
            }
            for (Id<Engine> engine : history.engines()) {
                lives.add(ledger.engineLife(engine, counter));
            }
            for (Id<Car> car : history.cars()) {
                lives.add(ledger.carLife(car, counter));
            }
        }
        return lives;
    }
}
