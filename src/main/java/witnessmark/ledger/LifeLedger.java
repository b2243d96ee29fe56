package witnessmark.ledger;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Build;
import witnessmark.domain.Car;
import witnessmark.domain.Engine;
import witnessmark.domain.EngineInCar;
import witnessmark.domain.Entry;
import witnessmark.domain.Facts;
import witnessmark.domain.Fitment;
import witnessmark.domain.Id;
import witnessmark.domain.Part;
import witnessmark.domain.Position;
import witnessmark.domain.PriorLife;
import witnessmark.domain.Table;
import witnessmark.domain.Work;
import witnessmark.domain.WorkKind;
import witnessmark.domain.WorkResult;
import witnessmark.domain.Zone;
import witnessmark.ledger.result.Account;
import witnessmark.ledger.result.Life;
import witnessmark.ledger.result.Point;
import witnessmark.ledger.result.Stay;
import witnessmark.quantity.Counter;
import witnessmark.quantity.Moment;

/**
 * How much every part, engine and car has run as of a day.
 *
 * <p>A part's life by a counter is the life carried in, stated at a moment, plus every run from that moment on that
 * went out while the part was fitted: in an engine, the runs of that engine; in a car, the runs of that car with
 * whatever engine. A run belongs wholly to what was fitted when it went out; a fitment counts from its start up to, not
 * including, its end. Told running is charged where it begins. A part split from a set has the set's life up to the
 * moment of splitting and its own from then on. Entries struck out or in conflict never count, and a run that is
 * perhaps the same as another counts nowhere.
 *
 * <p>Before the first entry of a part or engine its life is not known, and before a life carried in later it is a least:
 * what is written for later days says that it may have run by then.
 *
 * <p>Immutable, and the same whatever order the facts were written in. Lives are whole numbers of the counter's unit.
 */
public final class LifeLedger {
    private final Facts facts;
    private final Table<Part> parts;
    private final AsOf asOf;
    private final Cutoff cutoff;
    private final Running running;
    private final Fitted fitted;
    private final Stated stated;
    private final Later later;

    private LifeLedger(
            Facts facts, AsOf asOf, Cutoff cutoff, Running running, Fitted fitted, Stated stated, Later later) {
        this.facts = facts;
        this.parts = facts.of(Part.class);
        this.asOf = asOf;
        this.cutoff = cutoff;
        this.running = running;
        this.fitted = fitted;
        this.stated = stated;
        this.later = later;
    }

    /** The ledger of these facts as of a day. */
    public static LifeLedger of(Facts facts, AsOf asOf) {
        Cutoff cutoff = new Cutoff(asOf.last().epochMillis());
        return new LifeLedger(
                facts,
                asOf,
                cutoff,
                Running.of(facts, cutoff),
                Fitted.of(facts, cutoff),
                Stated.of(facts, cutoff),
                Later.of(facts, cutoff));
    }

    /** The ledger of newer facts as of the same day, made from this one where a change did not touch it. */
    public LifeLedger after(Facts newer) {
        return new LifeLedger(
                newer,
                asOf,
                cutoff,
                running.after(facts, newer, cutoff),
                fitted.after(facts, newer, cutoff),
                stated.after(facts, newer, cutoff),
                later.after(facts, newer, cutoff));
    }

    public Facts facts() {
        return facts;
    }

    public AsOf asOf() {
        return asOf;
    }

    // Lives

    /** A part's or set's whole life. */
    public Life life(Id<Part> part, Counter counter) {
        return lifeSince(part, counter, Origin.EVER);
    }

    /**
     * What a part ran from a moment on. Of a life carried in that is stated for later than that moment nobody can say
     * how much came after it: it is told, from nothing to all of it.
     */
    public Life since(Id<Part> part, Counter counter, Moment moment) {
        return lifeSince(part, counter, moment.epochMillis());
    }

