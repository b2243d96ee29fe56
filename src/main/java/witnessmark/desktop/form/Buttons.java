package witnessmark.desktop.form;

import com.formdev.flatlaf.FlatClientProperties;
import java.awt.Cursor;
import java.awt.event.ActionEvent;
import java.awt.event.KeyEvent;
import java.util.function.Consumer;
import javax.swing.AbstractAction;
import javax.swing.Action;
import javax.swing.JButton;
import javax.swing.JCheckBox;
import javax.swing.KeyStroke;
import javax.swing.SwingConstants;

/** Buttons, all of one kind of look. A button carries the verb of what it does. */
public final class Buttons {
    private Buttons() {}

    public static JButton plain(Action action) {
        return Lettering.plain(new JButton(action));
    }

    public static JButton plain(Caption caption, Runnable work) {
        JButton button = Lettering.plain(new JButton(action(work)));
        caption.on(button);
        return button;
    }

    /** The one main button of a page, with its key written on it. */
    public static JButton main(Action action) {
        JButton button = Styles.as(Styles.MAIN, plain(action));
        if (action.getValue(Action.ACCELERATOR_KEY) instanceof KeyStroke key) {
            String words = String.valueOf(action.getValue(Action.NAME));
            button.getAccessibleContext().setAccessibleName(words);
            button.setText(words + "   " + Keys.words(key));
        }
        return button;
    }

    /** The one main button of a page, with the key that does the same written on it. */
    public static JButton main(Caption caption, KeyStroke key, Runnable work) {
        JButton button = Styles.as(Styles.MAIN, plain(caption, work));
        button.getAccessibleContext().setAccessibleName(caption.text());
        button.setText(caption.text() + "   " + Keys.words(key));
        return button;
    }

    /** Words that lead somewhere. */
    public static JButton link(Caption caption, Runnable work) {
        JButton button = Styles.as(Styles.LINK, plain(caption, work));
        button.putClientProperty(FlatClientProperties.BUTTON_TYPE, FlatClientProperties.BUTTON_TYPE_BORDERLESS);
        button.setHorizontalAlignment(SwingConstants.LEADING);
        button.setCursor(Cursor.getPredefinedCursor(Cursor.HAND_CURSOR));
        return button;
    }

    /** Something that is so or not. Space ticks it; Enter goes on, as in any field. */
    public static JCheckBox tick(Caption caption, Consumer<Boolean> told) {
        JCheckBox tick = Lettering.plain(new JCheckBox());
        caption.on(tick);
        tick.setOpaque(false);
        tick.addActionListener(e -> told.accept(tick.isSelected()));
        FormKeys.bindWithin(tick, Keys.plain(KeyEvent.VK_ENTER), "wm-enter", tick::transferFocus);
        return tick;
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
