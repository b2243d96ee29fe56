package witnessmark.desktop.shell;

import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import witnessmark.desktop.form.Caption;
import witnessmark.desktop.task.Tasks;
import witnessmark.outcome.Outcome;
import witnessmark.wording.Measures;
import witnessmark.wording.Problems;
import witnessmark.wording.Texts;

/**
 * Writes what is said on a page without a Save, off the event thread: each time one change, told with a way to take it back, or why it
 * is not written.
 */
public final class OneChange {
    private static final Logger LOG = LoggerFactory.getLogger(OneChange.class);

    private final Texts texts;
    private final Problems problems;
    private final Tasks tasks;
    private final Desk window;
    private final Runnable undo;

    /** @param undo takes back what was written last */
    public OneChange(Texts texts, Measures measures, Tasks tasks, Desk window, Runnable undo) {
        this.texts = texts;
        this.problems = new Problems(texts, measures);
        this.tasks = tasks;
        this.window = window;
        this.undo = undo;
    }

    /**
     * Writes it in its turn.
     *
     * @param name of the work, in words
     * @param work answers what was written in words, or nothing where there was nothing to write
     * @param notWritten told on the event thread why it is not written, after the window said so
     */
    public void write(String name, Supplier<Outcome<Optional<String>>> work, Consumer<String> notWritten) {
        Consumer<String> failed = said -> {
            window.say(said);
            notWritten.accept(said);
        };
        tasks.write(name, work::get, outcome -> ended(outcome, failed), thrown -> {
            LOG.error("not written: {}", name, thrown);
            failed.accept(texts.get("shell.change.not_saved"));
        });
    }

    private void ended(Outcome<Optional<String>> outcome, Consumer<String> failed) {
        if (!outcome.didWork()) {
            failed.accept(outcome.problems().stream().map(problems::sentence).collect(Collectors.joining(" ")));
            return;
        }
        outcome.orThrow().ifPresent(what -> {
            window.say(texts.get("shell.change.saved", what), Caption.of(texts.get("shell.change.undo")), undo);
            window.changed();
        });
    }
}
