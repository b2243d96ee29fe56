package witnessmark.desktop.runsheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.KeyboardFocusManager;
import java.awt.SecondaryLoop;
import java.awt.Toolkit;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.beans.PropertyChangeListener;
import javax.swing.JFrame;
import javax.swing.Timer;
import witnessmark.desktop.shell.PlaceId;
import witnessmark.desktop.shell.Visit;

/** The run sheet's stage in a real window, used with nothing but keys. Event thread only. */
final class Typist implements AutoCloseable {
    static final int MENU = InputEvent.CTRL_DOWN_MASK;

    private final RunSheetStage stage;
    private final JFrame frame = new JFrame();
    private int presses;

    /** Shows the window, with another place in front. */
    Typist(RunSheetStage stage) {
        this.stage = stage;
        frame.setContentPane(stage.pane);
        frame.setJMenuBar(stage.pane.menuBar());
        frame.setSize(1366, 768);
        frame.setVisible(true);
        stage.pane.go(Visit.to(PlaceId.BEFORE_WE_GO));
        settle();
        awaitFocus();
    }

    /** Keys pressed so far, modifiers counted as keys too. */
    int presses() {
        return presses;
    }

    /** The desktop gives a new window the focus in its own time. */
    private static void awaitFocus() {
        KeyboardFocusManager focus = KeyboardFocusManager.getCurrentKeyboardFocusManager();
        SecondaryLoop loop = Toolkit.getDefaultToolkit().getSystemEventQueue().createSecondaryLoop();
        PropertyChangeListener arrived = change -> {
            if (change.getNewValue() != null) {
                loop.exit();
            }
        };
        Timer enough = new Timer(20_000, e -> loop.exit());
        focus.addPropertyChangeListener("focusOwner", arrived);
        enough.start();
        if (focus.getFocusOwner() == null) {
            loop.enter();
        }
        enough.stop();
        focus.removePropertyChangeListener("focusOwner", arrived);
    }

    /** What has the focus. */
    static Component owner() {
        return KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
    }

    /** A key going down and up where the focus is, its modifiers counted as keys too. */
    void press(int code, int modifiers) {
        presses += 1 + Integer.bitCount(modifiers);
        send(KeyEvent.KEY_PRESSED, code, modifiers, KeyEvent.CHAR_UNDEFINED);
        send(KeyEvent.KEY_RELEASED, code, modifiers, KeyEvent.CHAR_UNDEFINED);
        settle();
    }

    /** Letters and figures going in where the focus is, one key each. */
    void type(String text) {
        for (char c : text.toCharArray()) {
            presses++;
            send(KeyEvent.KEY_TYPED, KeyEvent.VK_UNDEFINED, 0, c);
        }
        settle();
    }

    private static void send(int id, int code, int modifiers, char c) {
        Component owner = owner();
        assertThat(owner).as("where the focus is").isNotNull();
        owner.dispatchEvent(new KeyEvent(owner, id, System.currentTimeMillis(), modifiers, code, c));
    }

    /** Lets focus, work and answers settle. */
    void settle() {
        stage.tasks.awaitIdle();
    }

    @Override
    public void close() {
        frame.dispose();
        settle();
        stage.close();
    }
}
