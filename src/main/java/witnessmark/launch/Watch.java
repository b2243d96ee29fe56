package witnessmark.launch;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import witnessmark.desktop.task.Later;
import witnessmark.desktop.task.Tasks;
import witnessmark.desktop.task.Ticking;
import witnessmark.logbook.Desk;
import witnessmark.logbook.port.Logbook;
import witnessmark.outcome.Problem;
import witnessmark.wording.Texts;

/**
 * Looks after the logbook in the window without being asked: checks it whole once it is open and the window is filled,
 * backs it up then if it never was, and while it changes, so that a verified backup is never older than half an hour of writing.
 */
final class Watch implements AutoCloseable {
    private static final Logger LOG = LoggerFactory.getLogger(Watch.class);
    private static final Duration WINDOW_FILLED = Duration.ofSeconds(3);
    private static final Duration BETWEEN_LOOKS = Duration.ofSeconds(20);
    private static final Duration BETWEEN_BACKUPS = Duration.ofMinutes(30);

    private final Texts texts;
    private final Tasks tasks;
    private final Desk desk;
    private final Found found;
    private final Later check;
    private final Ticking backUps;
    private final Ticking looks;
    private boolean gone;
    private Instant backedUp = Instant.MIN;

    /** Told on the event thread. */
    interface Found {
        /** What a check of the whole came to; nothing found when all is as it was written. */
        void checked(List<Problem> problems);

        /** What a backup came upon, or that the file is no longer where it was. */
        void met(List<Problem> problems);

        /** The file is where it was again. */
        void back();
    }

    Watch(Texts texts, Tasks tasks, Desk desk, Found found) {
        this.texts = texts;
        this.tasks = tasks;
        this.desk = desk;
        this.found = found;
        this.check = tasks.later(WINDOW_FILLED, this::check);
        this.backUps = tasks.every(BETWEEN_BACKUPS, this::backUp);
        this.looks = tasks.every(BETWEEN_LOOKS, this::lookForFile);
        check.poke();
    }

    /** A file that is gone is told before somebody has typed what cannot be saved. */
    void lookForFile() {
        tasks.apart(
                texts.get("shell.watch.looking"),
                () -> desk.logbook().isMovedAway() ? desk.logbook().verify() : List.<Problem>of(),
                problems -> {
                    if (!problems.isEmpty() && !gone) {
                        found.met(problems);
                    } else if (problems.isEmpty() && gone) {
                        found.back();
                    }
                    gone = !problems.isEmpty();
                },
                this::failed);
    }

    private void check() {
        tasks.run(
                texts.get("shell.watch.checking"),
                () -> desk.logbook().verify(),
                problems -> {
                    found.checked(problems);
                    firstBackUp();
                },
                this::failed);
    }

    /** One that was made or carried here just now has no copy yet. */
    private void firstBackUp() {
        Logbook logbook = desk.logbook();
        if (logbook.readOnly().isEmpty()) {
            tasks.write(
                    texts.get("shell.watch.backing"),
                    () -> logbook.hasBackup()
                            ? List.<Problem>of()
                            : logbook.backUp().problems(),
                    found::met,
                    this::failed);
        }
    }

    /** Backs up what was written since the last time; nothing otherwise. */
    void backUp() {
        @Nullable Instant written = desk.lastWritten().orElse(null);
        if (written != null && written.isAfter(backedUp)) {
            tasks.write(
                    texts.get("shell.watch.backing"),
                    () -> desk.logbook().backUp().problems(),
                    problems -> {
                        backedUp = problems.isEmpty() ? written : backedUp;
                        found.met(problems);
                    },
                    this::failed);
        }
    }

    private void failed(Throwable failure) {
        LOG.error("the logbook could not be looked after: {}", desk.logbook().path(), failure);
    }

    @Override
    public void close() {
        check.cancel();
        backUps.close();
        looks.close();
    }
}
