package witnessmark.desktop.form;

import com.formdev.flatlaf.FlatClientProperties;
import com.formdev.flatlaf.ui.FlatEmptyBorder;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.awt.event.KeyEvent;
import javax.swing.JLabel;
import javax.swing.JTextField;

/**
 * One short input: label, field with its unit at the right edge, note line. Enter moves on like Tab, typing replaces
 * what was there, Ctrl+Z takes back typing. What is typed stays as typed, whether or not it can be read.
 */
public final class FieldBox extends LabelledBox {
    private final JTextField field;
    private final TextUndo undo;

    public FieldBox(Caption caption) {
        this(caption, new JTextField());
    }

    private FieldBox(Caption caption, JTextField field) {
        super(caption, field, field, false);
        this.field = field;
        field.setColumns(4);
        field.putClientProperty(
                FlatClientProperties.SELECT_ALL_ON_FOCUS_POLICY,
                FlatClientProperties.SELECT_ALL_ON_FOCUS_POLICY_ALWAYS);
        Traversal.enterMovesOn(field);
        undo = TextUndo.install(field);
    }

    /** Shows the unit at the right edge of the field, and lets screen readers say it with the label. */
    public FieldBox unit(String unit) {
        JLabel trailing = Lettering.line(unit, Styles.FIELD_LABEL);
        trailing.setBorder(new FlatEmptyBorder(0, 0, 0, 8));
        field.putClientProperty(FlatClientProperties.TEXT_FIELD_TRAILING_COMPONENT, trailing);
        field.getAccessibleContext().setAccessibleName(label().getText() + ", " + unit);
        return this;
    }

    public JTextField field() {
        return field;
    }

    /** Exactly what stands in the field. */
    public String text() {
        return field.getText();
    }

    /** Loads a value: it cannot be taken back with Ctrl+Z. */
    public void load(String text) {
        field.setText(text);
        undo.clear();
    }

    /** Told after every change of the text, whoever made it. */
    public void onChange(Runnable listener) {
        field.getDocument().addDocumentListener(new TextChange(listener));
    }

    /** Told when the focus leaves the field: the moment for the first check. */
    public void onLeave(Runnable listener) {
        field.addFocusListener(new FocusAdapter() {
            @Override
            public void focusLost(FocusEvent e) {
                if (!e.isTemporary()) {
                    listener.run();
                }
            }
        });
    }

    /** Enter does this instead of moving on: for a field asked alone. */
    public void onEnter(Runnable work) {
        Traversal.enterStays(field);
        FormKeys.bind(field, Keys.plain(KeyEvent.VK_ENTER), "wm-enter", work);
    }

    /** Focuses the field and selects what stands in it: where a stopped save leads. */
    @Override
    public void takeFocus() {
        super.takeFocus();
        field.selectAll();
    }
}
