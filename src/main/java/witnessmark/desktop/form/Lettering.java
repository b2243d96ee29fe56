package witnessmark.desktop.form;

import java.awt.Insets;
import java.awt.Rectangle;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JTextArea;
import javax.swing.SwingConstants;
import witnessmark.desktop.task.EventThread;

/** Text on a page. Nothing shown through here is ever taken for HTML, whatever people typed. */
public final class Lettering {
    /** The client property of a line that may be cut where there is no room for it; its tooltip has the whole. */
    public static final String MAY_BE_CUT = "wm.mayBeCut";

    private Lettering() {}

    /** One line. It is cut, never wrapped, when there is no room. */
    public static JLabel line(String text, String style) {
        return Styles.as(style, plain(new JLabel(text)));
    }

    /** One line that may be cut where there is no room for it: the whole is in its tooltip. Give it {@code wmin 0}. */
    public static JLabel cutLine(String text, String style) {
        JLabel label = line(text, style);
        label.putClientProperty(MAY_BE_CUT, true);
        label.addPropertyChangeListener("text", e -> label.setToolTipText(label.getText()));
        label.setToolTipText(text);
        return label;
    }

    /** One line set against the right edge of its room. */
    public static JLabel figure(String text, String style) {
        JLabel label = line(text, style);
        label.setHorizontalAlignment(SwingConstants.TRAILING);
        return label;
    }

    /** Text that wraps to the width it is given. Constrain it with {@code growx, wmin 0}. */
    public static JTextArea paragraph(String text, String style) {
        return paragraph(new Paragraph(text, false), text, style);
    }

    /** The same inside something to click, which gets the clicks. */
    public static JTextArea through(String text, String style) {
        return paragraph(new Paragraph(text, true), text, style);
    }

    private static JTextArea paragraph(Paragraph area, String text, String style) {
        area.setLineWrap(true);
        area.setWrapStyleWord(true);
        area.setEditable(false);
        area.setFocusable(false);
        area.setOpaque(false);
        area.setBorder(BorderFactory.createEmptyBorder());
        area.setMargin(new Insets(0, 0, 0, 0));
        area.setColumns(1);
        area.setCursor(null);
        area.getAccessibleContext().setAccessibleName(text);
        area.getDocument()
                .addDocumentListener(
                        new TextChange(() -> area.getAccessibleContext().setAccessibleName(area.getText())));
        return Styles.as(style, area);
    }

    /** Words that are only read: new ones never scroll the page to themselves, as a text that is typed in does. */
    private static final class Paragraph extends JTextArea {
        private final boolean through;

        Paragraph(String text, boolean through) {
            super(text);
            this.through = through;
        }

        @Override
        public boolean contains(int x, int y) {
            return !through && super.contains(x, y);
        }

        /** Words laid out before their width was known ask for their height once it is. */
        @Override
        public void setBounds(int x, int y, int width, int height) {
            boolean other = width != getWidth();
            super.setBounds(x, y, width, height);
            if (other && width > 0 && getPreferredSize().height != height) {
                EventThread.later(this::revalidate); // what lays this out now calls itself valid when it is done
            }
        }

        @Override
        public void scrollRectToVisible(Rectangle part) {
            // stays where the reader is
        }
    }

    /** Switches HTML off for the component, its tooltip included. */
    public static <C extends JComponent> C plain(C component) {
        component.putClientProperty("html.disable", true);
        return component;
    }
}
