package witnessmark.desktop.form;

import com.formdev.flatlaf.util.SystemInfo;
import java.awt.Component;
import java.awt.event.KeyEvent;
import javax.swing.AbstractButton;
import javax.swing.JLabel;

/**
 * The words on a label, button or menu line, and the letter that reaches it with Alt. In a bundle the letter follows
 * {@code &}; a doubled {@code &&} stands for the sign itself.
 *
 * @param text what is shown
 * @param letter index of the letter in the text, -1 for none
 */
public record Caption(String text, int letter) {
    public static Caption of(String pattern) {
        StringBuilder text = new StringBuilder();
        int letter = -1;
        for (int i = 0; i < pattern.length(); i++) {
            char c = pattern.charAt(i);
            if (c == '&' && i + 1 < pattern.length()) {
                i++;
                if (pattern.charAt(i) != '&' && letter < 0) {
                    letter = text.length();
                }
            }
            text.append(pattern.charAt(i));
        }
        return new Caption(text.toString(), letter);
    }

    /** The key code of the letter, or 0 where there is none or the platform shows none. */
    public int mnemonic() {
        if (letter < 0 || SystemInfo.isMacOS) {
            return 0;
        }
        int code = KeyEvent.getExtendedKeyCodeForChar(text.charAt(letter));
        return code == KeyEvent.VK_UNDEFINED ? 0 : code;
    }

    /** A label for the component, above it or beside it. */
    JLabel label(Component target) {
        JLabel label = Lettering.line(text, Styles.FIELD_LABEL);
        label.setLabelFor(target);
        int mnemonic = mnemonic();
        if (mnemonic != 0) {
            label.setDisplayedMnemonic(mnemonic);
            label.setDisplayedMnemonicIndex(letter);
        }
        return label;
    }

    /** Puts words and letter on a button. */
    public void on(AbstractButton button) {
        button.setText(text);
        int mnemonic = mnemonic();
        if (mnemonic != 0) {
            button.setMnemonic(mnemonic);
            button.setDisplayedMnemonicIndex(letter);
        }
    }
}
