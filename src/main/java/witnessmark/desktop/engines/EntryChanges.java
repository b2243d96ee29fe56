package witnessmark.desktop.engines;

import java.util.UUID;
import java.util.concurrent.Callable;
import java.util.function.Consumer;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import witnessmark.desktop.form.Caption;
import witnessmark.desktop.task.Tasks;
import witnessmark.domain.Entry;
import witnessmark.domain.Fact;
import witnessmark.domain.Run;
import witnessmark.logbook.DecideSameRun;
import witnessmark.logbook.Desk;
import witnessmark.logbook.StrikeOut;
import witnessmark.logbook.port.Written;
import witnessmark.outcome.Outcome;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;
import witnessmark.wording.Problems;
import witnessmark.wording.Texts;

/** Strikes entries out, restores and settles them, off the event thread; each change can be taken back at once. */
final class EntryChanges {
    private final Texts texts;
    private final Problems problems;
    private final Tasks tasks;
    private final Supplier<Desk> desk;
    private final witnessmark.desktop.shell.Desk window;
    private final BehindModel words;

    EntryChanges(
            Texts texts,
            Problems problems,
            Tasks tasks,
            Supplier<Desk> desk,
            witnessmark.desktop.shell.Desk window,
            BehindModel words) {
        this.texts = texts;
        this.problems = problems;
        this.tasks = tasks;
        this.desk = desk;
        this.window = window;
        this.words = words;
    }

    void strikeOut(BehindLine line, String because) {
        write("engines.done.strike", line, why -> strike(line.source(), because, why));
    }

    void restore(BehindLine line) {
        write("engines.done.restore", line, why -> restore(line.source(), why));
    }

    void same(BehindLine line) {
        write("engines.done.same", line, why -> new DecideSameRun(desk.get()).same(run(line), why));
    }

    void another(BehindLine line) {
        write("engines.done.another", line, why -> new DecideSameRun(desk.get()).another(run(line), why));
    }

    /** What is written, given the words for the history. */
    private interface Writing {
        Outcome<Written> with(String why);
    }

    private void write(String key, BehindLine line, Writing writing) {
        String done = texts.get(key, words.named(line));
        perform(
                done,
                () -> writing.with(done),
                written -> window.say(
                        texts.get("engines.said", done),
                        Caption.of(texts.get("engines.undo")),
                        () -> undo(done, written.change())));
    }

    /** Takes the change back as long as it is the last: never another one in its place. */
    private void undo(String done, UUID change) {
        String undone = texts.get("engines.undone", done);
        perform(
                undone,
                () -> isLast(change) ? desk.get().undo() : Outcome.didNot(Problem.of(ProblemKind.NOTHING_TO_UNDO)),
                written -> window.say(undone));
    }

    private boolean isLast(UUID change) {
        return desk.get()
                .undoable()
                .filter(done -> done.change().equals(change))
                .isPresent();
    }

    private void perform(String name, Callable<Outcome<Written>> work, Consumer<Written> say) {
        tasks.write(
                name,
                work,
                outcome -> {
                    window.changed();
                    if (outcome.didWork()) {
                        say.accept(outcome.orThrow());
                    } else {
                        window.say(outcome.problems().stream()
                                .map(problems::sentence)
                                .collect(Collectors.joining(" ")));
                    }
                },
                failure -> window.say(texts.get("engines.notDone", name)));
    }

    private <F extends Fact> Outcome<Written> strike(Entry<F> entry, String because, String why) {
        return new StrikeOut(desk.get()).strikeOut(entry, because, why);
    }

    private <F extends Fact> Outcome<Written> restore(Entry<F> entry, String why) {
        return new StrikeOut(desk.get()).restore(entry, why);
    }

    @SuppressWarnings("unchecked") // only runs can be perhaps the same as another
    private static Entry<Run> run(BehindLine line) {
        return (Entry<Run>) line.source();
    }
}
