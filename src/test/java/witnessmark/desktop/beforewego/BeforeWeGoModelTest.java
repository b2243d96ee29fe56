package witnessmark.desktop.beforewego;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.UUID;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import witnessmark.cost.CostDraft;
import witnessmark.desktop.form.BoardLine;
import witnessmark.desktop.form.SeamState;
import witnessmark.domain.Car;
import witnessmark.domain.CostLine;
import witnessmark.domain.EngineInCar;
import witnessmark.domain.Entry;
import witnessmark.domain.Facts;
import witnessmark.domain.Fitment;
import witnessmark.domain.Id;
import witnessmark.domain.Incident;
import witnessmark.domain.Part;
import witnessmark.domain.PriorKind;
import witnessmark.ledger.result.MarkState;
import witnessmark.logbook.standing.MarkOn;
import witnessmark.logbook.standing.SeeStanding;
import witnessmark.logbook.standing.Standing;
import witnessmark.quantity.Money;
import witnessmark.wording.Measures;
import witnessmark.wording.Texts;
import witnessmark.wording.Units;

/** Expected words carry figures of the invented sample season's printed tables. */
class BeforeWeGoModelTest {
    private static final Texts TEXTS = Texts.in(Locale.UK);
    private static final BeforeWeGoModel MODEL = new BeforeWeGoModel(TEXTS, new Measures(TEXTS, Units.METRIC));

    @TempDir
    static Path folder;

    private static Facts sample = Facts.none();

    @BeforeAll
    static void read() {
        sample = Views.sample(folder);
    }

    @Test
    void the_springs_of_k03_are_told_with_their_figures() {
        MarkLine first = lines(Views.DAY).must().get(1);
        assertThat(first.state()).isEqualTo(SeamState.OVER);
        assertThat(first.title()).isEqualTo("Valve springs VS-03");
        assertThat(first.where()).isEqualTo("Engine K03, car 41");
        assertThat(first.figures()).isEqualTo("12.87 h run, limit 12 h (builder)");
        assertThat(first.left()).isEqualTo("0.9 h over now");
        assertThat(first.due()).isEqualTo("renew valve springs");
        assertThat(first.tip()).contains("builder's sheet of 2026-01-15");
    }

    @Test
    void the_row_says_all_of_itself_to_a_screen_reader() {
        MarkLine first = lines(Views.DAY).must().get(1);
        assertThat(first.about()).contains(first.title(), first.where(), first.figures(), first.left(), first.due());
    }

    @Test
    void what_is_inside_says_how_far_it_is_to_its_limit() {
        assertThat(line("GB-41").left()).isEqualTo("4.2 h to its limit");
        assertThat(line("GB-41").figures()).isEqualTo("10.76 h loaded, look at 15 h (maker)");
        assertThat(line("GB-41").where()).isEqualTo("Car 41");
        assertThat(line("GB-41").state()).isEqualTo(SeamState.WITHIN);
    }

    /** "At least" would be how much was run; what stands in this column is what is left. */
    @Test
    void what_is_not_known_in_full_has_at_most_so_much_left() {
        assertThat(lines(Views.DAY).all())
                .filteredOn(row -> row.state() == SeamState.NOT_KNOWN)
                .isNotEmpty()
                .noneMatch(row -> row.left().startsWith("at least"));
    }

    @Test
    void what_nobody_counted_says_what_is_missing_and_shows_no_figure_for_it() {
        MarkLine clutch = line("CL-21");
        assertThat(clutch.state()).isEqualTo(SeamState.NOT_KNOWN);
        assertThat(clutch.left()).isEqualTo("Race starts not known");
        assertThat(clutch.dueWords()).contains("1 run does not say race starts");
        assertThat(clutch.life().isKnown()).isFalse();
    }

    @Test
    void a_life_somebody_told_of_is_a_range_and_what_is_left_is_a_least() {
        MarkLine pump = line("OP-21");
        assertThat(pump.ran()).contains(" to ");
        assertThat(pump.left()).startsWith("at least ");
    }

