package witnessmark.store;

import static org.assertj.core.api.Assertions.assertThat;
import static witnessmark.store.Garage.again;
import static witnessmark.store.Garage.fitment;
import static witnessmark.store.Garage.hour;
import static witnessmark.store.Garage.inCar;
import static witnessmark.store.Garage.made;
import static witnessmark.store.Garage.struck;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.EnumSet;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import witnessmark.domain.Build;
import witnessmark.domain.Car;
import witnessmark.domain.Engine;
import witnessmark.domain.EngineDesign;
import witnessmark.domain.Entry;
import witnessmark.domain.Event;
import witnessmark.domain.Fact;
import witnessmark.domain.PartDesign;
import witnessmark.domain.PartKind;
import witnessmark.domain.Person;
import witnessmark.domain.PlannedRun;
import witnessmark.domain.Position;
import witnessmark.domain.Run;
import witnessmark.domain.RunKind;
import witnessmark.domain.SetMember;
import witnessmark.domain.Team;
import witnessmark.domain.Zone;
import witnessmark.logbook.port.Logbook;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;
import witnessmark.quantity.EngineSpeed;

/** What the logbook refuses although no form asked, and in what words. */
class GuardsTest {
    private static final Garage GARAGE = new Garage();

    @TempDir
    private Path folder;

    private Logbook logbook;

    @BeforeEach
    void open() {
        logbook = new TestLogbooks(folder).create();
        TestLogbooks.write(logbook, GARAGE.all()).orThrow();
    }

    @AfterEach
    void close() {
        logbook.close();
    }

    @Test
    void a_position_holds_one_part_at_a_moment() {
        write(made(fitment(GARAGE.r1, GARAGE.e1, GARAGE.rods, 1, 5)));
        assertThat(refusal(made(fitment(GARAGE.r2, GARAGE.e1, GARAGE.rods, 4, -1))))
                .isEqualTo(Problem.of(ProblemKind.TWO_PARTS_IN_POSITION, "rods", "E1", "R1", "R2", hour(4)));
        write(made(fitment(GARAGE.r2, GARAGE.e1, GARAGE.rods, 5, -1)));
    }

    @Test
    void a_part_is_in_one_place_at_a_moment() {
        write(made(fitment(GARAGE.r1, GARAGE.e1, GARAGE.rods, 3, -1)));
        assertThat(refusal(made(fitment(GARAGE.r1, GARAGE.e2, GARAGE.rods, 1, -1))))
                .isEqualTo(Problem.of(ProblemKind.PART_IN_TWO_PLACES, "R1", "E1", "E2", hour(3)));
        write(made(fitment(GARAGE.r1, GARAGE.e2, GARAGE.rods, 1, 3)));
    }

    @Test
    void a_single_use_part_is_fitted_once() {
        write(made(fitment(GARAGE.g1, GARAGE.e1, GARAGE.head, 1, 2)));
        assertThat(refusal(made(fitment(GARAGE.g1, GARAGE.e2, GARAGE.head, 7, 8))))
                .isEqualTo(Problem.of(ProblemKind.SINGLE_USE_AGAIN, "G1", "E1"));
    }

    @Test
    void a_design_cannot_become_single_use_when_one_of_its_parts_was_used_twice() {
        write(made(fitment(GARAGE.r1, GARAGE.e1, GARAGE.rods, 1, 2)));
        write(made(fitment(GARAGE.r1, GARAGE.e2, GARAGE.rods, 3, 4)));
        assertThat(refusal(again(
                                GARAGE.rodDesign,
                                new PartDesign("forged rods", PartKind.RODS, "", "", true, true, "", null)))
                        .kind())
                .isEqualTo(ProblemKind.REFUSED_BY_LOGBOOK);
        assertThat(refusal(again(
                                GARAGE.r1,
                                Garage.part("R1", GARAGE.gasketDesign).fact()))
                        .kind())
                .isEqualTo(ProblemKind.REFUSED_BY_LOGBOOK);
    }

    @Test
    void an_engine_is_in_one_car_at_a_moment() {
        write(made(inCar(GARAGE.e1, GARAGE.car7, 1, -1)));
        assertThat(refusal(made(inCar(GARAGE.e1, GARAGE.car8, 4, 5))))
                .isEqualTo(Problem.of(ProblemKind.ENGINE_IN_TWO_CARS, "E1", "7", "8", hour(4)));
    }

    @Test
    void a_car_has_one_engine_at_a_moment() {
        write(made(inCar(GARAGE.e1, GARAGE.car7, 1, 5)));
        assertThat(refusal(made(inCar(GARAGE.e2, GARAGE.car7, 0, 2))))
                .isEqualTo(Problem.of(ProblemKind.TWO_ENGINES_IN_CAR, "7", "E1", "E2", hour(1)));
        write(made(inCar(GARAGE.e2, GARAGE.car7, 5, 6)));
    }