    /** What a part ran since the last work of this kind that did not fail; its whole life when there was none. */
    public Life sinceWork(Id<Part> part, WorkKind kind, Counter counter) {
        return sinceWork(part, Set.of(kind), counter);
    }

    /** What a part ran since the last work of any of these kinds that did not fail. */
    public Life sinceWork(Id<Part> part, Set<WorkKind> kinds, Counter counter) {
        return lastWork(part, kinds)
                .map(work -> since(part, counter, work.fact().at()))
                .orElseGet(() -> life(part, counter));
    }

    /** An engine's whole life. */
    public Life engineLife(Id<Engine> engine, Counter counter) {
        return engineLifeSince(engine, counter, Origin.EVER);
    }

    /** What an engine ran from a moment on. */
    public Life engineSince(Id<Engine> engine, Counter counter, Moment moment) {
        return engineLifeSince(engine, counter, moment.epochMillis());
    }

    /** What an engine ran since the last closed build that opened these zones; its whole life when there was none. */
    public Life sinceRebuild(Id<Engine> engine, Set<Zone> zones, Counter counter) {
        Moment closed =
                lastClosed(engine, zones).map(build -> build.fact().closed()).orElse(null);
        return closed == null ? engineLife(engine, counter) : engineSince(engine, counter, closed);
    }

    /** What a car ran, with whatever engine. */
    public Life carLife(Id<Car> car, Counter counter) {
        Tally tally = new Tally(counter);
        running.ofCar(car).charge(tally, Long.MIN_VALUE, Long.MAX_VALUE);
        return tally.life();
    }

    /** The last work of these kinds on a part, or on its set before it was split off, that did not fail. */
    public Optional<Entry<Work>> lastWork(Id<Part> part, Set<WorkKind> kinds) {
        Entry<Work> last = null;
        for (Tenure tenure : Tenure.of(parts, part)) {
            for (Entry<Work> work : stated.works(tenure.part())) {
                Work fact = work.fact();
                if (fact.result() == WorkResult.DONE
                        && kinds.contains(fact.kind())
                        && fact.at().epochMillis() <= tenure.to()
                        && (last == null || !fact.at().isBefore(last.fact().at()))) {
                    last = work;
                }
            }
        }
        return Optional.ofNullable(last);
    }

    /** The build of an engine closed last that opened all of these zones. */
    public Optional<Entry<Build>> lastClosed(Id<Engine> engine, Set<Zone> zones) {
        Entry<Build> last = null;
        Moment lastClosed = null;
        for (Entry<Build> build : stated.builds(engine)) {
            Moment closed = build.fact().closed();
            if (closed != null
                    && closed.epochMillis() <= cutoff.last()
                    && build.fact().zones().containsAll(zones)
                    && (lastClosed == null || !closed.isBefore(lastClosed))) {
                last = build;
                lastClosed = closed;
            }
        }
        return Optional.ofNullable(last);
    }

    /** When the first entry of a part happened, its set's before it was split off, if that is after the day looked at. */
    public Optional<Moment> firstEntry(Id<Part> part) {
        return first(Tenure.of(parts, part));
    }

    /** When the first entry of an engine happened, if that is after the day looked at. */
    public Optional<Moment> firstEngineEntry(Id<Engine> engine) {
        boolean begun = running.of(engine).any()
                || !stated.enginePriors(engine).isEmpty()
                || !stated.builds(engine).isEmpty()
                || !fitted.in(engine).isEmpty()
                || !fitted.cars(engine).isEmpty();
        return begun ? Optional.empty() : Optional.ofNullable(later.first(engine));
    }

    // What is behind a figure

    /** A part's whole life with every entry behind it. */
    public Account account(Id<Part> part, Counter counter) {
        return accountSince(part, counter, Origin.EVER);
    }

    /** What a part ran from a moment on, with every entry behind it. */
    public Account account(Id<Part> part, Counter counter, Moment since) {
        return accountSince(part, counter, since.epochMillis());
    }

