package witnessmark.desktop.shell;

import java.util.List;

/**
 * What the About page tells beyond the texts of the bundle.
 *
 * @param version of the program
 * @param paths where things are kept, in order
 */
public record AboutFacts(String version, List<Kept> paths) {
    /**
     * A place on the disk.
     *
     * @param what "Logbook", "Log", already worded
     * @param path the absolute path
     */
    public record Kept(String what, String path) {}

    public AboutFacts {
        paths = List.copyOf(paths);
    }
}
