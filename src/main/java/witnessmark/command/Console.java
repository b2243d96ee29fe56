package witnessmark.command;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;

/** Standard output and standard error, in UTF-8. */
public final class Console {
    private Console() {}

    public static PrintWriter out() {
        return new PrintWriter(System.out, true, StandardCharsets.UTF_8);
    }

    public static PrintWriter err() {
        return new PrintWriter(System.err, true, StandardCharsets.UTF_8);
    }
}
