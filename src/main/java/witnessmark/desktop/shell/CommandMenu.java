package witnessmark.desktop.shell;

/** The menus, in order. */
public enum CommandMenu {
    LOGBOOK("shell.menu.logbook"),
    EDIT("shell.menu.edit"),
    GO("shell.menu.go"),
    RECORD("shell.menu.record"),
    VIEW("shell.menu.view"),
    HELP("shell.menu.help");

    private final String key;

    CommandMenu(String key) {
        this.key = key;
    }

    public String key() {
        return key;
    }
}