    /** An engine's whole life with every entry behind it. */
    public Account engineAccount(Id<Engine> engine, Counter counter) {
        return engineAccountSince(engine, counter, Origin.EVER);
    }

    /** What an engine ran from a moment on, with every entry behind it. */
    public Account engineAccount(Id<Engine> engine, Counter counter, Moment since) {
        return engineAccountSince(engine, counter, since.epochMillis());
    }

    /** An engine's running time as it grew. */
    public List<Point> line(Id<Engine> engine) {
        return line(engine, Counter.RUNNING);
    }

    /** An engine's life as it grew: a point where each entry that counts was over, in that order. */
    public List<Point> line(Id<Engine> engine, Counter counter) {
        return Growth.of(engineAccount(engine, counter));
    }

    // Where things are

    /** What was fitted in an engine at a moment: positions in the order a build is read out, each with its fitment. */
    public Map<Id<Position>, Entry<Fitment>> fittedAt(Id<Engine> engine, Moment at) {
        return Filled.fitted(facts, fitted.in(engine), at);
    }

    /** What was fitted in a car, its engine's parts aside, at a moment. */
    public Map<Id<Position>, Entry<Fitment>> fittedInCar(Id<Car> car, Moment at) {
        return Filled.fitted(facts, fitted.inCar(car), at);
    }

    /** The needed positions of an engine that were empty at a moment, in the order a build is read out. */
    public List<Entry<Position>> emptyPositions(Id<Engine> engine, Moment at) {
        return Filled.empty(facts, engine, fittedAt(engine, at).keySet());
    }

    /** The fitment a part was in at a moment, its set's before it was split off; empty when it lay on the shelf. */
    public Optional<Entry<Fitment>> whereIs(Id<Part> part, Moment at) {
        return Tenure.of(parts, part).stream()
                .filter(tenure -> tenure.from() <= at.epochMillis() && at.epochMillis() < tenure.to())
                .flatMap(tenure -> fitted.of(tenure.part()).stream())
                .filter(entry -> Fitted.covers(entry.fact().from(), entry.fact().to(), at))
                .reduce((earlier, later) -> later);
    }

    /** Every time a part was fitted, its set's before it was split off; oldest first. */
    public List<Stay> stays(Id<Part> part) {
        return Tenure.of(parts, part).stream()
                .flatMap(tenure -> fitted.of(tenure.part()).stream()
                        .map(entry ->
                                Stretch.of(tenure, entry.fact(), Long.MIN_VALUE).stay(entry, cutoff.last()))
                        .flatMap(Optional::stream))
                .sorted(Comparator.comparing(Stay::from))
                .toList();
    }

    /** What a part brought with it from before the logbook. */
    public Life carriedIn(Id<Part> part, Counter counter) {
        Tally tally = new Tally(counter);
        origin(Tenure.of(parts, part), counter).charge(tally, Origin.EVER);
        return tally.life();
    }

    /** The car an engine was in at a moment. */
    public Optional<Entry<EngineInCar>> carOf(Id<Engine> engine, Moment at) {
        return fitted.carOf(engine, at);
    }

    /** The engine that was in a car at a moment. */
    public Optional<Entry<EngineInCar>> engineIn(Id<Car> car, Moment at) {
        return fitted.engineIn(car, at);
    }

    // How it is summed

    private Life lifeSince(Id<Part> part, Counter counter, long since) {
        List<Tenure> tenures = Tenure.of(parts, part);
        Origin origin = origin(tenures, counter);
        Tally tally = new Tally(counter);
        origin.charge(tally, since);
        long start = Math.max(origin.from(), since);
        for (Tenure tenure : tenures) {
            for (Entry<Fitment> entry : fitted.of(tenure.part())) {
                Fitment fitment = entry.fact();
                Stretch stretch = Stretch.of(tenure, fitment, start);
                line(fitment).charge(tally, stretch.from(), stretch.to());
            }
        }
        return tally.life();
    }

