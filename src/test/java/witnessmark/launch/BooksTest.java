package witnessmark.launch;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.InstantSource;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import witnessmark.desktop.testing.MemorySettings;
import witnessmark.domain.Engine;
import witnessmark.exchange.CsvSeasonFolders;
import witnessmark.exchange.CsvStartingValues;
import witnessmark.exchange.CsvStatementFiles;
import witnessmark.exchange.CsvTableFiles;
import witnessmark.exchange.DiskLoggerFiles;
import witnessmark.exchange.IcsCalendarFiles;
import witnessmark.exchange.JsonStories;
import witnessmark.exchange.PdfFiles;
import witnessmark.logbook.ClockDay;
import witnessmark.logbook.SampleSeason;
import witnessmark.logbook.port.Logbook;
import witnessmark.logbook.port.Story;
import witnessmark.logbook.port.Today;
import witnessmark.outcome.Outcome;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;
import witnessmark.sample.SampleBooks;
import witnessmark.store.DataFolder;
import witnessmark.store.Holder;
import witnessmark.store.Sentences;
import witnessmark.store.SqliteLogbookFiles;

/** Which logbook the program begins with, and what it says when that one cannot be had. */
class BooksTest {
    @TempDir
    Path folder;

    private final MemorySettings settings = new MemorySettings();
    private SqliteLogbookFiles files;
    private Books books;

    @BeforeEach
    void begin() {
        InstantSource clock = InstantSource.system();
        files = new SqliteLogbookFiles(
                folder.resolve("data"), clock::millis, () -> "test-device", new Holder("bench", "Ada"));
        books = books(folder.resolve("data"));
    }

    private Books books(Path data) {
        return new Books(new Outside(
                new DataFolder(data),
                files,
                new CsvSeasonFolders(),
                new IcsCalendarFiles(),
                new PdfFiles(),
                new CsvTableFiles(),
                new JsonStories(),
                new CsvStartingValues(),
                new CsvStatementFiles(),
                new DiskLoggerFiles(),
                settings,
                SampleBooks.ids(),
                InstantSource.system(),
                "Ada"));
    }

    private static List<ProblemKind> kinds(Outcome<?> outcome) {
        return outcome.problems().stream().map(Problem::kind).toList();
    }

    @Test
    void a_logbook_that_is_gone_is_said_to_be_and_stays_the_one_to_begin_with() throws IOException {
        Path own = folder.resolve("ours.witness");
        files.create(own).orThrow().close();
        books.open(own).orThrow().desk().logbook().close();
        Path away = Files.move(own, folder.resolve("away.witness"));

        Outcome<OpenBook> first = books.first(List.of());
        assertThat(first.didWork()).isFalse();
        assertThat(kinds(first)).containsExactly(ProblemKind.LOGBOOK_GONE);
        OpenBook sample = books.sampleInstead().orThrow();
        assertThat(sample.isSample()).isTrue();
        sample.desk().logbook().close();

        Files.move(away, own);
        OpenBook back = books.first(List.of()).orThrow();
        assertThat(back.desk().logbook().path()).isEqualTo(own.toRealPath());
        back.desk().logbook().close();
    }

    @Test
    void a_file_that_is_no_logbook_and_a_word_that_is_no_file_are_each_said_to_be_none() throws IOException {
        Path notes = Files.writeString(folder.resolve("notes.txt"), "plugs clean");
        assertThat(kinds(books.first(List.of(notes.toString())))).containsExactly(ProblemKind.NOT_A_LOGBOOK);
        assertThat(kinds(books.first(List.of("frobnicate")))).containsExactly(ProblemKind.LOGBOOK_GONE);
    }

    @Test
    void the_sample_asked_for_is_what_it_begins_with_next_time() {
        books.sample().orThrow().desk().logbook().close();
        OpenBook again = books.first(List.of()).orThrow();
        assertThat(again.isSample()).isTrue();
        again.desk().logbook().close();
    }

