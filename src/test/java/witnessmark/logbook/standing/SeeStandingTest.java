package witnessmark.logbook.standing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import witnessmark.domain.Car;
import witnessmark.domain.Facts;
import witnessmark.domain.Part;
import witnessmark.domain.RunKind;
import witnessmark.ledger.AsOf;
import witnessmark.ledger.LifeLedger;
import witnessmark.ledger.result.MarkState;
import witnessmark.logbook.Desk;
import witnessmark.logbook.View;
import witnessmark.logbook.run.RunField;
import witnessmark.logbook.run.RunSheet;
import witnessmark.logbook.run.SampleBook;
import witnessmark.quantity.RunningTime;
import witnessmark.sample.SampleBooks;

/** Expected figures are those of the invented sample season's printed tables. */
class SeeStandingTest {
    @TempDir
    Path folder;

    private Desk desk;

    @BeforeEach
    void open() {
        desk = new SampleBooks(folder).open();
    }

    @AfterEach
    void close() {
        desk.logbook().close();
    }

    @Test
    void on_the_evening_of_8_july_the_springs_of_k03_are_past_the_builders_limit() {
        MarkOn springs = on(SeeStanding.of(desk.view()), "VS-03");
        assertThat(springs.state()).isEqualTo(MarkState.OVER);
        assertThat(new RunningTime(springs.use().used().total()).hours(2)).isEqualByComparingTo("12.87");
        assertThat(new RunningTime(-springs.use().left()).hours(1)).isEqualByComparingTo("0.9");
        assertThat(springs.engine()).isEqualTo("K03");
        assertThat(springs.car()).isEqualTo("41");
        assertThat(springs.mark().perhapsOver()).isFalse();
    }

    /** The order of the printed table of what a realistic tool would have shown. */
    @Test
    void in_june_the_same_springs_had_run_10_65_of_12_hours() {
        desk.lookAsOf(LocalDate.of(2026, 6, 14));
        MarkOn springs = on(SeeStanding.of(desk.view()), "VS-03");
        assertThat(springs.state()).isEqualTo(MarkState.DUE);
        assertThat(springs.runsOut().event().fact().name()).isEqualTo("Round 5, Pellow Ridge");
        assertThat(new RunningTime(springs.use().used().total()).hours(2)).isEqualByComparingTo("10.65");
    }

    @Test
    void the_next_event_is_round_6_in_16_days_with_two_cars_and_five_runs_each() {
        NextEvent next = SeeStanding.of(desk.view()).next();
        assertThat(next.event().name()).isEqualTo("Round 6, Thornacre");
        assertThat(next.days()).isEqualTo(16);
        assertThat(next.cars()).isEqualTo(2);
        assertThat(next.planned()).isEqualTo(10);
        assertThat(next.left()).isEqualTo(10);
        assertThat(next.running()).isFalse();
        assertThat(next.truckLeaves().text()).startsWith("2026-07-24T06:00");
    }

    @ParameterizedTest(name = "on {0}: {1}, running {2}, {3} of {4} to come")
    @CsvSource({
        "2026-07-03, 'Round 5, Pellow Ridge', false, 10, 10",
        "2026-07-04, 'Round 5, Pellow Ridge', true, 4, 10",
        "2026-07-05, 'Round 5, Pellow Ridge', true, 0, 10",
        "2026-07-06, 'Round 6, Thornacre', false, 10, 10"
    })
    void an_event_stays_the_next_one_until_its_last_day_is_over(
            LocalDate day, String name, boolean running, int left, int planned) {
        desk.lookAsOf(day);
        NextEvent next = SeeStanding.of(desk.view()).next();
        assertThat(next.event().name()).isEqualTo(name);
        assertThat(next.running()).isEqualTo(running);
        assertThat(next.left()).isEqualTo(left);
        assertThat(next.planned()).isEqualTo(planned);
    }

    /** A run of Saturday that nobody logged is not to come on Sunday, neither in the count nor in the strip of the event. */
    @Test
    void a_run_of_a_day_that_is_past_is_not_to_come() {
        LocalDate sunday = LocalDate.of(2026, 7, 26);
        desk.lookAsOf(sunday);

        Standing standing = SeeStanding.of(desk.view());

        assertThat(standing.next().running()).isTrue();
        assertThat(standing.next().left()).as("two races for two cars").isEqualTo(4);
        assertThat(standing.timetable()).extracting(run -> run.fact().day()).containsOnly(sunday);
        assertThat(standing.open().unlogged())
                .as("but it is told that nobody logged it")
                .extracting(
                        each -> each.car().fact().name(), each -> each.runs().size())
                .containsExactlyInAnyOrder(tuple("41", 3), tuple("57", 3));
        desk.lookAsOf(LocalDate.of(2026, 7, 8));
        assertThat(SeeStanding.of(desk.view()).open().unlogged())
                .as("in round 5 every run was logged or missed")
                .isEmpty();
        desk.lookAsOf(LocalDate.of(2026, 8, 15));
        assertThat(SeeStanding.of(desk.view()).open().unlogged())
                .as("whoever left a gap so long means to")
                .isEmpty();
    }

    @Test
    void both_cars_were_last_out_in_race_2_at_pellow_ridge() {
        assertThat(SeeStanding.of(desk.view()).lastOut())
                .extracting(
                        LastOut::name,
                        LastOut::engine,
                        LastOut::event,
                        out -> out.run().fact().name(),
                        out -> out.run().fact().laps())
                .startsWith(
                        tuple("41", "K03", "Round 5, Pellow Ridge", "Race 2", 12),
                        tuple("57", "K06", "Round 5, Pellow Ridge", "Race 2", 12));
    }

