package witnessmark.desktop.shell;

/** Where the person stands. */
public enum PlaceGroup {
    TRACK("shell.group.track"),
    WORKSHOP("shell.group.workshop"),
    OFFICE("shell.group.office");

    private final String key;

    PlaceGroup(String key) {
        this.key = key;
    }

    /** The key of its heading in the rail. */
    public String key() {
        return key;
    }
}
