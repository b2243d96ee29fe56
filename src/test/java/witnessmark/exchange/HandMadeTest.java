package witnessmark.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static witnessmark.outcome.ProblemKind.COLUMN_MISSING;
import static witnessmark.outcome.ProblemKind.COLUMN_UNKNOWN;
import static witnessmark.outcome.ProblemKind.COLUMN_UNNAMED;
import static witnessmark.outcome.ProblemKind.DUPLICATE;
import static witnessmark.outcome.ProblemKind.FILE_MISSING;
import static witnessmark.outcome.ProblemKind.FILE_UNKNOWN;
import static witnessmark.outcome.ProblemKind.ROWS_WAIT;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Event;
import witnessmark.domain.Facts;
import witnessmark.domain.MissedRun;
import witnessmark.domain.Run;
import witnessmark.domain.Standing;
import witnessmark.domain.Work;
import witnessmark.outcome.Outcome;
import witnessmark.quantity.Moment;

/** A folder that a person typed, without index, ids or the columns that may be empty. */
class HandMadeTest extends ReadingTest {
    private static final String TEAM = "name,zone,currency,running_above_rpm,loaded_above_rpm,high_speed_above_rpm\n"
            + "Two Car Team,Europe/Rome,EUR,500,3000,7500\n";
    private static final String RUNS =
            "engine,kind,name,start,start_known,running_s,known_by,driver_asked,remarks,as_typed,queried,car,event\n";

    private static SeasonText typed() {
        return SeasonText.empty()
                .text("team.csv", TEAM)
                .text("engine-designs.csv", "name,cylinders,layout,note\nFour 16,4,,\n")
                .text("engines.csv", "number,design,note\nK03,Four 16,\nK05,four-16,\n")
                .text("cars.csv", "name,note\n41,\n")
                .text(
                        "events.csv",
                        "name,circuit,first_day,last_day,zone,note\nAway,Far,2026-06-06,2026-06-06,Europe/Lisbon,\n")
                .text(
                        "runs.csv",
                        RUNS
                                + "K03,dyno,Pulls,2026-02-17T10:00,typed,5520,running=trace,not asked,,,,,\n"
                                + "k 05,race,Race,2026-06-06 11:00:30,typed,1440,running=timed,not asked,,,,41,away\n");
    }

    @Test
    void it_is_read_without_ids_and_without_columns_that_may_be_empty() {
        Outcome<List<Entry<?>>> read = read(typed());
        assertThat(read.problems()).isEmpty();
        Facts facts = Facts.none().with(read.orThrow());
        Run race = facts.of(Run.class).all().get(1).fact();
        assertThat(facts.of(Engine.class).get(race.engine()).number()).isEqualTo("K05");
        assertThat(race.laps()).isNull();
        assertThat(read.orThrow()).allMatch(entry -> entry.rev() == 1 && entry.standing() == Standing.IN_FORCE);
    }

    @Test
    void each_row_without_id_is_given_one_of_its_own_that_sorts_by_time() {
        List<Entry<?>> entries = read(typed()).orThrow();
        assertThat(entries).extracting(entry -> entry.id().value()).doesNotHaveDuplicates();
        // RFC 9562, 5.7: version 7, ordered by the time they were made
        assertThat(entries).allMatch(entry -> entry.id().value().version() == 7);
        assertThat(entries.stream().filter(entry -> entry.fact() instanceof Run).map(Entry::id))
                .isSortedAccordingTo((one, other) -> Long.compareUnsigned(
                        one.value().getMostSignificantBits(), other.value().getMostSignificantBits()));
    }

    @Test
    void read_again_it_brings_nothing_new() {
        Facts facts = Facts.none().with(read(typed()).orThrow());
        assertThat(folders.read(typed().in(place.resolve("again")), facts)).isEqualTo(Outcome.worked(List.of()));
    }

    @Test
    void a_row_without_id_that_stands_twice_counts_once() {
        String again = "K03,dyno,Pulls,2026-02-17T10:00,typed,5520,running=trace,not asked,,,,,";
        Outcome<List<Entry<?>>> read = read(typed().add("runs.csv", again));
        assertThat(read.problems()).containsExactly(problem("runs.csv", 4, null, DUPLICATE, "Pulls"));
        assertThat(read.orThrow().stream().filter(entry -> entry.fact() instanceof Run))
                .hasSize(2);
    }

    @ParameterizedTest
    @CsvSource({
        // the last moment of the day in the team's zone: 23:59:59.999 of Rome, UTC+1 in winter
        "2026-01-28, 2026-01-28T23:59:59.999+01:00[Europe/Rome]",
        "2026-07-28, 2026-07-28T23:59:59.999+02:00[Europe/Rome]",
        "2026-01-28T15:00, 2026-01-28T15:00:00+01:00[Europe/Rome]",
        "2026-01-28 15:00:07, 2026-01-28T15:00:07+01:00[Europe/Rome]",
        "2026-01-28T15:00:07.25, 2026-01-28T15:00:07.25+01:00[Europe/Rome]",
        "2026-01-28T15:00:00Z, 2026-01-28T15:00:00Z",
        "2026-01-28T15:00:00+00:00[Europe/London], 2026-01-28T15:00:00Z[Europe/London]",
        "' 2026-01-28 ', 2026-01-28T23:59:59.999+01:00[Europe/Rome]",
        // a time that the clock change of 29 March 2026 skips moves on by the gap
        "2026-03-29T02:30, 2026-03-29T03:30:00+02:00[Europe/Rome]",
    })
    void a_moment_may_be_a_day_or_a_time_on_the_wall_clock_of_the_team(String typed, String meant) {
        SeasonText season =
                typed().text("works.csv", "kind,at,engine,result,by,note\nlook,\"" + typed + "\",K03,done,,\n");
        Facts facts = Facts.none().with(read(season).orThrow());
        assertThat(facts.of(Work.class).all().get(0).fact().at()).isEqualTo(Moment.parse(meant));
    }

