package witnessmark.store;

import static org.assertj.core.api.Assertions.assertThat;
import static witnessmark.store.Garage.again;
import static witnessmark.store.Garage.fitment;
import static witnessmark.store.Garage.made;
import static witnessmark.store.Garage.struck;

import java.nio.file.Path;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import witnessmark.domain.Car;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Facts;
import witnessmark.domain.Fitment;
import witnessmark.domain.history.Amendment;
import witnessmark.logbook.port.Change;
import witnessmark.logbook.port.Logbook;
import witnessmark.logbook.port.Written;
import witnessmark.outcome.Outcome;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;

class WritingTest {
    private final Garage garage = new Garage();

    @TempDir
    private Path folder;

    private TestLogbooks logbooks;
    private Logbook logbook;

    @BeforeEach
    void open() {
        logbooks = new TestLogbooks(folder);
        logbook = logbooks.create();
        TestLogbooks.write(logbook, garage.all()).orThrow();
    }

    @AfterEach
    void close() {
        logbook.close();
    }

    @Test
    void a_change_is_told_with_what_was_written_and_all_facts_after_it() {
        Written written = logbook.write(
                        new Change("Bea", "a new number", List.of(again(garage.car7, new Car("17", "")))))
                .orThrow();

        assertThat(written.facts()).isSameAs(logbook.facts());
        assertThat(written.facts().of(Car.class).get(garage.car7.id())).isEqualTo(new Car("17", ""));
        Amendment amendment = written.amendments().get(0);
        assertThat(written.amendments()).hasSize(1);
        assertThat(amendment.before()).containsOnly(java.util.Map.entry("name", "7"));
        assertThat(amendment.after()).containsOnly(java.util.Map.entry("name", "17"));
        assertThat(amendment.who()).isEqualTo("Bea");
        assertThat(amendment.why()).isEqualTo("a new number");
        assertThat(amendment.device()).isEqualTo("device-a");
        assertThat(amendment.number()).isEqualTo(garage.all().size() + 1L);
        assertThat(logbook.amendments(written.change())).containsExactly(amendment);
        assertThat(logbook.history("car", garage.car7.id().value())).hasSize(2).endsWith(amendment);
        assertThat(logbook.history()).hasSize(garage.all().size() + 1).endsWith(amendment);
    }

    @Test
    void the_first_amendment_of_a_record_makes_it_and_names_every_column() {
        Amendment first = logbook.history("car", garage.car7.id().value()).get(0);

        assertThat(first.makes()).isTrue();
        assertThat(first.after()).containsOnlyKeys("name", "note", "standing", "struck_because");
    }

    @Test
    void an_entry_written_again_as_it_stands_is_left_out() {
        Written written = TestLogbooks.write(
                        logbook, again(garage.car7, garage.car7.fact()), again(garage.car8, new Car("18", "")))
                .orThrow();

        assertThat(written.amendments()).hasSize(1);
        assertThat(written.facts()
                        .of(Car.class)
                        .find(garage.car7.id())
                        .orElseThrow()
                        .rev())
                .isEqualTo(1);
        int before = logbook.history().size();
        Facts facts = logbook.facts();
        assertThat(TestLogbooks.write(logbook, garage.car7).orThrow().amendments())
                .isEmpty();
        assertThat(logbook.history()).hasSize(before);
        assertThat(logbook.facts()).isSameAs(facts);
    }

    @Test
    void a_record_that_somebody_changed_meanwhile_is_refused_with_the_whole_change() {
        TestLogbooks.write(logbook, again(garage.car7, new Car("17", ""))).orThrow();
        Facts before = logbook.facts();

        Outcome<Written> stale =
                TestLogbooks.write(logbook, made(new Car("9", "")), again(garage.car7, new Car("27", "")));

        assertThat(stale.problems()).containsExactly(Problem.of(ProblemKind.CHANGED_MEANWHILE, "car", "27"));
        assertThat(logbook.facts()).isSameAs(before);
        assertThat(logbook.facts().of(Car.class).named("9")).isEmpty();
    }

    @Test
    void a_record_may_be_written_twice_in_one_change() {
        Entry<Car> first = again(garage.car7, new Car("17", ""));
        TestLogbooks.write(logbook, first, again(first, new Car("27", ""))).orThrow();

        assertThat(logbook.facts()
                        .of(Car.class)
                        .find(garage.car7.id())
                        .orElseThrow()
                        .rev())
                .isEqualTo(3);
        assertThat(logbook.verify()).isEmpty();
    }

