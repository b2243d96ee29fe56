package witnessmark.desktop.form;

import java.awt.GraphicsEnvironment;
import java.awt.Toolkit;
import java.awt.event.InputEvent;
import javax.swing.KeyStroke;

/** Keys with the platform's own menu key: Ctrl, or Cmd on a Mac. */
public final class Keys {
    private Keys() {}

    public static KeyStroke menu(int keyCode) {
        return KeyStroke.getKeyStroke(keyCode, mask());
    }

    public static KeyStroke menuShift(int keyCode) {
        return KeyStroke.getKeyStroke(keyCode, mask() | InputEvent.SHIFT_DOWN_MASK);
    }

    public static KeyStroke alt(int keyCode) {
        return KeyStroke.getKeyStroke(keyCode, InputEvent.ALT_DOWN_MASK);
    }

    public static KeyStroke plain(int keyCode) {
        return KeyStroke.getKeyStroke(keyCode, 0);
    }

    public static KeyStroke shift(int keyCode) {
        return KeyStroke.getKeyStroke(keyCode, InputEvent.SHIFT_DOWN_MASK);
    }

    /** The key as people know it: "Ctrl+Enter". */
    public static String words(KeyStroke key) {
        String modifiers = InputEvent.getModifiersExText(key.getModifiers());
        String name = java.awt.event.KeyEvent.getKeyText(key.getKeyCode());
        return modifiers.isEmpty() ? name : modifiers + "+" + name;
    }

    private static int mask() {
        return GraphicsEnvironment.isHeadless()
                ? InputEvent.CTRL_DOWN_MASK
                : Toolkit.getDefaultToolkit().getMenuShortcutKeyMaskEx();
    }
}
