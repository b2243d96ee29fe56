package witnessmark.desktop.trials;

import java.util.function.BiConsumer;
import java.util.function.Consumer;
import java.util.function.Supplier;
import witnessmark.desktop.form.SheetTools;
import witnessmark.desktop.shell.Aside;
import witnessmark.desktop.task.Tasks;
import witnessmark.logbook.View;
import witnessmark.logbook.sheets.Prefilled;
import witnessmark.wording.Measures;
import witnessmark.wording.Texts;

/**
 * What the page of a trial stands on, put together by the launcher.
 *
 * @param view the logbook as of the day looked at; asked off the event thread
 * @param window what can be asked of the window around it
 * @param asked what it leads to
 */
public record TrialsContext(
        Supplier<View> view, witnessmark.desktop.shell.Desk window, SheetTools tools, Measures measures, Asked asked) {
    /**
     * What the page leads to. Records are named by the text form of their identity.
     *
     * @param show puts it up in its place
     * @param dismiss brings the place's own page back
     * @param write opens a sheet; told what is shown after it
     * @param correct opens a record on its sheet; told what is shown after it
     * @param incident opens an incident
     * @param part opens the page of a part
     */
    public record Asked(
            Consumer<Aside> show,
            Runnable dismiss,
            BiConsumer<Prefilled, Runnable> write,
            BiConsumer<String, Runnable> correct,
            Consumer<String> incident,
            Consumer<String> part) {}

    Texts texts() {
        return tools.texts();
    }

    Tasks tasks() {
        return tools.tasks();
    }
}
