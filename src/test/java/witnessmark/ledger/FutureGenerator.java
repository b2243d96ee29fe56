package witnessmark.ledger;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.SplittableRandom;
import witnessmark.domain.Car;
import witnessmark.domain.Engine;
import witnessmark.domain.EngineInCar;
import witnessmark.domain.Event;
import witnessmark.domain.EventEntry;
import witnessmark.domain.Id;
import witnessmark.domain.Limit;
import witnessmark.domain.LimitAction;
import witnessmark.domain.LimitRank;
import witnessmark.domain.MissedHow;
import witnessmark.domain.MissedRun;
import witnessmark.domain.Part;
import witnessmark.domain.PlannedRun;
import witnessmark.domain.RunKind;
import witnessmark.domain.RunOn;
import witnessmark.domain.Standing;
import witnessmark.quantity.Counter;
import witnessmark.quantity.Moment;
import witnessmark.quantity.RunningTime;

/** Puts an odd calendar, limits and decisions around a history of {@link HistoryGenerator}. */
final class FutureGenerator {
    private static final List<RunKind> KINDS = List.of(RunKind.PRACTICE, RunKind.RACE, RunKind.OTHER);

    /** A history with what is to come. */
    record Future(Story story, List<Id<Engine>> engines, List<Id<Car>> cars, List<Id<Part>> parts, AsOf asOf) {}

    private final SplittableRandom random;
    private final History history;
    private final Story story;

    private FutureGenerator(long seed) {
        this.random = new SplittableRandom(seed);
        this.history = HistoryGenerator.history(seed);
        this.story = history.story();
    }

    static Future future(long seed) {
        FutureGenerator generator = new FutureGenerator(seed);
        generator.make();
        History history = generator.history;
        return new Future(history.story(), history.engines(), history.cars(), history.parts(), history.asOf());
    }

    private void make() {
        LocalDate day = history.asOf().day();
        for (Id<Engine> engine : history.engines()) {
            if (chance(60)) {
                story.add(new EngineInCar(engine, pick(history.cars()), at(day.minusDays(40), 1), null, ""));
            }
        }
        for (int i = 0; i < 7; i++) {
            event("E" + i, day.plusDays(random.nextInt(30) - 20L));
        }
        for (int i = 0; i < 6; i++) {
            limit(i);
        }
    }

    private void event(String name, LocalDate first) {
        Id<Event> event = story.add(
                new Event(
                        name,
                        pick(List.of("north", "south")),
                        first,
                        first.plusDays(random.nextInt(3)),
                        ZoneId.of("Europe/London"),
                        null,
                        ""),
                chance(90) ? Standing.IN_FORCE : Standing.STRUCK_OUT);
        if (chance(60)) {
            for (Id<Car> car : history.cars()) {
                if (chance(70)) {
                    story.add(new EventEntry(event, car, chance(40) ? pick(history.engines()) : null));
                }
            }
        }
        int runs = chance(15) ? 0 : 1 + random.nextInt(5);
        for (int i = 0; i < runs; i++) {
            planned(event, first, i, runs);
        }
        if (chance(10)) {
            story.add(new MissedRun(event, pick(history.cars()), null, null, at(first, 9), MissedHow.NOT_ENTERED, ""));
        }
    }

    private void planned(Id<Event> event, LocalDate first, int turn, int runs) {
        RunKind kind = pick(KINDS);
        LocalDate day = first.plusDays(turn * 2L / runs);
        Id<PlannedRun> planned = story.add(new PlannedRun(
                event,
                runs - turn,
                kind,
                "run " + turn,
                day,
                null,
                chance(60) ? new RunningTime(600_000 + random.nextInt(1_800_000)) : null));
        for (Id<Car> car : history.cars()) {
            if (day.isBefore(history.asOf().day()) && chance(70)) {
                RunDraft run = new RunDraft(
                                pick(history.engines()),
                                car,
                                at(day, 8 + turn),
                                new RunningTime(300_000 + random.nextInt(2_000_000)))
                        .kind(kind)
                        .planned(event, planned);
                if (chance(60)) {
                    run.with(Counter.RACE_STARTS, random.nextInt(3)).with(Counter.LOADED, random.nextInt(900_000));
                }
                story.add(run.written(), chance(90) ? Standing.IN_FORCE : Standing.STRUCK_OUT);
            } else if (chance(8)) {
                story.add(new MissedRun(event, car, null, planned, at(day, 9), MissedHow.WITHDRAWN, ""));
            }
        }
    }

    private void limit(int number) {
        Counter counter = pick(List.of(Counter.RUNNING, Counter.RUNNING, Counter.RACE_STARTS, Counter.LOADED));
        long amount = counter == Counter.RACE_STARTS ? 1 + random.nextInt(12) : 1 + random.nextLong(20_000_000);
        Id<Part> part = pick(history.parts());
        Id<Limit> limit = story.add(new Limit(
                "limit " + number,
                chance(50) ? LimitAction.RENEW : LimitAction.LOOK,
                null,
                null,
                null,
                part,
                null,
                null,
                counter,
                amount,
                chance(30) ? LimitRank.RULE_BOOK : LimitRank.OWN,
                "",
                LocalDate.parse("2026-01-01"),
                null));
        for (int i = random.nextInt(3); i > 0; i--) {
            story.add(
                    new RunOn(
                            limit,
                            null,
                            part,
                            null,
                            null,
                            amount + random.nextLong(3 * amount),
                            at(history.asOf().day().plusDays(random.nextInt(4) - 3L), 12),
                            "OW",
                            "",
                            "",
                            ""),
                    chance(80) ? Standing.IN_FORCE : Standing.STRUCK_OUT);
        }
    }

    private static Moment at(LocalDate day, int hour) {
        return Moment.of(day.atTime(hour, 0).atZone(Story.UTC).toInstant(), Story.UTC);
    }

    private boolean chance(int percent) {
        return random.nextInt(100) < percent;
    }

    private <T> T pick(List<T> from) {
        return from.get(random.nextInt(from.size()));
    }
}
