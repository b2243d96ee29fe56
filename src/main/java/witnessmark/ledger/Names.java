package witnessmark.ledger;

import org.jspecify.annotations.Nullable;
import witnessmark.domain.Car;
import witnessmark.domain.Engine;
import witnessmark.domain.EngineDesign;
import witnessmark.domain.Fact;
import witnessmark.domain.Facts;
import witnessmark.domain.Fitment;
import witnessmark.domain.Id;
import witnessmark.domain.Part;
import witnessmark.domain.PartDesign;
import witnessmark.domain.PlannedRun;
import witnessmark.domain.Position;
import witnessmark.domain.StockBatch;

/** What people call things, for the facts of a problem. */
record Names(Facts facts) {
    String of(Id<Engine> engine) {
        return name(Engine.class, engine);
    }

    String car(Id<Car> car) {
        return name(Car.class, car);
    }

    String part(Id<Part> part) {
        return name(Part.class, part);
    }

    String position(Id<Position> position) {
        return name(Position.class, position);
    }

    String planned(Id<PlannedRun> planned) {
        return name(PlannedRun.class, planned);
    }

    String design(Id<EngineDesign> design) {
        return name(EngineDesign.class, design);
    }

    /** Items on the shelf: what they are and of which batch. */
    String batch(Id<StockBatch> id) {
        return facts.of(StockBatch.class)
                .find(id)
                .map(batch -> name(PartDesign.class, batch.fact().design()) + " "
                        + batch.fact().batch())
                .orElse("");
    }

    /** The engine or car a part is fitted to. */
    String place(Fitment fitment) {
        Id<Engine> engine = fitment.engine();
        Id<Car> car = fitment.car();
        return engine != null ? of(engine) : car != null ? car(car) : "";
    }

    private <F extends Fact> String name(Class<F> kind, Id<F> id) {
        @Nullable
        String known =
                facts.of(kind).find(id).map(entry -> entry.fact().knownAs()).orElse(null);
        return known == null ? id.text() : known;
    }
}
