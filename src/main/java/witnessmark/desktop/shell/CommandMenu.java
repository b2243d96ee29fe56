package witnessmark.desktop.shell;

import org.jspecify.annotations.Nullable;

/** The menus, in order, and those within a menu: its commands by what they are about. */
public enum CommandMenu {
    LOGBOOK("shell.menu.logbook"),
    EDIT("shell.menu.edit"),
    GO("shell.menu.go"),
    RECORD("shell.menu.record"),
    RECORD_INCIDENTS("shell.menu.record.incidents", RECORD),
    RECORD_PARTS("shell.menu.record.parts", RECORD),
    RECORD_STOCK("shell.menu.record.stock", RECORD),
    RECORD_OUT("shell.menu.record.out", RECORD),
    RECORD_ENGINES("shell.menu.record.engines", RECORD),
    RECORD_EVENTS("shell.menu.record.events", RECORD),
    RECORD_WORK("shell.menu.record.work", RECORD),
    RECORD_LIMITS("shell.menu.record.limits", RECORD),
    RECORD_NOTICES("shell.menu.record.notices", RECORD),
    RECORD_TOOLS("shell.menu.record.tools", RECORD),
    RECORD_MONEY("shell.menu.record.money", RECORD),
    VIEW("shell.menu.view"),
    HELP("shell.menu.help");

    private final String key;
    private final @Nullable CommandMenu within;

    CommandMenu(String key) {
        this(key, null);
    }

    CommandMenu(String key, @Nullable CommandMenu within) {
        this.key = key;
        this.within = within;
    }

    public String key() {
        return key;
    }

    /** The menu it is a part of, or null for one in the menu bar. */
    public @Nullable CommandMenu within() {
        return within;
    }
}