    @Test
    void a_part_without_a_limit_says_so() {
        MarkLine head = line("HD-03");
        assertThat(head.state()).isEqualTo(SeamState.NOT_KNOWN);
        assertThat(head.left()).isEqualTo("No limit recorded");
        assertThat(head.life().isKnown()).isFalse();
        assertThat(head.share()).isNull();
    }

    @Test
    void the_board_names_the_next_event_and_what_it_takes() {
        Board board = lines(Views.DAY).board();
        assertThat(board.sentence()).isEqualTo("3 to be done before we load");
        assertThat(board.under()).isEqualTo("Truck leaves Fri 24 Jul, 06:00. Round 6, Thornacre.");
        assertThat(board.figures())
                .extracting(BoardLine.Figure::value, BoardLine.Figure::words)
                .containsExactly(tuple("16", "days"), tuple("2", "cars"), tuple("10", "runs planned"));
    }

    @Test
    void during_an_event_the_board_counts_the_runs_that_are_left() {
        Board board = lines(LocalDate.of(2026, 7, 4)).board();
        assertThat(board.sentence()).isEqualTo("1 job before the next run");
        assertThat(board.under()).isEqualTo("Running from Sat 4 Jul 2026 to Sun 5 Jul 2026. Round 5, Pellow Ridge.");
        assertThat(board.figures())
                .extracting(BoardLine.Figure::value, BoardLine.Figure::words)
                .containsExactly(tuple("2", "cars"), tuple("4", "runs to go"));
    }

    /** Counted in the season's tables by hand: five runs stand in the timetable of round 6, two cars are entered. */
    @Test
    void where_no_car_is_entered_the_board_says_so_and_counts_the_timetable_alone() {
        Board board = MODEL.lines(SeeStanding.of(Views.of(Views.withoutEntries(sample), Views.DAY)))
                .board();
        assertThat(board.figures())
                .extracting(BoardLine.Figure::value, BoardLine.Figure::words)
                .containsExactly(tuple("16", "days"), tuple("no", "car entered"), tuple("5", "runs each"));
        assertThat(board.under())
                .startsWith("Truck leaves Fri 24 Jul, 06:00.")
                .contains("All cars count as going. Enter cars by season folder.");
    }

    @Test
    void what_goes_without_entries_is_every_engine_in_a_car_as_the_board_says() {
        Standing standing = SeeStanding.of(Views.of(Views.withoutEntries(sample), Views.DAY));
        assertThat(standing.going().stream().map(MarkOn::engine).filter(Objects::nonNull))
                .contains("K03", "K06", "K21")
                .doesNotContain("K05", "K22");
    }

    @Test
    void the_truck_that_has_left_is_not_announced_again() {
        Board board = lines(LocalDate.of(2026, 7, 3)).board();
        assertThat(board.under()).startsWith("Truck leaves Fri 3 Jul, 06:00.");
        assertThat(board.figures().get(0)).isEqualTo(new BoardLine.Figure("0", "days"));
    }

    @Test
    void after_the_last_event_nothing_is_invented() {
        StandingLines lines = lines(LocalDate.of(2027, 1, 1));
        assertThat(lines.board().sentence()).isEqualTo("No event after today");
        assertThat(lines.board().figures()).isEmpty();
        assertThat(lines.due()).isEmpty();
        assertThat(lines.runsOut().any()).isFalse();
        assertThat(lines.must()).isNotEmpty();
    }

    @Test
    void the_last_run_of_each_car_is_told_in_two_lines() {
        assertThat(lines(Views.DAY).lastOut())
                .extracting(OutLine::title, OutLine::first, OutLine::second)
                .startsWith(
                        tuple(
                                "Car 41, engine K03",
                                "Sun 5 Jul, race 2: 27 min 42 s, 12 laps",
                                "Highest 8\u2009230 rpm, water 84 °C"),
                        tuple(
                                "Car 57, engine K06",
                                "Sun 5 Jul, race 2: 27 min 36 s, 12 laps",
                                "Highest 8\u2009225 rpm, water 81 °C"));
    }

