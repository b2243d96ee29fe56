package witnessmark.ledger;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Build;
import witnessmark.domain.Car;
import witnessmark.domain.Engine;
import witnessmark.domain.EngineDesign;
import witnessmark.domain.EngineInCar;
import witnessmark.domain.Fitment;
import witnessmark.domain.HowKnown;
import witnessmark.domain.Id;
import witnessmark.domain.Part;
import witnessmark.domain.PartDesign;
import witnessmark.domain.PartKind;
import witnessmark.domain.Position;
import witnessmark.domain.PriorKind;
import witnessmark.domain.PriorLife;
import witnessmark.domain.Standing;
import witnessmark.domain.ToldRunning;
import witnessmark.domain.Work;
import witnessmark.domain.WorkKind;
import witnessmark.domain.WorkResult;
import witnessmark.domain.Zone;
import witnessmark.quantity.Counter;
import witnessmark.quantity.Moment;
import witnessmark.quantity.RunningTime;

/**
 * Makes small odd histories from a seed: parts moved between engines and cars, sets split, running back-dated, told, not
 * read or written twice, lives carried in known, told and unknown, entries struck out. Moments lie on a coarse grid, so
 * that runs often go out the very moment something changes. Not everything in them can be true together; the sums are
 * defined all the same.
 */
public final class HistoryGenerator {
    private static final Instant FIRST = Instant.parse("2026-03-20T00:00:00Z");
    private static final long GRID_MINUTES = 90;
    private static final int GRID_DAYS = 16;
    private static final int MOMENTS = (int) (GRID_DAYS * 24 * 60 / GRID_MINUTES);
    private static final List<ZoneId> ZONES =
            List.of(Story.UTC, ZoneId.of("Europe/London"), ZoneId.of("Asia/Tokyo"), ZoneId.of("Pacific/Chatham"));

    private final SplittableRandom random;
    private final Story story = new Story();
    private final List<Id<Engine>> engines = new ArrayList<>();
    private final List<Id<Car>> cars = new ArrayList<>();
    private final List<Id<Part>> parts = new ArrayList<>();
    private final List<Id<Position>> positions = new ArrayList<>();
    private final List<Id<Position>> carPositions = new ArrayList<>();

    private HistoryGenerator(long seed) {
        this.random = new SplittableRandom(seed);
    }

    /** The history of a seed. */
    public static History history(long seed) {
        return new HistoryGenerator(seed).made();
    }

    private History made() {
        Id<EngineDesign> design = story.design("four");
        Id<PartDesign> rods = story.partDesign("rods", PartKind.RODS, false);
        for (int i = 0; i < 3; i++) {
            engines.add(story.engine("A" + i, design));
            positions.add(story.position(design, PartKind.RODS, "rods " + i, 3 - i, i > 0));
        }
        for (int i = 0; i < 2; i++) {
            cars.add(story.car("1" + i));
            carPositions.add(story.carPosition(cars.get(i), PartKind.CLUTCH, "clutch", i));
        }
        for (int i = 0; i < 5; i++) {
            parts.add(story.part("R-" + i, rods));
        }
        split(rods);
        parts.forEach(this::fit);
        repeat(30, this::run);
        repeat(2, this::told);
        repeat(6, this::prior);
        repeat(5, this::work);
        repeat(5, this::build);
        repeat(5, this::stay);
        LocalDate day = LocalDate.parse("2026-03-20").plusDays(random.nextInt(GRID_DAYS + 2));
        return new History(story, engines, cars, parts, new AsOf(day, pick(ZONES)));
    }

    /** One member split from a set, and one from that member. */
    private void split(Id<PartDesign> rods) {
        int at = 1 + random.nextInt(MOMENTS - 2);
        parts.add(story.split("R-0/1", rods, parts.get(0), moment(at)));
        int later = at + 1 + random.nextInt(MOMENTS - at);
        parts.add(story.split("R-0/1/a", rods, parts.get(5), moment(later)));
    }

