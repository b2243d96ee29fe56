package witnessmark.ledger;

import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Clearance;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Hold;
import witnessmark.domain.Id;
import witnessmark.domain.Limit;
import witnessmark.domain.LimitAction;
import witnessmark.domain.LimitRank;
import witnessmark.domain.PartKind;
import witnessmark.domain.Position;
import witnessmark.domain.Reading;
import witnessmark.domain.ReadingLimit;
import witnessmark.domain.Run;
import witnessmark.domain.RunOn;
import witnessmark.domain.Trigger;
import witnessmark.outcome.ProblemKind;
import witnessmark.quantity.Counter;
import witnessmark.quantity.Moment;

/** Limits and triggers that cannot do what they say, and signatures that cannot stand under what they sign. */
final class RuleChecks {
    private final Surroundings around;
    private final Clashes clashes;

    RuleChecks(Surroundings around, Clashes clashes) {
        this.around = around;
        this.clashes = clashes;
    }

    /** Whether any run of the engines it falls on says its counter, and whether it is looked at before it is renewed. */
    void checkLimit(Entry<Limit> entry) {
        Limit limit = entry.fact();
        if (limit.counter().isFedByRuns() && limit.counter() != Counter.RUNNING && nobodyReads(limit)) {
            clashes.add(entry, ProblemKind.COUNTER_NOT_RECORDED, limit.name(), limit.counter());
        }
        for (Entry<Limit> other : around.facts.of(Limit.class).where(each -> contradicts(limit, each))) {
            clashes.add(
                    entry,
                    ProblemKind.LIMITS_CONTRADICT,
                    limit.name(),
                    other.fact().name());
            return;
        }
    }

    private boolean nobodyReads(Limit limit) {
        List<Entry<Run>> runs = around.facts.of(Run.class).where(run -> falls(limit, run.engine()));
        return !runs.isEmpty() && runs.stream().allMatch(run -> run.fact().of(limit.counter()) == null);
    }

    private boolean falls(Limit limit, Id<Engine> engine) {
        return (limit.engine() == null || limit.engine().equals(engine))
                && (limit.design() == null
                        || around.facts
                                .of(Engine.class)
                                .find(engine)
                                .filter(each -> each.fact().design().equals(limit.design()))
                                .isPresent());
    }

    /** A look that would come no sooner than the renewing on the same counter never comes. */
    private static boolean contradicts(Limit one, Limit other) {
        boolean same = one.counter() == other.counter()
                && Objects.equals(one.design(), other.design())
                && one.partKind() == other.partKind()
                && Objects.equals(one.partDesign(), other.partDesign())
                && Objects.equals(one.part(), other.part())
                && Objects.equals(one.engine(), other.engine())
                && Objects.equals(one.car(), other.car())
                && one.validTo() == null
                && other.validTo() == null;
        if (!same || (one.action() == LimitAction.RENEW) == (other.action() == LimitAction.RENEW)) {
            return false;
        }
        Limit renew = one.action() == LimitAction.RENEW ? one : other;
        Limit look = renew == one ? other : one;
        return look.amount() >= renew.amount();
    }

    /** A trigger for parts that have no place in the engines it is for holds nothing. */
    void checkTrigger(Entry<Trigger> entry) {
        Trigger rule = entry.fact();
        if (rule.holds().isEmpty()) {
            return;
        }
        boolean any = around.facts
                .of(Position.class)
                .inForce()
                .map(Entry::fact)
                .filter(position -> position.design() != null)
                .filter(position -> rule.design() == null || rule.design().equals(position.design()))
                .anyMatch(position -> rule.holds().contains(position.kind()));
        if (!any) {
            clashes.add(
                    entry,
                    ProblemKind.TRIGGER_WITHOUT_PARTS,
                    rule.name(),
                    rule.holds().stream().sorted().map(PartKind.class::cast).toList());
        }
    }

    /** A rule-book limit is never passed; a maker's or builder's is asked about; a new figure lies past the old one. */
    void checkRunOn(Entry<RunOn> entry) {
        RunOn runOn = entry.fact();
        String name;
        LimitRank rank;
        if (runOn.limit() != null) {
            Limit limit = around.facts.of(Limit.class).get(runOn.limit());
            name = limit.name();
            rank = limit.rank();
            if (limit.counter() != Counter.AGE && runOn.upTo() <= limit.amount()) {
                clashes.add(entry, ProblemKind.RUN_ON_NOT_PAST_LIMIT, name);
            }
        } else {
            ReadingLimit limit = around.facts.of(ReadingLimit.class).get(Objects.requireNonNull(runOn.readingLimit()));
            name = limit.name();
            rank = limit.rank();
        }
        if (rank == LimitRank.RULE_BOOK) {
            clashes.add(entry, ProblemKind.RULE_BOOK_NOT_PASSED, name);
        } else if (rank != LimitRank.OWN && runOn.adviser().isBlank()) {
            clashes.add(entry, ProblemKind.NOBODY_ASKED, name, rank);
        }
    }

    /** Nothing is cleared before it happened; one's own hold may be, and it is said. */
    void checkClearance(Entry<Clearance> entry) {
        Clearance clearance = entry.fact();
        Moment happened = happened(clearance);
        if (clearance.at().isBefore(happened)) {
            clashes.add(entry, ProblemKind.CLEARED_BEFORE, happened);
        }
        if (clearance.hold() != null) {
            String by = around.facts.of(Hold.class).get(clearance.hold()).by();
            if (!by.isBlank() && by.equals(clearance.by())) {
                clashes.add(entry, ProblemKind.CLEARS_OWN_HOLD, by);
            }
        }
    }

    private Moment happened(Clearance clearance) {
        @Nullable Id<Run> run = clearance.run();
        if (run != null) {
            return around.facts.of(Run.class).get(run).start();
        }
        @Nullable Id<Reading> reading = clearance.reading();
        return reading != null
                ? around.facts.of(Reading.class).get(reading).at()
                : around.facts
                        .of(Hold.class)
                        .get(Objects.requireNonNull(clearance.hold()))
                        .at();
    }
}
