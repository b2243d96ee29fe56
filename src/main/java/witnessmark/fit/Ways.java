package witnessmark.fit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.FitVerdict;
import witnessmark.domain.MeasureKind;
import witnessmark.domain.MeasurePlace;
import witnessmark.fit.result.Answer;
import witnessmark.fit.result.Bound;
import witnessmark.fit.result.Check;
import witnessmark.fit.result.Given;
import witnessmark.fit.result.Proposal;
import witnessmark.fit.result.Proposal.Obstacle;
import witnessmark.fit.result.Proposal.Why;
import witnessmark.fit.result.Term;
import witnessmark.fit.result.Work;
import witnessmark.mechanics.ChamberStack;
import witnessmark.quantity.Dimension;

/**
 * The ways from a sheet to a wanted figure: crowns cut, deck or head skimmed, another gasket from the shelf. Each is
 * worked out backwards, carried through to a sheet as it would then be, and held against every limit of that sheet.
 */
public final class Ways {
    private final Sheet sheet;
    private final List<Answer> now;

    private Ways(Sheet sheet) {
        this.sheet = sheet;
        this.now = Checks.of(sheet);
    }

    /** Every way there is, those that nothing stands against first; a way that is shut says why. */
    public static List<Proposal> to(Goal goal, Sheet sheet, List<Gasket> shelf) {
        Ways ways = new Ways(sheet);
        List<Proposal> found = new ArrayList<>();
        switch (goal.kind()) {
            case DECK_CLEARANCE -> {
                found.add(ways.crowns(goal));
                found.add(ways.deck(goal));
            }
            case CROWN_TO_HEAD -> {
                found.add(ways.crowns(goal));
                found.add(ways.deck(goal));
                shelf.forEach(gasket -> found.add(ways.gasket(goal, gasket)));
            }
            case COMPRESSION_RATIO -> {
                found.add(ways.head(goal));
                found.add(ways.deck(goal));
                shelf.forEach(gasket -> found.add(ways.gasket(goal, gasket)));
            }
        }
        found.sort(Comparator.comparing(Proposal::possible).reversed());
        return found;
    }

    /** Off each crown what its own figure lacks. */
    private Proposal crowns(Goal goal) {
        Map<Integer, Long> cuts = new TreeMap<>();
        for (int cylinder : sheet.numbers(MeasureKind.DECK_MEAN)) {
            Long figure = figure(goal, cylinder);
            if (figure == null) {
                return shut(Work.crownCuts(Map.of()), Why.NOT_KNOWN, kind(goal));
            }
            cuts.put(cylinder, goal.value() - figure);
        }
        Work work = Work.crownCuts(cuts);
        if (cuts.values().stream().anyMatch(cut -> cut < 0)) {
            return shut(work, Why.ADDS_MATERIAL, kind(goal));
        }
        Bound most = sheet.bounds(MeasureKind.CROWN_CUT, null).most();
        long deepest = cuts.values().stream().mapToLong(Long::longValue).max().orElse(0);
        if (deepest > 0 && most == null) {
            return shut(work, Why.NOT_ALLOWED, MeasureKind.CROWN_CUT);
        }
        if (most != null && deepest > most.value()) {
            return shut(work, Why.MORE_THAN_ALLOWED, MeasureKind.CROWN_CUT);
        }
        return proposal(goal, work, new Rework(sheet).after(work));
    }

    /** Off the deck what the row lacks; it only closes. */
    private Proposal deck(Goal goal) {
        Check tightest = tightest(goal, now);
        if (tightest == null || tightest.value() == null) {
            return shut(Work.deckSkim(0), Why.NOT_KNOWN, kind(goal));
        }
        long skim = goal.kind() == Goal.Kind.COMPRESSION_RATIO
                ? fromVolume(
                        tightest,
                        goal,
                        perDepth(sheet.bore() == null ? 0 : sheet.bore().nanometres()))
                : tightest.value() - goal.value();
        return faced(goal, Work.deckSkim(skim));
    }

    private Proposal head(Goal goal) {
        Check tightest = tightest(goal, now);
        Given area = tightest == null
                ? null
                : sheet.given(new MeasurePlace(
                        MeasureKind.OPENING_AREA, tightest.place().number(), null));
        if (tightest == null || tightest.value() == null || area == null) {
            return shut(Work.headSkim(0), Why.NOT_KNOWN, area == null ? MeasureKind.OPENING_AREA : kind(goal));
        }
        return faced(goal, Work.headSkim(fromVolume(tightest, goal, Dimension.AREA.number(area.value()) / 1_000_000)));
    }

    private Proposal faced(Goal goal, Work work) {
        if (work.depth() < 0) {
            return shut(work, Why.ADDS_MATERIAL, kind(goal));
        }
        Rework rework = new Rework(sheet);
        Proposal proposal = proposal(goal, work, rework.after(work));
        List<Obstacle> against = new ArrayList<>(proposal.against());
        if (work.depth() > 0) {
            rework.anglesLacking().forEach(angle -> against.add(new Obstacle(Why.NOT_KNOWN, angle, null)));
        }
        return new Proposal(work, proposal.reached(), proposal.before(), proposal.after(), against);
    }

