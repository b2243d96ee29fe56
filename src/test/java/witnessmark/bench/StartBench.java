package witnessmark.bench;

import java.awt.Component;
import java.awt.Container;
import java.awt.Frame;
import java.util.concurrent.atomic.AtomicBoolean;
import javax.swing.JLabel;
import javax.swing.SwingUtilities;
import witnessmark.launch.Main;

/**
 * From the start of the process to a window filled with the lives of the logbook it opens. The first argument is the
 * start in milliseconds since 1970, the rest are the program's; the sample season must have been made before.
 *
 * <p>{@code java -XX:+UseSerialGC -XX:TieredStopAtLevel=1 -cp CLASSPATH witnessmark.bench.StartBench $(date +%s%3N)}
 */
public final class StartBench {
    private StartBench() {}

    public static void main(String[] args) throws Exception {
        long start = Long.parseLong(args[0]);
        Main.main(java.util.Arrays.copyOfRange(args, 1, args.length));
        long shown = 0;
        AtomicBoolean met = new AtomicBoolean();
        while (!met.get()) {
            java.util.concurrent.locks.LockSupport.parkNanos(2_000_000);
            boolean window = shown != 0;
            SwingUtilities.invokeAndWait(() -> met.set(window ? filled() : showing()));
            if (met.get() && !window) {
                shown = System.currentTimeMillis();
                met.set(false);
            }
        }
        System.out.printf(
                "window after %d ms, filled after %d ms%n", shown - start, System.currentTimeMillis() - start);
        Runtime.getRuntime().halt(0);
    }

    private static boolean showing() {
        return Frame.getFrames().length > 0 && Frame.getFrames()[0].isShowing();
    }

    private static boolean filled() {
        return says(Frame.getFrames()[0], " run, l");
    }

    private static boolean says(Container in, String words) {
        for (Component child : in.getComponents()) {
            boolean here = child instanceof JLabel label
                    && String.valueOf(label.getText()).contains(words);
            if (here || (child instanceof Container deeper && says(deeper, words))) {
                return true;
            }
        }
        return false;
    }
}
