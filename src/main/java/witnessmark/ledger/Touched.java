package witnessmark.ledger;

import java.util.Collection;
import java.util.HashSet;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Build;
import witnessmark.domain.Car;
import witnessmark.domain.Engine;
import witnessmark.domain.EngineInCar;
import witnessmark.domain.Entry;
import witnessmark.domain.Fact;
import witnessmark.domain.Facts;
import witnessmark.domain.Fitment;
import witnessmark.domain.Id;
import witnessmark.domain.Part;
import witnessmark.domain.PriorLife;
import witnessmark.domain.Quarantine;
import witnessmark.domain.Run;
import witnessmark.domain.Scrapping;
import witnessmark.domain.SentOut;

/** Which engines, cars and parts changed entries have to do with. */
final class Touched {
    final Set<Id<Engine>> engines = new HashSet<>();
    final Set<Id<Car>> cars = new HashSet<>();
    final Set<Id<Part>> parts = new HashSet<>();

    Touched(Facts facts, Collection<? extends Entry<?>> changes) {
        for (Entry<?> entry : changes) {
            touch(entry.id(), entry.fact());
        }
        Set<Id<Engine>> ran = Set.copyOf(engines);
        Set<Id<Car>> drove = Set.copyOf(cars);
        addSets(facts);
        Set<Id<Part>> named = Set.copyOf(parts);
        for (Entry<Fitment> entry : facts.of(Fitment.class).all()) {
            Fitment fitment = entry.fact();
            if (named.contains(fitment.part())) {
                add(engines, fitment.engine());
                add(cars, fitment.car());
            }
            if (contains(ran, fitment.engine()) || contains(drove, fitment.car())) {
                parts.add(fitment.part());
            }
        }
        addMembers(facts);
        addSets(facts);
    }

    private void touch(Id<?> id, Fact fact) {
        if (fact instanceof Run run) {
            engines.add(run.engine());
            add(cars, run.car());
        } else if (fact instanceof Fitment fitment) {
            parts.add(fitment.part());
            add(engines, fitment.engine());
            add(cars, fitment.car());
        } else if (fact instanceof Build build) {
            engines.add(build.engine());
        } else if (fact instanceof EngineInCar stay) {
            engines.add(stay.engine());
            cars.add(stay.car());
        } else if (fact instanceof PriorLife prior) {
            add(parts, prior.part());
            add(engines, prior.engine());
        } else if (fact instanceof Quarantine quarantine) {
            parts.add(quarantine.part());
        } else if (fact instanceof Scrapping scrapping) {
            parts.add(scrapping.part());
        } else if (fact instanceof SentOut sent) {
            add(parts, sent.part());
            add(engines, sent.engine());
        } else if (fact instanceof Part) {
            parts.add(new Id<>(id.value()));
        } else if (fact instanceof Engine) {
            engines.add(new Id<>(id.value()));
        }
    }

    /** The sets these parts were split from. */
    private void addSets(Facts facts) {
        for (Id<Part> part : Set.copyOf(parts)) {
            Tenure.of(facts.of(Part.class), part).forEach(tenure -> parts.add(tenure.part()));
        }
    }

    /** What was split from these parts. */
    private void addMembers(Facts facts) {
        int before = -1;
        while (before < parts.size()) {
            before = parts.size();
            for (Entry<Part> entry : facts.of(Part.class).all()) {
                if (contains(parts, entry.fact().ofSet())) {
                    parts.add(entry.id());
                }
            }
        }
    }

    private static <F extends Fact> void add(Set<Id<F>> set, @Nullable Id<F> id) {
        if (id != null) {
            set.add(id);
        }
    }

    private static <F extends Fact> boolean contains(Set<Id<F>> set, @Nullable Id<F> id) {
        return id != null && set.contains(id);
    }
}
