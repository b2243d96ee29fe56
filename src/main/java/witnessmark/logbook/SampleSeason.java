package witnessmark.logbook;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.InstantSource;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Entry;
import witnessmark.domain.Facts;
import witnessmark.domain.image.RecordTypes;
import witnessmark.logbook.port.Change;
import witnessmark.logbook.port.Logbook;
import witnessmark.logbook.port.LogbookFiles;
import witnessmark.logbook.port.SeasonFolders;
import witnessmark.logbook.port.Settings;
import witnessmark.logbook.port.Stories;
import witnessmark.logbook.port.Story;
import witnessmark.logbook.port.Today;
import witnessmark.logbook.port.Written;
import witnessmark.outcome.Outcome;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;

/**
 * The sample season on a working copy that anybody may change: made from its season folder the first time, told on
 * chapter by chapter, and made anew when asked. Its today is the day of the story.
 */
public final class SampleSeason {
    private static final String TOLD = "sample.chapters told";
    private static final String WHY = "sample.words of chapter ";
    private static final String KEPT = "sample.own entries kept";
    /** Who wrote the entries of the story, as the history has it: nobody on this computer did. */
    private static final String WRITER = "the sample season";

    private static final String FILE = "sample-season.witness";
    /** The file itself, and what lies beside it while it is open. */
    private static final List<String> BESIDE = List.of("", "-wal", "-shm", ".lock");

    private static final DateTimeFormatter ASIDE = DateTimeFormatter.ofPattern(
                    "'sample-season put aside' uuuuMMdd'T'HHmmssSSS'Z.witness'", Locale.ROOT)
            .withZone(ZoneOffset.UTC);

    private final LogbookFiles files;
    private final SeasonFolders folders;
    private final Stories stories;
    private final Settings settings;
    private final InstantSource clock;
    private final Path workingFolder;
    private volatile @Nullable Logbook open;

    /**
     * @param workingFolder where the working copy is kept
     */
    public SampleSeason(
            LogbookFiles files,
            SeasonFolders folders,
            Stories stories,
            Settings settings,
            InstantSource clock,
            Path workingFolder) {
        this.files = files;
        this.folders = folders;
        this.stories = stories;
        this.settings = settings;
        this.clock = clock;
        this.workingFolder = workingFolder;
    }

    /**
     * Opens the working copy, making it first when there is none. One that cannot be opened is put aside and made anew:
     * {@link ProblemKind#SAMPLE_MADE_ANEW} says where it lies.
     *
     * @param folder the sample's season folder
     * @param who who writes
     */
    public Outcome<Desk> open(Path folder, String who) {
        return stories.read(folder).then(story -> {
            Path file = workingFolder.resolve(FILE);
            Outcome<Logbook> book = Files.exists(file) ? opened(story, file) : make(story, file);
            return book.map(opened -> onTheDesk(opened, story, who));
        });
    }

    private Outcome<Logbook> opened(Story story, Path file) {
        Outcome<Logbook> book = files.open(file);
        if (book.didWork()) {
            return book;
        }
        Path aside = workingFolder.resolve(ASIDE.format(clock.instant()));
        try {
            for (String ending : BESIDE) {
                Path there = file.resolveSibling(FILE + ending);
                if (Files.exists(there)) {
                    Files.move(there, aside.resolveSibling(aside.getFileName() + ending));
                }
            }
        } catch (IOException e) {
            return book; // it stays as it is, and so does what was said of it
        }
        return make(story, file)
                .then(made ->
                        new Outcome.WorkedExcept<>(made, List.of(Problem.of(ProblemKind.SAMPLE_MADE_ANEW, aside))));
    }

    private Desk onTheDesk(Logbook opened, Story story, String who) {
        open = opened;
        return new Desk(opened, storyDay(story), who);
    }

    /**
     * What an open logbook takes for today: the day of the story where it is the working copy, whatever way leads to that,
     * else the clock's. Where the story cannot be read it is the clock's too, and {@link ProblemKind#SAMPLE_DAY_UNKNOWN}
     * says so.
     */
    public Outcome<Today> todayOf(Logbook book, Path folder) {
        Today byClock = new ClockDay(clock, book);
        if (!isWorkingCopy(book.path())) {
            return Outcome.worked(byClock);
        }
        open = book;
        return stories.read(folder).fold(story -> Outcome.worked(storyDay(story)), problems -> {
            List<Problem> said = new ArrayList<>(List.of(Problem.of(ProblemKind.SAMPLE_DAY_UNKNOWN, folder)));
            said.addAll(problems);
            return new Outcome.WorkedExcept<>(byClock, said);
        });
    }

