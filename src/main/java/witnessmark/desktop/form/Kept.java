package witnessmark.desktop.form;

import javax.swing.JComponent;
import javax.swing.SwingUtilities;
import javax.swing.UIManager;

/**
 * For components kept while they are in no window: a change of theme or size reaches only what is in one, so on their
 * return they are brought up to the look of then.
 */
public final class Kept {
    private static final String LOOK = "wm-look";

    private Kept() {}

    /** Says that the component leaves the window and will be shown again. */
    public static void leaves(JComponent component) {
        component.putClientProperty(LOOK, UIManager.getLookAndFeel());
    }

    /** Says that the component is back, or in a window for the first time. */
    public static void returns(JComponent component) {
        Object was = component.getClientProperty(LOOK);
        if (was != null) {
            returns(component, was);
        }
        leaves(component); // what follows is told to it while it is in a window
    }

    /** The same, for a component made under that look and not told that it would be kept. */
    public static void returns(JComponent component, Object madeUnder) {
        if (madeUnder != UIManager.getLookAndFeel()) {
            SwingUtilities.updateComponentTreeUI(component);
        }
    }
}
