package witnessmark.desktop.form;

import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;

/** An input with its label above and its note line under it. The note line never makes the form jump. */
public abstract class LabelledBox extends JPanel {
    private final JLabel label;
    private final NoteLine line = new NoteLine();
    private final JComponent input;
    private NoteLine.Level level = NoteLine.Level.NOTE;
    private String words = "";
    private boolean interrupted;

    /** @param shown what is laid out, the input itself or what it scrolls in */
    LabelledBox(Caption caption, JComponent input, JComponent shown, boolean tall) {
        super(new FormLayout(
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
    public final void note(String said) {
        say(NoteLine.Level.NOTE, said);
    }

    /** What was understood: "= 1 h 20 min (80 min)". */
    public final void echo(String said) {
        say(NoteLine.Level.ECHO, said);
    }

    /** A doubt that does not keep anybody from saving. */
    public final void query(String said) {
        say(NoteLine.Level.QUERY, said);
    }

    /** What keeps the form from being saved. */
    public final void stop(String said) {
        say(NoteLine.Level.STOP, said);
    }

    private void say(NoteLine.Level now, String said) {
        boolean stops = now == NoteLine.Level.STOP && !(level == now && words.equals(said));
        level = now;
        words = said;
        interrupted = interrupted && !stops;
        if (!interrupted) {
            line.say(now, said, input);
        }
    }

    /** Says something of the input itself in place of what the form says, until it is over or something else stops. */
    final void interrupt(String sentence) {
        interrupted = true;
        line.say(NoteLine.Level.QUERY, sentence, input);
    }

    /** What the form says last stands again. */
    final void goOn() {
        if (interrupted) {
            interrupted = false;
            line.say(level, words, input);
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
