package witnessmark.abuse;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.zone.ZoneOffsetTransition;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import witnessmark.domain.Car;
import witnessmark.domain.Entry;
import witnessmark.domain.Facts;
import witnessmark.domain.Fitment;
import witnessmark.domain.Part;
import witnessmark.domain.Run;
import witnessmark.domain.history.Amendment;
import witnessmark.ledger.AsOf;
import witnessmark.ledger.LifeLedger;
import witnessmark.logbook.port.Logbook;
import witnessmark.quantity.Counter;
import witnessmark.quantity.Moment;
import witnessmark.quantity.RunningTime;
import witnessmark.store.Garage;
import witnessmark.store.TestLogbooks;

/**
 * Runs on the nights when clocks are put forward or back, on 29 February, on the dates of line-crossing zones; viewers
 * anywhere; a computer whose clock goes back or years ahead. Oracle: instants alone (java.time, the tz database), by
 * brute force.
 */
class ClocksAndZonesTest {
    private static final int RUNS = Numbers.of("zones", 10_000, 1_000_000);
    private static final int AT_ONCE = 250;
    private static final List<ZoneId> ZONES = List.of(
            ZoneId.of("Europe/London"),
            ZoneId.of("America/New_York"),
            ZoneId.of("Australia/Lord_Howe"), // half an hour of summer time
            ZoneId.of("Asia/Kolkata"),
            ZoneId.of("Pacific/Apia"), // left out 30 December 2011
            ZoneId.of("Pacific/Kiritimati"),
            ZoneId.of("Pacific/Pago_Pago"),
            ZoneId.of("America/St_Johns"));

    @TempDir(factory = InMemory.class)
    Path folder;

    @Test
    void a_life_is_the_sum_of_its_runs_by_instants_wherever_they_ran_and_whoever_looks() {
        Random random = Numbers.random("zones");
        int counted = 0;
        for (int made = 0; made < RUNS; made += AT_ONCE) {
            counted += oneLogbook(random);
        }
        Numbers.tell("R12 clocks and zones", Map.of("runs", RUNS, "in a part", counted));
        assertThat(counted).isBetween(RUNS / 10, RUNS - 1);
    }

    private static int oneLogbook(Random random) {
        Garage garage = new Garage();
        List<Moment> moments = new ArrayList<>();
        for (int i = 0; i < 6; i++) {
            moments.add(moment(random));
        }
        moments.sort(java.util.Comparator.comparing(Moment::instant));
        List<Entry<?>> entries = new ArrayList<>(garage.all());
        Map<Entry<Part>, Moment[]> windows = new HashMap<>();
        fit(entries, windows, garage, garage.r1, moments.get(0), moments.get(2));
        fit(entries, windows, garage, garage.r2, moments.get(3), moments.get(5));
        List<Run> runs = new ArrayList<>();
        for (int i = 0; i < AT_ONCE; i++) {
            Moment start = random.nextInt(5) == 0 ? near(moments.get(random.nextInt(6)), random) : moment(random);
            Run run = run(garage, "run " + i, start, 1 + random.nextInt(7_200_000));
            runs.add(run);
            entries.add(Garage.made(run));
        }
        Facts facts = Facts.none().with(entries);
        int counted = 0;
        for (Map.Entry<Entry<Part>, Moment[]> window : windows.entrySet()) {
            long expected = 0;
            for (Run run : runs) {
                Instant start = run.start().instant();
                boolean in = !start.isBefore(window.getValue()[0].instant())
                        && start.isBefore(window.getValue()[1].instant());
                expected += in ? run.running().millis() : 0;
                counted += in ? 1 : 0;
            }
            for (ZoneId viewer : ZONES) {
                LifeLedger ledger = LifeLedger.of(facts, new AsOf(LocalDate.of(2040, 1, 1), viewer));
                assertThat(ledger.life(window.getKey().id(), Counter.RUNNING).total())
                        .as("seed %d, seen from %s", Numbers.seed(), viewer)
                        .isEqualTo(expected);
            }
        }
        return counted;
    }

    private static void fit(
            List<Entry<?>> entries,
            Map<Entry<Part>, Moment[]> windows,
            Garage garage,
            Entry<Part> part,
            Moment from,
            Moment to) {
        if (!from.instant().isBefore(to.instant())) {
            return;
        }
        windows.put(part, new Moment[] {from, to});
        entries.add(Garage.made(
                new Fitment(part.id(), garage.e1.id(), null, garage.rods.id(), from, to, null, null, "", "", false)));
    }

    private static Run run(Garage garage, String name, Moment start, long millis) {
        Run plain = garage.run(name, null, null, 1);
        return new Run(
                plain.engine(),
                plain.car(),
                plain.event(),
                plain.planned(),
                plain.kind(),
                name,
                start,
                plain.startKnown(),
                null,
                null,
                new RunningTime(millis),
                plain.knownBy(),
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                plain.driverAsked(),
                "",
                "",
                "",
                null);
    }

    /** Often within two hours of a change of the clocks, or on 29 February, else any time. */
    private static Moment moment(Random random) {
        ZoneId zone = ZONES.get(random.nextInt(ZONES.size()));
        Instant any = Instant.ofEpochSecond(1_300_000_000L + random.nextInt(600_000_000));
        ZoneOffsetTransition change = zone.getRules().nextTransition(any);
        if (random.nextBoolean() && change != null) {
            return Moment.of(change.getInstant().plusMillis(random.nextInt(14_400_000) - 7_200_000), zone);
        }
        if (random.nextInt(4) == 0) {
            LocalDateTime leap = LocalDateTime.of(2012 + 4 * random.nextInt(5), 2, 29, random.nextInt(24), 59);
            return Moment.of(leap.atZone(zone).toInstant(), zone);
        }
        return Moment.of(any, zone);
    }

    /** The very moment, or a millisecond beside it. */
    private static Moment near(Moment moment, Random random) {
        return Moment.of(moment.instant().plusMillis(random.nextInt(3) - 1), ZONES.get(random.nextInt(ZONES.size())));
    }

    /** The history's order is that of writing, whatever the computer's clock said; nothing is refused for it. */
    @Test
    void a_clock_that_goes_back_or_years_ahead_changes_neither_order_nor_entries() {
        TestLogbooks logbooks = new TestLogbooks(folder);
        Random random = Numbers.random("clock back");
        List<String> written = new ArrayList<>();
        logbooks.create().close();
        for (int session = 0; session < 8; session++) {
            logbooks.clock.addAndGet(
                    Duration.ofDays(random.nextInt(8_000) - 4_000).toMillis());
            try (Logbook logbook = logbooks.open()) {
                for (int i = 0; i < 5; i++) {
                    String name = "car " + session + "/" + i;
                    logbooks.clock.addAndGet(random.nextInt(7_200_000) - 3_600_000);
                    TestLogbooks.write(logbook, Garage.made(new Car(name, ""))).orThrow();
                    written.add(name);
                }
                assertThat(logbook.verify()).isEmpty();
                assertThat(logbook.history().stream()
                                .map(a -> a.after().get("name"))
                                .toList())
                        .as("seed %d", Numbers.seed())
                        .isEqualTo(written);
                assertThat(logbook.history()).isSortedAccordingTo(Amendment.ORDER);
            }
        }
    }
}
