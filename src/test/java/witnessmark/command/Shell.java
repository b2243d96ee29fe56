package witnessmark.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.InstantSource;
import java.time.ZoneId;
import java.util.Locale;
import java.util.function.Function;
import witnessmark.exchange.CsvSeasonFolders;
import witnessmark.exchange.CsvStartingValues;
import witnessmark.exchange.CsvStatementFiles;
import witnessmark.exchange.IcsCalendarFiles;
import witnessmark.exchange.PdfFiles;
import witnessmark.launch.DatedWords;
import witnessmark.launch.buildsheet.BuildSheetPaper;
import witnessmark.launch.casesheet.CaseSheetPaper;
import witnessmark.launch.facesheet.FaceSheetPaper;
import witnessmark.launch.jobsheet.JobSheetPaper;
import witnessmark.launch.seasonsheet.SeasonSheetPaper;
import witnessmark.launch.stripsheet.StripSheetPaper;
import witnessmark.launch.tags.TagPaper;
import witnessmark.logbook.ClockDay;
import witnessmark.logbook.calendar.WriteCalendar;
import witnessmark.logbook.faces.WriteFaceSheet;
import witnessmark.logbook.jobsheet.WriteJobSheet;
import witnessmark.logbook.measuring.WriteBuildSheet;
import witnessmark.logbook.money.WriteSeasonSheet;
import witnessmark.logbook.port.Today;
import witnessmark.logbook.sharing.WriteCaseSheet;
import witnessmark.logbook.sharing.WriteTags;
import witnessmark.logbook.strip.WriteStripSheet;
import witnessmark.outcome.Outcome;
import witnessmark.sample.PlacedBook;
import witnessmark.sample.SampleBooks;
import witnessmark.store.Holder;
import witnessmark.store.SqliteLogbookFiles;
import witnessmark.wording.ChargeWords;
import witnessmark.wording.LifeWords;
import witnessmark.wording.Measures;
import witnessmark.wording.Problems;
import witnessmark.wording.RecordWords;
import witnessmark.wording.Texts;
import witnessmark.wording.Units;

/** Runs commands in a folder of its own and keeps what they printed. */
final class Shell {
    private final Path folder;
    private final Instant now;
    private final Function<Today, Outcome<Today>> today;

    /** What a command came to. */
    record Ran(int code, String out, String err) {}

    Shell(Path folder) {
        this(folder, Instant.parse("2026-07-08T18:00:00Z"));
    }

    /** @param now what the wall clock says */
    Shell(Path folder, Instant now) {
        this(folder, now, Outcome::worked);
    }

    /** @param today what comes of a logbook's day by the clock */
    Shell(Path folder, Instant now, Function<Today, Outcome<Today>> today) {
        this.folder = folder;
        this.now = now;
        this.today = today;
    }

    Path path(String name) {
        return folder.resolve(name);
    }

    /**
     * A logbook into which the sample season was taken by {@code new} and {@code import}; done once for all tests, each
     * of which gets a file of its own.
     */
    String sampleBook() {
        Path book = path("team.witness");
        try {
            Sample.ONCE.put(folder, book);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return book.toString();
    }

    private static final class Sample {
        static final PlacedBook ONCE = taken();

        private static PlacedBook taken() {
            try {
                Path folder = Files.createTempDirectory("sample-taken");
                Shell shell = new Shell(folder);
                Path book = shell.path("team.witness");
                assertThat(shell.run("new", book.toString()).code()).isZero();
                Ran taken = shell.run("import", book.toString(), SampleBooks.FOLDER.toString());
                assertThat(taken.code()).isZero();
                assertThat(taken.err()).isEmpty();
                return PlacedBook.takenFrom(folder, book);
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
    }

    Ran run(String... args) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        Texts texts = Texts.in(Locale.UK);
        Measures measures = new Measures(texts, Units.METRIC);
        InstantSource clock = InstantSource.system();
        Tools tools = new Tools(
                new SqliteLogbookFiles(
                        folder.resolve("data"), clock::millis, () -> "test-device", new Holder("h", "p")),
                new CsvSeasonFolders(),
                new WriteCalendar(new IcsCalendarFiles(), new DatedWords(texts, measures)),
                new WriteJobSheet(new PdfFiles(), new JobSheetPaper(texts, measures)),
                new WriteSeasonSheet(new PdfFiles(), new SeasonSheetPaper(texts, measures)),
                new WriteBuildSheet(new PdfFiles(), new BuildSheetPaper(texts, measures)),
                new WriteFaceSheet(new PdfFiles(), new FaceSheetPaper(texts, measures)),
                new WriteStripSheet(new PdfFiles(), new StripSheetPaper(texts, measures)),
                new WriteCaseSheet(new PdfFiles(), new CaseSheetPaper(texts, measures)),
                new WriteTags(new PdfFiles(), new TagPaper(texts, measures)),
                new CsvStartingValues(),
                new CsvStatementFiles(),
                SampleBooks.ids(),
                () -> now,
                book -> today.apply(new ClockDay(() -> now, book)),
                ZoneId.of("Europe/London"),
                "Team engineer",
                texts,
                measures,
                new Problems(texts, measures),
                new RecordWords(texts),
                new LifeWords(texts, measures),
                new ChargeWords(texts, measures),
                "witness-mark",
                new PrintWriter(out, true),
                new PrintWriter(err, true));
        int code = Program.run(tools, args);
        return new Ran(code, out.toString(), err.toString());
    }
}
