package witnessmark.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.InstantSource;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import witnessmark.domain.Car;
import witnessmark.domain.Entry;
import witnessmark.domain.Person;
import witnessmark.domain.history.Amendment;
import witnessmark.logbook.ClockDay;
import witnessmark.logbook.Desk;
import witnessmark.logbook.EnterKeptAside;
import witnessmark.logbook.port.Change;
import witnessmark.logbook.port.KeptAside;
import witnessmark.logbook.port.KeptAside.Aside;
import witnessmark.logbook.port.Logbook;
import witnessmark.outcome.Outcome;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;

/** What could not be saved is shown, entered when somebody says so, and not told again when somebody puts it aside. */
class KeptAsideTest {
    @TempDir
    private Path folder;

    private TestLogbooks logbooks;
    private Logbook logbook;
    private KeptAside kept;

    @BeforeEach
    void make() {
        logbooks = new TestLogbooks(folder);
        logbook = logbooks.create();
        kept = logbooks.files.keptAside();
    }

    @AfterEach
    void close() {
        logbook.close();
    }

    /** Writes while the file is somewhere else. */
    private void lost(String why, Entry<?>... entries) throws Exception {
        Path out = Files.move(logbooks.file(), folder.resolve("out"));
        assertThat(logbook.write(new Change("TE", why, List.of(entries))).didWork())
                .isFalse();
        Files.move(out, logbooks.file());
    }

    @Test
    void each_saving_goes_in_as_it_was_to_be_and_can_be_taken_back_by_itself() throws Exception {
        Entry<Car> car = Garage.made(new Car("7", ""));
        Entry<Person> driver = Garage.made(new Person("Ada", ""));
        lost("adding a car", car);
        lost("adding people", driver, Garage.made(new Person("Bo", "")));
        lost("adding people", driver); // tried again

        List<Aside> waiting = kept.waiting(logbook);
        assertThat(waiting).extracting(Aside::name).containsExactlyInAnyOrder("7", "Ada", "Bo");
        assertThat(waiting).extracting(Aside::who).containsOnly("TE");

        Desk desk = new Desk(logbook, new ClockDay(InstantSource.system(), logbook), "CC");
        Outcome<Integer> entered = new EnterKeptAside(desk).enter(waiting, aside -> aside.why() + ", later");
        assertThat(entered.problems()).isEmpty();
        assertThat(entered.orThrow()).isEqualTo(3);
        assertThat(logbook.facts().of(Car.class).named("7").orElseThrow().fact())
                .isEqualTo(car.fact());
        assertThat(logbook.facts().of(Person.class).all()).hasSize(2);
        assertThat(logbook.history())
                .extracting(Amendment::who, Amendment::why)
                .contains(
                        org.assertj.core.groups.Tuple.tuple("CC", "adding a car, later"),
                        org.assertj.core.groups.Tuple.tuple("CC", "adding people, later"));
        assertThat(kept.waiting(logbook)).isEmpty();
        assertThat(logbook.verify()).isEmpty();
    }

    @Test
    void what_was_put_aside_is_not_told_again_and_stays_as_text() throws Exception {
        lost("adding a car", Garage.made(new Car("7", "")));
        lost("adding a car", Garage.made(new Car("8", "")));
        List<Aside> waiting = kept.waiting(logbook);
        String text = Files.readString(kept.file());
        assertThat(kept.putAside(List.of(waiting.get(0)))).isTrue();

        assertThat(kept.waiting(logbook)).containsExactly(waiting.get(1));
        assertThat(Files.readString(kept.file())).startsWith(text);
        kept.putAside(List.of(waiting.get(1)));
        logbook.close();
        assertThat(logbooks.files.open(logbooks.file()).problems()).isEmpty();
    }

    @Test
    void one_that_does_not_fit_any_more_is_told_and_goes_on_waiting() throws Exception {
        Entry<Car> car = Garage.made(new Car("7", ""));
        TestLogbooks.write(logbook, car).orThrow();
        lost("renaming", new Entry<>(car.id(), new Car("7b", ""), car.standing(), null, 2));
        lost("adding a car", Garage.made(new Car("8", "")));
        List<Aside> waiting = kept.waiting(logbook);
        assertThat(waiting).hasSize(2);
        TestLogbooks.write(logbook, new Entry<>(car.id(), new Car("7c", ""), car.standing(), null, 2))
                .orThrow();

        Outcome<Integer> entered = new EnterKeptAside(
                        new Desk(logbook, new ClockDay(InstantSource.system(), logbook), "CC"))
                .enter(waiting, Aside::why);
        assertThat(entered.orThrow()).as("the other went in").isEqualTo(1);
        assertThat(entered.problems()).extracting(Problem::kind).containsExactly(ProblemKind.CHANGED_MEANWHILE);
        assertThat(logbook.facts().of(Car.class).named("7c")).isPresent();
        assertThat(logbook.facts().of(Car.class).named("8")).isPresent();
    }

    /** Saved in the end, and corrected later: it is in the logbook, whatever it says by now. */
    @Test
    void what_was_saved_in_the_end_is_not_told_again_when_it_is_corrected() throws Exception {
        Entry<Car> car = Garage.made(new Car("7", ""));
        lost("adding a car", car);
        Entry<Car> typedStill = Garage.made(new Car("7", ""));
        TestLogbooks.write(logbook, typedStill).orThrow();
        assertThat(kept.waiting(logbook)).isEmpty();
        TestLogbooks.write(logbook, new Entry<>(typedStill.id(), new Car("7b", ""), car.standing(), null, 2))
                .orThrow();
        assertThat(kept.waiting(logbook)).isEmpty();
        logbook.close();
        assertThat(logbooks.files.open(logbooks.file()).problems()).isEmpty();
    }

    /** The same when it was entered in another sitting. */
    @Test
    void what_was_found_there_at_an_opening_is_not_told_again_when_it_is_corrected() throws Exception {
        lost("adding a car", Garage.made(new Car("7", "")));
        logbook.close();
        logbook = logbooks.open();
        Entry<Car> again = Garage.made(new Car("7", ""));
        TestLogbooks.write(logbook, again).orThrow();
        logbook.close();
        logbook = logbooks.open();
        TestLogbooks.write(logbook, new Entry<>(again.id(), new Car("7b", ""), again.standing(), null, 2))
                .orThrow();
        assertThat(kept.waiting(logbook)).isEmpty();
    }
}