    @Test
    void a_part_is_fitted_in_the_same_change_that_takes_off_the_one_before_in_whatever_order() {
        Entry<Fitment> old = made(fitment(garage.r1, garage.e1, garage.rods, 1, -1));
        TestLogbooks.write(logbook, old).orThrow();

        TestLogbooks.write(
                        logbook,
                        made(fitment(garage.r2, garage.e1, garage.rods, 5, -1)),
                        again(old, fitment(garage.r1, garage.e1, garage.rods, 1, 5)))
                .orThrow();

        assertThat(logbook.facts().of(Fitment.class).inForce()).hasSize(2);
        assertThat(logbook.verify()).isEmpty();
    }

    @Test
    void two_parts_change_places_in_one_change() {
        Entry<Fitment> one = made(fitment(garage.r1, garage.e1, garage.rods, 1, -1));
        Entry<Fitment> other = made(fitment(garage.r2, garage.e2, garage.rods, 1, -1));
        TestLogbooks.write(logbook, one, other).orThrow();

        TestLogbooks.write(
                        logbook,
                        again(one, fitment(garage.r1, garage.e2, garage.rods, 1, -1)),
                        again(other, fitment(garage.r2, garage.e1, garage.rods, 1, -1)))
                .orThrow();

        Fitment now = logbook.facts().of(Fitment.class).get(one.id());
        assertThat(now.engine()).isEqualTo(garage.e2.id());
        assertThat(logbook.facts().of(Fitment.class).inForce()).hasSize(2);
        assertThat(logbook.verify()).isEmpty();
    }

    @Test
    void a_change_with_one_entry_refused_leaves_nothing_behind() {
        TestLogbooks.write(logbook, made(fitment(garage.r1, garage.e1, garage.rods, 1, -1)))
                .orThrow();
        int before = logbook.history().size();

        Outcome<Written> refused = TestLogbooks.write(
                logbook, made(new Car("9", "")), made(fitment(garage.r2, garage.e1, garage.rods, 2, -1)));

        assertThat(refused.problems())
                .containsExactly(
                        Problem.of(ProblemKind.TWO_PARTS_IN_POSITION, "rods", "E1", "R1", "R2", Garage.hour(2)));
        assertThat(logbook.history()).hasSize(before);
        TestLogbooks.write(logbook, made(new Car("10", ""))).orThrow();
        assertThat(logbook.verify()).isEmpty();
    }

    @Test
    void an_entry_that_refers_to_nothing_is_refused() {
        Outcome<Written> refused = TestLogbooks.write(
                logbook, made(new Engine("E9", new witnessmark.domain.Id<>(UUID.randomUUID()), null, "")));

        assertThat(refused.problems()).extracting(Problem::kind).containsExactly(ProblemKind.REFUSED_BY_LOGBOOK);
        assertThat(refused.problems().get(0).facts()).startsWith("engine", "E9");
    }

    @Test
    void what_was_struck_out_is_kept_and_can_be_restored() {
        Entry<Car> struck = struck(garage.car7);
        TestLogbooks.write(logbook, struck).orThrow();
        assertThat(logbook.facts().of(Car.class).find(garage.car7.id())).contains(struck);

        Entry<Car> restored = again(struck, garage.car7.fact());
        TestLogbooks.write(logbook, restored).orThrow();

        logbook.close();
        logbook = logbooks.open();
        assertThat(logbook.facts().of(Car.class).find(garage.car7.id())).contains(restored);
    }

    @Test
    void the_order_of_the_history_outlives_a_clock_set_back() {
        TestLogbooks.write(logbook, again(garage.car7, new Car("17", ""))).orThrow();
        logbook.close();
        logbooks.clock.set(0); // 1970
        logbook = logbooks.open();

        Entry<Car> later = again(again(garage.car7, new Car("17", "")), new Car("27", ""));
        Amendment amendment =
                TestLogbooks.write(logbook, later).orThrow().amendments().get(0);

        assertThat(logbook.history()).endsWith(amendment);
        assertThat(logbook.verify()).isEmpty();
    }
}
