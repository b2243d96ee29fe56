package witnessmark.desktop.traceview;

import java.util.function.Consumer;
import witnessmark.desktop.form.SheetTools;
import witnessmark.desktop.shell.Aside;
import witnessmark.desktop.task.Tasks;
import witnessmark.logbook.Desk;
import witnessmark.report.TraceSheet;
import witnessmark.wording.Measures;
import witnessmark.wording.Problems;
import witnessmark.wording.Texts;

/**
 * What the page of a trace stands on, put together by the launcher.
 *
 * @param book the open logbook
 * @param window what can be asked of the window around it
 * @param tools texts, tasks, and where it is remembered what is shown
 * @param measures figures as shown, in the team's units
 * @param wears opens the sheet that says how speed wears a kind of part
 * @param print asks where to write its pages, and writes them
 */
public record TraceViewContext(
        Desk book,
        witnessmark.desktop.shell.Desk window,
        SheetTools tools,
        Measures measures,
        Runnable wears,
        Consumer<TraceSheet> print) {
    /**
     * A place in which the page can stand.
     *
     * @param show puts it up there
     * @param dismiss brings the place's own page back
     */
    public record Host(Consumer<Aside> show, Runnable dismiss) {}

    Texts texts() {
        return tools.texts();
    }

    Tasks tasks() {
        return tools.tasks();
    }

    Problems problems() {
        return new Problems(texts(), measures);
    }
}
