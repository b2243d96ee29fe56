package witnessmark.launch.jobsheet;

import static org.assertj.core.api.Assertions.assertThat;
import static witnessmark.report.PdfText.solid;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import witnessmark.desktop.beforewego.BeforeWeGoModel;
import witnessmark.desktop.beforewego.MarkLine;
import witnessmark.desktop.beforewego.OutLine;
import witnessmark.desktop.beforewego.StandingLines;
import witnessmark.domain.Entry;
import witnessmark.domain.Fitment;
import witnessmark.domain.Id;
import witnessmark.domain.Job;
import witnessmark.domain.JobPart;
import witnessmark.domain.Part;
import witnessmark.domain.Standing;
import witnessmark.ledger.result.MarkState;
import witnessmark.logbook.Desk;
import witnessmark.logbook.jobsheet.JobSheetFacts;
import witnessmark.logbook.jobsheet.WriteJobSheet;
import witnessmark.logbook.port.Paper;
import witnessmark.report.JobSheet;
import witnessmark.report.PdfText;
import witnessmark.sample.SampleBooks;
import witnessmark.wording.Measures;
import witnessmark.wording.Texts;
import witnessmark.wording.Units;

/** The job sheet of the sample season says what Before we go shows of the same day. */
class JobSheetWordsTest {
    @TempDir
    private Path folder;

    private final Texts texts = Texts.in(Locale.UK);
    private final Measures measures = new Measures(texts, Units.METRIC);
    private Desk desk;

    @BeforeEach
    void open() {
        desk = new SampleBooks(folder).open();
    }

    @AfterEach
    void close() {
        desk.logbook().close();
    }

    private JobSheetFacts facts(String day) {
        desk.lookAsOf(LocalDate.parse(day));
        return WriteJobSheet.facts(desk);
    }

    private JobSheet sheet(JobSheetFacts facts) {
        return new JobSheetWords(texts, measures).apply(facts);
    }

    private static List<JobSheet.Row> under(JobSheet sheet, String heading) {
        return sheet.sections().stream()
                .filter(section -> section.heading().equals(heading))
                .flatMap(section -> section.rows().stream())
                .toList();
    }

    private static List<String> whats(List<JobSheet.Row> rows) {
        return rows.stream().map(JobSheet.Row::what).toList();
    }

    private static List<String> titles(List<MarkLine> lines) {
        return lines.stream().map(MarkLine::title).toList();
    }

    @ParameterizedTest
    @ValueSource(strings = {"2026-05-26", "2026-07-04", "2026-07-08"})
    void it_has_what_before_we_go_shows_in_the_same_order(String day) {
        JobSheetFacts facts = facts(day);
        JobSheet sheet = sheet(facts);
        StandingLines shown = new BeforeWeGoModel(texts, measures).lines(facts.standing());

        List<JobSheet.Row> must = Stream.of("beforewego.must", "beforewego.must.next")
                .flatMap(key -> under(sheet, texts.get(key)).stream())
                .toList();
        assertThat(whats(must)).isEqualTo(titles(shown.must()));
        List<JobSheet.Row> due = under(sheet, texts.get("beforewego.due"));
        assertThat(whats(due)).isEqualTo(titles(shown.due()));
        assertThat(sheet.board()).startsWith(shown.calling() + " ");
        assertThat(whats(under(sheet, texts.get("beforewego.out.others"))))
                .usingElementComparator(String::compareToIgnoreCase)
                .isEqualTo(shown.out().stream().map(OutLine::title).toList());
        for (MarkLine line :
                Stream.concat(shown.must().stream(), shown.due().stream()).toList()) {
            assertThat(sheet.sections().stream()
                            .flatMap(section -> section.rows().stream())
                            .filter(row -> row.what().equals(line.title())))
                    .anySatisfy(row -> {
                        assertThat(row.where()).isEqualTo(line.where());
                        assertThat(row.stands()).containsExactly(line.left(), line.figures());
                        assertThat(row.hand()).endsWith(line.dueWords());
                    });
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"2026-05-26", "2026-07-04", "2026-07-08"})
    void every_open_job_is_on_it_once(String day) {
        JobSheetFacts facts = facts(day);
        JobSheet sheet = sheet(facts);

        List<String> jobs = facts.standing().open().jobs().stream()
                .map(open -> open.job().fact().what())
                .sorted()
                .toList();
        assertThat(Stream.of("beforewego.jobs", "jobsheet.jobs.later")
                        .flatMap(key -> whats(under(sheet, texts.get(key))).stream())
                        .sorted())
                .isEqualTo(jobs);
    }

    @Test
    void on_8_july_the_rods_are_held_and_a_job_says_what_lies_ready_who_does_it_and_how_long_it_takes() {
        JobSheet sheet = sheet(facts("2026-07-08"));

        assertThat(sheet.board()).isEqualTo("3 to be done before we load");
        JobSheet.Row rods = under(sheet, "Must be done before we go").get(0);
        assertThat(rods.what()).isEqualTo("Rods RS-03");
        assertThat(rods.mark()).isEqualTo(new JobSheet.Mark(MarkState.HELD, "Held"));
        assertThat(rods.hand()).containsExactly("over-rev", "crack test; leak-down; springs looked at");
        assertThat(under(sheet, "Jobs"))
                .contains(
                        new JobSheet.Row(
                                false,
                                null,
                                "Springs out and renewed, or a run-on signed",
                                "Part VS-03",
                                List.of(
                                        "Waits for the owner; no set on the shelf",
                                        "Take 1 of cover gasket 18-16, batch H1-2602: drawer 2"),
                                List.of("Crew chief", "about 6 h")),
                        new JobSheet.Row(
                                false,
                                null,
                                "Oil and filter, filter cut open",
                                "Engine K03",
                                List.of("Take 6 of oil 10W-60, litre, batch O2-2601: under the bench"),
                                List.of("Mechanic 1", "about 45 min")));
        assertThat(under(sheet, "Jobs for later"))
                .extracting(JobSheet.Row::where)
                .contains("Car 57, before Round 9, Ostermere");
        assertThat(whats(under(sheet, "Too little on the shelf")))
                .containsExactly("Oil 10W-60, litre", "Cover gasket 18-16");
        assertThat(whats(under(sheet, "Hour meters"))).hasSize(1);
        assertThat(sheet.sections())
                .last()
                .satisfies(last -> assertThat(last.rows()).isNotEmpty().allMatch(JobSheet.Row.blank()::equals));
    }