    @Test
    void round_5_took_k03_from_10_65_to_12_87_hours() {
        LifeMoved moved = SeeStanding.of(desk.view()).moved().stream()
                .filter(engine -> engine.number().equals("K03"))
                .findFirst()
                .orElseThrow();
        assertThat(new RunningTime(moved.before()).hours(2)).isEqualByComparingTo("10.65");
        assertThat(new RunningTime(moved.now().total()).hours(2)).isEqualByComparingTo("12.87");
        assertThat(moved.event()).isEqualTo("Round 5, Pellow Ridge");
        assertThat(moved.runs()).hasSize(5);
    }

    @ParameterizedTest(name = "as of {0}")
    @ValueSource(strings = {"2026-03-22", "2026-05-04", "2026-05-25", "2026-06-15", "2026-07-08"})
    void what_moved_adds_up_to_the_runs_of_the_outing(LocalDate day) {
        desk.lookAsOf(day);
        List<LifeMoved> all = SeeStanding.of(desk.view()).moved();
        assertThat(all).isNotEmpty().allSatisfy(moved -> {
            long ran = moved.runs().stream()
                    .mapToLong(run -> run.fact().running().millis())
                    .sum();
            assertThat(moved.added().total()).isEqualTo(ran);
            assertThat(moved.before() + ran).isEqualTo(moved.now().total());
        });
    }

    @Test
    void the_runs_of_a_day_that_belong_to_no_event_are_one_outing() {
        RunSheet sheet = new RunSheet(desk, SampleBooks.ids(), SampleBook.UNITS);
        for (String running : List.of("20", "25")) {
            Map<RunField, String> typed = new EnumMap<>(sheet.fresh(
                    desk.view().facts().of(Car.class).named("41").orElseThrow().id()));
            typed.put(RunField.PLANNED, "kind:" + RunKind.TEST.code());
            typed.put(RunField.RUNNING, running);
            sheet.save(typed, "log").orThrow();
        }
        List<LifeMoved> all = SeeStanding.of(desk.view()).moved();
        assertThat(all).hasSize(1);
        assertThat(all.get(0).number()).isEqualTo("K03");
        assertThat(all.get(0).event()).isNull();
        assertThat(all.get(0).runs()).hasSize(2);
        assertThat(all.get(0).added().total()).isEqualTo(45 * 60_000L);
    }

    @Test
    void only_what_goes_to_the_event_is_among_what_goes() {
        Standing standing = SeeStanding.of(desk.view());
        assertThat(standing.going())
                .isNotEmpty()
                .allSatisfy(on -> assertThat(on.car()).isIn("41", "57"));
        assertThat(standing.elsewhere())
                .isNotEmpty()
                .allSatisfy(on -> assertThat(on.engine()).isIn("K05", "K21", "K22"));
    }

    @ParameterizedTest(name = "as of {0}")
    @ValueSource(strings = {"2026-03-22", "2026-05-04", "2026-06-01", "2026-07-08"})
    void every_part_going_is_counted_once_and_at_its_worst(LocalDate day) {
        desk.lookAsOf(day);
        Standing standing = SeeStanding.of(desk.view());
        Set<String> held = new HashSet<>();
        Set<String> over = new HashSet<>();
        Set<String> seen = new HashSet<>();
        for (MarkOn on : standing.going()) {
            if (on.serial() != null) {
                seen.add(on.serial());
                if (on.state() == MarkState.HELD) {
                    held.add(on.serial());
                } else if (on.state() == MarkState.OVER) {
                    over.add(on.serial());
                }
            }
        }
        over.removeAll(held);
        PartCount count = standing.goingParts();
        assertThat(count.held()).isEqualTo(held.size());
        assertThat(count.over()).isEqualTo(over.size());
        assertThat(count.all() - count.noLimit()).isEqualTo(seen.size());
        assertThat(count.noLimit() + standing.elsewhereParts().noLimit())
                .isEqualTo(standing.withoutLimit().size());
    }

    @Test
    void a_part_nobody_wrote_a_limit_for_is_listed_as_such() {
        Standing standing = SeeStanding.of(desk.view());
        assertThat(standing.withoutLimit())
                .extracting(PartWithoutLimit::mark)
                .contains("HD-03")
                .doesNotContain("VS-03");
        assertThat(desk.view().facts().of(Part.class).named("HD-03")).isPresent();
    }

    @Test
    void a_customers_clutch_whose_starts_nobody_counted_is_not_known() {
        MarkOn clutch = on(SeeStanding.of(desk.view()), "CL-21");
        assertThat(clutch.state()).isEqualTo(MarkState.NOT_KNOWN);
        assertThat(clutch.use().used().complete()).isFalse();
    }

    @Test
    void an_empty_logbook_has_every_step_before_it_and_claims_nothing() {
        LocalDate day = LocalDate.of(2026, 1, 2);
        Facts none = Facts.none();
        View view = new View(none, day, ZoneOffset.UTC, LifeLedger.of(none, new AsOf(day, ZoneOffset.UTC)), false);
        Standing standing = SeeStanding.of(view);
        assertThat(standing.steps()).isEqualTo(new FirstSteps(false, false, false));
        assertThat(standing.steps().left()).isTrue();
        assertThat(standing.next()).isNull();
        assertThat(standing.going()).isEmpty();
        assertThat(standing.goingParts()).isEqualTo(new PartCount(0, 0, 0, 0, 0, 0, 0));
        assertThat(standing.lastOut()).isEmpty();
        assertThat(standing.moved()).isEmpty();
    }

    private static MarkOn on(Standing standing, String mark) {
        return java.util.stream.Stream.concat(standing.going().stream(), standing.elsewhere().stream())
                .filter(on -> mark.equals(on.serial()))
                .findFirst()
                .orElseThrow();
    }
}
