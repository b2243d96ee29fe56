package witnessmark.desktop.testing;

import java.awt.Component;
import java.awt.Container;
import java.awt.Window;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import java.util.concurrent.locks.LockSupport;
import java.util.function.BooleanSupplier;
import java.util.function.Predicate;
import javax.swing.AbstractButton;
import javax.swing.JTextField;
import javax.swing.SwingUtilities;

/** Finds and uses what shows in the windows of the program running in this process. */
public final class Hand {
    private static final int LONGEST_WAIT_MILLIS = 40_000;
    private static final int STILL_LOOKS = 4;
    private static final int LOOK_NANOS = 25_000_000;

    private Hand() {}

    /** The button showing whose text begins so. */
    public static Optional<AbstractButton> button(String name) {
        return find(
                AbstractButton.class,
                b -> b.isShowing() && String.valueOf(b.getText()).startsWith(name));
    }

    /** The field showing of that accessible name. */
    public static Optional<JTextField> field(String name) {
        return find(
                JTextField.class,
                f -> f.isShowing() && name.equals(f.getAccessibleContext().getAccessibleName()));
    }

    private static <T extends Component> Optional<T> find(Class<T> type, Predicate<T> asked) {
        for (Window window : Window.getWindows()) {
            Optional<T> found = find(window, type, asked);
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

    /**
     * Waits until it is so, asking on the event thread.
     *
     * @throws IllegalStateException if it does not come to that
     */
    public static void await(BooleanSupplier wanted) throws Exception {
        long until = System.nanoTime() + LONGEST_WAIT_MILLIS * 1_000_000L;
        AtomicReference<Boolean> met = new AtomicReference<>(false);
        while (System.nanoTime() < until) {
            onEventThread(() -> met.set(wanted.getAsBoolean()));
            if (met.get()) {
                return;
            }
            LockSupport.parkNanos(2_000_000);
        }
        throw new IllegalStateException("the window did not come to what was awaited");
    }

    /**
     * Waits until what was begun has arrived: no thread of the program works on anything, and nothing in any window came,
     * went or moved for a moment.
     */
    public static void settle() throws Exception {
        long until = System.nanoTime() + LONGEST_WAIT_MILLIS * 1_000_000L;
        List<Object> before = List.of();
        int still = 0;
        while (still < STILL_LOOKS && System.nanoTime() < until) {
            LockSupport.parkNanos(LOOK_NANOS);
            List<Object> now = new ArrayList<>();
            onEventThread(() -> {
                for (Window window : Window.getWindows()) {
                    collect(window, now);
                }
            });
            still = now.equals(before) && !isAtWork() ? still + 1 : 0;
            before = now;
        }
    }

    private static void collect(Component component, List<Object> all) {
        if (component.isShowing()) {
            all.add(System.identityHashCode(component));
            all.add(component.getBounds());
            if (component instanceof Container container) {
                for (Component child : container.getComponents()) {
                    collect(child, all);
                }
            }
        }
    }

    /** Whether a thread of the program does anything but wait for work. */
    private static boolean isAtWork() {
        return Thread.getAllStackTraces().entrySet().stream()
                .filter(thread -> thread.getKey().getName().startsWith("witness-mark-"))
                .anyMatch(thread -> Arrays.stream(thread.getValue())
                        .noneMatch(frame -> frame.getMethodName().equals("getTask")));
    }

    public static void onEventThread(Runnable work) throws Exception {
        SwingUtilities.invokeAndWait(work);
    }
}
