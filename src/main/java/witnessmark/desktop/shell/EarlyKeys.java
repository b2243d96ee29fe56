package witnessmark.desktop.shell;

import java.awt.Component;
import java.awt.KeyEventDispatcher;
import java.awt.KeyboardFocusManager;
import java.awt.Window;
import java.awt.event.KeyEvent;
import java.beans.PropertyChangeListener;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;
import javax.swing.MenuSelectionManager;
import javax.swing.SwingUtilities;
import witnessmark.desktop.task.EventThread;
import witnessmark.desktop.task.Running;
import witnessmark.desktop.task.Tasks;

/**
 * Keys pressed while the window is up and not filled yet: kept, and given to what has the focus once it is, one after the
 * other, each when what the one before began is done. Esc forgets them. Never given to another window than this: where a
 * question came up meanwhile, they are dropped, and that is said.
 */
final class EarlyKeys implements KeyEventDispatcher {
    /** What becomes of the keys, for whoever sits there. */
    enum Said {
        /** The first is kept. */
        KEPT,
        /** None is kept any more: all were given on, or Esc forgot them. */
        GIVEN,
        /** They went to nothing, since a question stands before the window. */
        DROPPED
    }

    private static final String OWNER = "permanentFocusOwner";

    private final Window window;
    private final Tasks tasks;
    private final Consumer<Said> tell;
    private final Deque<KeyEvent> kept = new ArrayDeque<>();
    private final PropertyChangeListener focus = event -> later();
    private List<Running> before = List.of();
    /** The focus manager may hold one of them back until the focus has arrived. */
    private final Set<KeyEvent> given = new HashSet<>();

    private boolean giving;
    private boolean opened;
    private boolean over;

    /** @param tell told on the event thread what becomes of keys, if there are any */
    EarlyKeys(Window window, Tasks tasks, Consumer<Said> tell) {
        this.window = window;
        this.tasks = tasks;
        this.tell = tell;
    }

    /** Keeps keys from now on, until the window {@link #opened} and what is under way then is done. */
    void begin() {
        KeyboardFocusManager manager = KeyboardFocusManager.getCurrentKeyboardFocusManager();
        manager.addKeyEventDispatcher(this);
        manager.addPropertyChangeListener(OWNER, focus);
        tasks.onChange(this::goOn);
    }

    /** The window is on the screen, and what fills it is being worked out. */
    void opened() {
        opened = true;
        before = tasks.awaited();
        later();
    }

    /** The window is gone, or the keys are given on: keys go where they always go. */
    void end() {
        over = true;
        kept.clear();
        KeyboardFocusManager manager = KeyboardFocusManager.getCurrentKeyboardFocusManager();
        manager.removeKeyEventDispatcher(this);
        manager.removePropertyChangeListener(OWNER, focus);
    }

    @Override
    public boolean dispatchKeyEvent(KeyEvent event) {
        if (given.contains(event) || !isHere(event) || isMenuOpen()) {
            return false;
        }
        if (event.getKeyCode() == KeyEvent.VK_ESCAPE && event.getID() == KeyEvent.KEY_PRESSED && !kept.isEmpty()) {
            kept.clear();
            tell.accept(Said.GIVEN);
            return true;
        }
        if (kept.isEmpty() && event.getID() == KeyEvent.KEY_RELEASED) {
            return false; // pressed elsewhere
        }
        if (kept.isEmpty()) {
            tell.accept(Said.KEPT);
        }
        kept.add(event);
        return true;
    }

    private boolean isHere(KeyEvent event) {
        Component at = event.getComponent();
        return at == window || at != null && SwingUtilities.getWindowAncestor(at) == window;
    }

    private static boolean isMenuOpen() {
        return MenuSelectionManager.defaultManager().getSelectedPath().length > 0;
    }

    private void later() {
        EventThread.later(this::goOn);
    }

    /** Gives the next key on, once the window is filled and what the last one began is done. */
    private void goOn() {
        if (over || !opened || giving || isBusy()) {
            return;
        }
        KeyboardFocusManager manager = KeyboardFocusManager.getCurrentKeyboardFocusManager();
        Component owner = manager.getFocusOwner();
        if (kept.isEmpty()) {
            boolean gave = !given.isEmpty();
            if (owner != null) {
                end();
                if (gave) {
                    tell.accept(Said.GIVEN);
                }
            }
        } else if (manager.getActiveWindow() != null && manager.getActiveWindow() != window) {
            end();
            tell.accept(Said.DROPPED);
        } else if (owner != null && SwingUtilities.getWindowAncestor(owner) == window) {
            give(kept.remove(), owner);
        }
    }

    private void give(KeyEvent early, Component owner) {
        List<Running> known = tasks.awaited();
        KeyEvent again = new KeyEvent(
                owner,
                early.getID(),
                System.currentTimeMillis(), // now, so that it waits for the focus that the one before asked for
                early.getModifiersEx(),
                early.getKeyCode(),
                early.getKeyChar(),
                early.getKeyLocation());
        given.add(again);
        giving = true;
        KeyboardFocusManager.getCurrentKeyboardFocusManager().dispatchEvent(again); // as the system does it
        EventThread.later(() -> {
            List<Running> began = new ArrayList<>(tasks.awaited());
            began.removeAll(known);
            before = began;
            giving = false;
            later();
        });
    }

    private boolean isBusy() {
        List<Running> now = tasks.awaited();
        return before.stream().anyMatch(now::contains);
    }
}