    @Test
    void a_car_takes_a_planned_run_once() {
        Entry<Run> first = made(GARAGE.run("Race 1", GARAGE.car7, GARAGE.race1, 10));
        write(first);
        assertThat(refusal(made(GARAGE.run("Race 1 again", GARAGE.car7, GARAGE.race1, 12))))
                .isEqualTo(Problem.of(ProblemKind.PLANNED_RUN_TAKEN, "Race 1", "7", hour(10)));
        write(made(GARAGE.run("Race 1", GARAGE.car8, GARAGE.race1, 10)));
        write(struck(first));
        write(made(GARAGE.run("Race 1 again", GARAGE.car7, GARAGE.race1, 12)));
    }

    @Test
    void a_row_in_conflict_is_let_be() {
        write(made(fitment(GARAGE.r1, GARAGE.e1, GARAGE.rods, 1, 5)));
        Entry<?> other = made(fitment(GARAGE.r2, GARAGE.e1, GARAGE.rods, 4, -1));
        write(new Entry<>(
                Garage.made(fitment(GARAGE.r2, GARAGE.e1, GARAGE.rods, 4, -1)).id(),
                fitment(GARAGE.r2, GARAGE.e1, GARAGE.rods, 4, -1),
                witnessmark.domain.Standing.IN_CONFLICT,
                null,
                1));
        assertThat(refusal(other).kind()).isEqualTo(ProblemKind.TWO_PARTS_IN_POSITION);
    }

    static Stream<Object[]> names() {
        Entry<EngineDesign> design = GARAGE.design;
        return Stream.of(
                names("engine", "E1", new Engine("E1", design.id(), "a customer", "another")),
                names("car", "7", new Car("7", "another")),
                names("part", "R1", Garage.part("R1", GARAGE.gasketDesign).fact()),
                names(
                        "event",
                        "Spring meeting",
                        new Event(
                                "Spring meeting",
                                "",
                                LocalDate.EPOCH,
                                LocalDate.EPOCH,
                                java.time.ZoneOffset.UTC,
                                null,
                                "")),
                names(
                        "engine_design",
                        "two litre four",
                        new EngineDesign("two litre four", 6, "", null, null, null, null, null, null, null, "", null)),
                names(
                        "part_design",
                        "forged rods",
                        new PartDesign("forged rods", PartKind.OTHER, "", "", false, false, "", null)),
                names("position", "rods", new Position(design.id(), null, PartKind.OTHER, "rods", 9, false)),
                names(
                        "planned_run",
                        "Race 1",
                        new PlannedRun(GARAGE.event.id(), 7, RunKind.RACE, "Race 1", LocalDate.EPOCH, null, null)));
    }

    @ParameterizedTest(name = "{0} {1}")
    @MethodSource("names")
    void a_name_is_taken_once(String table, String name, Fact again) {
        assertThat(refusal(made(again))).isEqualTo(Problem.of(ProblemKind.NAME_TAKEN, table, name));
    }

    @Test
    void other_names_are_taken_once_too_and_free_again_once_struck_out() {
        Entry<Person> ada = made(new Person("Ada", "engines"));
        write(ada);
        assertThat(refusal(made(new Person("Ada", "drives"))))
                .isEqualTo(Problem.of(ProblemKind.NAME_TAKEN, "person", "Ada"));
        write(struck(ada));
        write(made(new Person("Ada", "drives")));
        write(made(new SetMember(GARAGE.r1.id(), "rod 1", 1)));
        assertThat(refusal(made(new SetMember(GARAGE.r1.id(), "rod 1", 2))).kind())
                .isEqualTo(ProblemKind.NAME_TAKEN);
        write(made(new SetMember(GARAGE.r2.id(), "rod 1", 1)));
        write(made(new Build(GARAGE.e1.id(), 3, EnumSet.of(Zone.HEAD), hour(1), null, "", "")));
        assertThat(refusal(made(new Build(GARAGE.e1.id(), 3, EnumSet.of(Zone.SUMP), hour(2), null, "", ""))))
                .isEqualTo(Problem.of(ProblemKind.NAME_TAKEN, "build", "E1 3"));
        write(made(new Position(null, GARAGE.car7.id(), PartKind.CLUTCH, "rods", 1, false)));
    }

    @Test
    void there_is_one_team() {
        EngineSpeed speed = new EngineSpeed(1_000);
        write(made(new Team("First", java.time.ZoneOffset.UTC, "GBP", speed, speed, speed)));
        assertThat(refusal(made(new Team("Second", java.time.ZoneOffset.UTC, "GBP", speed, speed, speed)))
                        .kind())
                .isEqualTo(ProblemKind.NAME_TAKEN);
    }

    private static Object[] names(String table, String name, Fact fact) {
        return new Object[] {table, name, fact};
    }

    private void write(Entry<?> entry) {
        TestLogbooks.write(logbook, entry).orThrow();
    }

    private Problem refusal(Entry<?> entry) {
        List<Problem> problems = TestLogbooks.write(logbook, entry).problems();
        assertThat(problems).hasSize(1);
        return problems.get(0);
    }
}
