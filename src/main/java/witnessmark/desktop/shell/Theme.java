package witnessmark.desktop.shell;

/** Which of the two themes, or whichever the system has. */
public enum Theme {
    SYSTEM,
    LIGHT,
    DARK;

    /** The theme remembered under the name; the system's for anything else. */
    static Theme named(String name) {
        for (Theme theme : values()) {
            if (theme.name().equals(name)) {
                return theme;
            }
        }
        return SYSTEM;
    }
}
