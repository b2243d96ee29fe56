package witnessmark.abuse;

import java.awt.Component;
import java.awt.Container;
import java.awt.Frame;
import java.time.LocalTime;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Predicate;
import javax.swing.AbstractButton;
import javax.swing.JTextField;
import javax.swing.SwingUtilities;
import witnessmark.launch.Main;

/**
 * The shipped program, started as people start it, with somebody at its run sheet who saves one run after another by
 * the sheet's own button. Each time the window has acknowledged one, its running time in seconds goes to standard
 * output. It goes on until the process is killed.
 */
final class SavingProgram {
    private static final int LONGEST_WAIT_MILLIS = 40_000;

    private SavingProgram() {}

    public static void main(String[] args) {
        try {
            save();
        } catch (Exception e) {
            e.printStackTrace();
            Runtime.getRuntime().halt(1);
        }
    }

    private static void save() throws Exception {
        Main.main(new String[0]);
        await(() -> button("Log a run").isPresent());
        onEventThread(() -> button("Log a run").orElseThrow().doClick(0));
        await(() -> field("Running time, min").isPresent() && button("Save run").isPresent());
        for (int i = 0; i < 120; i++) {
            int seconds = 301 + i;
            String out = LocalTime.MIN.plusMinutes(10L * i + 1).toString();
            onEventThread(() -> {
                field("Out at").orElseThrow().setText(out);
                field("Running time, min").orElseThrow().setText(seconds + " s");
                button("Save run").orElseThrow().doClick(0);
            });
            await(() -> field("Running time, min")
                    .map(JTextField::getText)
                    .orElse("?")
                    .isEmpty());
            System.out.println("saved " + seconds);
        }
    }

    private static Optional<AbstractButton> button(String name) {
        return find(
                AbstractButton.class,
                b -> b.isShowing() && String.valueOf(b.getText()).startsWith(name));
    }

    private static Optional<JTextField> field(String name) {
        return find(
                JTextField.class,
                f -> f.isShowing() && name.equals(f.getAccessibleContext().getAccessibleName()));
    }

    private static <T extends Component> Optional<T> find(Class<T> type, Predicate<T> asked) {
        for (Frame frame : Frame.getFrames()) {
            Optional<T> found = find(frame, type, asked);
            if (found.isPresent()) {
                return found;
            }
        }
        return Optional.empty();
    }

    private static <T extends Component> Optional<T> find(Container in, Class<T> type, Predicate<T> asked) {
        for (Component child : in.getComponents()) {
            if (type.isInstance(child) && asked.test(type.cast(child))) {
                return Optional.of(type.cast(child));
            }
            if (child instanceof Container container) {
                Optional<T> deeper = find(container, type, asked);
                if (deeper.isPresent()) {
                    return deeper;
                }
            }
        }
        return Optional.empty();
    }

    private static void await(java.util.function.BooleanSupplier wanted) throws Exception {
        long until = System.nanoTime() + LONGEST_WAIT_MILLIS * 1_000_000L;
        AtomicReference<Boolean> met = new AtomicReference<>(false);
        while (System.nanoTime() < until) {
            onEventThread(() -> met.set(wanted.getAsBoolean()));
            if (met.get()) {
                return;
            }
            java.util.concurrent.locks.LockSupport.parkNanos(2_000_000);
        }
        throw new IllegalStateException("the window did not come to what was awaited");
    }

    private static void onEventThread(Runnable work) throws Exception {
        SwingUtilities.invokeAndWait(work);
    }
}
