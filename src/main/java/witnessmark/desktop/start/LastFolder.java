package witnessmark.desktop.start;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.stream.Stream;
import witnessmark.logbook.port.Settings;

/** Where file dialogs begin: each where it was last, one not yet used where the last of any was, the first at home. */
final class LastFolder {
    private static final String ANY = "any";

    private final Settings settings;
    private final Path home;

    LastFolder(Settings settings, Path home) {
        this.settings = settings;
        this.home = home;
    }

    /** @param what which dialog */
    Path of(String what) {
        return Stream.of(what, ANY)
                .map(each -> settings.get(key(each)))
                .flatMap(Optional::stream)
                .map(Path::of)
                .filter(Files::isDirectory)
                .findFirst()
                .orElse(home);
    }

    /** A file suggested in the home folder is suggested in the last one; one that somebody placed stays there. */
    Path place(String what, Path suggested) {
        Path name = suggested.getFileName();
        return name != null && home.equals(suggested.getParent()) ? of(what).resolve(name) : suggested;
    }

    void chosen(String what, Path chosen) {
        Path within = chosen.toAbsolutePath().getParent();
        if (within != null) {
            settings.put(key(what), within.toString());
            settings.put(key(ANY), within.toString());
        }
    }

    private static String key(String what) {
        return "choose." + what + ".folder";
    }
}
