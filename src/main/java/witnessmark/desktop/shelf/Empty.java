package witnessmark.desktop.shelf;

import javax.swing.JButton;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import witnessmark.desktop.form.Buttons;
import witnessmark.desktop.form.Caption;
import witnessmark.desktop.form.FormLayout;
import witnessmark.desktop.form.Lettering;
import witnessmark.desktop.form.Styles;

/** What stands in the place of a list without rows: a sentence, and while nothing is written down what makes one. */
final class Empty extends JPanel {
    private final String yet;
    private final JTextArea sentence;
    private final JButton make;

    /**
     * @param yet what the list is for, said while nothing is written down
     * @param caption of the button that leads to writing something down
     */
    Empty(String yet, Caption caption, Runnable make) {
        super(new FormLayout("insets 10 0 10 0, gap 0 8, fillx, wrap, hidemode 3", "[0::,grow,fill]"));
        setOpaque(false);
        this.yet = yet;
        this.sentence = Lettering.paragraph(yet, Styles.QUIET_INK);
        this.make = Buttons.plain(caption, make);
        add(sentence, "growx, wmin 0");
        add(this.make, "growx 0");
    }

    void nothingYet() {
        sentence.setText(yet);
        make.setVisible(true);
    }

    void say(String none) {
        sentence.setText(none);
        make.setVisible(false);
    }
}