    @Test
    void lives_moved_are_told_from_and_to() {
        OutLine k03 = lines(Views.DAY).moved().get(0);
        assertThat(k03.title()).isEqualTo("K03 from 10.65 to 12.87 h");
        assertThat(k03.first()).isEqualTo("Round 5, Pellow Ridge: 5 runs");
        assertThat(k03.second()).startsWith("Adds 2.22 h, and to the ");
    }

    /** The outing alone was timed, so that only what stands before and after it is a likely figure. */
    @Test
    void lives_moved_from_a_told_life_are_about_and_what_was_timed_is_not() {
        Facts told = Views.told(sample, "K03", 9, PriorKind.TOLD);
        OutLine k03 =
                MODEL.lines(SeeStanding.of(Views.of(told, Views.DAY))).moved().get(0);
        assertThat(k03.title()).isEqualTo("K03 from about 19.65 to about 21.87 h");
        assertThat(k03.second()).startsWith("Adds 2.22 h, and to the ");
    }

    @Test
    void lives_moved_from_a_life_nobody_knows_in_full_are_a_least() {
        Facts unknown = Views.told(sample, "K03", 9, PriorKind.UNKNOWN);
        OutLine k03 = MODEL.lines(SeeStanding.of(Views.of(unknown, Views.DAY)))
                .moved()
                .get(0);
        assertThat(k03.title()).isEqualTo("K03 from at least 19.65 to at least 21.87 h");
        assertThat(k03.second()).startsWith("Adds 2.22 h, and to the ");
    }

    @Test
    void a_car_that_is_entered_and_has_no_engine_in_it_calls() {
        Facts bare = sample.with(sample
                .of(EngineInCar.class)
                .where(stay -> stay.to() == null
                        && sample.of(Car.class).get(stay.car()).name().equals("41"))
                .stream()
                .map(stay -> new Entry<>(
                        stay.id(), stay.fact(), witnessmark.domain.Standing.STRUCK_OUT, "another car", stay.rev() + 1))
                .toList());
        StandingLines whole = lines(Views.DAY);
        StandingLines lines = MODEL.lines(SeeStanding.of(Views.of(bare, Views.DAY)));
        assertThat(whole.bare()).isEmpty();
        assertThat(lines.bare()).singleElement().satisfies(line -> {
            assertThat(line.title()).isEqualTo("Car 41");
            assertThat(line.first()).isEqualTo("entered for Round 6, Thornacre");
        });
        assertThat(lines.calling()).isEqualTo(1 + lines.must().size());
    }

    @Test
    void an_engine_that_goes_with_nothing_at_a_needed_position_calls() {
        Facts lent = sample.with(sample
                .of(Fitment.class)
                .where(fitment -> fitment.to() == null
                        && sample.of(Part.class).get(fitment.part()).mark().equals("VS-03"))
                .stream()
                .map(fitment -> new Entry<>(
                        fitment.id(),
                        fitment.fact(),
                        witnessmark.domain.Standing.STRUCK_OUT,
                        "lent",
                        fitment.rev() + 1))
                .toList());
        assertThat(lines(Views.DAY).incomplete()).isEmpty();
        StandingLines lines = MODEL.lines(SeeStanding.of(Views.of(lent, Views.DAY)));
        assertThat(lines.incomplete()).singleElement().satisfies(line -> {
            assertThat(line.title()).isEqualTo("Engine K03, car 41");
            assertThat(line.first()).isEqualTo("nothing at valve springs");
            assertThat(line.sheet()).isNotNull();
            assertThat(line.sheet().sheet()).isEqualTo("fit_part");
        });
        assertThat(lines.calling()).isEqualTo(1 + lines.must().size());

        Facts nobodyEntered = Views.withoutEntries(lent);
        assertThat(MODEL.lines(SeeStanding.of(Views.of(nobodyEntered, Views.DAY)))
                        .incomplete())
                .as("where no entries are written down, every car with an engine goes")
                .extracting(OutLine::title)
                .contains("Engine K03, car 41");
    }

