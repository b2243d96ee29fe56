package witnessmark.ledger;

import java.util.Collection;
import java.util.List;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Clearance;
import witnessmark.domain.EngineInCar;
import witnessmark.domain.Entry;
import witnessmark.domain.Event;
import witnessmark.domain.Fact;
import witnessmark.domain.Facts;
import witnessmark.domain.Fitment;
import witnessmark.domain.Joint;
import witnessmark.domain.Limit;
import witnessmark.domain.MeterReading;
import witnessmark.domain.Notice;
import witnessmark.domain.PlannedRun;
import witnessmark.domain.Run;
import witnessmark.domain.RunOn;
import witnessmark.domain.StockMove;
import witnessmark.domain.ToldRunning;
import witnessmark.domain.Trigger;
import witnessmark.ledger.result.Clash;
import witnessmark.outcome.Problem;

/**
 * Whether what is to be written can be true together with what was written: the same answer for the window, the command
 * line and a season folder read in. Only entries that are changed are judged, against everything in force; of two
 * changed entries that contradict each other the later is named.
 *
 * <p>The facts of a problem are what {@link witnessmark.outcome.ProblemKind} states, in that order: engines, cars,
 * parts, positions and runs by the names people know them by, moments as {@link witnessmark.quantity.Moment}, days as
 * {@link java.time.LocalDate}, lengths as {@link witnessmark.quantity.RunningTime}, fields of a run by the name of its
 * component, several positions as a list.
 */
public final class Coherence {
    private Coherence() {}

    /**
     * What is wrong with one run.
     *
     * @param facts everything written; the run itself may be among it, as it was
     * @param candidate the run as it is to stand
     * @param today a run that went out after this day is in the future
     */
    public static List<Problem> forRun(Facts facts, Entry<Run> candidate, AsOf today) {
        return forEntries(facts.with(List.of(candidate)), List.of(candidate), today);
    }

    /**
     * What is wrong with changed entries of any kinds.
     *
     * @param after everything as it is to stand, the changed entries included
     * @param changed the entries to judge
     * @param today a run that went out after this day is in the future
     */
    public static List<Problem> forEntries(Facts after, Collection<? extends Entry<?>> changed, AsOf today) {
        return clashes(after, changed, today).stream().map(Clash::problem).toList();
    }

    /** The same with the entry that each problem is about, so that it can be shown beside its row or field. */
    public static List<Clash> clashes(Facts after, Collection<? extends Entry<?>> changed, AsOf today) {
        Clashes clashes = new Clashes();
        Surroundings around = new Surroundings(after, changed);
        RunChecks runs = new RunChecks(today, clashes);
        CarChecks cars = new CarChecks(around, clashes);
        ChangeChecks changes = new ChangeChecks(around, clashes);
        NeededChecks needed = new NeededChecks(around, clashes);
        RuleChecks rules = new RuleChecks(around, clashes);
        BuildChecks builds = new BuildChecks(around, clashes);
        FigureChecks figures = new FigureChecks(clashes);
        ShelfChecks shelf = new ShelfChecks(around, clashes);
        MeterChecks meters = new MeterChecks(around, clashes);
        EventChecks events = new EventChecks(around, clashes);
        for (Entry<?> entry : changed) {
            Entry<Run> run = as(Run.class, entry);
            if (run != null && run.inForce()) {
                runs.check(run);
                cars.check(run);
                changes.checkRun(run);
                needed.check(run);
                builds.check(run);
            }
            Entry<Fitment> fitment = as(Fitment.class, entry);
            if (fitment != null && fitment.inForce()) {
                changes.checkFitment(fitment);
            }
            Entry<EngineInCar> stay = as(EngineInCar.class, entry);
            if (stay != null) {
                cars.checkRunsOf(stay);
                if (stay.inForce()) {
                    changes.checkStay(stay);
                }
            }
            if (entry.inForce()) {
                figures.check(entry);
                apply(as(ToldRunning.class, entry), figures::checkTold);
                apply(as(MeterReading.class, entry), meters::check);
                apply(as(Event.class, entry), events::checkEvent);
                apply(as(PlannedRun.class, entry), events::checkPlanned);
                check(rules, entry);
                check(shelf, entry);
            }
        }
        new TwinChecks(around, clashes).check();
        cars.check();
        builds.check();
        new FitmentChecks(around, clashes).check();
        new AsideChecks(around, clashes).check();
        new PriorChecks(around, clashes).check();
        return clashes.all();
    }

    private static void check(RuleChecks rules, Entry<?> entry) {
        apply(as(Limit.class, entry), rules::checkLimit);
        apply(as(Trigger.class, entry), rules::checkTrigger);
        apply(as(RunOn.class, entry), rules::checkRunOn);
        apply(as(Clearance.class, entry), rules::checkClearance);
    }

    private static void check(ShelfChecks shelf, Entry<?> entry) {
        apply(as(StockMove.class, entry), shelf::checkMove);
        apply(as(Joint.class, entry), shelf::checkJoint);
        apply(as(Notice.class, entry), shelf::checkNotice);
    }

    private static <T> void apply(@Nullable T entry, Consumer<T> check) {
        if (entry != null) {
            check.accept(entry);
        }
    }

    @SuppressWarnings("unchecked") // an entry is of the kind of its fact
    private static <F extends Fact> @Nullable Entry<F> as(Class<F> kind, Entry<?> entry) {
        return kind.isInstance(entry.fact()) ? (Entry<F>) entry : null;
    }
}
