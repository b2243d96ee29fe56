package witnessmark.desktop.engines;

import java.util.List;
import witnessmark.desktop.shell.Command;
import witnessmark.desktop.shell.CommandMenu;
import witnessmark.wording.Texts;

/** What the menus offer of engines. */
final class EngineCommands {
    private final Texts texts;
    private final Command today;
    private final List<Command> all;

    /** What they do. */
    record Doing(Runnable asOf, Runnable today, Runnable asTable, Runnable copyChart, Runnable trends) {}

    EngineCommands(Texts texts, Doing doing) {
        this.texts = texts;
        today = new Command(texts, "engines.command.today", CommandMenu.VIEW, 4, null, doing.today());
        all = List.of(
                new Command(texts, "engines.command.asOf", CommandMenu.VIEW, 4, null, doing.asOf()),
                today,
                new Command(texts, "engines.command.asTable", CommandMenu.VIEW, 5, null, doing.asTable()),
                new Command(texts, "engines.command.copyChart", CommandMenu.EDIT, 3, null, doing.copyChart()),
                new Command(texts, "trends.command.show", CommandMenu.VIEW, 2, null, doing.trends()));
        followDay(false);
    }

    List<Command> all() {
        return all;
    }

    /** @param earlier whether an earlier day is looked at, so that there is a way back */
    void followDay(boolean earlier) {
        if (earlier) {
            today.enable();
        } else {
            today.disable(texts.get("engines.command.today.isToday"));
        }
    }
}
