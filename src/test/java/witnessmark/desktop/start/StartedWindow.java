package witnessmark.desktop.start;

import java.nio.file.Path;
import java.time.Instant;
import java.time.InstantSource;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import javax.swing.JRootPane;
import org.jspecify.annotations.Nullable;
import witnessmark.desktop.beforewego.BeginActions;
import witnessmark.desktop.keeping.Warnings;
import witnessmark.desktop.shell.AboutFacts;
import witnessmark.desktop.shell.Command;
import witnessmark.desktop.shell.Look;
import witnessmark.desktop.shell.PlaceId;
import witnessmark.desktop.shell.ShellContext;
import witnessmark.desktop.shell.ShellPane;
import witnessmark.desktop.task.Tasks;
import witnessmark.desktop.testing.MemorySettings;
import witnessmark.desktop.testing.Stage;
import witnessmark.desktop.testing.Ui;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.image.EntryImage;
import witnessmark.domain.image.RecordTypes;
import witnessmark.exchange.CsvSeasonFolders;
import witnessmark.exchange.CsvStatementFiles;
import witnessmark.exchange.CsvTableFiles;
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
import witnessmark.logbook.CopyElsewhere;
import witnessmark.logbook.Desk;
import witnessmark.logbook.ExportSeason;
import witnessmark.logbook.ImportSeason;
import witnessmark.logbook.SampleSeason;
import witnessmark.logbook.StartLogbook;
import witnessmark.logbook.calendar.WriteCalendar;
import witnessmark.logbook.faces.WriteFaceSheet;
import witnessmark.logbook.jobsheet.WriteJobSheet;
import witnessmark.logbook.measuring.WriteBuildSheet;
import witnessmark.logbook.money.WriteSeasonSheet;
import witnessmark.logbook.money.WriteSeasonTable;
import witnessmark.logbook.port.Logbook;
import witnessmark.logbook.sharing.WriteCaseSheet;
import witnessmark.logbook.sharing.WriteTags;
import witnessmark.logbook.strip.WriteStripSheet;
import witnessmark.sample.SampleBooks;
import witnessmark.store.Holder;
import witnessmark.store.SqliteLogbookFiles;
import witnessmark.wording.Measures;
import witnessmark.wording.Problems;
import witnessmark.wording.Texts;
import witnessmark.wording.Units;

/** A window without a frame over the sample season on a real file; what it would ask or open is noted. */
final class StartedWindow implements AutoCloseable {
    final Texts texts;
    final SampleBooks books;
    final Desk logbook;
    final MemorySettings settings = new MemorySettings();
    final SampleSeason season;
    final witnessmark.desktop.shell.Desk desk = new witnessmark.desktop.shell.Desk();
    final Tasks tasks = new Tasks((thread, failure) -> {
        throw new IllegalStateException(failure);
    });
    final List<String> opened = new ArrayList<>();
    final Start start;
    final SampleStrip strip;
    final List<Command> commands;
    final ShellPane pane;

    @Nullable
    Path answer;

    /** What name a file of pages was asked for with. */
    @Nullable
    Path suggestedName;

    /** What name a new logbook was asked for with. */
    @Nullable
    Path suggestedLogbook;

    /** Whether this computer has a program for the files written. */
    boolean hasViewer = true;

    @Nullable
    Logbook taken;

    private @Nullable JRootPane root;

    StartedWindow(Path folder, Look look) {
        this(folder, look, Texts.in(Locale.UK));
    }

    StartedWindow(Path folder, Look look, Texts texts) {
        this(folder, look, texts, false);
    }

