package witnessmark.desktop.keeping;

import java.nio.file.Path;
import java.time.InstantSource;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;
import javax.swing.JButton;
import witnessmark.desktop.form.SheetTools;
import witnessmark.desktop.shell.Aside;
import witnessmark.desktop.shell.Desk;
import witnessmark.logbook.CopyElsewhere;
import witnessmark.logbook.port.KeptAside;
import witnessmark.logbook.port.LogbookCopies;
import witnessmark.outcome.Problem;
import witnessmark.wording.Measures;
import witnessmark.wording.Problems;

/**
 * What keeping stands on.
 *
 * @param tools texts, background work and settings
 * @param window what a place can ask of the window
 * @param logbook the logbook in hand
 * @param sample whether it is the sample's working copy, of which nobody keeps copies elsewhere
 * @param copies copies of logbooks
 * @param elsewhere the second place of the logbook in hand
 * @param aside what the logbook in hand could not take
 * @param choose asks for files and folders
 * @param tell says how it went
 * @param open puts a logbook in the window
 * @param restore brings a copy (first) back in the place of a logbook (second) and puts that in the window
 * @param clock the wall clock
 * @param zone of this computer
 */
public record KeepingContext(
        SheetTools tools,
        Measures measures,
        Problems problems,
        Desk window,
        witnessmark.logbook.Desk logbook,
        boolean sample,
        LogbookCopies copies,
        CopyElsewhere elsewhere,
        KeptAside aside,
        Choose choose,
        Tell tell,
        Consumer<Path> open,
        BiConsumer<Path, Path> restore,
        InstantSource clock,
        ZoneId zone) {
    /**
     * Asks for files and folders.
     *
     * @param logbook a logbook or a copy of one
     * @param documents the folder in which a new one is kept that does not come of one in hand
     * @param newLogbook where to keep a new one, with a name to begin with
     * @param folder a folder with copies
     * @param place a second place
     */
    public record Choose(
            Supplier<Optional<Path>> logbook,
            Path documents,
            UnaryOperator<Optional<Path>> newLogbook,
            Supplier<Optional<Path>> folder,
            Supplier<Optional<Path>> place) {}

    /** Says how it went. */
    public interface Tell {
        void show(Aside page);

        void dismiss();

        /** Why something did not work. */
        void refused(String title, List<Problem> problems);

        /** A page of what was found, with what can be done, the main way last. */
        void report(String title, List<String> sentences, List<Problem> found, List<JButton> ways);

        /**
         * A page of sentences, likewise.
         *
         * @param help the stem of its help
         */
        void say(String title, String help, List<String> sentences, List<JButton> ways);

        /** Something nobody foresaw. */
        void failed(Throwable failure);
    }
}
