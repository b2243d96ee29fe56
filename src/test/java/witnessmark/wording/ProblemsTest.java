package witnessmark.wording;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import witnessmark.domain.Engine;
import witnessmark.domain.LimitRank;
import witnessmark.domain.Zone;
import witnessmark.domain.image.RecordTypes;
import witnessmark.outcome.Place;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;
import witnessmark.quantity.Counter;
import witnessmark.quantity.Distance;
import witnessmark.quantity.EngineSpeed;
import witnessmark.quantity.Length;
import witnessmark.quantity.Moment;
import witnessmark.quantity.Pressure;
import witnessmark.quantity.RunningTime;
import witnessmark.quantity.Temperature;
import witnessmark.quantity.Volume;

class ProblemsTest {
    private static final List<String> PARTS = List.of("what", "data", "do");
    /** Words that would turn a note into a permission, or that name the machinery instead of the matter. */
    private static final Pattern NOT_SAID = Pattern.compile(
            "\\b(safe|good to|fit to|clear to|may (go|run|start|race)|can (go|run|race)|ready to (go|run)"
                    + "|error|invalid|illegal|exception|null|failed|fatal|code|sql|database|constraint)\\b",
            Pattern.CASE_INSENSITIVE);

    private static final Moment MOMENT = Moment.of(LocalDateTime.of(2026, 7, 5, 15, 0), ZoneId.of("Europe/London"));
    private final Texts texts = Texts.in(Locale.UK);
    private final Problems problems = new Problems(texts, new Measures(texts, Units.METRIC));

    @ParameterizedTest(name = "{0} says what happened, what it means and what to do")
    @EnumSource
    void every_kind_has_its_three_parts(ProblemKind kind) {
        for (String part : PARTS) {
            String sentence = texts.get(Problems.key(kind, part), marks(kind));
            assertThat(sentence).as(part).matches("(?s)[A-Z'‹].*[.?]").doesNotContain("!", "''", "{", "}", "  ", "..");
            assertThat(NOT_SAID.matcher(sentence).find()).as(sentence).isFalse();
        }
    }

    @ParameterizedTest(name = "{0} uses each of its facts and no other")
    @EnumSource
    void the_sentences_of_a_kind_use_exactly_its_facts(ProblemKind kind) {
        Set<String> used = new TreeSet<>();
        for (String part : PARTS) {
            Pattern.compile("\\{([0-9]+)}")
                    .matcher(texts.pattern(Problems.key(kind, part)))
                    .results()
                    .forEach(blank -> used.add(blank.group(1)));
        }
        assertThat(used)
                .isEqualTo(IntStream.range(0, kind.facts())
                        .mapToObj(Integer::toString)
                        .collect(Collectors.toSet()));
        String all = problems.sentence(Problem.of(kind, marks(kind)));
        for (Object mark : marks(kind)) {
            assertThat(all).contains(mark.toString());
        }
    }

    @Test
    void there_is_no_sentence_without_a_kind() {
        Set<String> expected = Stream.of(ProblemKind.values())
                .flatMap(kind -> PARTS.stream().map(part -> Problems.key(kind, part)))
                .collect(Collectors.toSet());
        expected.addAll(Set.of(
                "problems.three_parts",
                "problems.two_parts",
                "problems.changes_missing.count",
                "problems.entries_kept_aside.count",
                "problems.kept_missing.count",
                "problems.photos_not_copied.count",
                "problems.photos_not_in_folder.count",
                "problems.typed",
                "problems.placed",
                "problems.rows_wait.count",
                "problems.differs_from_logbook.nothing",
                "problems.differs_from_logbook.quoted",
                "problems.place.line",
                "problems.place.column",
                "problems.place.named"));
        assertThat(texts.keys().stream().filter(key -> key.startsWith("problems.")))
                .containsExactlyInAnyOrderElementsOf(expected);
    }

    @Test
    void what_cannot_be_read_is_shown_with_texts_that_can() {
        Problem problem = Problem.of(ProblemKind.CANNOT_READ, "Running time", "1h7x", List.of("1h20", "80 min"));
        assertThat(problems.note(problem))
                .isEqualTo("Couldn't read '1h7x' for Running time. It is written like 1h20 or 80 min.");
        assertThat(problems.sentence(problem))
                .isEqualTo("Couldn't read '1h7x' for Running time. Nothing is saved yet."
                        + " It is written like 1h20 or 80 min.");
    }

