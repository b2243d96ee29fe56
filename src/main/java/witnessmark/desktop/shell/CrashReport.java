package witnessmark.desktop.shell;

import java.awt.GraphicsConfiguration;
import java.awt.GraphicsDevice;
import java.awt.GraphicsEnvironment;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.ArrayList;
import java.util.List;

/** What a person may pass on after something broke: versions, system, screens, where it broke. No entry of the logbook. */
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
        screens().forEach(print::println);
        print.println("thread: " + where);
        failure.printStackTrace(print);
        print.flush();
        return out.toString();
    }

    /** Each screen with its size and how much it is enlarged; none where there is no display. */
    private static List<String> screens() {
        List<String> all = new ArrayList<>();
        if (!GraphicsEnvironment.isHeadless()) {
            for (GraphicsDevice device :
                    GraphicsEnvironment.getLocalGraphicsEnvironment().getScreenDevices()) {
                GraphicsConfiguration now = device.getDefaultConfiguration();
                all.add("screen: " + now.getBounds().width + " x " + now.getBounds().height + " at "
                        + now.getDefaultTransform().getScaleX());
            }
        }
        return all;
    }
}
