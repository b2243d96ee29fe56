package witnessmark.ledger;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Build;
import witnessmark.domain.Car;
import witnessmark.domain.Engine;
import witnessmark.domain.EngineDesign;
import witnessmark.domain.EngineInCar;
import witnessmark.domain.Entry;
import witnessmark.domain.Fact;
import witnessmark.domain.Facts;
import witnessmark.domain.Fitment;
import witnessmark.domain.Id;
import witnessmark.domain.Part;
import witnessmark.domain.PartDesign;
import witnessmark.domain.PartKind;
import witnessmark.domain.Position;
import witnessmark.domain.PriorKind;
import witnessmark.domain.PriorLife;
import witnessmark.domain.Run;
import witnessmark.domain.Standing;
import witnessmark.domain.ToldRunning;
import witnessmark.domain.Work;
import witnessmark.domain.WorkKind;
import witnessmark.domain.WorkResult;
import witnessmark.domain.Zone;
import witnessmark.outcome.Problem;
import witnessmark.quantity.Counter;
import witnessmark.quantity.Moment;
import witnessmark.quantity.RunningTime;

/** Writes facts for a test, one after another; ids count up, so that the same story always gives the same facts. */
public final class Story {
    public static final ZoneId UTC = ZoneId.of("UTC");

    private final List<Entry<?>> entries = new ArrayList<>();
    private long made;

    /** Everything written so far. */
    public Facts facts() {
        return Facts.none().with(entries);
    }

    /** Every entry in the order it was written. */
    public List<Entry<?>> entries() {
        return entries;
    }

    public <F extends Fact> Id<F> add(F fact) {
        return add(fact, Standing.IN_FORCE);
    }

    public <F extends Fact> Id<F> add(F fact, Standing standing) {
        Id<F> id = next();
        entries.add(new Entry<>(id, fact, standing, standing == Standing.STRUCK_OUT ? "typed twice" : null, 1));
        return id;
    }

    /** Writes an entry again, with another fact. */
    public <F extends Fact> Entry<F> rewrite(Id<F> id, F fact, Standing standing) {
        for (int i = 0; i < entries.size(); i++) {
            if (entries.get(i).id().equals(id)) {
                Entry<F> entry =
                        new Entry<>(id, fact, standing, null, entries.get(i).rev() + 1);
                entries.set(i, entry);
                return entry;
            }
        }
        throw new IllegalArgumentException("nothing was written under " + id);
    }

    public Id<EngineDesign> design(String name) {
        return add(new EngineDesign(name, 4, "in-line four", null, null, null, null, null, null, null, "", null));
    }

    public Id<Engine> engine(String number, Id<EngineDesign> design) {
        return add(new Engine(number, design, null, ""));
    }

    public Id<Car> car(String name) {
        return add(new Car(name, ""));
    }

    public Id<Position> position(Id<EngineDesign> design, PartKind kind, String name, int ordinal, boolean needed) {
        return add(new Position(design, null, kind, name, ordinal, needed));
    }

    public Id<Position> carPosition(Id<Car> car, PartKind kind, String name, int ordinal) {
        return add(new Position(null, car, kind, name, ordinal, false));
    }

    public Id<PartDesign> partDesign(String name, PartKind kind, boolean singleUse) {
        return add(new PartDesign(name, kind, "", "", singleUse, kind == PartKind.RODS, "", null));
    }

    public Id<Part> part(String mark, Id<PartDesign> design) {
        return part(mark, design, null);
    }

    public Id<Part> part(String mark, Id<PartDesign> design, @Nullable LocalDate boughtOn) {
        return add(new Part(mark, design, "", "", boughtOn, null, null, null, null, null, ""));
    }

    public Id<Part> split(String mark, Id<PartDesign> design, Id<Part> set, Moment at) {
        return add(new Part(mark, design, "", "", null, null, null, set, mark, at, ""));
    }

    public Id<Fitment> fit(Id<Part> part, Id<Engine> engine, Id<Position> position, Moment from, @Nullable Moment to) {
        return add(new Fitment(part, engine, null, position, from, to, null, null, "", "", false));
    }

    public Id<Fitment> fitToCar(Id<Part> part, Id<Car> car, Id<Position> position, Moment from, @Nullable Moment to) {
        return add(new Fitment(part, null, car, position, from, to, null, null, "", "", false));
    }

    public Id<EngineInCar> put(Id<Engine> engine, Id<Car> car, Moment from, @Nullable Moment to) {
        return add(new EngineInCar(engine, car, from, to, ""));
    }

    public Id<Run> run(Id<Engine> engine, @Nullable Id<Car> car, Moment start, long minutes) {
        return add(new RunDraft(engine, car, start, minutes(minutes)).written());
    }

    public Id<ToldRunning> told(Id<Engine> engine, Moment from, Moment to, long lowest, long likely, long highest) {
        return add(new ToldRunning(
                engine, from, to, minutes(likely), minutes(lowest), minutes(highest), "the owner", "his diary"));
    }

    /** A life carried in with a part, in the counter's unit. */
    public Id<PriorLife> prior(
            Id<Part> part, Counter counter, PriorKind kind, long lowest, long amount, long highest, Moment at) {
        return add(new PriorLife(part, null, counter, kind, amount, lowest, highest, at, "his card"));
    }

    public Id<PriorLife> enginePrior(Id<Engine> engine, Counter counter, long amount, Moment at) {
        return add(new PriorLife(null, engine, counter, PriorKind.KNOWN, amount, amount, amount, at, "his card"));
    }

    public Id<Work> work(Id<Part> part, WorkKind kind, Moment at, WorkResult result) {
        return add(new Work(kind, at, null, part, result, null, null, "", ""));
    }

    public Id<Build> build(Id<Engine> engine, int number, Set<Zone> zones, Moment opened, @Nullable Moment closed) {
        return add(new Build(engine, number, EnumSet.copyOf(zones), opened, closed, "", ""));
    }

    /** A moment from text such as 2026-03-02T10:00Z. */
    public static Moment at(String text) {
        return Moment.parse(text);
    }

    public static AsOf asOf(String day) {
        return new AsOf(LocalDate.parse(day), UTC);
    }

    public static RunningTime minutes(long minutes) {
        return new RunningTime(minutes * 60_000);
    }

    private <F extends Fact> Id<F> next() {
        made++;
        return new Id<>(new UUID(made << 16 | 0x7000, 0x8000_0000_0000_0000L));
    }

    /** Judges these entries as they stand, as if they had been written last. */
    List<Problem> problems(AsOf today, Id<?>... changed) {
        List<Id<?>> ids = List.of(changed);
        List<Entry<?>> judged =
                entries().stream().filter(entry -> ids.contains(entry.id())).toList();
        return Coherence.forEntries(facts(), judged, today);
    }
}
