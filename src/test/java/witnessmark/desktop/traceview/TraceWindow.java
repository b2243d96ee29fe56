package witnessmark.desktop.traceview;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javax.swing.JRootPane;
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
import witnessmark.domain.Id;
import witnessmark.domain.Trace;
import witnessmark.logbook.Desk;
import witnessmark.quantity.typed.DayOrder;
import witnessmark.report.TraceSheet;
import witnessmark.sample.SampleBooks;
import witnessmark.sample.SampleTraces;
import witnessmark.wording.Measures;
import witnessmark.wording.Texts;
import witnessmark.wording.Units;

/** The window on the page of a trace, over the sample season with two of its logger's files brought in. */
final class TraceWindow implements AutoCloseable {
    final witnessmark.desktop.shell.Desk window = new witnessmark.desktop.shell.Desk();
    final Tasks tasks = new Tasks((thread, failure) -> {
        throw new IllegalStateException(failure);
    });
    final MemorySettings settings = new MemorySettings();
    final List<String> led = new ArrayList<>();
    final List<TraceSheet> printed = new ArrayList<>();
    final TraceAside page;
    final EnginesPlace place;
    final TraceViewContext.Host host;
    private final ShellPane pane;

    /** A logbook with the race and the test. */
    static Desk book(Path folder) {
        Desk desk = new SampleBooks(folder).untraced();
        SampleTraces.race(desk);
        SampleTraces.test(desk);
        return desk;
    }

    TraceWindow(Desk desk, Look look, Texts texts) {
        this(desk, look, texts, Units.METRIC);
    }

    TraceWindow(Desk desk, Look look, Texts texts, Units units) {
        Measures measures = new Measures(texts, units);
        place = new EnginesPlace(texts, measures, tasks, window, () -> desk, settings, DayOrder.DAY_FIRST, entry -> {});
        page = new TraceAside(new TraceViewContext(
                desk, window, new SheetTools(texts, tasks, settings), measures, () -> led.add("wears"), printed::add));
        host = new TraceViewContext.Host(place::stepAside, () -> {
            led.add("left");
            place.dismiss();
        });
        pane = new ShellPane(
                new ShellContext(texts, tasks, settings, look, window, new AboutFacts("0.1.0", List.of()), () -> {}),
                List.of(place),
                List.of(),
                List.of());
        pane.logbook("Marrowgate, sample season");
        window.go(PlaceId.ENGINES);
        tasks.awaitIdle();
    }

    TraceWindow open(Id<Trace> trace) {
        page.open(trace, host);
        tasks.awaitIdle();
        return this;
    }

    JRootPane root(int width, int height) {
        JRootPane root = Stage.window(pane, pane::menuBar, width, height);
        tasks.awaitIdle();
        Stage.lay(root, width, height);
        tasks.awaitIdle();
        return root;
    }

    String said() {
        return GoldenText.of(pane);
    }

    @Override
    public void close() {
        tasks.close();
    }
}
