package witnessmark.desktop.form;

import java.util.List;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.SwingConstants;

/** The dark board across the first place: one sentence, a line under it, and a few figures at its right. */
public final class BoardLine extends JPanel {
    private final JLabel title = Lettering.cutLine("", Styles.BOARD_TITLE);
    private final JLabel note = Lettering.cutLine("", Styles.BOARD_NOTE);
    private final JPanel figures = new JPanel(new FormLayout("insets 0, gapx 28, gapy 0"));

    /**
     * One figure on the board.
     *
     * @param value already formatted
     * @param words what it counts, under it
     */
    public record Figure(String value, String words) {}

    public BoardLine() {
        super(new FormLayout("insets 12 20 12 20, fillx", "[0::,grow,fill]22[]", "[]"));
        Styles.as(Styles.BOARD, this);
        figures.setOpaque(false);
        JPanel words = new JPanel(new FormLayout("insets 0, gap 0, fillx", "[0::,grow,fill]", "[]0[]"));
        words.setOpaque(false);
        words.add(title, "wmin 0, wrap");
        words.add(note, "wmin 0");
        add(words, "aligny center");
        add(figures, "aligny center");
    }

    public void show(String sentence, String under, List<Figure> right) {
        title.setText(sentence);
        note.setText(under);
        figures.removeAll();
        for (Figure figure : right) {
            figures.add(
                    centred(figure.value(), Styles.BOARD_FIGURE),
                    "cell " + right.indexOf(figure) + " 0, alignx center");
            figures.add(
                    centred(figure.words(), Styles.BOARD_NOTE), "cell " + right.indexOf(figure) + " 1, alignx center");
        }
        figures.revalidate();
        repaint();
    }

    private static JLabel centred(String text, String style) {
        JLabel label = Lettering.line(text, style);
        label.setHorizontalAlignment(SwingConstants.CENTER);
        return label;
    }
}
