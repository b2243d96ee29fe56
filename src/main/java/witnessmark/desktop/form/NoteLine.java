package witnessmark.desktop.form;

import com.formdev.flatlaf.ui.FlatUIUtils;
import java.awt.Dimension;
import java.awt.FontMetrics;
import java.awt.Graphics;
import java.util.ArrayList;
import java.util.List;
import javax.accessibility.AccessibleContext;
import javax.swing.JComponent;
import javax.swing.JLabel;
import org.jspecify.annotations.Nullable;

/**
 * The line under a field. It keeps its height when empty. A long note is cut, with the whole in the tooltip; a doubt or
 * a refusal wraps instead, as it has to be read.
 */
public final class NoteLine extends JLabel {
    /** How much a line matters. */
    public enum Level {
        /** Said by the way. */
        NOTE(Styles.NOTE, null, false),
        /** What was understood from what was typed. */
        ECHO(Styles.ECHO, null, false),
        /** Unlike what is usual; can be saved. */
        QUERY(Styles.QUERY, "warning", true),
        /** Cannot be read or contradicts itself; cannot be saved. */
        STOP(Styles.STOP, "error", true);

        private final String style;
        private final @Nullable String outline;
        private final boolean wraps;

        Level(String style, @Nullable String outline, boolean wraps) {
            this.style = style;
            this.outline = outline;
            this.wraps = wraps;
        }
    }

    private Level level = Level.NOTE;
    private String words = "";
    private int kept = 1;

    public NoteLine() {
        Lettering.plain(this);
        Styles.as(Styles.NOTE, this);
        setVerticalAlignment(TOP);
        setText(" ");
    }

    /** Keeps room for so many lines, so that nothing under it moves when more has to be said. */
    public NoteLine keep(int lines) {
        kept = lines;
        return this;
    }

    /** Shows the words, outlines the input, and tells screen readers of both. */
    public void say(Level next, String said, JComponent input) {
        level = next;
        words = said;
        setText(said.isEmpty() ? " " : said);
        setToolTipText(said.isEmpty() ? null : said);
        Styles.as(next.style, this);
        tell(next, said, input);
    }

    /** Outlines an input whose line is not in sight, and tells screen readers what would stand there. */
    public static void tell(Level level, String said, JComponent input) {
        input.putClientProperty("JComponent.outline", level.outline);
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
        return new Dimension(
                0,
                super.getMinimumSize().height
                        + (kept - 1) * getFontMetrics(getFont()).getHeight());
    }

    @Override
    public Dimension getPreferredSize() {
        int more = Math.max(kept, lines(getWidth()).size()) - 1;
        int height = super.getPreferredSize().height;
        return new Dimension(0, height + more * getFontMetrics(getFont()).getHeight());
    }

    @Override
    public void setBounds(int x, int y, int width, int height) {
        boolean rewrapped = lines(width).size() != lines(getWidth()).size();
        super.setBounds(x, y, width, height);
        if (rewrapped) {
            revalidate();
        }
    }

    @Override
    protected void paintComponent(Graphics g) {
        List<String> lines = lines(getWidth());
        if (lines.size() == 1) {
            super.paintComponent(g);
            return;
        }
        FontMetrics metrics = getFontMetrics(getFont());
        g.setFont(getFont());
        g.setColor(getForeground());
        for (int i = 0; i < lines.size(); i++) {
            FlatUIUtils.drawString(this, g, lines.get(i), 0, metrics.getAscent() + i * metrics.getHeight());
        }
    }

    /** What is said, broken between words to fit; one line where it may be cut or no width is known yet. */
    private List<String> lines(int width) {
        if (width <= 0 || !level.wraps) {
            return List.of(words);
        }
        FontMetrics metrics = getFontMetrics(getFont());
        List<String> lines = new ArrayList<>();
        String line = "";
        for (String word : words.split(" ")) {
            String longer = line.isEmpty() ? word : line + " " + word;
            if (!line.isEmpty() && metrics.stringWidth(longer) > width) {
                lines.add(line);
                line = word;
            } else {
                line = longer;
            }
        }
        lines.add(line);
        return lines;
    }
}
