package witnessmark.desktop.find;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.concurrent.atomic.AtomicReference;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import witnessmark.desktop.shell.Desk;
import witnessmark.desktop.shell.Findable;
import witnessmark.desktop.shell.Found;
import witnessmark.desktop.shell.PlaceId;
import witnessmark.domain.Build;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Facts;
import witnessmark.domain.Id;
import witnessmark.domain.Job;
import witnessmark.domain.Part;
import witnessmark.domain.Run;
import witnessmark.domain.Standing;
import witnessmark.quantity.typed.DayOrder;
import witnessmark.sample.SampleBooks;
import witnessmark.wording.Measures;
import witnessmark.wording.Texts;
import witnessmark.wording.Units;

/** What is looked for is in the invented sample season; what ought to be found was looked up in its tables by hand. */
class RecordsFindableTest {
    private static final LocalDate TODAY = LocalDate.of(2026, 7, 8);
    private static final Texts TEXTS = Texts.in(Locale.UK);
    private static final Measures MEASURES = new Measures(TEXTS, Units.METRIC);

    /** What was opened on its sheet. */
    private static final List<String> SHEETS = new ArrayList<>();

    @TempDir
    static Path folder;

    private static Facts sample = Facts.none();

    @BeforeAll
    static void read() {
        var desk = new SampleBooks(folder).open();
        sample = desk.logbook().facts();
        desk.logbook().close();
    }

    @ParameterizedTest(name = "\"{0}\"")
    @ValueSource(strings = {"VS-03", "vs03", "vs 03", "VS 03", "Vs-0 3"})
    void a_part_is_found_by_its_serial_whatever_the_case_spaces_and_dashes(String typed) {
        assertThat(titles(FindGroup.PARTS, typed, 8)).first().isEqualTo("Valve springs VS-03");
    }

    @Test
    void the_exact_serial_stands_before_those_that_only_begin_or_hold_it() {
        List<String> found = titles(FindGroup.PARTS, "BE-03b", 8);
        assertThat(found).first().isEqualTo("Big-end shells BE-03b");
        assertThat(titles(FindGroup.PARTS, "be03", 8))
                .contains("Big-end shells BE-03b")
                .allMatch(title ->
                        title.replaceAll("[ -]", "").toLowerCase(Locale.ROOT).contains("be03"));
    }

    @ParameterizedTest(name = "\"{0}\" finds {1} first")
    @CsvSource({"k03, Engine K03", "K 06, Engine K06", "engine k05, Engine K05", "k21, Engine K21"})
    void an_engine_is_found_by_its_number(String typed, String first) {
        assertThat(titles(FindGroup.ENGINES, typed, 8)).first().isEqualTo(first);
    }

    /** builds.csv: K05 was opened for its build 1 on 14 January 2026. */
    @ParameterizedTest(name = "\"{0}\"")
    @ValueSource(strings = {"K05 build 1", "k05build1", "build 1 k05", "Build 1 of K05"})
    void a_build_is_found_by_engine_and_number_and_leads_to_its_page(String typed) {
        Indexed found = first(FindGroup.BUILDS, typed, TODAY);
        assertThat(found.title()).isEqualTo("K05, build 1");
        assertThat(found.place()).isEqualTo(PlaceId.ENGINES);
        Build build = sample.of(Build.class).get(Id.parse(found.record()));
        assertThat(build.number()).isEqualTo(1);
        assertThat(sample.of(Engine.class).get(build.engine()).number()).isEqualTo("K05");
    }

    /** The engine's words hold "K05", "build" and "1" too, and a job is to build it: neither is what was asked for. */
    @Test
    void a_whole_name_is_answered_by_what_has_it_and_not_by_what_holds_its_words_here_and_there() {
        assertThat(titles(FindGroup.BUILDS, "K05 build 1", 8)).containsExactly("K05, build 1");
        assertThat(titles(FindGroup.ENGINES, "K05 build 1", 8)).isEmpty();
        assertThat(titles(FindGroup.JOBS, "K05 build 1", 8)).isEmpty();
        assertThat(titles(FindGroup.PARTS, "K05", 50)).isNotEmpty();
    }

