package witnessmark.ledger;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Build;
import witnessmark.domain.EngineInCar;
import witnessmark.domain.Entry;
import witnessmark.domain.Fact;
import witnessmark.domain.Facts;
import witnessmark.domain.Fitment;
import witnessmark.domain.Id;
import witnessmark.domain.PriorKind;
import witnessmark.domain.PriorLife;
import witnessmark.domain.Run;
import witnessmark.domain.ToldRunning;
import witnessmark.domain.Work;
import witnessmark.quantity.Counter;
import witnessmark.quantity.Moment;

/** What is written of parts and engines for after the day looked at: it says that the day knows less. Immutable. */
final class Later {
    private static final Set<Class<? extends Fact>> KINDS = Set.of(
            Fitment.class, PriorLife.class, Work.class, Run.class, ToldRunning.class, Build.class, EngineInCar.class);

    private final Map<Id<?>, Moment> first = new HashMap<>();
    private final Map<Id<?>, List<PriorLife>> carriedIn = new HashMap<>();

    private Later() {}

    static Later of(Facts facts, Cutoff cutoff) {
        Later later = new Later();
        KINDS.forEach(kind -> later.add(facts, kind, cutoff));
        return later;
    }

    /** The same once a change is in: this one where the change wrote nothing for after the day. */
    Later after(Facts older, Facts newer, Cutoff cutoff) {
        for (Class<? extends Fact> kind : KINDS) {
            if (changed(older, newer, kind, cutoff)) {
                return of(newer, cutoff);
            }
        }
        return this;
    }

    /** Whether nothing is written for after the day, as is usual of today. */
    boolean isEmpty() {
        return first.isEmpty();
    }

    /** When the first entry after the day happened, or null when there is none. */
    @Nullable
    Moment first(Id<?> of) {
        return first.get(of);
    }

    /** The lives stated after the day as carried in, in no order. */
    List<PriorLife> carriedIn(Id<?> of) {
        return carriedIn.getOrDefault(of, List.of());
    }

    /**
     * When something other than nothing is first stated, by this counter, or where no life says this counter, by any:
     * how much of it was run by the day nobody can say. Null when nothing is.
     */
    static @Nullable Moment stated(List<PriorLife> carriedIn, Counter counter) {
        List<PriorLife> own =
                carriedIn.stream().filter(prior -> prior.counter() == counter).toList();
        return (own.isEmpty() ? carriedIn : own)
                .stream()
                        .filter(prior -> prior.kind() != PriorKind.KNOWN || prior.amount() > 0)
                        .map(PriorLife::at)
                        .min(Moment::compareTo)
                        .orElse(null);
    }

    private <F extends Fact> void add(Facts facts, Class<F> kind, Cutoff cutoff) {
        for (Entry<F> entry : facts.of(kind).all()) {
            if (cutoff.isBefore(entry)) {
                add(entry.fact());
            }
        }
    }

    private void add(Fact fact) {
        Moment at = fact.happened();
        for (Id<?> of : at == null ? List.<Id<?>>of() : concerns(fact)) {
            first.merge(of, at, (one, other) -> other.isBefore(one) ? other : one);
            if (fact instanceof PriorLife prior) {
                carriedIn.computeIfAbsent(of, id -> new ArrayList<>()).add(prior);
            }
        }
    }

    private static List<Id<?>> concerns(Fact fact) {
        List<Id<?>> concerned = new ArrayList<>();
        if (fact instanceof Fitment fitment) {
            add(concerned, fitment.part());
            add(concerned, fitment.engine());
        } else if (fact instanceof PriorLife prior) {
            add(concerned, prior.part());
            add(concerned, prior.engine());
        } else if (fact instanceof Work work) {
            add(concerned, work.part());
        } else if (fact instanceof Run run) {
            add(concerned, run.engine());
        } else if (fact instanceof ToldRunning told) {
            add(concerned, told.engine());
        } else if (fact instanceof Build build) {
            add(concerned, build.engine());
        } else if (fact instanceof EngineInCar stay) {
            add(concerned, stay.engine());
        }
        return concerned;
    }

    private static void add(List<Id<?>> concerned, @Nullable Id<?> id) {
        if (id != null) {
            concerned.add(id);
        }
    }

    private static <F extends Fact> boolean changed(Facts older, Facts newer, Class<F> kind, Cutoff cutoff) {
        Diff<F> diff = Diff.between(older.of(kind), newer.of(kind));
        return diff == null
                || diff.gone().stream().anyMatch(cutoff::isBefore)
                || diff.come().stream().anyMatch(cutoff::isBefore);
    }
}
