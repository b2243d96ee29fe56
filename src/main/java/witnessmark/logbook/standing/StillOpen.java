package witnessmark.logbook.standing;

import java.util.List;
import org.jspecify.annotations.Nullable;
import witnessmark.cost.result.Refund;
import witnessmark.domain.Car;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Event;
import witnessmark.domain.Fitment;
import witnessmark.domain.Incident;
import witnessmark.domain.Job;
import witnessmark.domain.PartDesign;
import witnessmark.domain.PartKind;
import witnessmark.domain.PlannedRun;
import witnessmark.domain.Position;
import witnessmark.ledger.result.Away;
import witnessmark.ledger.result.DebrisIn;
import witnessmark.ledger.result.MeterStretch;
import witnessmark.ledger.result.NoticeLeft;
import witnessmark.ledger.result.StockLevel;
import witnessmark.study.result.KindTrends;
import witnessmark.study.result.PlaceTrend;
import witnessmark.study.result.ProofOfCase;
import witnessmark.study.result.ProofState;

/**
 * What is waited for on a day.
 *
 * @param jobs work planned and not done, for the next event first
 * @param out what is with others, the latest past its day first
 * @param borrowed fitted parts that are to go back, those wanted soonest first
 * @param low designs of which the shelf holds less than the team wants, each once
 * @param notices makers' notices not answered on every part
 * @param meters where an hour meter and the logbook are apart and nobody said why
 * @param bare cars entered for the next event with no engine in them
 * @param incomplete engines in cars that go which have nothing in a needed position
 * @param incidents incidents of the cars and engines going: those that were closed and are not as asked for since, then those
 *     that are not closed, each the latest first
 * @param refunds what can be asked back, the first last day first
 * @param unlogged runs of timetables that are past and neither logged nor missed
 * @param readings readings to be looked at before any limit is passed
 * @param debris coolers and lines of the cars going that metal went through
 */
public record StillOpen(
        List<OpenJob> jobs,
        List<Away> out,
        List<ToGoBack> borrowed,
        List<LowStock> low,
        List<NoticeLeft> notices,
        List<MeterStretch> meters,
        List<BareCar> bare,
        List<Incomplete> incomplete,
        List<OpenIncident> incidents,
        List<Refund> refunds,
        List<Unlogged> unlogged,
        List<Going> readings,
        List<DebrisIn> debris) {
    public StillOpen {
        jobs = List.copyOf(jobs);
        out = List.copyOf(out);
        borrowed = List.copyOf(borrowed);
        low = List.copyOf(low);
        notices = List.copyOf(notices);
        meters = List.copyOf(meters);
        bare = List.copyOf(bare);
        incomplete = List.copyOf(incomplete);
        incidents = List.copyOf(incidents);
        refunds = List.copyOf(refunds);
        unlogged = List.copyOf(unlogged);
        readings = List.copyOf(readings);
        debris = List.copyOf(debris);
    }

    /** Nothing is open. */
    public static StillOpen none() {
        return new StillOpen(
                List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), List.of(),
                List.of(), List.of(), List.of(), List.of());
    }

    /**
     * Readings that get worse.
     *
     * @param engine on which engine, or on a part of it
     * @param kind all that was read of that kind
     * @param place where they get worse
     */
    public record Going(Entry<Engine> engine, KindTrends kind, PlaceTrend place) {}

    /**
     * An engine that goes with nothing in needed positions.
     *
     * @param engine which one
     * @param car the name of the car it is in
     * @param empty those positions, in the order a build is read out
     */
    public record Incomplete(Entry<Engine> engine, String car, List<Entry<Position>> empty) {
        public Incomplete {
            empty = List.copyOf(empty);
        }
    }

    /**
     * An incident that is not closed, or that was closed and asks to be opened again.
     *
     * @param incident which one
     * @param car the name of its car, or null
     * @param engine the number of its engine, or null
     * @param days for how many days, or how long ago it was
     * @param again the mark of the incident it is again, or null
     * @param proof how far it is proven that what was done holds
     */
    public record OpenIncident(
            Entry<Incident> incident,
            @Nullable String car,
            @Nullable String engine,
            long days,
            @Nullable String again,
            ProofOfCase proof) {
        /** Whether it was closed, and what was asked for as proof is not so since. */
        public boolean asksToBeOpened() {
            return proof.state() == ProofState.CLOSED;
        }
    }

    /**
     * Runs of an event that a car entered for it has neither run nor missed, on days that are past.
     *
     * @param car which car
     * @param event which event
     * @param runs which runs, in order
     */
    public record Unlogged(Entry<Car> car, Entry<Event> event, List<Entry<PlannedRun>> runs) {
        public Unlogged {
            runs = List.copyOf(runs);
        }
    }

    /**
     * A car that is entered and has no engine in it.
     *
     * @param car which one
     * @param event the name of the event it is entered for
     * @param meant the engine its entry names, or null
     */
    public record BareCar(
            Entry<Car> car, String event, @Nullable Entry<Engine> meant) {}

    /**
     * A job that is open.
     *
     * @param job which one
     * @param on the mark of its part, the number of its engine or the name of its car; empty when it is on none
     * @param what what that is
     * @param before the name of the event it is wanted for, or null
     * @param late whether that event has begun
     */
    public record OpenJob(
            Entry<Job> job, String on, On what, @Nullable String before, boolean late) {}

    /** What a job is on. */
    public enum On {
        PART,
        ENGINE,
        CAR,
        NOTHING
    }

    /**
     * A borrowed part.
     *
     * @param fitment where it is now
     * @param mark the part's mark
     * @param kind what kind of part
     * @param in the number of the engine or name of the car it is in now
     * @param home those where it came from; empty when nothing says
     * @param wanted the next event that where it came from is entered for, or null when none is written down
     * @param late whether that event has begun
     */
    public record ToGoBack(
            Entry<Fitment> fitment,
            String mark,
            PartKind kind,
            String in,
            String home,
            @Nullable Event wanted,
            boolean late) {}

    /**
     * A design of which there is too little.
     *
     * @param level how much there is, by its first batch
     * @param design which design
     */
    public record LowStock(StockLevel level, PartDesign design) {}
}
