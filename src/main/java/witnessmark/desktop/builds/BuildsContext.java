package witnessmark.desktop.builds;

import java.util.function.BiConsumer;
import java.util.function.Consumer;
import witnessmark.desktop.form.SheetTools;
import witnessmark.desktop.task.Tasks;
import witnessmark.logbook.Desk;
import witnessmark.logbook.building.WriteBuildWork;
import witnessmark.wording.Measures;
import witnessmark.wording.Texts;

/**
 * What the page of a build stands on, put together by the launcher.
 *
 * @param book the open logbook
 * @param work reads and writes what is typed
 * @param window what can be asked of the window around it
 * @param tools texts, tasks, and where it is remembered how people like a list
 * @param measures figures as shown, in the team's units
 * @param undo takes the last change back and says so
 * @param asked what the page leads to
 */
public record BuildsContext(
        Desk book,
        WriteBuildWork work,
        witnessmark.desktop.shell.Desk window,
        SheetTools tools,
        Measures measures,
        Runnable undo,
        Asked asked) {
    /**
     * What the page leads to.
     *
     * @param show puts the page up, in the place of an engine
     * @param leave takes it away again
     * @param sheet opens a build sheet, by the text of the build's identity
     * @param sign opens the sheet that signs a build, likewise
     * @param answer opens the sheet that answers a lesson: told the build and the lesson
     * @param incident shows an incident, by the text of its identity
     */
    public record Asked(
            Consumer<BuildAside> show,
            Runnable leave,
            Consumer<String> sheet,
            Consumer<String> sign,
            BiConsumer<String, String> answer,
            Consumer<String> incident) {}

    Texts texts() {
        return tools.texts();
    }

    Tasks tasks() {
        return tools.tasks();
    }
}
