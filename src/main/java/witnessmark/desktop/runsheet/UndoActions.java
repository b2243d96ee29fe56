package witnessmark.desktop.runsheet;

import java.awt.event.KeyEvent;
import java.util.List;
import java.util.UUID;
import java.util.function.Supplier;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import witnessmark.desktop.form.Caption;
import witnessmark.desktop.form.Keys;
import witnessmark.desktop.shell.Command;
import witnessmark.desktop.shell.CommandMenu;
import witnessmark.logbook.Desk;
import witnessmark.logbook.port.Written;
import witnessmark.outcome.Outcome;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;
import witnessmark.wording.Problems;
import witnessmark.wording.Texts;

/** Takes changes of the logbook back and does them again, saying which. */
public final class UndoActions {
    private static final Logger LOG = LoggerFactory.getLogger(UndoActions.class);

    private final RunContext context;
    private final Texts texts;
    private final Problems problems;
    private final Desk book;

    public UndoActions(RunContext context) {
        this.context = context;
        this.texts = context.texts();
        this.problems = new Problems(texts, context.measures());
        this.book = context.book();
    }

    /** Undo and Redo, for the Edit menu. In a text field their keys take back typing as long as there is any. */
    public List<Command> commands() {
        return List.of(
                new Command(texts, "runsheet.undo", CommandMenu.EDIT, 1, Keys.menu(KeyEvent.VK_Z), this::undo),
                new Command(texts, "runsheet.redo", CommandMenu.EDIT, 1, Keys.menu(KeyEvent.VK_Y), this::redo));
    }

    /** Takes the last change back. */
    public void undo() {
        perform(
                () -> book.undoable().map(Desk.Done::why).orElse(""),
                () -> book.undo(this::because),
                "runsheet.undone",
                Caption.of(texts.get("runsheet.redo.word")),
                this::redo);
    }

    /** Takes one change back, as long as it is the last. */
    public void undo(UUID change) {
        perform(
                () -> book.undoable().map(Desk.Done::why).orElse(""),
                () -> isLast(change)
                        ? book.undo(this::because)
                        : Outcome.didNot(Problem.of(ProblemKind.NOTHING_TO_UNDO)),
                "runsheet.undone",
                Caption.of(texts.get("runsheet.redo.word")),
                this::redo);
    }

    /** Does again what was taken back last. */
    public void redo() {
        perform(
                () -> book.redoable().map(Desk.Done::why).orElse(""),
                book::redo,
                "runsheet.redone",
                Caption.of(texts.get("runsheet.undo.word")),
                this::undo);
    }

    private String because(String why) {
        return texts.get("runsheet.undo.because", why);
    }

    private boolean isLast(UUID change) {
        return book.undoable().filter(done -> done.change().equals(change)).isPresent();
    }

    /** What was done, and the words of the change it was done to. */
    private record Moved(String why, Outcome<Written> outcome) {}

    private void perform(
            Supplier<String> why, Supplier<Outcome<Written>> work, String sentence, Caption way, Runnable back) {
        context.tasks()
                .write(
                        texts.get("runsheet.undo.working"),
                        () -> new Moved(why.get(), work.get()),
                        moved -> moved.outcome()
                                .<Runnable>fold(
                                        written -> () -> {
                                            context.window().say(texts.get(sentence, moved.why()), way, back);
                                            context.window().changed();
                                        },
                                        met -> () -> context.window().say(problems.sentence(met.get(0))))
                                .run(),
                        thrown -> {
                            LOG.error("a change could not be taken back or done again", thrown);
                            context.window().say(texts.get("runsheet.undo.failed"));
                        });
    }
}