    /** builds.csv of the sample season. */
    @Test
    void the_builds_of_an_engine_are_found_by_their_sheets_the_last_one_first() {
        assertThat(titles(FindGroup.BUILDS, "build sheet K05", 8))
                .containsExactly("K05, build 3", "K05, build 2", "K05, build 1");
    }

    @ParameterizedTest(name = "\"{0}\" finds {1}")
    @CsvSource({
        "14 Jan, 'K05, build 1'",
        "30/1, 'K05, build 1'",
        "2026-05-20, 'K03, build 2'",
        "tue 16 jun 2026, 'K05, build 3'"
    })
    void a_build_is_found_by_the_day_it_was_opened_or_closed(String typed, String title) {
        assertThat(titles(FindGroup.BUILDS, typed, 8)).contains(title);
    }

    @ParameterizedTest(name = "\"{0}\"")
    @ValueSource(strings = {"5 Jul", "5/7", "2026-07-05", "sunday 5 july", "5.7.26"})
    void runs_are_found_by_their_day_as_people_type_it(String typed) {
        List<Found> found = find(FindGroup.RUNS, typed, 8);
        assertThat(found)
                .hasSize(4)
                .allSatisfy(run -> assertThat(run.note())
                        .matches("Sun 5 Jul 2026, \\d\\d:\\d\\d, 2\\d min( \\d+ s)?, car \\d+, engine .*"));
    }

    @Test
    void words_may_stand_anywhere_and_all_must_be_there() {
        assertThat(titles(FindGroup.RUNS, "pellow race", 20))
                .isNotEmpty()
                .allMatch(title -> title.contains("Pellow Ridge") && title.contains("Race"));
        assertThat(titles(FindGroup.RUNS, "pellow thornacre", 20)).isEmpty();
    }

    @Test
    void the_latest_run_stands_first_among_equals() {
        assertThat(find(FindGroup.RUNS, "race 2", 1)).singleElement().satisfies(run -> {
            assertThat(run.title()).isEqualTo("Race 2, Round 5, Pellow Ridge");
            assertThat(run.note()).matches("Sun 5 Jul 2026, \\d\\d:\\d\\d, 2\\d min( \\d+ s)?, car \\d+, engine .*");
        });
    }

    /** In the season's table of runs, two of the tests of 21 March by the same car and engine. */
    @Test
    void two_runs_of_a_day_are_told_apart_by_their_time_out_and_how_long_they_were() {
        assertThat(find(FindGroup.RUNS, "run dunmarrow k03", 20))
                .extracting(Found::title, Found::note)
                .contains(
                        tuple("Run 1, Test 1, Dunmarrow", "Sat 21 Mar 2026, 09:30, 24 min 12 s, car 41, engine K03"),
                        tuple("Run 2, Test 1, Dunmarrow", "Sat 21 Mar 2026, 10:15, 23 min 54 s, car 41, engine K03"))
                .doesNotHaveDuplicates();
    }

    /** The season's only run that was struck out: practice 2 of round 1, logged twice. */
    @ParameterizedTest(name = "\"{0}\"")
    @ValueSource(strings = {"struck out", "logged twice", "practice 2 brindlewick", "11 Apr"})
    void a_run_that_was_struck_out_is_found_and_said_to_be(String typed) {
        assertThat(find(FindGroup.RUNS, typed, 20))
                .filteredOn(run -> run.note().startsWith("Struck out: "))
                .singleElement()
                .satisfies(run -> {
                    assertThat(run.title()).isEqualTo("Practice 2, Round 1, Brindlewick");
                    assertThat(run.note()).isEqualTo("Struck out: Sat 11 Apr 2026, 11:30, 25 min, car 41, engine K03");
                });
    }

    @Test
    void a_run_that_was_struck_out_opens_on_its_sheet_and_counts_for_no_event() {
        Indexed struck = first(FindGroup.RUNS, "logged twice", TODAY);
        Entry<Run> run = sample.of(Run.class).all().stream()
                .filter(entry -> entry.standing() == Standing.STRUCK_OUT)
                .findFirst()
                .orElseThrow();
        assertThat(struck.place()).isEqualTo(PlaceId.RUN_SHEET);
        assertThat(struck.record()).isEqualTo(run.id().text());
        long counted = sample.of(Run.class)
                .inForce()
                .filter(entry -> Objects.equals(entry.fact().event(), run.fact().event()))
                .count();
        assertThat(first(FindGroup.EVENTS, "round 1 brindlewick", TODAY).note())
                .isEqualTo("Sat 11 Apr 2026, " + counted + " runs…");
    }

