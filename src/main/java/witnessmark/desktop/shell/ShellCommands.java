package witnessmark.desktop.shell;

import com.formdev.flatlaf.util.SystemInfo;
import java.awt.event.KeyEvent;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import javax.swing.KeyStroke;
import org.jspecify.annotations.Nullable;
import witnessmark.desktop.form.Keys;
import witnessmark.desktop.form.SheetTable;
import witnessmark.wording.Texts;

/** The commands of the window itself: going, looking, finding, help, leaving. */
final class ShellCommands {
    private final Texts texts;
    private final List<Command> all = new ArrayList<>();
    private final Command back;
    private final Command forward;
    private final Command help;
    private final Command comfortable;
    private final Command close;
    private final Map<Theme, Command> themes = new EnumMap<>(Theme.class);
    private final Look look;

    ShellCommands(ShellContext context, ShellPane pane, List<PlaceId> places) {
        this.texts = context.texts();
        this.look = context.look();
        back = add("shell.command.back", CommandMenu.GO, 1, Keys.alt(KeyEvent.VK_LEFT), pane::back);
        forward = add("shell.command.forward", CommandMenu.GO, 1, Keys.alt(KeyEvent.VK_RIGHT), pane::forward);
        for (PlaceId place : places) {
            KeyStroke key = Keys.menu(KeyEvent.VK_0 + place.digit());
            add(place.key(), CommandMenu.GO, 2, key, () -> pane.go(Visit.to(place)));
        }
        add("shell.command.find", CommandMenu.GO, 3, Keys.menu(KeyEvent.VK_K), pane::find);
        addEditing();
        addLook(pane);
        comfortable = addRows("comfortable", true);
        close = addRows("close", false);
        addLists(pane);
        help = add("shell.command.help", CommandMenu.HELP, 1, Keys.plain(KeyEvent.VK_F1), pane::toggleHelp);
        help.asChoice(false);
        if (!SystemInfo.isMacOS) {
            addWhatMacsHave(context, pane);
        }
        look.onChange(this::showTheme);
        showTheme();
        follow(new Visits());
    }

    /** A Mac has these in the menu of the program itself. */
    private void addWhatMacsHave(ShellContext context, ShellPane pane) {
        add("shell.command.about", CommandMenu.HELP, 2, null, pane::showAbout);
        add("shell.command.quit", CommandMenu.LOGBOOK, 9, Keys.menu(KeyEvent.VK_Q), context.quit());
    }

    List<Command> all() {
        return all;
    }

    /** Back and Forward follow what was visited. */
    void follow(Visits visits) {
        allow(back, visits.canGoBack(), "shell.command.back.nowhere");
        allow(forward, visits.canGoForward(), "shell.command.forward.nowhere");
    }

    void helpShown(boolean shown) {
        help.inForce(shown);
    }

    private void addEditing() {
        add("shell.command.cut", CommandMenu.EDIT, 2, Keys.menu(KeyEvent.VK_X), () -> FocusedAction.perform("cut"));
        add("shell.command.copy", CommandMenu.EDIT, 2, Keys.menu(KeyEvent.VK_C), () -> FocusedAction.perform("copy"));
        add(
                "shell.command.copyHeaded",
                CommandMenu.EDIT,
                2,
                Keys.menuShift(KeyEvent.VK_C),
                () -> FocusedAction.perform("wm-copy-headed"));
        add("shell.command.paste", CommandMenu.EDIT, 2, Keys.menu(KeyEvent.VK_V), () -> FocusedAction.perform("paste"));
    }

    private void addLook(ShellPane pane) {
        for (Theme theme : Theme.values()) {
            String key = "shell.command.theme." + theme.name().toLowerCase(java.util.Locale.ROOT);
            Command command = add(key, CommandMenu.VIEW, 1, null, () -> look.use(theme));
            themes.put(theme, command.asChoice(false));
        }
        add("shell.command.larger", CommandMenu.VIEW, 2, Keys.menu(KeyEvent.VK_PLUS), look::larger);
        add("shell.command.smaller", CommandMenu.VIEW, 2, Keys.menu(KeyEvent.VK_MINUS), look::smaller);
        add("shell.command.normal", CommandMenu.VIEW, 2, Keys.menu(KeyEvent.VK_0), () -> look.zoom(1.0f));
        add("shell.command.nextPane", CommandMenu.VIEW, 3, Keys.plain(KeyEvent.VK_F6), () -> pane.nextPane(1));
        add("shell.command.previousPane", CommandMenu.VIEW, 3, Keys.shift(KeyEvent.VK_F6), () -> pane.nextPane(-1));
    }

    private Command addRows(String which, boolean comfortably) {
        Runnable use = () -> look.comfortableRows(comfortably);
        return add("shell.command.rows." + which, CommandMenu.VIEW, 2, null, use)
                .asChoice(false);
    }

    private void addLists(ShellPane pane) {
        add(
                "shell.command.filter",
                CommandMenu.EDIT,
                4,
                Keys.menu(KeyEvent.VK_F),
                () -> pane.inList(SheetTable.FILTER));
        add(
                "shell.command.sort",
                CommandMenu.VIEW,
                6,
                Keys.menuShift(KeyEvent.VK_S),
                () -> pane.inList(SheetTable.SORT));
        add(
                "shell.command.columns",
                CommandMenu.VIEW,
                6,
                Keys.menuShift(KeyEvent.VK_H),
                () -> pane.inList(SheetTable.COLUMNS));
    }

    private void showTheme() {
        comfortable.inForce(look.comfortableRows());
        close.inForce(!look.comfortableRows());
        themes.forEach((theme, command) -> command.inForce(theme == look.theme()));
    }

    private void allow(Command command, boolean possible, String reason) {
        if (possible) {
            command.enable();
        } else {
            command.disable(texts.get(reason));
        }
    }

    private Command add(String key, CommandMenu menu, int section, @Nullable KeyStroke stroke, Runnable work) {
        Command command = new Command(texts, key, menu, section, stroke, work);
        all.add(command);
        return command;
    }
}
