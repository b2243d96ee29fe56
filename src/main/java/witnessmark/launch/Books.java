package witnessmark.launch;

import java.net.URISyntaxException;
import java.nio.file.FileSystemNotFoundException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.CodeSource;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import witnessmark.desktop.start.LastWriter;
import witnessmark.desktop.start.RecentLogbooks;
import witnessmark.logbook.ClockDay;
import witnessmark.logbook.Desk;
import witnessmark.logbook.SampleSeason;
import witnessmark.logbook.port.Logbook;
import witnessmark.logbook.port.Today;
import witnessmark.outcome.Outcome;
import witnessmark.outcome.ProblemKind;

/** Puts logbooks on the desk: the one named, the one open last time, the sample season. */
final class Books {
    /** System property: where the sample season's folder is, when it is not beside the program. */
    static final String SAMPLE = "witnessmark.sample";

    private static final String FOLDER = "sample-season";
    /** Setting: the logbook open last, by absolute path; empty while that was the sample. */
    private static final String LAST = "logbook.last";

    private final Outside outside;

    Books(Outside outside) {
        this.outside = outside;
    }

    /** What to begin with. */
    Outcome<OpenBook> first(List<String> args) {
        if (!args.isEmpty()) {
            return open(Path.of(args.get(0)));
        }
        Optional<Path> last =
                outside.settings().get(LAST).filter(path -> !path.isBlank()).map(Path::of);
        return last.isPresent() ? open(last.get()) : sample();
    }

    /** A team's own logbook. */
    Outcome<OpenBook> open(Path path) {
        return outside.files().open(path).map(this::own);
    }

    /** A team's own logbook that is open already; remembered as the last, unless it is only looked at as a copy. */
    OpenBook own(Logbook book) {
        boolean copy = book.readOnly()
                .filter(why -> why.kind() == ProblemKind.LOGBOOK_IS_COPY)
                .isPresent();
        if (!copy) {
            outside.settings().put(LAST, book.path().toAbsolutePath().toString());
            new RecentLogbooks(outside.settings()).opened(book.path());
        }
        return new OpenBook(new Desk(book, new ClockDay(outside.clock(), book), who(book.path())), null, null);
    }

    /** The sample season's working copy, remembered as what was open last. */
    Outcome<OpenBook> sample() {
        outside.settings().put(LAST, "");
        return sampleInstead();
    }

    /** The same for want of another logbook, which stays the one to begin with next time. */
    Outcome<OpenBook> sampleInstead() {
        Path folder = sampleFolder();
        SampleSeason season = season();
        return season.open(folder, outside.person()).map(desk -> {
            desk.writesNow(who(desk.logbook().path()));
            return new OpenBook(desk, folder, season);
        });
    }

    /** What an open logbook takes for today: the day of the story where it is the sample's working copy. */
    Outcome<Today> today(Logbook book) {
        return season().todayOf(book, sampleFolder());
    }

    private SampleSeason season() {
        return new SampleSeason(
                outside.files(),
                outside.folders(),
                outside.stories(),
                outside.settings(),
                outside.clock(),
                outside.data().path().resolve("sample"));
    }

    /** Who wrote in this logbook last on this computer; at first whoever the computer says sits there. */
    private String who(Path book) {
        return new LastWriter(outside.settings(), book).name().orElse(outside.person());
    }

    /** Where the property says; else in the folder the program was started in, or in one above the program itself. */
    private static Path sampleFolder() {
        String chosen = System.getProperty(SAMPLE);
        if (chosen != null) {
            return Path.of(chosen).toAbsolutePath();
        }
        Path here = Path.of(FOLDER).toAbsolutePath();
        for (Path above = program(); above != null && !Files.isDirectory(here); above = above.getParent()) {
            here = above.resolve(FOLDER);
        }
        return here;
    }

    /** The folder or jar the program runs from; null when that cannot be told. */
    private static @Nullable Path program() {
        CodeSource source = Books.class.getProtectionDomain().getCodeSource();
        try {
            return source == null ? null : Path.of(source.getLocation().toURI());
        } catch (URISyntaxException | FileSystemNotFoundException e) {
            return null;
        }
    }
}