    @Test
    void an_unusual_value_names_what_is_usual_and_what_was_perhaps_meant() {
        Problem problem = Problem.of(
                ProblemKind.UNUSUAL_MEANT,
                "Oil pressure",
                Pressure.ofBar(new BigDecimal("34")),
                Pressure.ofBar(new BigDecimal("3")),
                Pressure.ofBar(new BigDecimal("6")),
                Pressure.ofBar(new BigDecimal("3.4")));
        assertThat(problems.note(problem))
                .isEqualTo("Oil pressure is usually 3.0 bar to 6.0 bar, not 34.0 bar. Meant 3.4 bar?");
    }

    @Test
    void a_place_in_a_file_comes_first() {
        Problem problem = Problem.of(ProblemKind.DUPLICATE, "K05");
        assertThat(problems.happened(problem.at(new Place("runs.csv", 12, "engine"))))
                .isEqualTo("runs.csv, line 12, column engine: 'K05' is there twice.");
        assertThat(problems.happened(problem.at(new Place("runs.csv", 1200, null))))
                .isEqualTo("runs.csv, line 1200: 'K05' is there twice.");
        assertThat(problems.happened(problem.at(new Place("engines.csv", 12, "K05, 0190", "design"))))
                .isEqualTo("engines.csv, line 12 (K05, 0190), column design: 'K05' is there twice.");
        assertThat(problems.happened(problem.at(new Place("runs.csv", 0, null))))
                .isEqualTo("runs.csv: 'K05' is there twice.");
        assertThat(problems.happened(problem.at(new Place("runs.csv", 0, "engine"))))
                .isEqualTo("runs.csv, column engine: 'K05' is there twice.");
        assertThat(problems.sentence(problem.at(new Place("runs.csv", 12, null))))
                .startsWith("runs.csv, line 12: 'K05'");
        assertThat(problems.note(problem.at(new Place("runs.csv", 12, null)))).startsWith("runs.csv, line 12: 'K05'");
    }

    @Test
    void a_sentence_that_begins_with_its_file_does_not_name_it_twice() {
        Problem missing = Problem.of(ProblemKind.FILE_MISSING, "parts.csv").at(new Place("parts.csv", 0, null));
        assertThat(problems.happened(missing)).isEqualTo("parts.csv is not in the folder.");
    }

    @Test
    void rows_that_wait_are_counted_in_words() {
        Place fitments = new Place("fitments.csv", 0, null);
        assertThat(problems.happened(
                        Problem.of(ProblemKind.ROWS_WAIT, 1, "parts.csv").at(fitments)))
                .startsWith("fitments.csv: 1 row waiting for parts.csv,");
        assertThat(problems.happened(
                        Problem.of(ProblemKind.ROWS_WAIT, 162, "parts.csv").at(fitments)))
                .startsWith("fitments.csv: 162 rows waiting for parts.csv,");
    }

    @Test
    void what_is_typed_is_said_to_stay_only_where_something_was_typed() {
        Problem full = Problem.of(ProblemKind.DISK_FULL, "team.witness");
        assertThat(problems.typed(full)).contains(" What you typed stays here. ");
        assertThat(problems.sentence(full)).doesNotContain("typed");
    }