    @Test
    void what_can_be_asked_back_before_the_event_is_over_is_a_row_and_the_rest_is_one() {
        assertThat(lines(Views.DAY).refunds())
                .extracting(OutLine::title, OutLine::first, OutLine::second)
                .containsExactlyInAnyOrder(
                        tuple(
                                "Entry, Round 6, Thornacre, car 41",
                                "520.00 EUR to ask back",
                                "Until Sat 11 Jul 2026, 3 days left"),
                        tuple(
                                "Entry, Round 6, Thornacre, car 57",
                                "520.00 EUR to ask back",
                                "Until Sat 11 Jul 2026, 3 days left"),
                        tuple(
                                "2 more for later",
                                "Entry, Round 7, Wendlestone, car 57",
                                "Until Sat 8 Aug 2026, 31 days left"));
    }

    @Test
    void money_that_is_late_says_so_and_what_came_in_part_says_what_is_to_come() {
        Money paid = Money.parse("75.00 EUR");
        CostLine core = new CostDraft(LocalDate.of(2026, 6, 1), "core charge", paid)
                .gotBack(Money.parse("50.00 EUR"))
                .refundBy(LocalDate.of(2026, 7, 7))
                .line();
        Facts owed = sample.with(
                List.of(new Entry<>(new Id<>(new UUID(7, 8)), core, witnessmark.domain.Standing.IN_FORCE, null, 1)));
        OutLine row =
                MODEL.lines(SeeStanding.of(Views.of(owed, Views.DAY))).refunds().get(0);
        assertThat(row.title()).isEqualTo("Core charge");
        assertThat(row.first()).isEqualTo("25.00 EUR of 75.00 EUR still to come");
        assertThat(row.second()).isEqualTo("Late: the last day was Tue 7 Jul 2026");
    }

    @Test
    void an_open_incident_of_a_car_that_goes_says_what_it_is_on_how_bad_it_was_and_for_how_long() {
        assertThat(lines(Views.DAY).incidents()).singleElement().satisfies(row -> {
            assertThat(row.title()).startsWith("INC-05 ");
            assertThat(row.first()).isEqualTo("Car 57, K05, again after INC-03");
            assertThat(row.second()).isEqualTo("Retired, open 24 days");
            assertThat(row.record())
                    .isEqualTo(sample.of(Incident.class)
                            .named("INC-05")
                            .orElseThrow()
                            .id()
                            .text());
        });
    }

    @Test
    void once_the_last_run_of_an_event_is_over_the_board_speaks_of_loading_again() {
        Board board = lines(LocalDate.of(2026, 7, 5)).board();
        assertThat(board.figures()).extracting(BoardLine.Figure::value).contains("0");
        assertThat(board.sentence()).endsWith("to be done before we load");
    }

    @Test
    void of_very_many_over_the_worst_are_rows_and_the_others_are_counted() {
        Standing one = SeeStanding.of(Views.of(sample, Views.DAY));
        List<MarkOn> many = Collections.nCopies(1000, one.going().get(0));
        StandingLines lines = MODEL.lines(new Standing(
                one.day(),
                one.next(),
                one.timetable(),
                one.cars(),
                many,
                one.elsewhere(),
                one.withoutLimit(),
                one.enginesWithoutLimit(),
                one.goingParts(),
                one.elsewhereParts(),
                one.lastOut(),
                one.moved(),
                one.nextRuns(),
                one.open(),
                one.steps()));
        assertThat(lines.must()).hasSizeLessThan(50);
        assertThat(lines.must().size() + lines.more()).isEqualTo(1000);
        assertThat(lines.calling()).isEqualTo(1000);
    }

