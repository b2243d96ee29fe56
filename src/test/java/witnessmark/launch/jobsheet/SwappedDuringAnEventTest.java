package witnessmark.launch.jobsheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import witnessmark.desktop.beforewego.BeforeWeGoModel;
import witnessmark.desktop.beforewego.StandingLines;
import witnessmark.domain.Engine;
import witnessmark.domain.EngineInCar;
import witnessmark.domain.Entry;
import witnessmark.domain.Id;
import witnessmark.domain.Standing;
import witnessmark.logbook.Desk;
import witnessmark.logbook.jobsheet.WriteJobSheet;
import witnessmark.logbook.standing.MarkOn;
import witnessmark.logbook.standing.NextRun;
import witnessmark.quantity.Moment;
import witnessmark.report.JobSheet;
import witnessmark.sample.SampleBooks;
import witnessmark.wording.LookWords;
import witnessmark.wording.Measures;
import witnessmark.wording.Texts;
import witnessmark.wording.Units;

/**
 * Between the races of Round 6 of the sample K22 takes the place of K03 in car 41: screen and paper name of each thing
 * the engine that it is about. K03 ran race 1, its driver told something of it, and its rods are held.
 */
class SwappedDuringAnEventTest {
    private static final ZoneId ZONE = ZoneId.of("Europe/London");

    private final Texts texts = Texts.in(Locale.UK);
    private final Measures measures = new Measures(texts, Units.METRIC);

    @TempDir
    private Path folder;

    private Desk desk;

    @BeforeEach
    void swap() {
        SampleBooks books = new SampleBooks(folder);
        desk = books.open();
        books.season()
                .walkOn(desk, books.season().nextChapter(SampleBooks.FOLDER).orElseThrow(), "round 6")
                .orThrow();
        Moment at = Moment.of(LocalDate.of(2026, 7, 26).atTime(13, 0), ZONE);
        Entry<EngineInCar> k03 = desk.view()
                .facts()
                .of(EngineInCar.class)
                .where(stay -> stay.engine().equals(engine("K03")) && stay.to() == null)
                .get(0);
        EngineInCar was = k03.fact();
        desk.write(
                        "swapped",
                        List.of(
                                new Entry<>(
                                        k03.id(),
                                        new EngineInCar(was.engine(), was.car(), was.from(), at, was.note()),
                                        k03.standing(),
                                        null,
                                        k03.rev() + 1),
                                new Entry<>(
                                        SampleBooks.ids().<EngineInCar>next(),
                                        new EngineInCar(engine("K22"), was.car(), at, null, "oil fresh"),
                                        Standing.IN_FORCE,
                                        null,
                                        1)))
                .orThrow();
    }

    @AfterEach
    void close() {
        desk.logbook().close();
    }

    private Id<Engine> engine(String number) {
        return desk.view().facts().of(Engine.class).named(number).orElseThrow().id();
    }

    @Test
    void on_screen_the_next_run_is_that_of_k22_and_what_was_told_stays_with_k03() {
        witnessmark.logbook.standing.Standing standing =
                WriteJobSheet.facts(desk).standing();
        NextRun next = standing.nextRuns().stream()
                .filter(run -> run.name().equals("41"))
                .findFirst()
                .orElseThrow();
        assertThat(next.engine()).isEqualTo("K22");
        assertThat(next.looks().stream().map(new LookWords(texts, measures)::what))
                .startsWith("Told of engine K03, which is out: finished P3", "Engine K22 went in");
        assertThat(next.marks()).isNotEmpty().extracting(MarkOn::engine).containsOnly("K22");
        StandingLines lines = new BeforeWeGoModel(texts, measures).lines(standing);
        assertThat(lines.must()).extracting(line -> line.where()).isNotEmpty().doesNotContain("Engine K03, car 41");
        assertThat(lines.due()).extracting(line -> line.where()).doesNotContain("Engine K03, car 41");
        assertThat(lines.lastOut().get(0).title()).isEqualTo("Car 41, engine K03");
        assertThat(lines.elsewhere()).startsWith("Not going: 1 held;");
    }

    @Test
    void on_paper_it_is_the_same() {
        JobSheet sheet = new JobSheetWords(texts, measures).apply(WriteJobSheet.facts(desk));
        List<String> all = sheet.sections().stream()
                .filter(section -> section.heading().startsWith("Before the next run: car 41")
                        || section.heading().startsWith("Must be done")
                        || section.heading().startsWith("Due while"))
                .flatMap(section -> section.rows().stream())
                .map(JobSheet.Row::toString)
                .toList();
        assertThat(all.toString()).contains("Told of engine K03, which is out: finished P3", "Engine K22, car 41");
        assertThat(all).noneMatch(row -> row.contains("Engine K03"));
        assertThat(sheet.sections())
                .filteredOn(section -> section.heading().equals("Before the next run: car 41"))
                .singleElement()
                .satisfies(section -> assertThat(section.toString()).contains("Engine K22. Race 2"));
    }
}
