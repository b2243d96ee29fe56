package witnessmark.desktop.find;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
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
import witnessmark.domain.Entry;
import witnessmark.domain.Facts;
import witnessmark.domain.Part;
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

    @ParameterizedTest(name = "\"{0}\"")
    @ValueSource(strings = {"5 Jul", "5/7", "2026-07-05", "sunday 5 july", "5.7.26"})
    void runs_are_found_by_their_day_as_people_type_it(String typed) {
        List<Found> found = find(FindGroup.RUNS, typed, 8);
        assertThat(found)
                .hasSize(4)
                .allSatisfy(run -> assertThat(run.note()).matches("Car [0-9]+, Sun 5 Jul 2026, Engine .*"));
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
            assertThat(run.note()).matches("Car [0-9]+, Sun 5 Jul 2026, Engine .*");
        });
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
        Findable parts = RecordsFindable.all(TEXTS, MEASURES, new Desk(), now::get, () -> TODAY, DayOrder.DAY_FIRST)
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

    private static List<Found> find(FindGroup group, String typed, int most) {
        return RecordsFindable.all(TEXTS, MEASURES, new Desk(), () -> sample, () -> TODAY, DayOrder.DAY_FIRST)
                .get(group.ordinal())
                .find(typed, most);
    }
}
