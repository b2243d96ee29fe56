package witnessmark.desktop.testing;

import java.awt.Component;
import java.awt.Container;
import java.awt.Window;
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

    public static void onEventThread(Runnable work) throws Exception {
        SwingUtilities.invokeAndWait(work);
    }
}