    @ParameterizedTest(name = "as of {0}")
    @ValueSource(strings = {"2026-02-20", "2026-03-22", "2026-05-04", "2026-06-01", "2026-06-14", "2026-07-08"})
    void everything_that_calls_is_a_row_and_the_rows_are_in_the_order_of_all(LocalDate day) {
        StandingLines lines = lines(day);
        List<String> all = lines.all().stream().map(MarkLine::id).toList();
        for (List<MarkLine> section : List.of(lines.must(), lines.due(), lines.nearest())) {
            List<Integer> places =
                    section.stream().map(row -> all.indexOf(row.id())).toList();
            assertThat(places).isSorted().doesNotContain(-1);
        }
        long over = SeeStanding.of(Views.of(sample, day)).going().stream()
                .filter(on -> on.state() == MarkState.OVER || on.state() == MarkState.HELD)
                .count();
        assertThat(lines.must())
                .filteredOn(row -> row.state() == SeamState.OVER || row.state() == SeamState.HELD)
                .hasSize((int) over);
        assertThat(new HashSet<>(all)).hasSameSizeAs(all);
    }

    @Test
    void the_quiet_line_counts_parts() {
        StandingLines lines = lines(Views.DAY);
        assertThat(lines.calling()).isEqualTo(3);
        assertThat(lines.quiet())
                .matches("\\d+ parts inside recorded limits; 0 not known; \\d+ without a recorded limit");
        assertThat(lines.elsewhere()).startsWith("Not going: nothing over a limit;");
    }

    /** The crew's three worries of that evening, and the fourth of the printed table: how far the shells are. */
    @Test
    void on_the_evening_of_8_july_the_rows_say_what_holds_what_is_over_and_what_comes_due() {
        StandingLines lines = lines(Views.DAY);
        assertThat(lines.must())
                .extracting(MarkLine::title, MarkLine::state, MarkLine::left, MarkLine::figures)
                .containsExactly(
                        tuple("Rods RS-03", SeamState.HELD, "Held, not signed clear", "9\u2009340 rpm on 3 May"),
                        tuple(
                                "Valve springs VS-03",
                                SeamState.OVER,
                                "0.9 h over now",
                                "12.87 h run, limit 12 h (builder)"),
                        tuple(
                                "Valve springs VS-03",
                                SeamState.OVER,
                                "9 % down, limit 8 %",
                                "exhaust 3B, 266 N on 7 Jul, was 291 N"));
        assertThat(lines.due())
                .filteredOn(row -> row.title().equals("Big-end shells BE-06"))
                .singleElement()
                .satisfies(row -> {
                    assertThat(row.left()).isEqualTo("1.7 h left after");
                    assertThat(row.figures()).isEqualTo("6.11 h run, look at 10 h (builder)");
                    assertThat(row.dueWords()).startsWith("2.2 h there (");
                });
    }

    @Test
    void what_calls_stands_under_the_first_run_and_what_lasts_the_event_under_the_last() {
        RunsOutLines runsOut = lines(Views.DAY).runsOut();
        assertThat(runsOut.runs()).hasSize(5);
        assertThat(runsOut.runs().get(0)).startsWith("Sat, ");
        assertThat(runsOut.cars()).extracting(RunsOutLines.Row::car).containsExactly("Car 41", "Car 57");
        assertThat(runsOut.cars().get(0).cells().get(0))
                .extracting(RunsOutLines.Cell::words)
                .contains("rods, held", "valve springs, already over");
        assertThat(runsOut.cars().get(1).cells().get(4))
                .extracting(RunsOutLines.Cell::words)
                .contains("big-end shells, within one event after");
    }

    @Test
    void a_new_logbook_says_that_it_is_one() {
        StandingLines lines = MODEL.lines(SeeStanding.of(Views.of(Facts.none(), Views.DAY)));
        assertThat(lines.steps().left()).isTrue();
        assertThat(lines.board().sentence()).isEqualTo("A new logbook");
        assertThat(lines.nearest()).isEmpty();
        assertThat(lines.elsewhere()).isEmpty();
    }

    private static StandingLines lines(LocalDate day) {
        return MODEL.lines(SeeStanding.of(Views.of(sample, day)));
    }

    private static MarkLine line(String mark) {
        return lines(Views.DAY).all().stream()
                .filter(row -> row.title().endsWith(" " + mark))
                .findFirst()
                .orElseThrow();
    }
}