    /** @param sample whether it is told to be the sample's working copy */
    StartedWindow(Path folder, Look look, Texts texts, boolean sample) {
        this.texts = texts;
        this.books = new SampleBooks(folder);
        this.logbook = books.open();
        Measures measures = new Measures(texts, Units.METRIC);
        InstantSource clock = InstantSource.fixed(Instant.parse("2026-07-08T18:00:00Z"));
        CsvSeasonFolders folders = new CsvSeasonFolders();
        StartContext context = new StartContext(
                texts,
                measures,
                new Problems(texts, measures),
                tasks,
                settings,
                desk,
                logbook,
                new Answers(),
                new Noted(),
                () -> opened.add("undo"),
                new StartContext.Uses(
                        new StartLogbook(files(folder.resolve("own-data"), clock), SampleBooks.ids()),
                        new ImportSeason(logbook, folders),
                        new ExportSeason(folders),
                        new WriteCalendar(new IcsCalendarFiles(), new DatedWords(texts, measures)),
                        new WriteJobSheet(new PdfFiles(), new JobSheetPaper(texts, measures)),
                        new CsvStatementFiles(),
                        SampleBooks.ids(),
                        new WriteSeasonTable(new CsvTableFiles()),
                        new WriteSeasonSheet(new PdfFiles(), new SeasonSheetPaper(texts, measures)),
                        new WriteBuildSheet(new PdfFiles(), new BuildSheetPaper(texts, measures)),
                        new WriteFaceSheet(new PdfFiles(), new FaceSheetPaper(texts, measures)),
                        new WriteStripSheet(new PdfFiles(), new StripSheetPaper(texts, measures)),
                        new WriteCaseSheet(new PdfFiles(), new CaseSheetPaper(texts, measures)),
                        new WriteTags(new PdfFiles(), new TagPaper(texts, measures))),
                new StartContext.Copies(
                        files(folder.resolve("data"), clock).copies(),
                        new CopyElsewhere(logbook.logbook(), settings, clock),
                        files(folder.resolve("data"), clock).keptAside(),
                        sample,
                        clock),
                new StartContext.Here(ZoneId.of("Europe/London"), "EUR", "Ada", folder, this::opens));
        start = new Start(
                context, new BeginActions(() -> {}, () -> {}, () -> {}, () -> {}, () -> {}, () -> {}, () -> {}));
        commands = start.commands();
        season = books.season();
        strip = start.sampleStrip(season, SampleBooks.FOLDER);
        ShellContext shell =
                new ShellContext(texts, tasks, settings, look, desk, new AboutFacts("0.1.0", List.of()), () -> {});
        pane = new ShellPane(shell, List.of(start.place()), commands, List.of());
        desk.go(PlaceId.BEFORE_WE_GO);
        settle();
    }

    private static SqliteLogbookFiles files(Path data, InstantSource clock) {
        return new SqliteLogbookFiles(data, clock::millis, () -> "test-device", new Holder("h", "p"));
    }

    void settle() {
        tasks.awaitIdle();
    }

    /** What says in the strip what was met with a logbook. */
    Warnings warnings() {
        return new Warnings(
                texts,
                new Problems(texts, new Measures(texts, Units.METRIC)),
                desk,
                start.copies(),
                start::showFound,
                logbook.logbook());
    }

    void perform(String key) {
        commands.stream()
                .filter(command -> command.key().equals(key) || command.key().endsWith(".command." + key))
                .findFirst()
                .orElseThrow()
                .perform();
        settle();
    }

    JRootPane laid(int width, int height) {
        JRootPane before = root;
        if (before != null) {
            return Stage.lay(before, width, height);
        }
        root = Stage.window(pane, pane.menuBar(), width, height);
        return root;
    }

    Ui ui() {
        return new Ui(laid(1366, 768));
    }

    void press(String button) {
        ui().button(button).doClick();
        settle();
    }

    /** Everything said on the window, one thing a line. */
    /** Every engine gets this note in one change. */
    void noteEngines(String note) {
        List<Entry<Engine>> noted = logbook.logbook()
                .facts()
                .of(Engine.class)
                .inForce()
                .map(entry -> {
                    Map<String, @Nullable Object> image = EntryImage.of(entry);
                    image.put("note", note);
                    return EntryImage.entry(
                            RecordTypes.of(Engine.class), entry.id().value(), image, entry.rev() + 1);
                })
                .toList();
        logbook.write("noted", noted).orThrow();
        settle();
    }

