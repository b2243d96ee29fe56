package witnessmark.desktop.engines;

import java.awt.Component;
import java.awt.KeyboardFocusManager;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javax.swing.JComponent;
import javax.swing.SwingUtilities;
import org.jspecify.annotations.Nullable;
import witnessmark.desktop.history.HistoryModel;
import witnessmark.desktop.task.Latest;
import witnessmark.desktop.task.Tasks;
import witnessmark.domain.Entry;
import witnessmark.domain.Facts;
import witnessmark.domain.Fitment;
import witnessmark.domain.Id;
import witnessmark.domain.Part;
import witnessmark.domain.Run;
import witnessmark.logbook.Desk;
import witnessmark.logbook.View;
import witnessmark.logbook.engines.Figure;
import witnessmark.logbook.engines.SeeBehind;
import witnessmark.logbook.engines.SeeHistory;
import witnessmark.wording.Measures;
import witnessmark.wording.Problems;
import witnessmark.wording.Texts;

/** The figure in hand, opened beside what it stands on: reads the entries behind it, and the history of one of them. */
final class FigureInHand {
    private final Texts texts;
    private final Supplier<Desk> desk;
    private final Consumer<Entry<?>> correct;
    private final Page page;
    private final BehindModel model;
    private final HistoryModel history;
    private final Latest reading;
    private final EntryWork work;
    private @Nullable Figure opened;
    private @Nullable JComponent cameFrom;

    /**
     * The page the figure stands on.
     *
     * @param beside what is in view now
     * @param home where the focus goes when nothing says where it came from
     * @param failed run when the entries could not be read
     */
    record Page(Supplier<Beside> beside, Supplier<JComponent> home, Runnable failed) {}

    FigureInHand(
            Texts texts,
            Measures measures,
            Tasks tasks,
            Supplier<Desk> desk,
            witnessmark.desktop.shell.Desk window,
            Consumer<Entry<?>> correct,
            Page page) {
        this.texts = texts;
        this.desk = desk;
        this.correct = correct;
        this.page = page;
        this.model = new BehindModel(texts, measures);
        this.history = new HistoryModel(texts, measures);
        this.reading = new Latest(tasks);
        this.work = new Work(new EntryChanges(texts, new Problems(texts, measures), tasks, desk, window, model));
    }

    /** What can be done to an entry behind it. */
    EntryWork work() {
        return work;
    }

    /** Takes another figure in hand. */
    void open(Shown figure) {
        opened = figure.figure();
        rememberFocus();
        read(true);
    }

    /** Reads the entries again, when there is a figure in hand. */
    void refresh() {
        read(false);
    }

    /** Puts it away, and gives the focus back to where it was. */
    void close() {
        putAway();
        JComponent back = cameFrom;
        (back != null && back.isShowing() ? back : page.home().get()).requestFocusInWindow();
    }

    void putAway() {
        opened = null;
        reading.drop();
        page.beside().get().close();
    }

    /** Opens what is written about a part on its sheet: itself, or one of the times it was fitted. */
    void correct(String record) {
        Facts facts = desk.get().view().facts();
        facts.of(Part.class)
                .find(Id.parse(record))
                .<Entry<?>>map(part -> part)
                .or(() -> facts.of(Fitment.class).find(Id.parse(record)))
                .ifPresent(correct);
    }

    /** A run opens on its sheet; of anything else the history is shown, from which its sheet is opened. */
    void openEntry(Entry<?> entry, String named) {
        if (entry.fact() instanceof Run) {
            correct.accept(entry);
        } else {
            history(entry, named);
        }
    }

    /** Where the focus is to go back to, unless it is in the pane itself. */
    private void rememberFocus() {
        Component owner = KeyboardFocusManager.getCurrentKeyboardFocusManager().getPermanentFocusOwner();
        if (owner == null
                || !SwingUtilities.isDescendingFrom(owner, page.beside().get().behind())) {
            cameFrom = owner instanceof JComponent component ? component : null;
        }
    }

    private record Behind(BehindLines lines, boolean readOnly) {}

    private void read(boolean entering) {
        Figure figure = opened;
        if (figure == null) {
            return;
        }
        reading.run(
                texts.get("engines.readingBehind"),
                () -> {
                    View view = desk.get().view();
                    return new Behind(model.lines(SeeBehind.of(view, figure)), view.readOnly());
                },
                read -> {
                    Beside beside = page.beside().get();
                    beside.open();
                    beside.behind().show(read.lines(), read.readOnly(), true);
                    if (entering) {
                        beside.behind().takeFocus();
                    }
                },
                failure -> page.failed().run());
    }

    private void history(Entry<?> entry, String named) {
        rememberFocus();
        reading.run(
                texts.get("engines.readingHistory"),
                () -> history.lines(
                        entry,
                        SeeHistory.of(desk.get().logbook(), entry),
                        desk.get().view().zone()),
                lines -> {
                    Beside beside = page.beside().get();
                    beside.open();
                    beside.behind().showHistory(named, lines, opened != null, () -> correct.accept(entry));
                },
                failure -> page.failed().run());
    }

    /** What the entries behind a figure lead to. */
    private final class Work implements EntryWork {
        private final EntryChanges changes;

        Work(EntryChanges changes) {
            this.changes = changes;
        }

        @Override
        public void strikeOut(BehindLine line, String because) {
            changes.strikeOut(line, because);
        }

        @Override
        public void restore(BehindLine line) {
            changes.restore(line);
        }

        @Override
        public void same(BehindLine line) {
            changes.same(line);
        }

        @Override
        public void another(BehindLine line) {
            changes.another(line);
        }

        @Override
        public void open(BehindLine line) {
            correct.accept(line.source());
        }

        @Override
        public void history(BehindLine line) {
            FigureInHand.this.history(line.source(), model.named(line));
        }
    }
}