    /** By the table printed with the invented season: on the evening of 4 July nobody has looked yet. */
    @Test
    void during_an_event_what_is_to_be_looked_at_before_the_next_run_of_each_car_comes_first() {
        JobSheet sheet = sheet(facts("2026-07-04"));

        assertThat(sheet.board()).isEqualTo("1 to be done before the next run");
        assertThat(sheet.sections().get(0).heading()).isEqualTo("Before the next run: car 41");
        assertThat(sheet.sections().get(0).stands()).isEqualTo("Engine K03. Race 1, Sun 5 Jul, 11:00; 4 not looked at");
        assertThat(sheet.sections().get(1).rows())
                .hasSize(5)
                .noneMatch(JobSheet.Row::done)
                .first()
                .satisfies(
                        told -> assertThat(told.what()).isEqualTo("Told: first running after the skim, water 2 °C up"));
        assertThat(under(sheet, "Must be done before the next run"))
                .singleElement()
                .satisfies(row -> assertThat(row.what()).isEqualTo("Rods RS-03"));
    }

    @Test
    void what_somebody_looked_at_is_ticked_with_their_name() {
        JobSheetFacts before = facts("2026-07-05");
        List<JobSheet.Row> ticked = sheet(before).sections().stream()
                .flatMap(section -> section.rows().stream())
                .filter(JobSheet.Row::done)
                .toList();
        long looked = before.standing().nextRuns().stream()
                .mapToLong(run -> run.looks().size() - run.open())
                .sum();
        assertThat(ticked)
                .hasSize((int) looked)
                .allSatisfy(row -> assertThat(row.hand()).isNotEmpty());
    }

    @Test
    void a_borrowed_part_says_where_it_goes_back_to_on_paper_and_on_the_screen() {
        Entry<Fitment> springs = fitted("VS-03");
        Fitment fact = springs.fact();
        desk.write(
                        "borrowed",
                        List.of(new Entry<>(
                                springs.id(),
                                new Fitment(
                                        fact.part(),
                                        fact.engine(),
                                        fact.car(),
                                        fact.position(),
                                        fact.from(),
                                        fact.to(),
                                        fact.buildIn(),
                                        fact.buildOut(),
                                        fact.why(),
                                        fact.condition(),
                                        true),
                                springs.standing(),
                                springs.struckBecause(),
                                springs.rev() + 1)))
                .orThrow();
        JobSheetFacts facts = facts("2026-07-08");

        assertThat(under(sheet(facts), "To go back"))
                .singleElement()
                .satisfies(row -> assertThat(row.what()).isEqualTo("Valve springs VS-03"));
        assertThat(new BeforeWeGoModel(texts, measures).lines(facts.standing()).borrowed())
                .singleElement()
                .satisfies(line -> assertThat(line.title()).isEqualTo("Valve springs VS-03"));
    }

    @Test
    void a_part_kept_for_a_job_says_where_it_is() {
        Id<Job> job =
                desk.logbook().facts().of(Job.class).inForce().toList().get(1).id();
        Entry<Part> head = desk.logbook().facts().of(Part.class).named("HD-05").orElseThrow();
        desk.write(
                        "kept",
                        List.of(new Entry<>(
                                SampleBooks.ids().next(),
                                new JobPart(job, head.id(), null, 1),
                                Standing.IN_FORCE,
                                null,
                                1)))
                .orThrow();
        JobSheetFacts facts = facts("2026-07-08");

        assertThat(sheet(facts).sections().stream()
                        .flatMap(section -> section.rows().stream())
                        .flatMap(row -> row.stands().stream()))
                .contains("Take head HD-05: with machinist G1");
    }

    @ParameterizedTest
    @ValueSource(strings = {"2026-05-26", "2026-07-04", "2026-07-08"})
    void every_word_of_it_is_on_the_pages(String day) {
        JobSheetFacts facts = facts(day);
        Paper paper = new JobSheetPaper(texts, measures).apply(facts);

        PdfText read = PdfText.of(paper.bytes());

        assertThat(read.pages()).hasSize(paper.pages()).hasSizeLessThanOrEqualTo(2);
        assertThat(read.allEmbedded()).isTrue();
        String all = read.solid();
        for (JobSheet.Section section : sheet(facts).sections()) {
            assertThat(all).contains(solid(section.heading()), solid(section.stands()), solid(section.hand()));
            for (JobSheet.Row row : section.rows()) {
                Stream.of(Stream.of(row.what(), row.where()), row.stands().stream(), row.hand().stream())
                        .flatMap(words -> words)
                        .forEach(words -> assertThat(all).contains(solid(words)));
            }
        }
    }

    private Entry<Fitment> fitted(String mark) {
        Id<Part> part =
                desk.logbook().facts().of(Part.class).named(mark).orElseThrow().id();
        return desk.logbook()
                .facts()
                .of(Fitment.class)
                .inForce()
                .filter(fitment ->
                        fitment.fact().part().equals(part) && fitment.fact().to() == null)
                .findFirst()
                .orElseThrow();
    }
}
