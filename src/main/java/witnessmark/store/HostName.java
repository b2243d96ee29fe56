package witnessmark.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** The computer's name where no variable of the environment says it. */
final class HostName {
    private HostName() {}

    static String written() {
        try {
            return Files.readString(Path.of("/etc/hostname")).strip();
        } catch (IOException e) {
            return "another computer"; // read by others, who only need to know that it is not theirs
        }
    }
}
