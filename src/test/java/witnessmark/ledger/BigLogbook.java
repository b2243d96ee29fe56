package witnessmark.ledger;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Car;
import witnessmark.domain.Engine;
import witnessmark.domain.EngineDesign;
import witnessmark.domain.HowKnown;
import witnessmark.domain.Id;
import witnessmark.domain.Limit;
import witnessmark.domain.LimitAction;
import witnessmark.domain.LimitRank;
import witnessmark.domain.Part;
import witnessmark.domain.PartDesign;
import witnessmark.domain.PartKind;
import witnessmark.domain.Position;
import witnessmark.domain.PriorKind;
import witnessmark.domain.WorkKind;
import witnessmark.domain.WorkResult;
import witnessmark.domain.Zone;
import witnessmark.quantity.Counter;
import witnessmark.quantity.Moment;
import witnessmark.quantity.RunningTime;

/**
 * Makes a large logbook that holds together, from a seed: many engines, each in its car, opened between runs and put
 * together again with other parts, season after season.
 */
public final class BigLogbook {
    private static final ZoneId ZONE = ZoneId.of("Europe/London");
    private static final Instant FIRST = Instant.parse("2006-03-01T09:00:00Z");
    private static final long DAY = 86_400;
    private static final List<PartKind> KINDS = List.of(PartKind.values()).subList(0, 30);

    private final SplittableRandom random;
    private final Story story = new Story();
    private final List<Id<Engine>> engines = new ArrayList<>();
    private final List<Id<Car>> cars = new ArrayList<>();
    private final List<Id<Part>> parts = new ArrayList<>();
    private final List<Id<Position>> positions = new ArrayList<>();
    private final List<Id<PartDesign>> designs = new ArrayList<>();

    private BigLogbook(long seed) {
        this.random = new SplittableRandom(seed);
    }

    /** Twenty seasons: 200 engines, 12 000 parts, 60 000 fitments, 40 000 runs. */
    public static History twentySeasons(long seed) {
        return of(seed, 200, 10, 20);
    }

    /**
     * A logbook of so many engines, each put together so many times and run so many times each time it was. An engine
     * has 30 positions and 60 parts for them, in turn.
     */
    public static History of(long seed, int engines, int builds, int runsABuild) {
        BigLogbook book = new BigLogbook(seed);
        Id<EngineDesign> design = book.story.design("four");
        for (int i = 0; i < KINDS.size(); i++) {
            PartKind kind = KINDS.get(i);
            book.positions.add(book.story.position(design, kind, kind.code(), i, i < 20));
            book.designs.add(book.story.partDesign(kind.code(), kind, false));
            book.limit(kind, LimitAction.RENEW, 40);
            book.limit(kind, LimitAction.LOOK, 15);
        }
        for (int i = 0; i < engines; i++) {
            book.engine(i, design, builds, runsABuild);
        }
        LocalDate day = FIRST.atZone(ZONE).toLocalDate().plusDays(2L * builds * (runsABuild + 2));
        return new History(book.story, book.engines, book.cars, book.parts, new AsOf(day, ZONE));
    }

    private void engine(int number, Id<EngineDesign> design, int builds, int runsABuild) {
        Id<Engine> engine = story.engine("E" + number, design);
        Id<Car> car = story.car("C" + number);
        engines.add(engine);
        cars.add(car);
        story.put(engine, car, on(0), null);
        List<Id<Part>> first = parts(number, "a");
        List<Id<Part>> second = parts(number, "b");
        for (int build = 0; build < builds; build++) {
            int day = build * (runsABuild + 2);
            Moment closed = on(day);
            @Nullable Moment opened = build + 1 == builds ? null : on(day + runsABuild + 1);
            story.build(engine, build + 1, Set.of(Zone.BOTTOM_END, Zone.HEAD), closed, closed);
            List<Id<Part>> in = build % 2 == 0 ? first : second;
            for (int i = 0; i < positions.size(); i++) {
                story.fit(in.get(i), engine, positions.get(i), closed, opened);
                if (random.nextInt(20) == 0) {
                    story.work(in.get(i), WorkKind.CRACK_TEST, closed, WorkResult.DONE);
                }
            }
            for (int run = 0; run < runsABuild; run++) {
                run(engine, car, on(day + run).plus(Story.minutes(60 + random.nextInt(300))));
            }
        }
    }

    private List<Id<Part>> parts(int engine, String series) {
        List<Id<Part>> made = new ArrayList<>();
        for (int i = 0; i < designs.size(); i++) {
            Id<Part> part = story.part(KINDS.get(i).code() + " " + engine + series, designs.get(i));
            made.add(part);
            if (random.nextInt(3) == 0) {
                long hours = random.nextInt(20) * 3_600_000L;
                story.prior(part, Counter.RUNNING, PriorKind.KNOWN, hours, hours, hours, on(0));
            }
        }
        parts.addAll(made);
        return made;
    }

    private void run(Id<Engine> engine, Id<Car> car, Moment start) {
        long running = 600_000L + random.nextInt(1_200_000);
        RunDraft draft = new RunDraft(engine, car, start, new RunningTime(running))
                .knownBy(Counter.RUNNING, random.nextInt(10) == 0 ? HowKnown.ESTIMATED : HowKnown.TRACE)
                .with(Counter.LOADED, running / 2)
                .with(Counter.DISTANCE, running / 25)
                .with(Counter.LAPS, running / 100_000)
                .with(Counter.RACE_STARTS, random.nextInt(2))
                .with(Counter.ENGINE_STARTS, 1)
                .with(Counter.HEAT_CYCLES, 1);
        if (random.nextInt(4) > 0) {
            draft.with(Counter.OVER_REVS, random.nextInt(50) == 0 ? 1 : 0);
        }
        story.add(draft.written());
    }

    private void limit(PartKind kind, LimitAction action, long hours) {
        story.add(new Limit(
                action.code() + " " + kind.code(),
                action,
                null,
                kind,
                null,
                null,
                null,
                null,
                Counter.RUNNING,
                hours * 3_600_000,
                LimitRank.BUILDER,
                "builder's sheet",
                LocalDate.parse("2006-01-01"),
                null));
    }

    /** Every second day: the workshop has the days between. */
    private static Moment on(int turn) {
        return Moment.of(FIRST.plusSeconds(turn * 2L * DAY), ZONE);
    }
}
