package witnessmark.study.cases;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import witnessmark.domain.Entry;
import witnessmark.domain.Facts;
import witnessmark.domain.Fitment;
import witnessmark.domain.Grade;
import witnessmark.domain.Incident;
import witnessmark.domain.Part;
import witnessmark.domain.Reading;
import witnessmark.quantity.RunningTime;
import witnessmark.sample.SampleViews;
import witnessmark.study.result.WayTo;
import witnessmark.study.result.WayTo.Kind;

/** The ways up to the failures of the invented season, by its printed tables of incidents and condition checks. */
class WayThereTest {
    private static Facts facts;

    @BeforeAll
    static void tellTheSeason() {
        facts = SampleViews.end().facts();
    }

    private static WayTo to(String incident) {
        return new WayThere(SampleViews.on(facts, SampleViews.WINTER).ledger())
                .of(facts.of(Incident.class).named(incident).orElseThrow())
                .orElseThrow();
    }

    private static double hours(RunningTime time) {
        return time.millis() / 3_600_000.0;
    }

    private static List<Kind> kinds(WayTo way, String day) {
        return way.points().stream()
                .filter(point -> point.at().day().equals(LocalDate.parse(day)))
                .flatMap(point -> point.steps().stream())
                .map(WayTo.Step::kind)
                .toList();
    }

    /** The table of incidents prints what each engine had run by then. */
    @ParameterizedTest
    @CsvSource({
        "INC-01, 2.70",
        "INC-02, 7.85",
        "INC-03, 6.08",
        "INC-04, 3.20",
        "INC-05, 12.46",
        "INC-06, 15.03",
        "INC-07, 10.10",
        "INC-08, 12.26",
        "INC-09, 14.88"
    })
    void each_ends_at_the_failure_with_the_hours_printed_for_it(String incident, double printed) {
        WayTo way = to(incident);
        WayTo.Point last = way.points().get(way.points().size() - 1);

        assertThat(last.steps()).extracting(WayTo.Step::kind).contains(Kind.FAILURE);
        assertThat(hours(last.hours())).isCloseTo(printed, within(0.015));
        assertThat(last.before().millis()).isZero();
    }

    /** Clean on 5 May, a few bright specks on 26 May, the rest is history. */
    @Test
    void the_last_good_look_before_the_repeated_failure_was_on_5_may_at_round_3() {
        WayTo way = to("INC-05");

        assertThat(way.lastGood().orElseThrow().at().day()).isEqualTo("2026-05-05");
        assertThat(kinds(way, "2026-05-26")).contains(Kind.SYMPTOM).doesNotContain(Kind.GOOD);
        assertThat(kinds(way, "2026-03-24")).as("few specks").contains(Kind.SYMPTOM);
        assertThat(kinds(way, "2026-02-18")).as("some run-in grey").contains(Kind.GOOD);
    }

    @Test
    void the_shells_of_april_are_on_it_6_39_hours_before_the_failure() {
        WayTo way = to("INC-05");
        WayTo.Point april = way.points().stream()
                .filter(point -> point.at().day().equals(LocalDate.parse("2026-04-17")))
                .findFirst()
                .orElseThrow();

        assertThat(hours(april.hours())).isCloseTo(6.08, within(0.005));
        assertThat(hours(april.before())).isCloseTo(6.385, within(0.01));
        assertThat(april.steps().stream()
                        .filter(step -> step.kind() == Kind.CHANGED)
                        .flatMap(step -> step.of().stream())
                        .map(Entry::fact)
                        .filter(Fitment.class::isInstance)
                        .map(fitment -> facts.of(Part.class)
                                .get(((Fitment) fitment).part())
                                .mark()))
                .contains("BE-05b");
    }

    @Test
    void the_first_failure_is_on_the_way_to_the_second_and_nothing_seen_after_it_is() {
        WayTo way = to("INC-05");

        assertThat(kinds(way, "2026-04-14")).contains(Kind.BROKE);
        assertThat(way.points())
                .flatExtracting(WayTo.Point::steps)
                .flatExtracting(WayTo.Step::of)
                .extracting(Entry::fact)
                .filteredOn(Reading.class::isInstance)
                .extracting(reading -> ((Reading) reading).grade())
                .as("full of bearing metal was seen the day after")
                .doesNotContain(Grade.BEARING_COLOUR);
    }

    @Test
    void it_begins_with_the_winter_rebuild_and_leaves_out_what_was_fitted_in_it() {
        WayTo way = to("INC-05");

        assertThat(Objects.requireNonNull(way.rebuilt()).fact().number()).isEqualTo(1);
        assertThat(way.points().get(0).steps()).extracting(WayTo.Step::kind).contains(Kind.REBUILT);
        assertThat(way.points().get(0).hours().millis()).isZero();
    }

    /** Hours since the rebuild and hours before the failure are the same running cut in two. */
    @ParameterizedTest
    @CsvSource({"INC-02", "INC-05", "INC-06", "INC-09"})
    void at_every_point_both_counters_add_up_to_the_age_at_the_failure(String incident) {
        WayTo way = to(incident);
        long age = way.points().get(way.points().size() - 1).hours().millis();

        assertThat(way.points())
                .allSatisfy(point -> assertThat(
                                point.hours().millis() + point.before().millis())
                        .isEqualTo(age));
    }

    /** Leak-down of 14 % on 3 May, and a spring down 9 % on 7 July against a limit of 8 %: neither day was good. */
    @Test
    void a_day_is_not_good_on_which_a_limit_of_readings_was_broken_on_the_engine_or_a_part_in_it() {
        WayTo way = to("INC-06");

        assertThat(kinds(way, "2026-05-03")).contains(Kind.SYMPTOM).doesNotContain(Kind.GOOD);
        assertThat(kinds(way, "2026-07-07")).contains(Kind.SYMPTOM).doesNotContain(Kind.GOOD);
        assertThat(way.lastGood().orElseThrow().at().day()).isEqualTo("2026-06-14");
    }

    /** Cylinder 4 ran lean from the middle of the season: its lash closed. */
    @Test
    void the_crack_found_in_winter_had_signs_before() {
        assertThat(to("INC-09").points())
                .flatExtracting(WayTo.Point::steps)
                .extracting(WayTo.Step::kind)
                .contains(Kind.SYMPTOM, Kind.BROKE);
    }
}