    @Test
    void a_fact_is_shown_by_its_type() {
        assertThat(shown(MOMENT)).isEqualTo("Sun 5 Jul 2026, 15:00");
        assertThat(shown(LocalDate.of(2026, 7, 5))).isEqualTo("Sun 5 Jul 2026");
        assertThat(shown(java.time.LocalTime.of(15, 0))).isEqualTo("15:00");
        assertThat(shown(RunningTime.parse("1650"))).isEqualTo("27 min 30 s");
        assertThat(shown(new Length(50_000))).isEqualTo("0.05 mm");
        assertThat(shown(new Pressure(410_000))).isEqualTo("4.1 bar");
        assertThat(shown(new Temperature(369_150))).isEqualTo("96 °C");
        assertThat(shown(new Volume(300_000))).isEqualTo("0.3 L");
        assertThat(shown(new Distance(39_800))).isEqualTo("39.8 km");
        assertThat(shown(new EngineSpeed(9150))).isEqualTo("9\u2009150 rpm");
        assertThat(shown(12_000)).isEqualTo("12\u2009000");
        assertThat(shown(12L)).isEqualTo("12");
        assertThat(shown(new BigDecimal("2.50"))).isEqualTo("2.50");
        assertThat(shown(Counter.RUNNING)).isEqualTo("running time");
        assertThat(shown(LimitRank.RULE_BOOK)).isEqualTo("rule book");
        assertThat(shown(List.of(Zone.HEAD, Zone.SUMP, Zone.FRONT))).isEqualTo("head, sump and front");
        assertThat(shown(Engine.class)).isEqualTo("engine");
        assertThat(shown(RecordTypes.of(Engine.class))).isEqualTo("engine");
        assertThat(shown(Path.of("K05.witness"))).isEqualTo("K05.witness");
        assertThat(shown("80.")).isEqualTo("80.");
        assertThat(shown("K05")).isEqualTo("K05");
        assertThat(shown("two\nlines\tof text ")).isEqualTo("two lines of text");
        assertThat(shown("x".repeat(500))).hasSize(121).endsWith("…");
    }

    @Test
    void a_kind_of_record_is_named_in_words_however_it_is_given() {
        for (Object kind : List.of("engine_in_car", witnessmark.domain.EngineInCar.class, "engine in a car")) {
            assertThat(problems.happened(Problem.of(ProblemKind.NOT_FOUND, kind, "K05")))
                    .isEqualTo("No engine in a car is called 'K05'.");
        }
    }

    @Test
    void only_the_fact_that_is_a_kind_of_record_is_taken_for_one() {
        assertThat(problems.happened(Problem.of(ProblemKind.REFERENCE_UNKNOWN, "engine", "planned_run", "planned_run")))
                .isEqualTo("No planned run is called 'planned_run', which column engine names.");
        assertThat(problems.happened(Problem.of(ProblemKind.NAME_TAKEN, "planned_run", "planned_run")))
                .isEqualTo("Another planned run is already called 'planned_run'.");
        assertThat(problems.happened(
                        Problem.of(ProblemKind.REFUSED_BY_LOGBOOK, "planned_run", "Race 1.", "it ends too early.")))
                .isEqualTo("The logbook refused the planned run 'Race 1.': it ends too early.");
    }

    @Test
    void a_field_is_called_by_its_label_however_it_is_given() {
        for (String field : List.of("warmUp", "Warm-up")) {
            assertThat(problems.happened(Problem.of(
                            ProblemKind.LONGER_THAN_RUN, field, RunningTime.parse("1800"), RunningTime.parse("1650"))))
                    .isEqualTo("Warm-up of 30 min is longer than the run itself, 27 min 30 s.");
        }
        assertThat(problems.happened(Problem.of(ProblemKind.NEEDED, "Out at"))).isEqualTo("Out at is empty.");
        assertThat(problems.happened(Problem.of(ProblemKind.DUPLICATE, "running")))
                .startsWith("'running'");
    }

    @Test
    void what_the_system_said_ends_with_one_full_stop() {
        assertThat(problems.happened(Problem.of(ProblemKind.CANNOT_WRITE, "team.witness", "No space left on it.")))
                .isEqualTo("Couldn't write to team.witness: No space left on it.");
    }

    @Test
    void a_text_that_looks_like_a_pattern_is_left_alone() {
        assertThat(problems.note(Problem.of(ProblemKind.CANNOT_READ, "Laps", "{0} '{1}' ''", List.of("12"))))
                .isEqualTo("Couldn't read '{0} '{1}' ''' for Laps. It is written like 12.");
    }

    private String shown(Object fact) {
        String sentence = problems.happened(Problem.of(ProblemKind.DUPLICATE, fact));
        return sentence.substring(1, sentence.length() - " is there twice.".length() - 1);
    }

    private static Object[] marks(ProblemKind kind) {
        return IntStream.range(0, kind.facts())
                .mapToObj(i -> "‹fact " + i + "›")
                .toArray();
    }
}