    private boolean isWorkingCopy(Path path) {
        Path file = workingFolder.resolve(FILE);
        try {
            return Files.isSameFile(path, file);
        } catch (IOException e) { // one of them is not there, or cannot be looked at
            return path.toAbsolutePath()
                    .normalize()
                    .equals(file.toAbsolutePath().normalize());
        }
    }

    /** The chapter to be told next, if one is left; one that was told and taken back is told again. */
    public Optional<Story.Chapter> nextChapter(Path folder) {
        return stories.read(folder)
                .fold(
                        story -> told() < story.chapters().size()
                                ? Optional.of(story.chapters().get(told()))
                                : Optional.empty(),
                        problems -> Optional.empty());
    }

    /**
     * Tells the next chapter: its entries are written in one change, and the day moves on.
     *
     * @param why the words for the history
     */
    public Outcome<Written> walkOn(Desk desk, Story.Chapter chapter, String why) {
        ImportSeason importing = new ImportSeason(desk, folders);
        int told = told() + 1; // before it is written: a chapter taken back and told again is counted once
        Outcome<Written> written = importing
                .readOn(chapter.folder(), chapter.today())
                .then(reading -> reading.taking().stops()
                        ? Outcome.didNot(reading.taking().problems())
                        : importing.writeUnkept(reading.taking(), WRITER, why));
        if (written.didWork()) {
            settings.put(WHY + told, why);
            settings.put(TOLD, Integer.toString(told));
        }
        return written;
    }

    /**
     * Backs up what people wrote in the working copy before it is thrown away, while it is still open; nothing is done
     * where all is the story's.
     */
    public Outcome<Boolean> keepOwn(Logbook book) {
        if (book.history().stream().allMatch(amendment -> amendment.who().equals(WRITER))) {
            return Outcome.worked(false);
        }
        return book.backUp().map(backup -> {
            settings.put(KEPT, backup.toString());
            return true;
        });
    }

    /** The backup in which the entries are that the last reset took out of the sample, until {@link #keptSeen}. */
    public Optional<Path> kept() {
        return settings.get(KEPT).filter(path -> !path.isEmpty()).map(Path::of).filter(Files::exists);
    }

    /** Somebody has read where they are. */
    public void keptSeen() {
        settings.put(KEPT, "");
    }

    /** Throws the working copy away; the next opening makes it anew. The logbook must be closed. */
    public Outcome<Path> reset() {
        Path file = workingFolder.resolve(FILE);
        try {
            for (String ending : BESIDE) {
                Files.deleteIfExists(file.resolveSibling(FILE + ending));
            }
        } catch (IOException e) {
            return Outcome.didNot(
                    Problem.of(ProblemKind.CANNOT_WRITE, file.toString(), String.valueOf(e.getMessage())));
        }
        settings.put(TOLD, "0");
        return Outcome.worked(file);
    }

    private Outcome<Logbook> make(Story story, Path file) {
        settings.put(TOLD, "0");
        try {
            Files.createDirectories(workingFolder);
        } catch (IOException e) {
            return Outcome.didNot(
                    Problem.of(ProblemKind.CANNOT_WRITE, workingFolder.toString(), String.valueOf(e.getMessage())));
        }
        return files.create(file).then(book -> {
            Outcome<List<Entry<?>>> read = folders.read(story.folder(), book.facts());
            Outcome<Written> written = read instanceof Outcome.Worked<List<Entry<?>>> all
                    ? book.write(new Change(
                            WRITER,
                            "read from the sample's season folder",
                            all.value(),
                            BesideRows.of(folders, story.folder(), book, all.value())
                                    .with(all.value())))
                    : Outcome.didNot(read.problems());
            if (!written.didWork()) {
                book.close();
                reset();
                return Outcome.didNot(written.problems());
            }
            return Outcome.worked(book);
        });
    }

    /** How many chapters are told and not taken back. */
    private int told() {
        int told = settings.get(TOLD).map(Integer::valueOf).orElse(0);
        Logbook book = open;
        while (book != null
                && told > 0
                && takenBack(book.facts(), settings.get(WHY + told).orElse(""))) {
            told--;
        }
        return told;
    }

    /** Undo strikes out what a chapter added, with the chapter's words in the reason. */
    private static boolean takenBack(Facts facts, String why) {
        return !why.isEmpty()
                && RecordTypes.all().stream()
                        .flatMap(type -> facts.of(type.kind()).all().stream())
                        .anyMatch(entry -> {
                            String because = entry.struckBecause();
                            return because != null && because.contains(why);
                        });
    }

    private Today storyDay(Story story) {
        return new Today() {
            @Override
            public LocalDate day() {
                int told = Math.min(told(), story.chapters().size());
                return told == 0
                        ? story.today()
                        : story.chapters().get(told - 1).today();
            }

            @Override
            public Instant now() {
                return clock.instant();
            }
        };
    }
}
