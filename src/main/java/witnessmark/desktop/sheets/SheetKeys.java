package witnessmark.desktop.sheets;

import java.awt.event.ActionEvent;
import java.awt.event.KeyEvent;
import javax.swing.AbstractAction;
import javax.swing.Action;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.KeyStroke;
import org.jspecify.annotations.Nullable;
import witnessmark.desktop.form.Keys;

/** Keys of a sheet. */
final class SheetKeys {
    private SheetKeys() {}

    /** A key that works while anything inside the component has the focus. */
    static void bind(JComponent component, KeyStroke key, String name, Runnable work) {
        component.getInputMap(JComponent.WHEN_ANCESTOR_OF_FOCUSED_COMPONENT).put(key, name);
        component.getActionMap().put(name, new AbstractAction() {
            @Override
            public void actionPerformed(ActionEvent e) {
                work.run();
            }
        });
    }

    /** Enter in a drop-down takes what is marked when its list is open, and moves on when it is not. */
    static void enterMovesOn(JComboBox<?> combo) {
        bind(combo, Keys.plain(KeyEvent.VK_ENTER), "wm-enter", () -> {
            @Nullable Action take = combo.getActionMap().get("enterPressed");
            if (combo.isPopupVisible() && take != null) {
                take.actionPerformed(new ActionEvent(combo, ActionEvent.ACTION_PERFORMED, "enter"));
            } else {
                combo.transferFocus();
            }
        });
    }
}