    /** The sample's day is told by its story; the machine's own is years from it. */
    @Test
    void the_sample_is_on_the_day_of_its_story_for_whoever_opens_its_file_and_any_other_logbook_on_the_day_it_is() {
        OpenBook sample = books.sample().orThrow();
        Logbook book = sample.desk().logbook();
        assertThat(books.today(book).orThrow().day())
                .isEqualTo(sample.desk().today().day())
                .isEqualTo(LocalDate.of(2026, 7, 8));
        SampleSeason season = Objects.requireNonNull(sample.season());
        Story.Chapter next = season.nextChapter(Objects.requireNonNull(sample.sampleFolder()))
                .orElseThrow();
        season.walkOn(sample.desk(), next, "walked on").orThrow();
        assertThat(books.today(book).orThrow().day())
                .isEqualTo(sample.desk().today().day())
                .isAfter(LocalDate.of(2026, 7, 8));
        book.close();
        Logbook own = files.create(folder.resolve("ours.witness")).orThrow();
        assertThat(books.today(own).orThrow()).isInstanceOf(ClockDay.class);
        own.close();
    }

    /** A home folder may lie behind a link; the file is then known by another path than the folder it was made in. */
    @Test
    void the_sample_is_known_whatever_way_leads_to_it() throws IOException {
        Files.createDirectories(folder.resolve("true"));
        Path link = Files.createSymbolicLink(folder.resolve("link"), folder.resolve("true"));
        Books linked = books(link.resolve("data"));
        OpenBook sample = linked.sample().orThrow();
        Logbook book = sample.desk().logbook();
        assertThat(linked.today(book).problems()).isEmpty();
        assertThat(linked.today(book).orThrow().day()).isEqualTo(LocalDate.of(2026, 7, 8));
        book.close();
    }

    @Test
    void where_the_story_of_the_sample_cannot_be_read_its_day_is_said_to_be_the_clock_s() {
        Logbook book = books.sample().orThrow().desk().logbook();
        SampleSeason noStory = new SampleSeason(
                files,
                new CsvSeasonFolders(),
                new JsonStories(),
                settings,
                InstantSource.system(),
                folder.resolve("data").resolve("sample"));
        Outcome<Today> today = noStory.todayOf(book, folder.resolve("elsewhere"));
        assertThat(today.orThrow()).isInstanceOf(ClockDay.class);
        assertThat(kinds(today)).containsExactly(ProblemKind.SAMPLE_DAY_UNKNOWN, ProblemKind.FILE_MISSING);
        book.close();
        Logbook own = files.create(folder.resolve("ours.witness")).orThrow();
        assertThat(noStory.todayOf(own, folder.resolve("elsewhere")).problems())
                .as("a team's own asks no story")
                .isEmpty();
        own.close();
    }

    @Test
    void a_sample_that_cannot_be_opened_is_put_aside_as_it_is_and_made_anew() throws IOException {
        Path working = books.sample().orThrow().desk().logbook().path();
        byte[] torn = "not what it was".getBytes(StandardCharsets.UTF_8);
        Files.write(working, torn);
        Path own = folder.resolve("gone.witness");
        assertThat(books.open(own).didWork()).isFalse();

        Outcome<OpenBook> anew = books.sampleInstead();
        assertThat(kinds(anew)).containsExactly(ProblemKind.SAMPLE_MADE_ANEW);
        Path aside = (Path) anew.problems().get(0).facts().get(0);
        assertThat(aside).hasBinaryContent(torn);
        assertThat(Sentences.only(anew, ProblemKind.SAMPLE_MADE_ANEW)).contains(aside.toString());
        OpenBook sample = anew.orThrow();
        assertThat(sample.desk().view().facts().of(Engine.class).named("K03")).isPresent();
        sample.desk().logbook().close();
        Outcome<OpenBook> again = books.sampleInstead();
        assertThat(kinds(again)).as("and only once").isEmpty();
        again.orThrow().desk().logbook().close();
    }
}