    String said() {
        return witnessmark.desktop.testing.GoldenText.of(laid(1366, 768));
    }

    @Override
    public void close() {
        tasks.close();
        logbook.logbook().close();
        Logbook made = taken;
        if (made != null) {
            made.close();
        }
    }

    /** Answers every question for a file or folder the same way. */
    private final class Answers implements Choosing {
        @Override
        public Optional<Path> logbook() {
            return Optional.ofNullable(answer);
        }

        @Override
        public Optional<Path> newLogbook(Path suggested) {
            suggestedLogbook = suggested;
            return Optional.ofNullable(answer);
        }

        @Override
        public Optional<Path> seasonToRead() {
            return Optional.ofNullable(answer);
        }

        @Override
        public Optional<Path> seasonToWrite() {
            return Optional.ofNullable(answer);
        }

        @Override
        public Optional<Path> traceToRead() {
            return Optional.empty();
        }

        @Override
        public Optional<Path> tracesFolder() {
            return Optional.empty();
        }

        @Override
        public Optional<Path> statementToRead() {
            return Optional.ofNullable(answer);
        }

        @Override
        public Optional<Path> calendarToWrite(Path suggested) {
            return Optional.ofNullable(answer);
        }

        @Override
        public Optional<Path> seasonTableToWrite(Path suggested) {
            return Optional.ofNullable(answer);
        }

        @Override
        public Optional<Path> traceSheetToWrite(Path suggested) {
            return faceSheetToWrite(suggested);
        }

        @Override
        public Optional<Path> caseSheetToWrite(Path suggested) {
            return Optional.ofNullable(answer);
        }

        @Override
        public Optional<Path> tagsToWrite(Path suggested) {
            return Optional.ofNullable(answer);
        }

        @Override
        public Optional<Path> faceSheetToWrite(Path suggested) {
            suggestedName = suggested;
            return Optional.ofNullable(answer);
        }

        @Override
        public Optional<Path> stripSheetToWrite(Path suggested) {
            return faceSheetToWrite(suggested);
        }

        @Override
        public Optional<Path> buildSheetToWrite(Path suggested) {
            suggestedName = suggested;
            return Optional.ofNullable(answer);
        }

        @Override
        public Optional<Path> seasonSheetToWrite(Path suggested) {
            return Optional.ofNullable(answer);
        }

        @Override
        public Optional<Path> copy() {
            return Optional.ofNullable(answer);
        }

        @Override
        public Optional<Path> copiesFolder() {
            return Optional.ofNullable(answer);
        }

        @Override
        public List<Path> photosToRead() {
            return answer == null ? List.of() : List.of(answer);
        }

        @Override
        public Optional<Path> photosFolder() {
            return Optional.ofNullable(answer);
        }

        @Override
        public Optional<Path> photoToWrite(Path suggested) {
            return Optional.ofNullable(answer);
        }

        @Override
        public Optional<Path> secondPlace() {
            return Optional.ofNullable(answer);
        }

        @Override
        public Optional<Path> jobSheetToWrite(Path suggested) {
            return Optional.ofNullable(answer);
        }
    }

    private boolean opens(Path file) {
        opened.add("show " + file.getFileName());
        return hasViewer;
    }

    /** Notes what would be opened. */
    private final class Noted implements OpenLogbook {
        @Override
        public void open(Path path) {
            opened.add("open " + path.getFileName());
        }

        @Override
        public void restore(Path copy, Path present) {
            opened.add("restore " + copy.getFileName() + " as " + present.getFileName());
        }

        @Override
        public void take(Logbook book) {
            opened.add("take " + book.path().getFileName());
            taken = book;
        }

        @Override
        public void openSample() {
            opened.add("sample");
        }

        @Override
        public void resetSample() {
            opened.add("reset");
        }
    }
}
