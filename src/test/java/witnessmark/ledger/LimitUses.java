package witnessmark.ledger;

import java.util.List;
import java.util.Optional;
import witnessmark.domain.Car;
import witnessmark.domain.Engine;
import witnessmark.domain.Id;
import witnessmark.domain.Part;
import witnessmark.ledger.result.LimitUse;
import witnessmark.ledger.result.Mark;

/** The limits among the marks, worst first. */
public final class LimitUses {
    private final Marks marks;

    public LimitUses(LifeLedger ledger) {
        this.marks = new Marks(ledger);
    }

    public List<LimitUse> of(Id<Engine> engine) {
        return among(marks.ofEngine(engine));
    }

    List<LimitUse> ofCar(Id<Car> car) {
        return among(marks.ofCar(car));
    }

    List<LimitUse> ofPart(Id<Part> part) {
        return among(marks.ofPart(part));
    }

    public List<LimitUse> all() {
        return among(marks.all());
    }

    /** The limit a mark is held against, if it is one of running, age or uses. */
    static Optional<LimitUse> of(Mark mark) {
        return mark.reason() instanceof LimitUse use ? Optional.of(use) : Optional.empty();
    }

    private static List<LimitUse> among(List<Mark> all) {
        return all.stream().map(LimitUses::of).flatMap(Optional::stream).toList();
    }
}
