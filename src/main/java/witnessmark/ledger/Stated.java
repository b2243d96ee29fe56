package witnessmark.ledger;

import java.util.List;
import witnessmark.domain.Build;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Facts;
import witnessmark.domain.Id;
import witnessmark.domain.Part;
import witnessmark.domain.PriorLife;
import witnessmark.domain.Work;

/** What moves where a count begins: lives carried in, works, builds. Immutable. */
final class Stated {
    private final Grouped<Part, PriorLife> partPriors;
    private final Grouped<Engine, PriorLife> enginePriors;
    private final Grouped<Part, Work> works;
    private final Grouped<Engine, Build> builds;

    private Stated(
            Grouped<Part, PriorLife> partPriors,
            Grouped<Engine, PriorLife> enginePriors,
            Grouped<Part, Work> works,
            Grouped<Engine, Build> builds) {
        this.partPriors = partPriors;
        this.enginePriors = enginePriors;
        this.works = works;
        this.builds = builds;
    }

    static Stated of(Facts facts, Cutoff cutoff) {
        return new Stated(
                Grouped.of(facts.of(PriorLife.class), PriorLife::part, cutoff::counts),
                Grouped.of(facts.of(PriorLife.class), PriorLife::engine, cutoff::counts),
                Grouped.of(facts.of(Work.class), Work::part, cutoff::counts),
                Grouped.of(facts.of(Build.class), Build::engine, cutoff::counts));
    }

    /** The same once a change is in; what it does not touch is shared. */
    Stated after(Facts older, Facts newer, Cutoff cutoff) {
        Diff<PriorLife> priors = Diff.between(older.of(PriorLife.class), newer.of(PriorLife.class));
        Diff<Work> worked = Diff.between(older.of(Work.class), newer.of(Work.class));
        Diff<Build> built = Diff.between(older.of(Build.class), newer.of(Build.class));
        if (priors == null || worked == null || built == null) {
            return of(newer, cutoff);
        }
        return new Stated(
                partPriors.after(priors), enginePriors.after(priors), works.after(worked), builds.after(built));
    }

    /** Lives carried in with a part, every counter, oldest first. */
    List<Entry<PriorLife>> priors(Id<Part> part) {
        return partPriors.of(part);
    }

    List<Entry<PriorLife>> enginePriors(Id<Engine> engine) {
        return enginePriors.of(engine);
    }

    List<Entry<Work>> works(Id<Part> part) {
        return works.of(part);
    }

    List<Entry<Build>> builds(Id<Engine> engine) {
        return builds.of(engine);
    }
}
