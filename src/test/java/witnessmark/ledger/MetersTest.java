package witnessmark.ledger;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import witnessmark.domain.Car;
import witnessmark.domain.Engine;
import witnessmark.domain.EngineDesign;
import witnessmark.domain.Entry;
import witnessmark.domain.Fact;
import witnessmark.domain.Fitment;
import witnessmark.domain.Id;
import witnessmark.domain.MeterReading;
import witnessmark.domain.Part;
import witnessmark.domain.PartKind;
import witnessmark.domain.Position;
import witnessmark.domain.Run;
import witnessmark.domain.Standing;
import witnessmark.ledger.result.MeterStretch;
import witnessmark.ledger.result.MeterStretch.Finding;
import witnessmark.quantity.Moment;
import witnessmark.quantity.RunningTime;

/** Hour meters held against the runs of their car: told examples, and random seasons added up run by run. */
class MetersTest {
    private static final Moment BEGIN = Story.at("2026-04-01T08:00Z");

    private final Story story = new Story();
    private final Id<EngineDesign> design = story.design("four");
    private final Id<Engine> engine = story.engine("A1", design);
    private final Id<Car> car = story.car("7");
    private final Id<Part> meter = story.part("HM-7", story.partDesign("meter", PartKind.HOUR_METER, false));
    private final Id<Position> where = story.carPosition(car, PartKind.HOUR_METER, "hour meter", 1);

    @BeforeEach
    void put() {
        story.put(engine, car, BEGIN, null);
    }

    @ParameterizedTest(name = "{0} min logged, {1} h on the meter: {2}")
    @CsvSource({
        "120, 2.0, AGREE",
        "120, 1.9, AGREE",
        "120, 2.2, AGREE",
        "120, 1.7, STOOD_STILL",
        "120, 2.3, NOT_LOGGED",
        "0, 0.1, AGREE",
        "0, 0.2, NOT_LOGGED",
        "120, 0, STOOD_STILL",
        "120, -3.5, BACKWARDS"
    })
    void two_readings_and_the_runs_between(long minutes, double hours, Finding finding) {
        story.fitToCar(meter, car, where, BEGIN, null);
        reading("2026-04-03T18:00Z", 100);
        if (minutes > 0) {
            story.run(engine, car, Story.at("2026-04-04T10:00Z"), minutes);
        }
        reading("2026-04-05T18:00Z", 100 + hours);
        MeterStretch stretch = all("2026-04-10").get(0);
        assertThat(stretch.finding()).isEqualTo(finding);
        assertThat(stretch.unexplained()).isEqualTo(finding != Finding.AGREE);
        assertThat(stretch.apart() > 0).isEqualTo(finding != Finding.AGREE);
    }

    @Test
    void runs_before_the_first_reading_and_in_another_car_are_not_its_own() {
        story.fitToCar(meter, car, where, BEGIN, null);
        story.run(engine, car, Story.at("2026-04-02T10:00Z"), 60);
        reading("2026-04-03T18:00Z", 100);
        Id<Engine> other = story.engine("B2", design);
        Id<Car> elsewhere = story.car("8");
        story.put(other, elsewhere, BEGIN, null);
        story.run(other, elsewhere, Story.at("2026-04-04T10:00Z"), 60);
        reading("2026-04-05T18:00Z", 100);
        assertThat(all("2026-04-10")).extracting(MeterStretch::finding).containsExactly(Finding.AGREE);
        assertThat(all("2026-04-04")).isEmpty();
    }

    @Test
    void a_meter_in_no_car_says_so_rather_than_that_nothing_was_logged() {
        reading("2026-04-03T18:00Z", 100);
        story.run(engine, car, Story.at("2026-04-04T10:00Z"), 60);
        reading("2026-04-05T18:00Z", 101);
        assertThat(all("2026-04-10")).extracting(MeterStretch::finding).containsExactly(Finding.NOT_FITTED);
    }

    @Test
    void whoever_read_it_may_say_why() {
        story.fitToCar(meter, car, where, BEGIN, null);
        reading("2026-04-03T18:00Z", 100);
        story.add(new MeterReading(
                meter, Story.at("2026-04-05T18:00Z"), new RunningTime(101L * 3_600_000), "Jo", "towed on the trailer"));
        assertThat(all("2026-04-10")).singleElement().matches(stretch -> !stretch.unexplained());
    }

    static LongStream seeds() {
        return LongStream.rangeClosed(1, 40);
    }

    /** The meter is taken out and put back, runs are struck out; each stretch is added up from the entries themselves. */
    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void every_stretch_is_what_adding_up_gives(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        long day = BEGIN.epochMillis();
        for (int i = 0; i < 6; i++) {
            Moment from = at(day + random.nextLong(86_400_000));
            Moment to = at(day + 5 * 86_400_000L + random.nextLong(86_400_000));
            story.fitToCar(meter, car, where, from, i == 5 ? null : to);
            day += 7 * 86_400_000L;
        }
        for (int i = 0; i < 40; i++) {
            Moment start = at(BEGIN.epochMillis() + i * 86_400_000L + random.nextLong(40_000_000));
            Id<Run> run = story.run(engine, car, start, 1 + random.nextInt(90));
            if (random.nextInt(8) == 0) {
                Fact fact = story.facts().of(Run.class).get(run);
                story.rewrite(run, (Run) fact, Standing.STRUCK_OUT);
            }
        }
        double shows = 10;
        for (int i = 0; i < 9; i++) {
            shows += random.nextDouble(4);
            story.add(new MeterReading(
                    meter,
                    at(BEGIN.epochMillis() + i * 5L * 86_400_000L + random.nextLong(86_400_000)),
                    new RunningTime(((long) (shows * 10)) * 360_000),
                    "Jo",
                    ""));
        }
        List<MeterStretch> all = all("2026-06-30");
        assertThat(all).hasSize(8);
        for (MeterStretch stretch : all) {
            long logged = logged(stretch.from().fact().at(), stretch.to().fact().at());
            assertThat(stretch.lowest()).isEqualTo(logged);
            assertThat(stretch.highest()).isEqualTo(logged);
            long shown = stretch.to().fact().shows().millis()
                    - stretch.from().fact().shows().millis();
            assertThat(stretch.shown()).isEqualTo(shown);
        }
    }

    private long logged(Moment from, Moment to) {
        long logged = 0;
        for (Entry<Run> run : story.facts().of(Run.class).all()) {
            Moment start = run.fact().start();
            boolean fitted = false;
            for (Entry<Fitment> fitment : story.facts().of(Fitment.class).all()) {
                Moment end = fitment.fact().to();
                fitted |= !start.isBefore(fitment.fact().from()) && (end == null || start.isBefore(end));
            }
            if (run.inForce() && fitted && start.isAfter(from) && !start.isAfter(to)) {
                logged += run.fact().running().millis();
            }
        }
        return logged;
    }

    private static Moment at(long millis) {
        return Moment.of(java.time.Instant.ofEpochMilli(millis), BEGIN.zone());
    }

    private void reading(String at, double hours) {
        story.add(new MeterReading(meter, Story.at(at), new RunningTime(Math.round(hours * 3_600_000)), "Jo", ""));
    }

    private List<MeterStretch> all(String day) {
        return new ArrayList<>(new Meters(LifeLedger.of(story.facts(), Story.asOf(day))).all());
    }
}
