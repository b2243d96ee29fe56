package witnessmark.desktop.testing;

import java.awt.Component;
import java.awt.event.KeyEvent;

/** Keys going to whatever has the focus, in a window that is showing. Event thread only. */
public final class Keyboard {
    private final Runnable settle;

    /** @param settle run after each key, to let answers come in */
    public Keyboard(Runnable settle) {
        this.settle = settle;
    }

    /** A key going down and up. */
    public Keyboard press(int code) {
        return press(code, 0);
    }

    /** @param modifiers held meanwhile, as in {@link java.awt.event.InputEvent} */
    public Keyboard press(int code, int modifiers) {
        send(KeyEvent.KEY_PRESSED, code, modifiers, KeyEvent.CHAR_UNDEFINED);
        send(KeyEvent.KEY_RELEASED, code, modifiers, KeyEvent.CHAR_UNDEFINED);
        settle.run();
        return this;
    }

    /** Letters and figures, one key each. */
    public Keyboard type(String text) {
        for (char c : text.toCharArray()) {
            send(KeyEvent.KEY_TYPED, KeyEvent.VK_UNDEFINED, 0, c);
        }
        settle.run();
        return this;
    }

    /**
     * What has the focus, once something has.
     *
     * @throws AssertionError if nothing gets it
     */
    public static Component owner() {
        return Focus.awaitAny();
    }

    private static void send(int id, int code, int modifiers, char c) {
        Component owner = owner();
        owner.dispatchEvent(new KeyEvent(owner, id, System.currentTimeMillis(), modifiers, code, c));
    }
}
