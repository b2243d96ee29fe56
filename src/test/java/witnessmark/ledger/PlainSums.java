package witnessmark.ledger;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Build;
import witnessmark.domain.Car;
import witnessmark.domain.Engine;
import witnessmark.domain.EngineInCar;
import witnessmark.domain.Entry;
import witnessmark.domain.Fact;
import witnessmark.domain.Facts;
import witnessmark.domain.Fitment;
import witnessmark.domain.HowKnown;
import witnessmark.domain.Id;
import witnessmark.domain.Part;
import witnessmark.domain.PriorKind;
import witnessmark.domain.PriorLife;
import witnessmark.domain.Run;
import witnessmark.domain.Standing;
import witnessmark.domain.ToldRunning;
import witnessmark.domain.Work;
import witnessmark.ledger.result.Life;
import witnessmark.quantity.Counter;
import witnessmark.quantity.Moment;

/**
 * The sums of the ledger done the long way: every run against every fitment, straight from the definition, with integers
 * of any size and nothing kept. It shares no code with the ledger, so that the two can be held against each other.
 */
final class PlainSums {
    private final Facts facts;
    private final long last;

    PlainSums(Facts facts, AsOf asOf) {
        this.facts = facts;
        this.last = asOf.day().plusDays(1).atStartOfDay(asOf.zone()).toInstant().toEpochMilli() - 1;
    }

    /** What counts of one kind, by the definition. */
    <F extends Fact> List<Entry<F>> counting(Class<F> kind) {
        List<Entry<F>> counting = new ArrayList<>();
        for (Entry<F> entry : facts.of(kind).all()) {
            if (entry.standing() == Standing.IN_FORCE && entry.fact().happened().epochMillis() <= last) {
                counting.add(entry);
            }
        }
        return counting;
    }

    Life life(Id<Part> part, Counter counter, @Nullable Moment since) {
        Sum sum = new Sum(counter);
        long from = carriedIn(sum, partPriors(part, Long.MAX_VALUE), partEntries(part, Long.MAX_VALUE), counter, since);
        List<Entry<Run>> runs = counting(Run.class);
        List<Entry<ToldRunning>> stretches = counting(ToldRunning.class);
        for (Entry<Fitment> fitment : counting(Fitment.class)) {
            for (Entry<Run> run : runs) {
                if (charged(part, fitment.fact(), run.fact())
                        && at(run) >= from
                        && run.fact().perhapsSame() == null) {
                    sum.run(run.fact());
                }
            }
            for (Entry<ToldRunning> told : stretches) {
                boolean there =
                        told.fact().engine().equals(fitment.fact().engine()) && on(part, fitment.fact(), at(told));
                if (there && at(told) >= from) {
                    sum.told(told.fact());
                }
            }
        }
        return sum.life();
    }

    Life engineLife(Id<Engine> engine, Counter counter, @Nullable Moment since) {
        Sum sum = new Sum(counter);
        List<Entry<PriorLife>> priors = new ArrayList<>();
        for (Entry<PriorLife> prior : counting(PriorLife.class)) {
            if (engine.equals(prior.fact().engine())) {
                priors.add(prior);
            }
        }
        inOrder(priors);
        long from = carriedIn(sum, priors, engineEntries(engine), counter, since);
        for (Entry<Run> run : counting(Run.class)) {
            if (run.fact().engine().equals(engine)
                    && at(run) >= from
                    && run.fact().perhapsSame() == null) {
                sum.run(run.fact());
            }
        }
        for (Entry<ToldRunning> told : counting(ToldRunning.class)) {
            if (told.fact().engine().equals(engine) && at(told) >= from) {
                sum.told(told.fact());
            }
        }
        return sum.life();
    }

    Life carLife(Id<Car> car, Counter counter) {
        Sum sum = new Sum(counter);
        for (Entry<Run> run : counting(Run.class)) {
            if (car.equals(run.fact().car()) && run.fact().perhapsSame() == null) {
                sum.run(run.fact());
            }
        }
        return sum.life();
    }

