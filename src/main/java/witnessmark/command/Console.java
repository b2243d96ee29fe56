package witnessmark.command;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Where the program was started and where its answers go: standard output and standard error, in UTF-8. */
public final class Console {
    private static final String NAME = "witness-mark";
    private static final Pattern JAR = Pattern.compile("(.*?\\.jar)(?: .*)?");

    private Console() {}

    /**
     * How the program was started, so that a further command can be said as it is to be typed.
     *
     * @param javaCommand what Java was told to run: a file that ends in {@code .jar}, or a class, and its arguments
     */
    public static String called(String javaCommand) {
        Matcher jar = JAR.matcher(javaCommand);
        if (!jar.matches()) {
            return NAME;
        }
        String file = jar.group(1);
        return "java -jar " + (file.contains(" ") ? '"' + file + '"' : file);
    }

    public static PrintWriter out() {
        return new PrintWriter(System.out, true, StandardCharsets.UTF_8);
    }

    public static PrintWriter err() {
        return new PrintWriter(System.err, true, StandardCharsets.UTF_8);
    }
}
