package witnessmark.store;

import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.Assumptions;

/** Commands that start a program within bounds the system sets. A test is skipped where the system has none of it. */
public final class Bounds {
    private Bounds() {}

    /**
     * Nothing for an ordinary user. The superuser's program is started without the right to pass over what a file's
     * permissions say, so that a read-only place is one.
     */
    public static String[] permissions() throws IOException, InterruptedException {
        return System.getProperty("user.name").equals("root")
                ? usable("setpriv", "--bounding-set=-all", "--inh-caps=-all")
                : new String[0];
    }

    /** A view of the disks of its own, in which the program may mount some; they are gone when it ends. */
    public static String[] ownDisks() throws IOException, InterruptedException {
        return System.getProperty("user.name").equals("root") ? usable("unshare", "-m") : usable("unshare", "-rm");
    }

    private static String[] usable(String... command) throws IOException, InterruptedException {
        boolean usable;
        try {
            List<String> tried = new java.util.ArrayList<>(List.of(command));
            tried.add("true");
            usable = new ProcessBuilder(tried)
                            .redirectErrorStream(true)
                            .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                            .start()
                            .waitFor()
                    == 0;
        } catch (IOException e) {
            usable = false; // no such command here
        }
        Assumptions.assumeTrue(usable, String.join(" ", command));
        return command;
    }
}