    /** The runs a part was charged, those that stand aside or ran before a prior life included. */
    Set<Id<Run>> chargedTo(Id<Part> part) {
        Set<Id<Run>> charged = new TreeSet<>();
        List<Entry<Run>> runs = counting(Run.class);
        for (Entry<Fitment> fitment : counting(Fitment.class)) {
            for (Entry<Run> run : runs) {
                if (charged(part, fitment.fact(), run.fact())) {
                    charged.add(run.id());
                }
            }
        }
        return charged;
    }

    private boolean charged(Id<Part> part, Fitment fitment, Run run) {
        boolean here = run.engine().equals(fitment.engine())
                || (fitment.car() != null && fitment.car().equals(run.car()));
        return here && on(part, fitment, run.start().epochMillis());
    }

    /** Whether a fitment had this part in it at a moment, by itself or within the set it was then part of. */
    private boolean on(Id<Part> part, Fitment fitment, long moment) {
        Part fact = facts.of(Part.class).get(part);
        if (fact.ofSet() != null && moment < fact.splitAt().epochMillis()) {
            return on(fact.ofSet(), fitment, moment);
        }
        return fitment.part().equals(part)
                && fitment.from().epochMillis() <= moment
                && (fitment.to() == null || moment < fitment.to().epochMillis());
    }

    /** A part's own prior lives; before them in the list those of its set stated by the moment of splitting. */
    private List<Entry<PriorLife>> partPriors(Id<Part> part, long until) {
        Part fact = facts.of(Part.class).get(part);
        List<Entry<PriorLife>> priors = new ArrayList<>();
        if (fact.ofSet() != null) {
            priors.addAll(
                    partPriors(fact.ofSet(), Math.min(until, fact.splitAt().epochMillis())));
        }
        List<Entry<PriorLife>> own = new ArrayList<>();
        for (Entry<PriorLife> prior : counting(PriorLife.class)) {
            if (part.equals(prior.fact().part()) && at(prior) <= until) {
                own.add(prior);
            }
        }
        inOrder(own);
        priors.addAll(own);
        return priors;
    }

    private static void inOrder(List<Entry<PriorLife>> priors) {
        priors.sort((one, other) -> at(one) != at(other)
                ? Long.compare(at(one), at(other))
                : one.id().value().compareTo(other.id().value()));
    }

    /** Adds what was carried in and says from when on runs are added. */
    private long carriedIn(
            Sum sum, List<Entry<PriorLife>> priors, List<Entry<?>> entries, Counter counter, @Nullable Moment since) {
        PriorLife holds = null;
        boolean unsaid = false;
        for (Entry<PriorLife> prior : priors) {
            PriorLife fact = prior.fact();
            if (fact.counter() == counter) {
                // The list stands in the order in which a later one holds.
                holds = fact;
            } else if (fact.amount() > 0 || fact.kind() != PriorKind.KNOWN) {
                unsaid |= since == null || fact.at().epochMillis() > since.epochMillis();
            }
        }
        if (holds == null) {
            sum.atLeast = unsaid || after(firstEntry(entries), since) || after(carriedInLater(entries, counter), since);
            return since == null ? Long.MIN_VALUE : since.epochMillis();
        }
        long stated = holds.at().epochMillis();
        if (since == null || stated > since.epochMillis()) {
            sum.prior(holds, since != null);
        }
        return since == null ? stated : Math.max(stated, since.epochMillis());
    }

    private static boolean after(@Nullable Long moment, @Nullable Moment since) {
        return moment != null && (since == null || moment > since.epochMillis());
    }

    /** The first of these entries, when it happened after the day; null when it did not, or there is none. */
    private @Nullable Long firstEntry(List<Entry<?>> entries) {
        Long first = entries.stream().map(PlainSums::at).min(Long::compare).orElse(null);
        return first == null || first <= last ? null : first;
    }

    /** When a life that is not nothing is first stated after the day, by this counter where any of them is. */
    private @Nullable Long carriedInLater(List<Entry<?>> entries, Counter counter) {
        List<PriorLife> later = new ArrayList<>();
        for (Entry<?> entry : entries) {
            if (entry.fact() instanceof PriorLife prior && at(entry) > last) {
                later.add(prior);
            }
        }
        boolean own = later.stream().anyMatch(prior -> prior.counter() == counter);
        Long first = null;
        for (PriorLife prior : later) {
            boolean nothing = prior.kind() == PriorKind.KNOWN && prior.amount() == 0;
            if (!nothing && (!own || prior.counter() == counter)) {
                long at = prior.at().epochMillis();
                first = first == null ? at : Math.min(first, at);
            }
        }
        return first;
    }