    /** Some fitments of a part one after another, now and then without a gap. */
    private void fit(Id<Part> part) {
        int from = random.nextInt(MOMENTS / 2);
        while (from < MOMENTS && chance(85)) {
            int to = from + 1 + random.nextInt(MOMENTS / 3);
            @Nullable Moment end = chance(15) ? null : moment(to);
            boolean inCar = chance(20);
            int car = random.nextInt(cars.size());
            story.add(
                    new Fitment(
                            part,
                            inCar ? null : pick(engines),
                            inCar ? cars.get(car) : null,
                            inCar ? carPositions.get(car) : pick(positions),
                            moment(from),
                            end,
                            null,
                            null,
                            "",
                            "",
                            false),
                    standing());
            from = to + (chance(50) ? 0 : random.nextInt(20));
        }
    }

    private void run() {
        RunDraft draft = new RunDraft(
                        pick(engines),
                        chance(80) ? pick(cars) : null,
                        moment(),
                        new RunningTime(1 + random.nextLong(6_000_000)))
                .knownBy(Counter.RUNNING, pick(List.of(HowKnown.values())));
        for (Counter counter : Counter.fedByRuns()) {
            if (counter != Counter.RUNNING && chance(60)) {
                draft.with(counter, random.nextInt(1000));
            }
            if (chance(20)) {
                draft.knownBy(counter, pick(List.of(HowKnown.values())));
            }
        }
        if (chance(10)) {
            draft.perhapsSame(new Id<>(story.entries().get(0).id().value()));
        }
        story.add(draft.written(), standing());
    }

    private void told() {
        int from = random.nextInt(MOMENTS);
        long lowest = random.nextInt(100);
        long likely = lowest + random.nextInt(100);
        story.add(
                new ToldRunning(
                        pick(engines),
                        moment(from),
                        moment(from + 1 + random.nextInt(40)),
                        Story.minutes(likely),
                        Story.minutes(lowest),
                        Story.minutes(likely + random.nextInt(100)),
                        "",
                        ""),
                standing());
    }

    private void prior() {
        PriorKind kind = pick(List.of(PriorKind.values()));
        long lowest = chance(30) ? 0 : random.nextInt(1_000_000);
        long amount = kind == PriorKind.KNOWN ? lowest : lowest + random.nextInt(1_000_000);
        long highest = kind == PriorKind.KNOWN ? amount : kind == PriorKind.UNKNOWN ? 0 : amount + random.nextInt(1000);
        boolean ofEngine = chance(25);
        story.add(
                new PriorLife(
                        ofEngine ? null : pick(parts),
                        ofEngine ? pick(engines) : null,
                        chance(60) ? Counter.RUNNING : pick(Counter.fedByRuns()),
                        kind,
                        amount,
                        lowest,
                        highest,
                        moment(random.nextInt(MOMENTS / 2)),
                        ""),
                standing());
    }

    private void work() {
        story.add(
                new Work(
                        pick(List.of(WorkKind.values())),
                        moment(),
                        null,
                        pick(parts),
                        chance(70) ? WorkResult.DONE : WorkResult.FAILED,
                        null,
                        null,
                        "",
                        ""),
                standing());
    }

    private void build() {
        int opened = random.nextInt(MOMENTS);
        Set<Zone> zones = EnumSet.of(pick(List.of(Zone.values())), pick(List.of(Zone.values())));
        @Nullable Moment closed = chance(20) ? null : moment(opened + random.nextInt(30));
        story.add(new Build(pick(engines), 1, zones, moment(opened), closed, "", ""), standing());
    }

    private void stay() {
        int from = random.nextInt(MOMENTS);
        @Nullable Moment to = chance(30) ? null : moment(from + 1 + random.nextInt(40));
        story.add(new EngineInCar(pick(engines), pick(cars), moment(from), to, ""), standing());
    }

    private Moment moment() {
        return moment(random.nextInt(MOMENTS));
    }

    private Moment moment(int grid) {
        return Moment.of(FIRST.plusSeconds(grid * GRID_MINUTES * 60), pick(ZONES));
    }

    private Standing standing() {
        return chance(85) ? Standing.IN_FORCE : chance(50) ? Standing.STRUCK_OUT : Standing.IN_CONFLICT;
    }

    private boolean chance(int percent) {
        return random.nextInt(100) < percent;
    }

    private <T> T pick(List<T> from) {
        return from.get(random.nextInt(from.size()));
    }

    private static void repeat(int times, Runnable what) {
        for (int i = 0; i < times; i++) {
            what.run();
        }
    }
}
