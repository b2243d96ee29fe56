package witnessmark.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static witnessmark.outcome.ProblemKind.ANOTHER_TEAM;
import static witnessmark.outcome.ProblemKind.NAME_TAKEN;
import static witnessmark.outcome.ProblemKind.ROWS_WAIT;
import static witnessmark.outcome.ProblemKind.VALUE_UNREADABLE;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import witnessmark.domain.Car;
import witnessmark.domain.Engine;
import witnessmark.domain.EngineInCar;
import witnessmark.domain.Entry;
import witnessmark.domain.EventEntry;
import witnessmark.domain.Facts;
import witnessmark.domain.Id;
import witnessmark.domain.Run;
import witnessmark.domain.Standing;
import witnessmark.domain.Team;
import witnessmark.outcome.Outcome;

/** A folder read into a logbook that holds something already: nothing twice, nothing lost. */
class ReadIntoLogbookTest extends ReadingTest {
    private Facts logbook() {
        return Facts.none().with(read(SeasonText.small()).orThrow());
    }

    private Outcome<List<Entry<?>>> into(Facts logbook, SeasonText season) {
        return folders.read(season.in(place.resolve("next")), logbook);
    }

    @Test
    void rows_the_logbook_has_are_left_out() {
        assertThat(into(logbook(), SeasonText.small())).isEqualTo(Outcome.worked(List.of()));
    }

    @Test
    void a_row_that_says_something_else_is_the_next_revision() {
        Facts logbook = logbook();
        SeasonText once = SeasonText.small().cell("cars.csv", 1, "note", "new floor");
        List<Entry<?>> first = into(logbook, once).orThrow();
        assertThat(first).containsExactly(car(5, "41", "new floor", Standing.IN_FORCE, null, 2));
        logbook = logbook.with(first);
        SeasonText twice = once.cell("cars.csv", 1, "standing", "struck out");
        twice.cell("cars.csv", 1, "struck_because", "sold");
        assertThat(into(logbook, twice).orThrow())
                .containsExactly(car(5, "41", "new floor", Standing.STRUCK_OUT, "sold", 3));
    }

    @Test
    void a_new_row_is_the_first_revision_and_may_refer_to_what_only_the_logbook_holds() {
        SeasonText season = SeasonText.empty()
                .text("engines-in-cars.csv", "engine,car,from,to,note\nK05,57,2026-07-11T20:00,,after qualifying\n");
        Outcome<List<Entry<?>>> read = into(logbook(), season);
        assertThat(read.problems()).isEmpty();
        Entry<?> entry = read.orThrow().get(0);
        assertThat(entry.rev()).isEqualTo(1);
        EngineInCar fact = (EngineInCar) entry.fact();
        assertThat(fact.engine()).isEqualTo(Id.parse(Folders.id(11)));
        assertThat(fact.car()).isEqualTo(Id.parse(Folders.id(6)));
    }

    @Test
    void a_name_that_two_rows_share_means_the_one_in_force() {
        SeasonText season = SeasonText.empty().text("entries.csv", "event,car,engine\nAway,57,K03\n");
        assertThat(into(logbook(), season).orThrow().get(0).fact())
                .isEqualTo(new EventEntry(Id.parse(Folders.id(26)), Id.parse(Folders.id(6)), Id.parse(Folders.id(10))));
    }

    @Test
    void the_row_of_another_team_is_left_out_and_says_whose_the_logbook_is() {
        Facts logbook = logbook();
        String here = logbook.of(Team.class)
                .inForce()
                .findFirst()
                .orElseThrow()
                .fact()
                .name();
        SeasonText season = SeasonText.empty()
                .text(
                        "team.csv",
                        "name,zone,currency,running_above_rpm,loaded_above_rpm,high_speed_above_rpm\n"
                                + "Fenwick Lane,Europe/London,EUR,500,3000,7500\n")
                .text("cars.csv", "name,note\n99,\n");
        Outcome<List<Entry<?>>> read = into(logbook, season);
        assertThat(read.problems()).singleElement().satisfies(problem -> {
            assertThat(problem.kind()).isEqualTo(ANOTHER_TEAM);
            assertThat(problem.facts()).containsExactly("Fenwick Lane", here);
        });
    }

    @Test
    void names_are_matched_as_written_before_spaces_dashes_and_letter_case_are_left_aside() {
        SeasonText season = SeasonText.empty()
                .text("cars.csv", "name,note\n4-1,\n")
                .text("entries.csv", "event,car\nAway,41\nAWAY,4-1\n\"round 1,home\",4 1\n\"ROUND 1, HOME\",5-7\n");
        Outcome<List<Entry<?>>> read = into(logbook(), season);
        assertThat(read.problems()).isEmpty();
        Facts facts = logbook().with(read.orThrow());
        List<String> cars = read.orThrow().stream()
                .filter(entry -> entry.fact() instanceof EventEntry)
                .map(entry -> facts.of(Car.class)
                        .get(((EventEntry) entry.fact()).car())
                        .name())
                .toList();
        // "4 1" is nobody's name as written; of the two it may mean, the folder's own comes first
        assertThat(cars).containsExactly("41", "4-1", "4-1", "57");
    }