    /** Everything in force that is written of a part, of any day; of its set what happened by the moment of splitting. */
    private List<Entry<?>> partEntries(Id<Part> part, long until) {
        List<Entry<?>> entries = new ArrayList<>();
        Part fact = facts.of(Part.class).get(part);
        if (fact.ofSet() != null) {
            entries.addAll(
                    partEntries(fact.ofSet(), Math.min(until, fact.splitAt().epochMillis())));
        }
        inForce(entries, Fitment.class, fitment -> part.equals(fitment.part()));
        inForce(entries, PriorLife.class, prior -> part.equals(prior.part()));
        inForce(entries, Work.class, work -> part.equals(work.part()));
        entries.removeIf(entry -> at(entry) > until);
        return entries;
    }

    private List<Entry<?>> engineEntries(Id<Engine> engine) {
        List<Entry<?>> entries = new ArrayList<>();
        inForce(entries, Run.class, run -> engine.equals(run.engine()));
        inForce(entries, ToldRunning.class, told -> engine.equals(told.engine()));
        inForce(entries, PriorLife.class, prior -> engine.equals(prior.engine()));
        inForce(entries, Build.class, build -> engine.equals(build.engine()));
        inForce(entries, EngineInCar.class, stay -> engine.equals(stay.engine()));
        inForce(entries, Fitment.class, fitment -> engine.equals(fitment.engine()));
        return entries;
    }

    private <F extends Fact> void inForce(List<Entry<?>> entries, Class<F> kind, Predicate<F> of) {
        for (Entry<F> entry : facts.of(kind).all()) {
            if (entry.standing() == Standing.IN_FORCE && of.test(entry.fact())) {
                entries.add(entry);
            }
        }
    }

    private static long at(Entry<?> entry) {
        return entry.fact().happened().epochMillis();
    }

    /** A sum without bounds. */
    private static final class Sum {
        private final Counter counter;
        private BigInteger known = BigInteger.ZERO;
        private BigInteger told = BigInteger.ZERO;
        private BigInteger least = BigInteger.ZERO;
        private BigInteger most = BigInteger.ZERO;
        private BigInteger estimated = BigInteger.ZERO;
        private boolean atLeast;
        private int runs;
        private int unread;

        Sum(Counter counter) {
            this.counter = counter;
        }

        void run(Run run) {
            runs++;
            Long amount = run.of(counter);
            if (amount == null) {
                unread++;
                return;
            }
            HowKnown how = run.knownBy().of(counter);
            if (how == HowKnown.ESTIMATED) {
                estimated = estimated.add(BigInteger.valueOf(amount));
            } else if (how == HowKnown.TOLD) {
                told(amount, amount, amount);
            } else {
                known = known.add(BigInteger.valueOf(amount));
            }
        }

        void told(ToldRunning told) {
            runs++;
            if (counter != Counter.RUNNING) {
                unread++;
                return;
            }
            told(told.lowest().millis(), told.likely().millis(), told.highest().millis());
        }

        void prior(PriorLife prior, boolean perhaps) {
            if (prior.kind() == PriorKind.KNOWN && !perhaps) {
                known = known.add(BigInteger.valueOf(prior.amount()));
                return;
            }
            boolean unknown = prior.kind() == PriorKind.UNKNOWN;
            atLeast |= unknown;
            told(perhaps ? 0 : prior.lowest(), prior.amount(), unknown ? prior.amount() : prior.highest());
        }

        private void told(long lowest, long likely, long highest) {
            least = least.add(BigInteger.valueOf(lowest));
            told = told.add(BigInteger.valueOf(likely));
            most = most.add(BigInteger.valueOf(highest));
        }

        Life life() {
            return new Life(
                    counter,
                    known.longValueExact(),
                    told.longValueExact(),
                    least.longValueExact(),
                    most.longValueExact(),
                    estimated.longValueExact(),
                    atLeast,
                    runs,
                    unread);
        }
    }
}
