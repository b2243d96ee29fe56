package witnessmark.desktop.builds;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import javax.swing.JRootPane;
import javax.swing.JTable;
import witnessmark.desktop.engines.EnginesPlace;
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
import witnessmark.domain.Build;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.logbook.Desk;
import witnessmark.logbook.building.SeeBuild;
import witnessmark.logbook.building.WriteBuildWork;
import witnessmark.logbook.run.SampleBook;
import witnessmark.logbook.sheets.SheetUnits;
import witnessmark.quantity.typed.DayOrder;
import witnessmark.wording.Measures;
import witnessmark.wording.Texts;
import witnessmark.wording.Units;

/** The window on the page of a build, over the engines. */
final class BuildWindow implements AutoCloseable {
    final Texts texts;
    final Desk book;
    final witnessmark.desktop.shell.Desk window = new witnessmark.desktop.shell.Desk();
    final Tasks tasks = new Tasks((thread, failure) -> {
        throw new IllegalStateException(failure);
    });
    final List<String> asked = new ArrayList<>();
    final EnginesPlace engines;
    final BuildAside page;
    final ShellPane pane;

    BuildWindow(Look look, Texts texts, Desk book) {
        this.texts = texts;
        this.book = book;
        MemorySettings settings = new MemorySettings();
        Measures measures = new Measures(texts, Units.METRIC);
        engines =
                new EnginesPlace(texts, measures, tasks, window, () -> book, settings, DayOrder.DAY_FIRST, entry -> {});
        page = new BuildAside(new BuildsContext(
                book,
                new WriteBuildWork(book, SampleBook.ids(), SheetUnits.metric(DayOrder.DAY_FIRST)),
                window,
                new SheetTools(texts, tasks, settings),
                measures,
                () -> {},
                new BuildsContext.Asked(
                        engines::stepAside,
                        engines::dismiss,
                        build -> asked.add("sheet " + build),
                        build -> asked.add("sign " + build),
                        (build, lesson) -> asked.add("answer " + build + " " + lesson),
                        incident -> asked.add("incident " + incident))));
        engines.leadsTo(page::openEngine, page::open, engine -> {}, trial -> {}, () -> {});
        pane = new ShellPane(
                new ShellContext(texts, tasks, settings, look, window, new AboutFacts("0.1.0", List.of()), () -> {}),
                List.of(engines),
                BuildCommands.of(texts, page, engines::engineInView),
                List.of());
        pane.logbook("Marrowgate, sample season");
        window.go(PlaceId.ENGINES);
        tasks.awaitIdle();
    }

    /** The sample season on its last evening before Round 6: K05 is in pieces. */
    static Desk sample() {
        return SampleBook.on(SampleBook.OPENING);
    }

    static Texts english() {
        return Texts.in(Locale.UK);
    }

    Entry<Engine> engine(String number) {
        return book.view().facts().of(Engine.class).named(number).orElseThrow();
    }

    /** Shows the build of an engine that is open, or its latest. */
    BuildWindow show(String engine) {
        page.openEngine(engine(engine).id());
        tasks.awaitIdle();
        return this;
    }

    /** Shows the page on which an engine is opened. */
    BuildWindow anew(String engine) {
        page.openAnew(engine(engine).id());
        tasks.awaitIdle();
        return this;
    }

    Entry<Build> build(String engine) {
        return SeeBuild.find(book.view(), engine(engine).id(), null).orElseThrow();
    }

    /** Takes a position in hand. */
    BuildWindow hold(String position) {
        BuildTables tables = page.panel().tables();
        Map<Boolean, BuildLines.PositionLine> found = new java.util.HashMap<>();
        tables.positions().shown().stream()
                .filter(line -> line.position().equals(position))
                .forEach(line -> found.put(true, line));
        tables.positions().select(found.get(true).row());
        tasks.awaitIdle();
        return this;
    }

    JTable positions() {
        return page.panel().tables().positions().table();
    }

    JTable joints() {
        return page.panel().tables().joints().table();
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
