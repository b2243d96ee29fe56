package witnessmark.desktop.form;

import java.awt.Dimension;
import javax.accessibility.AccessibleContext;
import javax.swing.JComponent;
import javax.swing.JLabel;
import org.jspecify.annotations.Nullable;

/** The line under a field. It keeps its height when empty, and a long note is cut with the whole in the tooltip. */
public final class NoteLine extends JLabel {
    /** How much a line matters. */
    public enum Level {
        /** Said by the way. */
        NOTE(Styles.NOTE, null),
        /** What was understood from what was typed. */
        ECHO(Styles.ECHO, null),
        /** Unlike what is usual; can be saved. */
        QUERY(Styles.QUERY, "warning"),
        /** Cannot be read or contradicts itself; cannot be saved. */
        STOP(Styles.STOP, "error");

        private final String style;
        private final @Nullable String outline;

        Level(String style, @Nullable String outline) {
            this.style = style;
            this.outline = outline;
        }
    }

    private Level level = Level.NOTE;
    private String words = "";

    public NoteLine() {
        Lettering.plain(this);
        Styles.as(Styles.NOTE, this);
        setText(" ");
    }

    /** Shows the words, outlines the input, and tells screen readers of both. */
    void say(Level next, String said, JComponent input) {
        level = next;
        words = said;
        setText(said.isEmpty() ? " " : said);
        setToolTipText(said.isEmpty() ? null : said);
        Styles.as(next.style, this);
        input.putClientProperty("JComponent.outline", next.outline);
        AccessibleContext context = input.getAccessibleContext();
        context.setAccessibleDescription(said.isEmpty() ? null : said);
    }

    public Level level() {
        return level;
    }

    /** What is said, empty when nothing. */
    public String words() {
        return words;
    }

    @Override
    public Dimension getMinimumSize() {
        return new Dimension(0, super.getMinimumSize().height);
    }

    @Override
    public Dimension getPreferredSize() {
        return new Dimension(0, super.getPreferredSize().height);
    }
}