    private Proposal gasket(Goal goal, Gasket gasket) {
        Sheet after = new Rework(sheet).withGasket(gasket.made(), gasket.figures());
        Proposal proposal = proposal(goal, Work.gasket(gasket.design()), after);
        Check reached = proposal.reached();
        if (reached == null || reached.value() == null) {
            return shut(proposal.work(), Why.NOT_KNOWN, kind(goal));
        }
        boolean falls = goal.kind() == Goal.Kind.COMPRESSION_RATIO
                ? reached.value() > goal.value()
                : reached.value() < goal.value();
        if (!falls) {
            return proposal;
        }
        List<Obstacle> against = new ArrayList<>(proposal.against());
        against.add(new Obstacle(Why.NOT_REACHED, kind(goal), reached));
        return new Proposal(proposal.work(), reached, proposal.before(), proposal.after(), against);
    }

    /** What has to come off a face, in nanometres, so that the volume left makes the wanted ratio. */
    private long fromVolume(Check ratio, Goal goal, double perDepth) {
        long swept = 0;
        long clearance = 0;
        for (Term term : ratio.terms()) {
            boolean isSwept = term.given().place().kind() == MeasureKind.SWEPT_VOLUME;
            swept = isSwept ? term.counts() : swept;
            clearance = isSwept ? clearance : term.counts();
        }
        double wanted = ChamberStack.clearanceFor(swept, Dimension.RATIO.number(goal.value()));
        return (long) Math.floor((clearance - wanted) / perDepth);
    }

    /** Microlitres for a nanometre off a disc of that diameter in nanometres. */
    private static double perDepth(long diameter) {
        return ChamberStack.disc(Dimension.LENGTH.number(diameter), 1) / 1_000;
    }

    /** The figure of one cylinder, of two sides the lesser; null while a side is missing. */
    private @Nullable Long figure(Goal goal, int cylinder) {
        List<Check> checks = now.stream()
                .filter(answer -> answer.kind() == kind(goal))
                .flatMap(answer -> answer.checks().stream())
                .filter(check -> Objects.equals(check.place().number(), cylinder))
                .toList();
        return checks.isEmpty() || checks.stream().anyMatch(check -> check.value() == null)
                ? null
                : checks.stream()
                        .mapToLong(check -> Objects.requireNonNull(check.value()))
                        .min()
                        .getAsLong();
    }

    private Proposal proposal(Goal goal, Work work, Sheet next) {
        List<Answer> then = Checks.of(next);
        Map<MeasureKind, Answer> before = new HashMap<>();
        now.forEach(answer -> before.put(answer.kind(), answer));
        List<Answer> changedBefore = new ArrayList<>();
        List<Answer> changedAfter = new ArrayList<>();
        List<Obstacle> against = new ArrayList<>();
        for (Answer answer : then) {
            Answer was = before.get(answer.kind());
            if (was == null || !values(was).equals(values(answer))) {
                changedAfter.add(answer);
                Optional.ofNullable(was).ifPresent(changedBefore::add);
                worse(was, answer)
                        .ifPresent(check -> against.add(new Obstacle(Why.OUTSIDE_AFTER, answer.kind(), check)));
            }
        }
        return new Proposal(work, tightest(goal, then), changedBefore, changedAfter, against);
    }

    private static List<Optional<Long>> values(Answer answer) {
        return answer.checks().stream()
                .map(check -> Optional.ofNullable(check.value()))
                .toList();
    }

    /** The first figure that would be outside and was not, or further outside than it was. */
    private static Optional<Check> worse(@Nullable Answer was, Answer answer) {
        Map<MeasurePlace, Check> before = new HashMap<>();
        if (was != null) {
            was.checks().forEach(check -> before.put(check.place(), check));
        }
        return answer.checks().stream()
                .filter(check -> check.verdict() == FitVerdict.OUTSIDE && !asBad(before.get(check.place()), check))
                .findFirst();
    }

    private static boolean asBad(@Nullable Check was, Check now) {
        return was != null
                && was.verdict() == FitVerdict.OUTSIDE
                && was.value() != null
                && now.value() != null
                && room(was) <= room(now);
    }

    private static long room(Check check) {
        Long room = check.bounds().room(Objects.requireNonNull(check.value()));
        return room == null ? 0 : room;
    }

    /** The figure of the row that decides: the least clearance, the highest ratio. */
    private static @Nullable Check tightest(Goal goal, List<Answer> answers) {
        List<Check> checks = answers.stream()
                .filter(answer -> answer.kind() == kind(goal))
                .flatMap(answer -> answer.checks().stream())
                .toList();
        if (checks.isEmpty() || checks.stream().anyMatch(check -> check.value() == null)) {
            return null;
        }
        Comparator<Check> byValue = Comparator.comparing(check -> Objects.requireNonNull(check.value()));
        return checks.stream()
                .min(goal.kind() == Goal.Kind.COMPRESSION_RATIO ? byValue.reversed() : byValue)
                .orElse(null);
    }

    private static MeasureKind kind(Goal goal) {
        return switch (goal.kind()) {
            case DECK_CLEARANCE -> MeasureKind.DECK_MEAN;
            case CROWN_TO_HEAD -> MeasureKind.CROWN_TO_HEAD;
            case COMPRESSION_RATIO -> MeasureKind.COMPRESSION_RATIO;
        };
    }

    private static Proposal shut(Work work, Why why, MeasureKind kind) {
        return new Proposal(work, null, List.of(), List.of(), List.of(new Obstacle(why, kind, null)));
    }
}