    private Account accountSince(Id<Part> part, Counter counter, long since) {
        List<Tenure> tenures = Tenure.of(parts, part);
        AccountSheet sheet = new AccountSheet(counter, origin(tenures, counter), since);
        for (Tenure tenure : tenures) {
            for (Entry<Fitment> entry : fitted.of(tenure.part())) {
                Stretch stretch = Stretch.of(tenure, entry.fact(), since);
                sheet.charge(line(entry.fact()), stretch.from(), stretch.to(), entry);
            }
        }
        return sheet.account();
    }

    private Life engineLifeSince(Id<Engine> engine, Counter counter, long since) {
        Origin origin = origin(engine, counter);
        Tally tally = new Tally(counter);
        origin.charge(tally, since);
        running.of(engine).charge(tally, Math.max(origin.from(), since), Long.MAX_VALUE);
        return tally.life();
    }

    private Account engineAccountSince(Id<Engine> engine, Counter counter, long since) {
        AccountSheet sheet = new AccountSheet(counter, origin(engine, counter), since);
        sheet.charge(running.of(engine), since, Long.MAX_VALUE, null);
        return sheet.account();
    }

    private Origin origin(List<Tenure> tenures, Counter counter) {
        if (later.isEmpty()) {
            return Origin.of(priors(tenures), counter);
        }
        List<PriorLife> carriedIn = tenures.stream()
                .flatMap(tenure -> later.carriedIn(tenure.part()).stream()
                        .filter(prior -> until(tenure, prior.at()).isPresent()))
                .toList();
        return Origin.of(priors(tenures), counter)
                .notKnownUntil(Later.stated(carriedIn, counter))
                .notKnownUntil(first(tenures).orElse(null));
    }

    private Origin origin(Id<Engine> engine, Counter counter) {
        return Origin.of(stated.enginePriors(engine), counter)
                .notKnownUntil(Later.stated(later.carriedIn(engine), counter))
                .notKnownUntil(firstEngineEntry(engine).orElse(null));
    }

    private Optional<Moment> first(List<Tenure> tenures) {
        return tenures.stream().anyMatch(this::begun)
                ? Optional.empty()
                : tenures.stream()
                        .map(tenure -> until(tenure, later.first(tenure.part())))
                        .flatMap(Optional::stream)
                        .min(Moment::compareTo);
    }

    private boolean begun(Tenure tenure) {
        return Stream.of(fitted.of(tenure.part()), stated.priors(tenure.part()), stated.works(tenure.part()))
                .flatMap(entries -> entries.stream().limit(1))
                .anyMatch(entry -> until(tenure, entry.fact().happened()).isPresent());
    }

    /** A moment, if the tenure had not ended then. */
    private static Optional<Moment> until(Tenure tenure, @Nullable Moment at) {
        return at == null || at.epochMillis() > tenure.to() ? Optional.empty() : Optional.of(at);
    }

    /** The part's own lives carried in; of a set it was split from, those stated by then, when it has none itself. */
    private List<Entry<PriorLife>> priors(List<Tenure> tenures) {
        if (tenures.size() == 1) {
            return stated.priors(tenures.get(0).part());
        }
        List<Entry<PriorLife>> all = new ArrayList<>();
        for (int i = tenures.size() - 1; i >= 0; i--) {
            Tenure tenure = tenures.get(i);
            stated.priors(tenure.part()).stream()
                    .filter(prior -> prior.fact().at().epochMillis() <= tenure.to())
                    .forEach(all::add);
        }
        return all;
    }

    private Line line(Fitment fitment) {
        Id<Engine> engine = fitment.engine();
        Id<Car> car = fitment.car();
        return engine != null ? running.of(engine) : car != null ? running.ofCar(car) : Line.EMPTY;
    }
}
