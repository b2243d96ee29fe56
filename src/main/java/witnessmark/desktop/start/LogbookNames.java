package witnessmark.desktop.start;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Locale;

/** Names of logbook files and of the folders written beside them. */
final class LogbookNames {
    /** How the name of a logbook file ends, without the point. */
    static final String ENDING = "witness";

    private LogbookNames() {}

    /** A file name for a team: what a file system takes, with the ending. */
    static String forTeam(String team) {
        String plain = team.strip()
                .replaceAll("[\\p{Cntrl}\\\\/:*?\"<>|]+", " ")
                .strip()
                .replaceAll("\\s+", "-");
        String stem = plain.replaceAll("^\\.+|\\.+$", "");
        return (stem.isEmpty() ? "logbook" : stem) + "." + ENDING;
    }

    /** The path with the ending: without it the file would not be offered when a logbook is opened. */
    static Path ended(Path path) {
        String name = String.valueOf(path.getFileName());
        boolean ended = name.toLowerCase(Locale.ROOT).endsWith("." + ENDING);
        return ended ? path : path.resolveSibling(name + "." + ENDING);
    }

    /** The name without its ending, as shown. */
    static String shown(Path path) {
        String name = String.valueOf(path.getFileName());
        return name.endsWith("." + ENDING) ? name.substring(0, name.length() - ENDING.length() - 1) : name;
    }

    /** A folder name for a season written out on a day. */
    static String seasonFolder(Path logbook, LocalDate day) {
        return shown(logbook) + "-" + day;
    }
}
