package witnessmark.desktop.form;

import java.awt.event.ActionEvent;
import java.awt.event.KeyEvent;
import java.util.function.BooleanSupplier;
import javax.swing.AbstractAction;
import javax.swing.Action;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.KeyStroke;
import org.jspecify.annotations.Nullable;

/** What keys do in a component. The name tells one binding of a component from another. */
public final class FormKeys {
    private FormKeys() {}

    /** A key that works while the component has the focus. */
    public static void bind(JComponent component, KeyStroke key, String name, Runnable work) {
        bind(component, JComponent.WHEN_FOCUSED, key, name, work);
    }

    /** A key that works while the component or anything inside it has the focus. */
    public static void bindWithin(JComponent component, KeyStroke key, String name, Runnable work) {
        bind(component, JComponent.WHEN_ANCESTOR_OF_FOCUSED_COMPONENT, key, name, work);
    }

    /** The same, as long as there is something for it to do; else the key goes on to whoever else has a use for it. */
    public static void bindWithin(
            JComponent component, KeyStroke key, String name, BooleanSupplier applies, Runnable work) {
        bind(component, JComponent.WHEN_ANCESTOR_OF_FOCUSED_COMPONENT, key, name, applies, work);
    }

    /** A key that works anywhere in the component's window. */
    public static void bindInWindow(JComponent component, KeyStroke key, String name, Runnable work) {
        bind(component, JComponent.WHEN_IN_FOCUSED_WINDOW, key, name, work);
    }

    /** Enter in a drop-down takes what is marked when its list is open, and moves on when it is not. */
    public static void enterMovesOn(JComboBox<?> combo) {
        bindWithin(combo, Keys.plain(KeyEvent.VK_ENTER), "wm-enter", () -> {
            @Nullable Action take = combo.getActionMap().get("enterPressed");
            if (combo.isPopupVisible() && take != null) {
                take.actionPerformed(new ActionEvent(combo, ActionEvent.ACTION_PERFORMED, "enter"));
            } else {
                combo.transferFocus();
            }
        });
    }

    private static void bind(JComponent component, int when, KeyStroke key, String name, Runnable work) {
        bind(component, when, key, name, () -> true, work);
    }

    private static void bind(
            JComponent component, int when, KeyStroke key, String name, BooleanSupplier applies, Runnable work) {
        component.getInputMap(when).put(key, name);
        component.getActionMap().put(name, new AbstractAction() {
            @Override
            public boolean isEnabled() {
                return applies.getAsBoolean();
            }

            @Override
            public void actionPerformed(ActionEvent e) {
                work.run();
            }
        });
    }
}