    @Test
    void a_column_that_is_missing_changes_nothing() {
        SeasonText season = SeasonText.empty()
                .text("cars.csv", "id,name,note\n" + Folders.id(5) + ",41,new floor\n")
                .text(
                        "engines.csv",
                        "id,number,design,note\n" + Folders.id(11) + ",K05,Four 16,back in June\n" + Folders.id(12)
                                + ",K03,Four 16,typed three times\n");
        Facts logbook = logbook().with(into(logbook(), season).orThrow());
        Entry<Engine> k05 =
                logbook.of(Engine.class).find(Id.parse(Folders.id(11))).orElseThrow();
        assertThat(k05.fact().owner()).isEqualTo("customer C1");
        assertThat(k05.fact().note()).isEqualTo("back in June");
        Entry<Engine> twice =
                logbook.of(Engine.class).find(Id.parse(Folders.id(12))).orElseThrow();
        assertThat(twice.standing()).isEqualTo(Standing.STRUCK_OUT);
        assertThat(twice.struckBecause()).isEqualTo("the same engine twice");
        assertThat(twice.rev()).isEqualTo(2);
    }

    @Test
    void a_missing_column_that_refers_to_the_same_table_changes_nothing_either() {
        SeasonText season = SeasonText.small().handMade();
        season.files().keySet().removeIf(file -> !file.equals("runs.csv"));
        season.withoutColumn("runs.csv", "perhaps_same").cell("runs.csv", 3, "remarks", "by another watch");
        List<Entry<?>> entries = into(logbook(), season).orThrow();
        assertThat(entries).hasSize(1);
        assertThat(((Run) entries.get(0).fact()).perhapsSame()).isEqualTo(Id.parse(Folders.id(30)));
    }

    @Test
    void a_name_that_is_taken_in_the_logbook_is_no_second_one() {
        SeasonText season = SeasonText.empty().text("cars.csv", "name,note\n41,another\n57,spare gearbox\n99,\n");
        Outcome<List<Entry<?>>> read = into(logbook(), season);
        assertThat(read.problems()).containsExactly(problem("cars.csv", 2, "name", NAME_TAKEN, "car", "41"));
        assertThat(read.orThrow()).extracting(entry -> entry.fact().knownAs()).containsExactly("99");
    }

    @Test
    void two_rows_may_exchange_their_names() {
        SeasonText season = SeasonText.small().cell("cars.csv", 1, "name", "57").cell("cars.csv", 2, "name", "41");
        Outcome<List<Entry<?>>> read = into(logbook(), season.handMade());
        assertThat(read.problems()).isEmpty();
        assertThat(read.orThrow().stream().filter(entry -> entry.fact() instanceof Car))
                .containsExactly(
                        car(5, "57", "", Standing.IN_FORCE, null, 2),
                        car(6, "41", "spare gearbox", Standing.IN_FORCE, null, 2));
    }

    @Test
    void a_bad_row_leaves_what_the_logbook_holds_and_others_may_still_refer_to_it() {
        SeasonText season = SeasonText.small()
                .cell("engine-designs.csv", 1, "cylinders", "four")
                .cell("engines.csv", 1, "note", "crack-tested");
        Outcome<List<Entry<?>>> read = into(logbook(), season);
        assertThat(read.problems())
                .containsExactly(
                        problem("engine-designs.csv", 2, "cylinders", VALUE_UNREADABLE, "cylinders", "four", "12"));
        assertThat(ids(read.orThrow())).containsExactly(Folders.id(10));
    }

    @Test
    void a_row_of_another_logbook_with_a_name_that_is_taken_does_not_bring_its_runs() {
        String foreign = "01976c2e-0000-7000-9000-000000000001";
        SeasonText season = SeasonText.empty()
                .text("engines.csv", "id,number,design,note\n" + foreign + ",K05,Four 16,theirs\n")
                .text("entries.csv", "event,car,engine\nAway,57," + foreign + "\n");
        Outcome<List<Entry<?>>> read = into(logbook(), season);
        assertThat(read.problems())
                .containsExactly(
                        problem("engines.csv", 2, "number", NAME_TAKEN, "engine", "K05"),
                        problem("entries.csv", 0, null, ROWS_WAIT, 1, "engines.csv"));
        assertThat(read.orThrow()).isEmpty();
    }

    private static Entry<Car> car(
            int id, String name, String note, Standing standing, @Nullable String because, long rev) {
        return new Entry<>(Id.parse(Folders.id(id)), new Car(name, note), standing, because, rev);
    }
}
