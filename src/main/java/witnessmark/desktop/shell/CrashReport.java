package witnessmark.desktop.shell;

import java.io.PrintWriter;
import java.io.StringWriter;

/** What a person may send on after something broke: versions, system, where it broke. Nothing of the logbook. */
final class CrashReport {
    private CrashReport() {}

    static String text(String where, Throwable failure) {
        StringWriter out = new StringWriter();
        PrintWriter print = new PrintWriter(out);
        String version = CrashReport.class.getPackage().getImplementationVersion();
        print.println("Witness Mark " + (version == null ? "(built here)" : version));
        for (String property : new String[] {"java.version", "java.vendor", "os.name", "os.version", "os.arch"}) {
            print.println(property + ": " + System.getProperty(property));
        }
        print.println("thread: " + where);
        failure.printStackTrace(print);
        print.flush();
        return out.toString();
    }
}