    @Test
    void the_event_that_comes_next_leads_to_before_we_go_until_its_last_day_is_over() {
        assertThat(first(FindGroup.EVENTS, "thornacre", TODAY).place()).isEqualTo(PlaceId.BEFORE_WE_GO);
        LocalDate last = LocalDate.of(2026, 7, 26);
        assertThat(first(FindGroup.EVENTS, "thornacre", last).place()).isEqualTo(PlaceId.BEFORE_WE_GO);
        assertThat(first(FindGroup.EVENTS, "thornacre", last.plusDays(1)).place())
                .isNull();
        assertThat(first(FindGroup.EVENTS, "wendlestone", last.plusDays(1)).place())
                .isEqualTo(PlaceId.BEFORE_WE_GO);
    }

    /** Five runs by two cars were planned at round 5, and every one was run. */
    @Test
    void an_event_that_was_holds_its_runs_in_the_order_of_time_each_leading_to_its_sheet() {
        Found round5 = find(FindGroup.EVENTS, "pellow", 2).get(0);
        assertThat(round5.open()).isNull();
        assertThat(round5.within())
                .hasSize(10)
                .allSatisfy(run -> assertThat(run.open()).isNotNull());
        assertThat(round5.within()).extracting(Found::title).startsWith("Practice 1, Round 5, Pellow Ridge");
        assertThat(round5.within()).extracting(Found::title).endsWith("Race 2, Round 5, Pellow Ridge");
        assertThat(first(FindGroup.EVENTS, "pellow", TODAY).within())
                .allSatisfy(run -> assertThat(run.place()).isEqualTo(PlaceId.RUN_SHEET))
                .extracting(Indexed::record)
                .doesNotHaveDuplicates();
    }

    @Test
    void an_event_later_than_the_next_shows_its_timetable_and_offers_nothing_to_open() {
        Found test2 = find(FindGroup.EVENTS, "test 2", 2).get(0);
        assertThat(test2.note()).isEqualTo("Sat 17 Oct 2026, no run yet…");
        assertThat(test2.within())
                .allSatisfy(run -> assertThat(run.open()).isNull())
                .extracting(Found::title)
                .startsWith("Run 1: Sat 17 Oct 2026, 09:30, 24 min, planned");
    }

    /** Round 6 with its two cars, before anybody logged a run: the first place says how a logbook is begun. */
    @Test
    void an_event_shows_its_runs_and_cars_where_no_run_is_logged_yet() {
        Facts young = sample.with(sample.of(Run.class).all().stream()
                .map(run -> new Entry<>(run.id(), run.fact(), Standing.STRUCK_OUT, "none yet", run.rev() + 1))
                .toList());
        Indexed round6 = new ReadRecords(TEXTS, MEASURES)
                .of(young, TODAY)
                .find(FindGroup.EVENTS, "thornacre", null, 1)
                .get(0);
        assertThat(round6.place()).isNull();
        assertThat(round6.within())
                .extracting(Indexed::title)
                .anyMatch(title -> title.startsWith("Practice 1: Sat 25 Jul 2026"))
                .endsWith("Cars entered: 41, 57");
    }

    @Test
    void an_event_is_found_by_its_circuit() {
        assertThat(titles(FindGroup.EVENTS, "thornacre", 8)).containsExactly("Round 6, Thornacre");
    }

    @ParameterizedTest(name = "at most {0}")
    @ValueSource(ints = {1, 3, 8})
    void no_more_is_given_than_asked_for(int most) {
        assertThat(find(FindGroup.PARTS, "valve", most)).hasSize(most);
    }

    @ParameterizedTest(name = "\"{0}\"")
    @ValueSource(strings = {"-", ",", "zzz", "vs03 zzz"})
    void what_is_not_there_is_not_found(String typed) {
        for (FindGroup group : FindGroup.values()) {
            assertThat(find(group, typed, 8)).as(group.toString()).isEmpty();
        }
    }

