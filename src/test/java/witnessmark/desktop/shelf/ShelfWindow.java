package witnessmark.desktop.shelf;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Supplier;
import javax.swing.JRootPane;
import witnessmark.desktop.form.SheetTools;
import witnessmark.desktop.shell.AboutFacts;
import witnessmark.desktop.shell.Look;
import witnessmark.desktop.shell.PlaceId;
import witnessmark.desktop.shell.ShellContext;
import witnessmark.desktop.shell.ShellPane;
import witnessmark.desktop.task.Tasks;
import witnessmark.desktop.testing.GoldenText;
import witnessmark.desktop.testing.Looks;
import witnessmark.desktop.testing.MemorySettings;
import witnessmark.desktop.testing.Stage;
import witnessmark.domain.Facts;
import witnessmark.ledger.AsOf;
import witnessmark.ledger.LifeLedger;
import witnessmark.ledger.Story;
import witnessmark.logbook.View;
import witnessmark.logbook.run.SampleBook;
import witnessmark.logbook.shelf.SmallShelf;
import witnessmark.wording.Measures;
import witnessmark.wording.Texts;
import witnessmark.wording.Units;

/** The window on the place Parts shelf. What it leads to is noted down. */
final class ShelfWindow implements AutoCloseable {
    final Texts texts;
    final witnessmark.desktop.shell.Desk window = new witnessmark.desktop.shell.Desk();
    final Tasks tasks = new Tasks((thread, failure) -> {
        throw new IllegalStateException(failure);
    });
    final List<String> asked = new ArrayList<>();
    final ShelfPlace place;
    final ShellPane pane;
    private Supplier<View> view;

    ShelfWindow(Look look, Texts texts, View first) {
        this(look, texts, () -> first);
        tasks.awaitIdle();
    }

    /** The window just gone to: what was read has not come in yet. */
    static ShelfWindow arriving() {
        return new ShelfWindow(Looks.light(), english(), ShelfWindow::small);
    }

    private ShelfWindow(Look look, Texts texts, Supplier<View> first) {
        this.texts = texts;
        this.view = first;
        MemorySettings settings = new MemorySettings();
        place = new ShelfPlace(
                new SheetTools(texts, tasks, settings),
                new Measures(texts, Units.METRIC),
                window,
                () -> view.get(),
                new ShelfAsked(
                        part -> asked.add("page " + part),
                        record -> asked.add("correct " + record),
                        sheet -> asked.add(sheet.sheet()),
                        () -> asked.add("fit a part"),
                        () -> asked.add("new batch")));
        ShellContext context =
                new ShellContext(texts, tasks, settings, look, window, new AboutFacts("0.1.0", List.of()), () -> {});
        pane = new ShellPane(context, List.of(place), List.of(), List.of());
        pane.logbook("Marrowgate, sample season");
        window.go(PlaceId.PARTS_SHELF);
    }

    /** The sample season on its last evening. */
    static View sample() {
        return SampleBook.written(SampleBook.OPENING).view();
    }

    static View small() {
        return SmallShelf.view(SmallShelf.DAY);
    }

    /** A logbook in which nothing is written down. */
    static View bare() {
        Facts none = Facts.none();
        return new View(
                none, SmallShelf.DAY, Story.UTC, LifeLedger.of(none, new AsOf(SmallShelf.DAY, Story.UTC)), false);
    }

    static Texts english() {
        return Texts.in(Locale.UK);
    }

    /** Chooses which parts are shown by where they are. */
    ShelfWindow where(Whereabout choice) {
        place.panel().parts().where().combo().setSelectedItem(choice);
        tasks.awaitIdle();
        return this;
    }

    /** From now on there is another logbook, or it cannot be read. */
    void become(Supplier<View> other) {
        view = other;
        window.changed();
        tasks.awaitIdle();
        root(1366, 768);
    }

    /** The row of the part of this mark. */
    ShelfLine part(String mark) {
        return place.panel().parts().sheet().shown().stream()
                .filter(line -> line.mark().equals(mark))
                .findFirst()
                .orElseThrow();
    }

    /** The marks of the parts in sight, from above. */
    List<String> marks() {
        return place.panel().parts().sheet().shown().stream()
                .map(ShelfLine::mark)
                .toList();
    }

    String said() {
        return GoldenText.of(place.panel());
    }

    JRootPane root(int width, int height) {
        JRootPane root = Stage.window(pane, pane::menuBar, width, height);
        tasks.awaitIdle();
        return Stage.lay(root, width, height);
    }

    @Override
    public void close() {
        tasks.close();
    }
}
