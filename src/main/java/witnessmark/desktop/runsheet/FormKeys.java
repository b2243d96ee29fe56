package witnessmark.desktop.runsheet;

import java.awt.event.ActionEvent;
import java.awt.event.KeyEvent;
import javax.swing.AbstractAction;
import javax.swing.Action;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.KeyStroke;
import org.jspecify.annotations.Nullable;
import witnessmark.desktop.form.Keys;

/** Keys of a form. */
final class FormKeys {
    private FormKeys() {}

    /** A key that works while the component has the focus. */
    static void bind(JComponent component, KeyStroke key, String name, Runnable work) {
        component.getInputMap(JComponent.WHEN_FOCUSED).put(key, name);
        component.getActionMap().put(name, action(work));
    }

    /** A key that works while anything inside the component has the focus. */
    static void bindWithin(JComponent component, KeyStroke key, String name, Runnable work) {
        component.getInputMap(JComponent.WHEN_ANCESTOR_OF_FOCUSED_COMPONENT).put(key, name);
        component.getActionMap().put(name, action(work));
    }

    /** Enter in a drop-down takes what is marked when its list is open, and moves on when it is not. */
    static void enterMovesOn(JComboBox<?> combo) {
        String name = "wm-enter";
        combo.getInputMap(JComponent.WHEN_ANCESTOR_OF_FOCUSED_COMPONENT).put(Keys.plain(KeyEvent.VK_ENTER), name);
        combo.getActionMap().put(name, new AbstractAction() {
            @Override
            public void actionPerformed(ActionEvent e) {
                @Nullable Action take = combo.getActionMap().get("enterPressed");
                if (combo.isPopupVisible() && take != null) {
                    take.actionPerformed(e);
                } else {
                    combo.transferFocus();
                }
            }
        });
    }

    private static AbstractAction action(Runnable work) {
        return new AbstractAction() {
            @Override
            public void actionPerformed(ActionEvent e) {
                work.run();
            }
        };
    }
}
