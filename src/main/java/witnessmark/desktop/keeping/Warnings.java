package witnessmark.desktop.keeping;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import javax.swing.JButton;
import witnessmark.desktop.form.Buttons;
import witnessmark.desktop.form.Caption;
import witnessmark.desktop.shell.Desk;
import witnessmark.logbook.port.Logbook;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;
import witnessmark.wording.Problems;
import witnessmark.wording.Texts;

/** Says in the strip under the menu bar what was met with a logbook, and offers what can be done about that. */
public final class Warnings {
    private static final String ENDING = ".witness";

    private final Texts texts;
    private final Problems problems;
    private final Desk desk;
    private final KeepingPages pages;
    private final Consumer<List<Problem>> show;
    private final Logbook logbook;
    private boolean missing;

    /** @param show shows what a check found on a page */
    public Warnings(
            Texts texts,
            Problems problems,
            Desk desk,
            KeepingPages pages,
            Consumer<List<Problem>> show,
            Logbook logbook) {
        this.texts = texts;
        this.problems = problems;
        this.desk = desk;
        this.pages = pages;
        this.show = show;
        this.logbook = logbook;
    }

    /** The first of them; that the logbook is open for reading only is said already, with a way out. */
    public void met(List<Problem> met) {
        missing |= met.stream().anyMatch(problem -> problem.kind() == ProblemKind.CHANGES_MISSING);
        met.stream()
                .filter(problem -> logbook.readOnly().filter(problem::equals).isEmpty())
                .findFirst()
                .ifPresent(problem -> desk.notice(problems.sentence(problem), ways(problem, List.of())));
    }

    /** The file that was gone is where it was. */
    public void back() {
        desk.dismissNotice();
        desk.say(texts.get("keeping.fileBack"));
    }

    /** What a check found, all of it behind a button. */
    public void found(List<Problem> found) {
        if (!found.isEmpty()) {
            Problem first = found.get(0);
            String sentence = found.size() == 1
                    ? problems.sentence(first)
                    : texts.get("keeping.notice.found", problems.sentence(first), found.size());
            desk.notice(sentence, ways(first, found));
        } else if (logbook.wasLeftOpen() && !missing) {
            desk.say(texts.get("keeping.leftOpen"));
        }
    }

    /** Why a logbook that was asked for is not open; the one in hand stays. */
    public void notOpened(Problem problem) {
        List<JButton> ways = new ArrayList<>(ways(problem, List.of()));
        ways.add(way("keeping.notice.close", desk::dismissNotice));
        desk.notice(
                texts.get(
                        "keeping.notice.notOpened",
                        problems.sentence(problem),
                        logbook.path().getFileName()),
                ways);
    }

    /**
     * Why another logbook than the one asked for is open.
     *
     * @param open asks for another
     * @param stay goes on with this one
     */
    public void instead(Problem missed, Runnable open, Runnable stay) {
        List<JButton> ways = new ArrayList<>(ways(missed, List.of()));
        ways.add(way("shell.notice.open", open));
        ways.add(way("shell.notice.stay", stay));
        desk.notice(texts.get("shell.notice.instead", problems.sentence(missed)), ways);
    }

    /**
     * What can be done about a problem with a logbook.
     *
     * @param found all that a check found, to be shown; none when it was no check
     */
    private List<JButton> ways(Problem problem, List<Problem> found) {
        List<JButton> ways = new ArrayList<>();
        if (found.size() > 1) {
            ways.add(way("keeping.notice.show", () -> show.accept(found)));
        }
        Path path = problem.facts().stream()
                .filter(Path.class::isInstance)
                .map(Path.class::cast)
                .findFirst()
                .orElse(logbook.path());
        Runnable restore = () -> restore(path);
        switch (problem.kind()) {
            case LOGBOOK_DAMAGED, LOGBOOK_ALTERED, RECORD_NOT_AS_WRITTEN, CHAIN_BROKEN -> {
                if (found.isEmpty()) {
                    ways.add(way("keeping.notice.show", () -> pages.showHit(path)));
                }
                ways.add(way("keeping.notice.salvage", () -> pages.salvage(path)));
                ways.add(way("keeping.notice.restore", restore));
            }
            case LOGBOOK_GONE -> ways.add(way("keeping.notice.restore", restore));
            case NOT_A_LOGBOOK -> {
                if (path.toString().endsWith(ENDING)) { // else a photo, say, picked by mistake
                    ways.add(way("keeping.notice.restore", restore));
                }
            }
            case CHANGES_MISSING -> {
                ways.add(way("keeping.notice.restore", restore));
                ways.add(way("keeping.notice.goOn", pages::goOnWithoutMissing));
            }
            case ENTRIES_KEPT_ASIDE -> ways.add(way("keeping.notice.show", pages::keptAside));
            case FILE_MOVED_AWAY -> ways.add(way("keeping.notice.copy", pages::saveCopy));
            default -> {}
        }
        return ways;
    }

    private void restore(Path path) {
        if (path.equals(logbook.path())) {
            pages.restore();
        } else {
            pages.restoreFor(path);
        }
    }

    private JButton way(String key, Runnable work) {
        return Buttons.plain(Caption.of(texts.get(key)), work);
    }
}
