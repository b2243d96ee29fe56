package witnessmark.desktop.runsheet;

import java.awt.Component;
import java.awt.event.InputEvent;
import javax.swing.JFrame;
import witnessmark.desktop.shell.PlaceId;
import witnessmark.desktop.shell.Visit;
import witnessmark.desktop.testing.Keyboard;

/** The run sheet's stage in a real window, used with nothing but keys. Event thread only. */
final class Typist implements AutoCloseable {
    static final int MENU = InputEvent.CTRL_DOWN_MASK;

    private final RunSheetStage stage;
    private final JFrame frame = new JFrame();
    private final Keyboard keys;
    private int presses;

    /** Shows the window, with another place in front. */
    Typist(RunSheetStage stage) {
        this.stage = stage;
        keys = new Keyboard(this::settle);
        frame.setContentPane(stage.pane);
        frame.setJMenuBar(stage.pane.menuBar());
        frame.setSize(1366, 768);
        frame.setVisible(true);
        stage.pane.go(Visit.to(PlaceId.BEFORE_WE_GO));
        settle();
        Keyboard.owner();
    }

    /** Keys pressed so far, modifiers counted as keys too. */
    int presses() {
        return presses;
    }

    /** What has the focus. */
    static Component owner() {
        return Keyboard.owner();
    }

    /** A key going down and up where the focus is, its modifiers counted as keys too. */
    void press(int code, int modifiers) {
        presses += 1 + Integer.bitCount(modifiers);
        keys.press(code, modifiers);
    }

    /** Letters and figures going in where the focus is, one key each. */
    void type(String text) {
        presses += text.length();
        keys.type(text);
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
