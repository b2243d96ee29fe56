package witnessmark.desktop.strip;

import java.awt.event.KeyEvent;
import java.awt.event.KeyListener;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.JRootPane;
import javax.swing.KeyStroke;
import witnessmark.desktop.bench.BenchContext;
import witnessmark.desktop.bench.BenchPlace;
import witnessmark.desktop.faces.BenchPages;
import witnessmark.desktop.faces.FacesContext;
import witnessmark.desktop.faces.FacesPage;
import witnessmark.desktop.form.SheetTools;
import witnessmark.desktop.photos.PhotoStrip;
import witnessmark.desktop.photos.PhotoWatch;
import witnessmark.desktop.photos.Photographs;
import witnessmark.desktop.photos.PhotosContext;
import witnessmark.desktop.shell.AboutFacts;
import witnessmark.desktop.shell.Command;
import witnessmark.desktop.shell.Look;
import witnessmark.desktop.shell.PlaceId;
import witnessmark.desktop.shell.ShellContext;
import witnessmark.desktop.shell.ShellPane;
import witnessmark.desktop.task.Tasks;
import witnessmark.desktop.testing.GoldenText;
import witnessmark.desktop.testing.MemorySettings;
import witnessmark.desktop.testing.Stage;
import witnessmark.desktop.testing.Ui;
import witnessmark.domain.Build;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Finding;
import witnessmark.exchange.DiskLoggerFiles;
import witnessmark.logbook.Desk;
import witnessmark.logbook.photos.KeepPhotos;
import witnessmark.logbook.photos.WatchedPhotos;
import witnessmark.logbook.run.SampleBook;
import witnessmark.quantity.typed.DayOrder;
import witnessmark.study.result.StripLine;
import witnessmark.wording.Measures;
import witnessmark.wording.Texts;
import witnessmark.wording.Units;

/** The window on the strip report. */
final class StripWindow implements AutoCloseable {
    final Texts texts;
    final Desk book;
    final witnessmark.desktop.shell.Desk window = new witnessmark.desktop.shell.Desk();
    final Tasks tasks = new Tasks((thread, failure) -> {
        throw new IllegalStateException(failure);
    });
    final List<String> corrected = new ArrayList<>();
    final StripReportPage page;
    final ShellPane pane;

    StripWindow(Look look, Texts texts, Desk book) {
        this.texts = texts;
        this.book = book;
        Measures measures = new Measures(texts, Units.METRIC);
        MemorySettings settings = new MemorySettings();
        SheetTools tools = new SheetTools(texts, tasks, settings);
        page = new StripReportPage(
                new StripContext(book, SampleBook.ids(), window, tools, measures, () -> {}, corrected::add));
        Photographs photographs = new Photographs(new PhotosContext(
                book,
                new KeepPhotos(book, SampleBook.ids()),
                window,
                tools,
                measures,
                new PhotoWatch(texts, tasks, new WatchedPhotos(book, settings, new DiskLoggerFiles())),
                Optional::empty,
                List::of,
                name -> Optional.empty(),
                new PhotosContext.Asked(aside -> {}, () -> {}, (record, back) -> {}, () -> {})));
        page.with(photographs.strip(PhotoStrip.Room.NARROW, of -> {}));
        BenchPages place = new BenchPages(
                new BenchPlace(new BenchContext(
                        book,
                        SampleBook.ids(),
                        window,
                        tasks,
                        texts,
                        measures,
                        () -> {},
                        prefilled -> {},
                        Optional::empty,
                        () -> {})),
                new FacesPage(new FacesContext(
                        book,
                        SampleBook.ids(),
                        window,
                        tools,
                        measures,
                        DayOrder.DAY_FIRST,
                        () -> {},
                        prefilled -> {},
                        () -> {})),
                page,
                texts,
                () -> window.go(PlaceId.MEASURING_BENCH));
        pane = new ShellPane(
                new ShellContext(texts, tasks, settings, look, window, new AboutFacts("0.1.0", List.of()), () -> {}),
                List.of(place),
                List.of(),
                List.of());
        pane.logbook("Marrowgate, sample season");
        window.go(PlaceId.MEASURING_BENCH);
        place.commands().stream()
                .filter(command -> command.key().equals("strip.command.report"))
                .forEach(Command::perform);
        tasks.awaitIdle();
    }

    StripWindow choose(String engine, int number) {
        page.open(book.view()
                .facts()
                .of(Build.class)
                .inForce()
                .filter(build -> build.fact().number() == number
                        && book.view()
                                .facts()
                                .of(Engine.class)
                                .get(build.fact().engine())
                                .number()
                                .equals(engine))
                .findFirst()
                .orElseThrow()
                .id()
                .text());
        tasks.awaitIdle();
        return this;
    }

    /** Takes a position in hand. */
    StripWindow at(StripLine line, int column) {
        StripTable table = page.panel().table();
        table.choose(0, column);
        for (int i = 0; table.inLine().orElseThrow().line() != line; i++) {
            table.choose(i, column);
        }
        return this;
    }

    /** Types into the table. */
    void type(char letter) {
        key(letter);
        settle();
    }

    /** The same, and nothing is read again after it. */
    void key(char letter) {
        StripTable table = page.panel().table();
        KeyEvent typed = new KeyEvent(table, KeyEvent.KEY_TYPED, 0, 0, KeyEvent.VK_UNDEFINED, letter);
        for (KeyListener listener : table.getKeyListeners()) {
            listener.keyTyped(typed); // without a window that has the focus nothing is typed into anything
        }
    }

    void press(KeyStroke key) {
        Ui.press(page.panel().table(), key);
        settle();
    }

    void settle() {
        tasks.awaitIdle();
        page.refresh();
        tasks.awaitIdle();
    }

    List<Finding> findings(StripLine line, Integer number) {
        return book.view()
                .facts()
                .of(Finding.class)
                .inForce()
                .map(Entry::fact)
                .filter(finding -> StripLine.of(finding) == line
                        && number.equals(finding.number())
                        && finding.build() != null
                        && finding.build().text().equals(page.build()))
                .toList();
    }

    String said() {
        return GoldenText.of(page.panel());
    }

    JRootPane root(int width, int height) {
        JRootPane root = Stage.window(pane, pane.menuBar(), width, height);
        tasks.awaitIdle();
        return Stage.lay(root, width, height);
    }

    @Override
    public void close() {
        tasks.awaitIdle();
        tasks.close();
    }
}
