package witnessmark.ledger;

import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Car;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Fitment;
import witnessmark.domain.Id;
import witnessmark.domain.Part;
import witnessmark.domain.PartDesign;
import witnessmark.domain.Position;
import witnessmark.outcome.ProblemKind;
import witnessmark.quantity.Moment;

/** Parts that cannot have been where they are said to have been. */
final class FitmentChecks {
    private final Surroundings around;
    private final Clashes clashes;

    FitmentChecks(Surroundings around, Clashes clashes) {
        this.around = around;
        this.clashes = clashes;
    }

    void check() {
        for (Id<Engine> engine : around.inEngines.owners()) {
            around.positions(around.inEngines.of(engine))
                    .values()
                    .forEach(spans -> spans.eachOverlap(around::changed, this::twoParts));
        }
        for (Id<Car> car : around.inCars.owners()) {
            around.positions(around.inCars.of(car))
                    .values()
                    .forEach(spans -> spans.eachOverlap(around::changed, this::twoParts));
        }
        for (Id<Part> part : around.parts.owners()) {
            around.fitments(around.parts.of(part)).eachOverlap(around::changed, this::twoPlaces);
            around.facts.of(Part.class).find(part).ifPresent(this::check);
        }
    }

    private void check(Entry<Part> part) {
        Entry<Fitment> first = first(part);
        for (Entry<Fitment> fitment : around.parts.of(part.id())) {
            boolean changed = around.changed(fitment);
            if (changed || around.changed(part)) {
                bought(part.fact(), fitment);
                stillInItsSet(part.fact(), fitment);
            }
            if (changed) {
                positionFits(fitment);
                if (first != null && !first.id().equals(fitment.id())) {
                    usedAgain(part, first, fitment);
                }
            }
        }
        List<Entry<Fitment>> uses = around.parts.of(part.id());
        if (first != null && uses.size() > 1 && around.changed(first) && !around.changed(uses.get(1))) {
            usedAgain(part, first, first);
        }
    }

    private void twoParts(Entry<Fitment> fitment, Entry<Fitment> other) {
        if (!fitment.fact().part().equals(other.fact().part())) {
            clashes.add(
                    fitment,
                    ProblemKind.TWO_PARTS_IN_POSITION,
                    around.names.position(fitment.fact().position()),
                    around.names.place(fitment.fact()),
                    around.names.part(other.fact().part()),
                    around.names.part(fitment.fact().part()),
                    Spans.later(fitment.fact().from(), other.fact().from()));
        }
    }

    private void twoPlaces(Entry<Fitment> fitment, Entry<Fitment> other) {
        clashes.add(
                fitment,
                ProblemKind.PART_IN_TWO_PLACES,
                around.names.part(fitment.fact().part()),
                around.names.place(other.fact()),
                around.names.place(fitment.fact()),
                Spans.later(fitment.fact().from(), other.fact().from()));
    }

    private void stillInItsSet(Part part, Entry<Fitment> fitment) {
        Moment from = fitment.fact().from();
        if (part.ofSet() != null && part.splitAt() != null && from.isBefore(part.splitAt())) {
            clashes.add(
                    fitment,
                    ProblemKind.PART_IN_TWO_PLACES,
                    part.mark(),
                    around.names.part(part.ofSet()),
                    around.names.place(fitment.fact()),
                    from);
        }
    }

    private void bought(Part part, Entry<Fitment> fitment) {
        LocalDate fitted = fitment.fact().from().day();
        LocalDate bought = part.boughtOn();
        if (bought != null && fitted.isBefore(bought)) {
            clashes.add(fitment, ProblemKind.FITTED_BEFORE_BOUGHT, part.mark(), fitted, bought);
        }
    }

    private void usedAgain(Entry<Part> part, Entry<Fitment> first, Entry<Fitment> again) {
        boolean once = around.facts
                .of(PartDesign.class)
                .find(part.fact().design())
                .map(design -> design.fact().singleUse())
                .orElse(false);
        if (once) {
            clashes.add(again, ProblemKind.SINGLE_USE_AGAIN, part.fact().mark(), around.names.place(first.fact()));
        }
    }

    /** The first fitment of a part, or that of the set it was split from when that was fitted. */
    private @Nullable Entry<Fitment> first(Entry<Part> part) {
        Entry<Fitment> first = null;
        for (Tenure tenure : Tenure.of(around.facts.of(Part.class), part.id())) {
            for (Entry<Fitment> fitment : around.parts.of(tenure.part())) {
                Moment from = fitment.fact().from();
                if (from.epochMillis() < tenure.to()
                        && (first == null || from.isBefore(first.fact().from()))) {
                    first = fitment;
                }
            }
        }
        return first;
    }

    private void positionFits(Entry<Fitment> entry) {
        Fitment fitment = entry.fact();
        Entry<Position> position =
                around.facts.of(Position.class).find(fitment.position()).orElse(null);
        if (position == null) {
            return;
        }
        Position where = position.fact();
        boolean fits = where.car() != null
                ? where.car().equals(fitment.car())
                : Objects.equals(where.design(), around.design(fitment.engine()));
        if (!fits) {
            clashes.add(
                    entry,
                    ProblemKind.POSITION_OF_ANOTHER_DESIGN,
                    where.name(),
                    where.car() != null
                            ? around.names.car(where.car())
                            : around.names.design(Objects.requireNonNull(where.design())),
                    around.names.place(fitment));
        }
    }
}
