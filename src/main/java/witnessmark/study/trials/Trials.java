package witnessmark.study.trials;

import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Entry;
import witnessmark.domain.Facts;
import witnessmark.domain.Id;
import witnessmark.domain.LimitAction;
import witnessmark.domain.Part;
import witnessmark.domain.PartDesign;
import witnessmark.domain.PartKind;
import witnessmark.domain.Trial;
import witnessmark.ledger.LifeLedger;
import witnessmark.ledger.Limits;
import witnessmark.ledger.result.LimitUse;
import witnessmark.quantity.Counter;
import witnessmark.statistics.LogRank;
import witnessmark.study.result.TrialAnswer;
import witnessmark.study.result.TrialLife;
import witnessmark.study.result.TrialSide;
import witnessmark.study.result.TrialTest;

/**
 * Part designs on trial, as of the day of the ledger: every life of what is tried beside every life of what is usual, and the
 * log-rank test where enough failed. It comes to no score; a person judges.
 */
public final class Trials {
    private static final double PER_HOUR = 3_600_000;

    private final LifeLedger ledger;
    private final Facts facts;
    private final Limits limits;

    public Trials(LifeLedger ledger) {
        this.ledger = ledger;
        this.facts = ledger.facts();
        this.limits = new Limits(ledger);
    }

    /** Every trial that has begun, those that go on first, then the latest first. */
    public List<TrialAnswer> all() {
        return begun().stream().map(this::of).toList();
    }

    /** The same, in the same order, as they were set up: quick, as no life is worked out. */
    public List<Entry<Trial>> begun() {
        return facts
                .of(Trial.class)
                .where(trial -> !trial.from().isAfter(ledger.asOf().day()))
                .stream()
                .sorted(Comparator.comparing((Entry<Trial> trial) -> judged(trial.fact()))
                        .thenComparing(trial -> trial.fact().from(), Comparator.reverseOrder())
                        .thenComparing(trial -> trial.fact().name()))
                .toList();
    }

    /** One of them. */
    public TrialAnswer of(Entry<Trial> trial) {
        Trial fact = trial.fact();
        PartDesign tried = facts.of(PartDesign.class).get(fact.tried());
        List<Entry<Part>> first = parts(fact.tried()::equals);
        List<Entry<Part>> second = parts(usual(fact, tried.kind()));
        List<LimitUse> uses = Stream.concat(first.stream(), second.stream())
                .flatMap(part -> limits.ofPart(part.id()).stream())
                .toList();
        Counter counter = counter(uses);
        TrialSide one = side(first, counter, tried.kind());
        TrialSide other = side(second, counter, tried.kind());
        return new TrialAnswer(
                trial,
                tried,
                fact.usual() == null ? null : facts.of(PartDesign.class).get(fact.usual()),
                counter,
                limit(uses, counter),
                one,
                other,
                test(one, other),
                judged(fact));
    }

    private boolean judged(Trial trial) {
        return trial.ended() != null && !trial.ended().isAfter(ledger.asOf().day());
    }

    private Predicate<Id<PartDesign>> usual(Trial trial, PartKind kind) {
        return trial.usual() != null
                ? trial.usual()::equals
                : design -> !design.equals(trial.tried())
                        && facts.of(PartDesign.class).get(design).kind() == kind;
    }

    private List<Entry<Part>> parts(Predicate<Id<PartDesign>> design) {
        return facts.of(Part.class).where(part -> design.test(part.design()));
    }

    /** Loaded time where limits count that and none counts running; else running. */
    private static Counter counter(List<LimitUse> uses) {
        return uses.stream().noneMatch(use -> use.used().counter() == Counter.RUNNING)
                        && uses.stream().anyMatch(use -> use.used().counter() == Counter.LOADED)
                ? Counter.LOADED
                : Counter.RUNNING;
    }

    private static @Nullable Long limit(List<LimitUse> uses, Counter counter) {
        List<Long> amounts = uses.stream()
                .filter(use ->
                        use.used().counter() == counter && use.limit().fact().action() == LimitAction.RENEW)
                .map(LimitUse::amount)
                .distinct()
                .toList();
        return amounts.size() == 1 ? amounts.get(0) : null;
    }

    private TrialSide side(List<Entry<Part>> parts, Counter counter, PartKind kind) {
        LivesOf lives = new LivesOf(ledger, counter, kind);
        List<TrialLife> all = parts.stream()
                .flatMap(part -> lives.part(part).stream())
                .sorted(Comparator.comparingLong(TrialLife::exit)
                        .reversed()
                        .thenComparing(life -> life.part().fact().mark())
                        .thenComparing(life -> life.stay().from()))
                .toList();
        Set<Id<Part>> fitted = all.stream().map(life -> life.part().id()).collect(Collectors.toSet());
        long waiting = parts.stream()
                .filter(part -> !fitted.contains(part.id()) && waits(part.fact()))
                .count();
        return new TrialSide(all, Math.toIntExact(waiting));
    }

    /** Whether it was there to be fitted: bought by now, and with no life yet, as one that was split from a set has. */
    private boolean waits(Part part) {
        return part.ofSet() == null
                && (part.boughtOn() == null
                        || !part.boughtOn().isAfter(ledger.asOf().day()));
    }

    private static @Nullable TrialTest test(TrialSide tried, TrialSide usual) {
        List<LogRank.Life> first = watched(tried);
        List<LogRank.Life> second = watched(usual);
        if (first.isEmpty() || second.isEmpty()) {
            return null;
        }
        LogRank test = LogRank.of(first, second);
        return new TrialTest(
                test.observed(),
                test.expected(),
                test.failures(),
                test.room(),
                LogRank.LEAST_ROOM,
                test.chiSquare(),
                test.p());
    }

    private static List<LogRank.Life> watched(TrialSide side) {
        return side.lives().stream()
                .filter(TrialLife::counts)
                .map(life -> new LogRank.Life(
                        life.entry() / PER_HOUR, life.exit() / PER_HOUR, life.end() == TrialLife.End.FAILED))
                .toList();
    }
}