    /** jobs.csv: the harness of car 57, asked for on 7 July; the oil cooler of car 57, done on 24 June. */
    @ParameterizedTest(name = "\"{0}\" finds {1}, {2}")
    @CsvSource({
        "harness, 'Six-point harness out of date on 30 September: order one', 'Car 57, open since Tue 7 Jul 2026, Owner'",
        "oil cooler, Oil cooler and lines new, 'Car 57, done Wed 24 Jun 2026, fitted; lines flushed'",
        "lines flushed, Oil cooler and lines new, 'Car 57, done Wed 24 Jun 2026, fitted; lines flushed'",
        "the owner no set, 'Springs out and renewed, or a run-on signed',"
                + " 'Part VS-03, open since Tue 7 Jul 2026, Crew chief'",
        "2026-06-24, Oil cooler and lines new, 'Car 57, done Wed 24 Jun 2026, fitted; lines flushed'",
    })
    void a_job_is_found_open_or_done_and_leads_to_its_sheet(String typed, String title, String note) {
        Found found = find(FindGroup.JOBS, typed, 8).get(0);
        assertThat(found.title()).isEqualTo(title);
        assertThat(found.note()).isEqualTo(note);

        SHEETS.clear();
        Objects.requireNonNull(found.open()).run();
        assertThat(SHEETS)
                .singleElement()
                .satisfies(id -> assertThat(sample.of(Job.class)
                                .find(Id.parse(id))
                                .orElseThrow()
                                .fact()
                                .what())
                        .isEqualTo(title));
    }

    @Test
    void what_is_still_to_be_done_stands_before_what_was() {
        List<String> notes =
                find(FindGroup.JOBS, "car 57", 50).stream().map(Found::note).toList();
        assertThat(notes).anyMatch(note -> note.contains("open since")).anyMatch(note -> note.contains("done"));
        assertThat(notes.stream().map(note -> note.contains("done"))).isSorted();
    }

    /** Metamorphic: however a serial is written, the same parts answer in the same order. */
    @ParameterizedTest(name = "{0}")
    @ValueSource(strings = {"CR-03", "RB-03a", "OF-03-7", "HD-06", "GB-41"})
    void spelling_changes_no_answer(String serial) {
        List<String> asWritten = titles(FindGroup.PARTS, serial, 50);
        assertThat(titles(FindGroup.PARTS, serial.toLowerCase(Locale.ROOT), 50)).isEqualTo(asWritten);
        assertThat(titles(FindGroup.PARTS, serial.replace("-", ""), 50)).isEqualTo(asWritten);
        assertThat(asWritten).first().asString().endsWith(serial);
    }

    @Test
    void what_is_written_later_is_found_and_what_is_struck_out_is_not() {
        AtomicReference<Facts> now = new AtomicReference<>(sample);
        Findable parts = RecordsFindable.all(
                        TEXTS,
                        MEASURES,
                        new Desk(),
                        now::get,
                        () -> TODAY,
                        DayOrder.DAY_FIRST,
                        new RecordsFindable.Opened(record -> {}, record -> {}, record -> {}))
                .get(FindGroup.PARTS.ordinal());
        Entry<Part> springs = sample.of(Part.class).named("VS-03").orElseThrow();
        assertThat(parts.find("VS-03", 8)).isNotEmpty();
        now.set(sample.with(
                List.of(new Entry<>(springs.id(), springs.fact(), Standing.STRUCK_OUT, "wrong", springs.rev() + 1))));
        assertThat(parts.find("VS-03", 8)).extracting(Found::title).noneMatch(title -> title.endsWith("VS-03"));
    }

    private static List<String> titles(FindGroup group, String typed, int most) {
        List<String> titles = new ArrayList<>();
        find(group, typed, most).forEach(found -> titles.add(found.title()));
        return titles;
    }

    private static Indexed first(FindGroup group, String typed, LocalDate today) {
        List<Indexed> found = new ReadRecords(TEXTS, MEASURES).of(sample, today).find(group, typed, null, 1);
        assertThat(found).hasSize(1);
        return found.get(0);
    }

    private static List<Found> find(FindGroup group, String typed, int most) {
        return RecordsFindable.all(
                        TEXTS,
                        MEASURES,
                        new Desk(),
                        () -> sample,
                        () -> TODAY,
                        DayOrder.DAY_FIRST,
                        new RecordsFindable.Opened(SHEETS::add, SHEETS::add, SHEETS::add))
                .get(group.ordinal())
                .find(typed, most);
    }
}
