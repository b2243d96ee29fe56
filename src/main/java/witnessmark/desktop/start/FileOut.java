package witnessmark.desktop.start;

import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import witnessmark.desktop.form.Caption;
import witnessmark.outcome.Outcome;

/**
 * Writes what other programs read to a file: pages, a table, a calendar. Pages it offers to open with the program this
 * computer has for them. Its sentences are named alike: {@code jobsheet.writing}, {@code season.table.writing}.
 */
final class FileOut {
    private static final String PAGES = ".pdf";

    private final StartContext context;
    private final Reports reports;
    private final String what;
    private final String ending;
    private final Function<Path, Optional<Path>> choose;
    private final Supplier<Writing> writing;
    private final Supplier<String> named;

    /** Writes the file and says how many rows or pages it has; off the event thread. */
    interface Writing {
        Outcome<Integer> write(Path file);
    }

    /**
     * @param what its sentences begin with
     * @param ending of the file's name: without it no program would open it
     * @param choose asks where to write them, with a name to begin with
     * @param writing asked on the event thread for what is to be written
     */
    FileOut(
            StartContext context,
            Reports reports,
            String what,
            String ending,
            Function<Path, Optional<Path>> choose,
            Supplier<Writing> writing) {
        this(
                context,
                reports,
                what,
                ending,
                choose,
                writing,
                () -> context.logbook().day().toString());
    }

    /** @param named asked for what the name of the file is made of, in place of the day looked at */
    FileOut(
            StartContext context,
            Reports reports,
            String what,
            String ending,
            Function<Path, Optional<Path>> choose,
            Supplier<Writing> writing,
            Supplier<String> named) {
        this.context = context;
        this.reports = reports;
        this.what = what;
        this.ending = ending;
        this.choose = choose;
        this.writing = writing;
        this.named = named;
    }

    /** Asks where to, and writes it there as of the day looked at. */
    void writeOut() {
        String name = reports.texts().get(what + ".name", named.get());
        choose.apply(context.here().folder().resolve(name)).map(this::ended).ifPresent(this::write);
    }

    private Path ended(Path file) {
        String name = String.valueOf(file.getFileName());
        return name.contains(".") ? file : file.resolveSibling(name + ending);
    }

    private void write(Path file) {
        Writing now = writing.get();
        reports.say(what + ".writing");
        context.tasks()
                .run(
                        reports.texts().get(what + ".writing"),
                        () -> now.write(file),
                        written -> written(file, written),
                        reports::failed);
    }

    private void written(Path file, Outcome<Integer> written) {
        if (!written.didWork()) {
            reports.refused(reports.texts().get(what + ".refused"), written.problems());
        } else if (ending.equals(PAGES)) {
            context.window()
                    .say(
                            reports.texts().get(what + ".written", written.orThrow(), file),
                            Caption.of(reports.texts().get("paper.open")),
                            () -> open(file));
        } else {
            reports.say(what + ".written", written.orThrow(), file);
        }
    }

    private void open(Path file) {
        reports.say("paper.opening");
        context.tasks()
                .run(
                        reports.texts().get("paper.opening"),
                        () -> context.here().opens().test(file),
                        opened -> opened(file, opened),
                        reports::failed);
    }

    private void opened(Path file, boolean opened) {
        reports.say(opened ? "paper.opened" : "paper.notOpened", file);
    }
}
