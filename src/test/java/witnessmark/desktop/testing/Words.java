package witnessmark.desktop.testing;

import java.awt.Component;
import javax.accessibility.AccessibleContext;
import javax.swing.AbstractButton;
import javax.swing.JLabel;
import javax.swing.text.JTextComponent;

/** What a component says. */
final class Words {
    private Words() {}

    /** Its text, or else its accessible name; empty when it has neither. */
    static String of(Component component) {
        if (component instanceof JLabel label
                && label.getText() != null
                && !label.getText().isBlank()) {
            return label.getText();
        }
        if (component instanceof AbstractButton button && !button.getText().isBlank()) {
            return button.getText();
        }
        return name(component);
    }

    /** Its accessible name, empty when it has none. */
    static String name(Component component) {
        AccessibleContext context = component.getAccessibleContext();
        String name = context == null ? null : context.getAccessibleName();
        return name == null ? "" : name;
    }

    /** What it holds: the text of an input, of a label or of a button. */
    static String value(Component component) {
        if (component instanceof JTextComponent text) {
            return text.getText();
        }
        return of(component);
    }
}
