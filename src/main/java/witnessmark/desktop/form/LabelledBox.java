package witnessmark.desktop.form;

import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;

/** An input with its label above and its note line under it. The note line never makes the form jump. */
public abstract class LabelledBox extends JPanel {
    private final JLabel label;
    private final NoteLine line = new NoteLine();
    private final JComponent input;
    private Runnable said = () -> {};
    private boolean interrupted;

    /** @param shown what is laid out, the input itself or what it scrolls in */
    LabelledBox(Caption caption, JComponent input, JComponent shown, boolean tall) {
        super(new MigLayout(
                "insets 0, gap 0, fillx" + (tall ? ", filly" : ""),
                "[0::,grow,fill]",
                tall ? "[]3[grow,fill]3[]" : "[]3[]3[]"));
        setOpaque(false);
        this.input = input;
        this.label = caption.label(input);
        input.getAccessibleContext().setAccessibleName(caption.text());
        add(label, "wrap");
        add(shown, "growx, wrap");
        add(line, "growx");
    }

    /** Said by the way: "last run 97". */
    public final void note(String words) {
        say(NoteLine.Level.NOTE, words);
    }

    /** What was understood: "= 1 h 20 min (80 min)". */
    public final void echo(String words) {
        say(NoteLine.Level.ECHO, words);
    }

    /** A doubt that does not keep anybody from saving. */
    public final void query(String words) {
        say(NoteLine.Level.QUERY, words);
    }

    /** What keeps the form from being saved. */
    public final void stop(String words) {
        say(NoteLine.Level.STOP, words);
    }

    private void say(NoteLine.Level level, String words) {
        said = () -> line.say(level, words, input);
        interrupted = interrupted && level != NoteLine.Level.STOP;
        if (!interrupted) {
            said.run();
        }
    }

    /** Says something of the input itself in place of what the form says, until it is over or something stops. */
    final void interrupt(String words) {
        interrupted = true;
        line.say(NoteLine.Level.QUERY, words, input);
    }

    /** What the form says last stands again. */
    final void goOn() {
        if (interrupted) {
            interrupted = false;
            line.say(NoteLine.Level.NOTE, "", input);
            said.run();
        }
    }

    public final NoteLine line() {
        return line;
    }

    public final JLabel label() {
        return label;
    }

    /** Puts the caret or the focus into the input. */
    public void takeFocus() {
        input.requestFocusInWindow();
    }
}