    @Test
    void a_time_on_the_wall_clock_is_that_of_the_event() {
        SeasonText season = typed().text(
                        "missed-runs.csv", "event,car,at,how,words\nAway,41,2026-06-06T16:00,withdrawn,\n")
                .replace("events.csv", ",zone,note", ",zone,truck_leaves,note")
                .replace("events.csv", "Europe/Lisbon,", "Europe/Lisbon,2026-06-04 06:00,");
        Facts facts = Facts.none().with(read(season).orThrow());
        assertThat(facts.of(MissedRun.class).all().get(0).fact().at())
                .isEqualTo(Moment.parse("2026-06-06T16:00:00+01:00[Europe/Lisbon]"));
        assertThat(facts.of(Event.class).all().get(0).fact().truckLeaves())
                .isEqualTo(Moment.parse("2026-06-04T06:00:00+01:00[Europe/Lisbon]"));
        assertThat(facts.of(Run.class).all().get(1).fact().start())
                .isEqualTo(Moment.parse("2026-06-06T11:00:30+01:00[Europe/Lisbon]"));
    }

    @Test
    void the_zone_of_a_day_alone_is_that_of_the_logbook_when_the_folder_has_no_team() {
        Facts team = Facts.none()
                .with(read(SeasonText.empty().text("team.csv", TEAM)).orThrow());
        SeasonText works = SeasonText.empty()
                .text("engine-designs.csv", "name,cylinders,layout,note\nFour 16,4,,\n")
                .text("engines.csv", "number,design,note\nK03,Four 16,\n")
                .text("works.csv", "kind,at,engine,result,by,note\nlook,2026-01-28,K03,done,,\n");
        Facts read = Facts.none()
                .with(folders.read(works.in(place.resolve("works")), team).orThrow());
        assertThat(read.of(Work.class).all().get(0).fact().at())
                .isEqualTo(Moment.parse("2026-01-28T23:59:59.999+01:00[Europe/Rome]"));
        assertThat(folders.read(works.in(place.resolve("works")), Facts.none()).problems())
                .containsExactly(
                        problem("team.csv", 0, null, FILE_MISSING, "team.csv"),
                        problem("works.csv", 0, null, ROWS_WAIT, 1, "team.csv"));
    }

    @Test
    void a_column_that_may_not_be_empty_is_still_needed() {
        Outcome<List<Entry<?>>> read = read(typed().replace("cars.csv", "name,note\n41,", "note\nspare gearbox"));
        assertThat(read.problems()).contains(problem("cars.csv", 1, "name", COLUMN_MISSING, "name"));
        assertThat(read.orThrow()).hasSize(6);
    }

    @Test
    void a_column_nobody_knows_is_named() {
        Outcome<List<Entry<?>>> read = read(SeasonText.empty().text("cars.csv", "name,colour,note\n41,red,\n"));
        assertThat(read.problems()).containsExactly(problem("cars.csv", 1, "colour", COLUMN_UNKNOWN, "colour"));
    }

    @Test
    void a_column_without_a_heading_is_told_by_its_place() {
        Outcome<List<Entry<?>>> read = read(SeasonText.empty().text("cars.csv", "name,note,\n41,,\n"));
        assertThat(read.problems()).containsExactly(problem("cars.csv", 1, null, COLUMN_UNNAMED, "3"));
    }

    @Test
    void a_table_nobody_knows_is_named_and_the_others_are_read() {
        Outcome<List<Entry<?>>> read =
                read(SeasonText.empty().text("cars.csv", "name,note\n41,\n").text("Cars and drivers.CSV", "x\n"));
        assertThat(read.problems())
                .containsExactly(problem("Cars and drivers.CSV", 0, null, FILE_UNKNOWN, "Cars and drivers.CSV"));
        assertThat(read.orThrow()).hasSize(1);
    }

    @ParameterizedTest
    @ValueSource(strings = {"\r\n", "\r", "\n\n", "\n,,,\n"})
    void any_line_ends_and_empty_lines_are_read(String end) {
        SeasonText season = SeasonText.empty()
                .text("cars.csv", "name,note,standing,struck_because\n41,,,\n57,,,\n".replace("\n", end));
        Outcome<List<Entry<?>>> read = read(season);
        assertThat(read.problems()).isEmpty();
        assertThat(read.orThrow()).hasSize(2);
    }

    @Test
    void a_byte_order_mark_and_a_last_line_without_end_are_read() {
        Outcome<List<Entry<?>>> read = read(SeasonText.empty().text("cars.csv", "\uFEFFname,note\n41,spare"));
        assertThat(read.problems()).isEmpty();
        assertThat(read.orThrow()).hasSize(1);
    }
}
