package witnessmark.desktop.incidents;

import java.nio.file.Path;
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
import witnessmark.desktop.testing.MemorySettings;
import witnessmark.desktop.testing.Stage;
import witnessmark.domain.Facts;
import witnessmark.domain.Incident;
import witnessmark.ledger.AsOf;
import witnessmark.ledger.LifeLedger;
import witnessmark.logbook.Desk;
import witnessmark.logbook.View;
import witnessmark.logbook.proof.WeighFinding;
import witnessmark.logbook.run.SampleBook;
import witnessmark.sample.SampleBooks;
import witnessmark.wording.Measures;
import witnessmark.wording.Texts;
import witnessmark.wording.Units;

/** The window on the place Incidents. What it leads to is noted down. */
final class IncidentsWindow implements AutoCloseable {
    final Texts texts;
    final witnessmark.desktop.shell.Desk window = new witnessmark.desktop.shell.Desk();
    final Tasks tasks = new Tasks((thread, failure) -> {
        throw new IllegalStateException(failure);
    });
    final List<String> asked = new ArrayList<>();
    final IncidentsPlace place;
    final ShellPane pane;
    private Supplier<View> view;

    IncidentsWindow(Look look, Texts texts, View first) {
        this(look, texts, first, SampleBook.on(SampleBook.OPENING));
    }

    /** @param desk where findings are weighed */
    IncidentsWindow(Look look, Texts texts, View first, Desk desk) {
        this.texts = texts;
        this.view = () -> first;
        MemorySettings settings = new MemorySettings();
        place = new IncidentsPlace(
                new SheetTools(texts, tasks, settings),
                new Measures(texts, Units.METRIC),
                window,
                () -> view.get(),
                new IncidentsAsked(
                        () -> asked.add("report"),
                        sheet -> asked.add(sheet.sheet()),
                        record -> asked.add("correct " + record),
                        incident -> window.go(PlaceId.INCIDENTS, incident)),
                new WeighFinding(desk, SampleBook.ids()),
                () -> asked.add("undo"));
        pane = new ShellPane(
                new ShellContext(texts, tasks, settings, look, window, new AboutFacts("0.1.0", List.of()), () -> {}),
                List.of(place),
                List.of(),
                List.of());
        pane.logbook("Marrowgate, sample season");
        window.go(PlaceId.INCIDENTS);
        tasks.awaitIdle();
    }

    /** The sample season on its last evening before Round 6. */
    static View sample() {
        return SampleBook.on(SampleBook.OPENING).view();
    }

    /** The sample season when it is over. */
    static View over(Path folder) {
        SampleBooks books = new SampleBooks(folder);
        Desk desk = books.open();
        books.tellAll(desk);
        View view = desk.view();
        desk.logbook().close();
        return view;
    }

    /** A logbook in which nothing is written down. */
    static View bare() {
        Facts none = Facts.none();
        AsOf day = new AsOf(SampleBook.OPENING, SampleBook.LONDON);
        return new View(none, day.day(), day.zone(), LifeLedger.of(none, day), false);
    }

    static Texts english() {
        return Texts.in(Locale.UK);
    }

    /** From now on there is another logbook, or it cannot be read. */
    void become(Supplier<View> other) {
        reads(other);
        root(1366, 768);
    }

    /** The same in whatever window it stands. */
    void reads(Supplier<View> other) {
        view = other;
        window.changed();
        tasks.awaitIdle();
    }

    /** Chooses an incident by its mark. */
    IncidentsWindow choose(String mark) {
        window.go(
                PlaceId.INCIDENTS,
                view.get()
                        .facts()
                        .of(Incident.class)
                        .named(mark)
                        .orElseThrow()
                        .id()
                        .text());
        tasks.awaitIdle();
        return this;
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
        tasks.awaitIdle();
        tasks.close();
    }
}
