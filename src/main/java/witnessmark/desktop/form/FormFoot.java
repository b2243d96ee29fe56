package witnessmark.desktop.form;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Component;
import java.util.Arrays;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.IntFunction;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;

/** The foot of a form: which fields need a look, what became of the draft, and the buttons. */
public final class FormFoot extends JPanel {
    /** So many fields are named where more than one is left over. */
    private static final int NAMED = 3;

    /** The lines need this width to be read beside the buttons, in unscaled pixels. */
    private static final int LINES = 270;

    private static final int GAP = 8;
    private static final String ROW = "insets 0, gap " + GAP + ", hidemode 3";

    private final JPanel look = new JPanel(new FormLayout("insets 0, gap 6, aligny center", "[]", "[]"));
    private final JLabel about = Lettering.cutLine("", Styles.NOTE);
    private final JLabel draft = Lettering.cutLine("", Styles.NOTE);
    private final JPanel said =
            new JPanel(new FormLayout("insets 0, gap 0, fillx, wrap, hidemode 3", "[0::,grow,fill]"));
    private final JPanel row = new JPanel(new FormLayout(ROW));
    private boolean keepsRoom;
    private boolean inTwoRows;
    private boolean beside;
    private List<?> shown = List.of();

    /** @param buttons in order, the main one last */
    public FormFoot(List<JButton> buttons) {
        setOpaque(false);
        look.setOpaque(false);
        look.setVisible(false);
        said.setOpaque(false);
        about.setVisible(false);
        said.add(about, "wmin 0");
        said.add(draft, "wmin 0");
        row.setOpaque(false);
        buttons.forEach(row::add);
        add(look);
        add(said);
        add(row);
        place(true);
    }

    /** The lines stand before the buttons, or above them where they would be cut to nothing. */
    @Override
    public void doLayout() {
        int wide = widthOfButtons();
        boolean fits = wide <= getWidth();
        if (fits == inTwoRows) {
            inTwoRows = !fits;
            ((FormLayout) row.getLayout()).setLayoutConstraints(fits ? ROW : ROW + ", wrap " + half());
            revalidate();
        }
        boolean room = getWidth() - wide >= UIScale.scale(LINES);
        if (room != beside) {
            place(room);
            revalidate();
        }
        super.doLayout();
    }

    /** What the buttons need in one row. */
    private int widthOfButtons() {
        int wide = 0;
        for (Component button : row.getComponents()) {
            wide += button.isVisible() ? button.getPreferredSize().width + UIScale.scale(GAP) : 0;
        }
        return wide - UIScale.scale(GAP);
    }

    private int half() {
        long shown =
                Arrays.stream(row.getComponents()).filter(Component::isVisible).count();
        return (int) (shown + 1) / 2;
    }

    /** Nothing is taken out on the way: the focus would be lost. */
    private void place(boolean next) {
        beside = next;
        FormLayout layout = next
                ? new FormLayout("insets 0, gap 8, fillx, hidemode 3", "[0::,grow,fill][]", "[32::,center]")
                : new FormLayout("insets 0, gap 4, fillx, wrap, hidemode 3", "[0::,grow,fill]", "[32::,center]");
        setLayout(layout);
        layout.addLayoutComponent(look, "span, wmin 0, wrap" + (keepsRoom ? ", h 24!" : ""));
        layout.addLayoutComponent(said, "wmin 0");
        layout.addLayoutComponent(row, next ? "" : "wmin 0, growx 0, alignx right");
    }

    /** A line that stays, above what is said of the draft. */
    public void about(String line) {
        about.setText(line);
        about.setToolTipText(line);
        about.setVisible(!line.isEmpty());
    }

    public void draft(String line) {
        draft.setText(line.isEmpty() ? " " : line);
        draft.setToolTipText(line.isEmpty() ? null : line);
    }

    private static JButton link(String words, Runnable goTo) {
        Caption caption = Caption.of(words);
        JButton link = Buttons.link(caption, goTo);
        link.putClientProperty(Lettering.MAY_BE_CUT, true);
        link.setToolTipText(caption.text());
        return link;
    }

    /** Keeps room for the fields that need a look, so that nothing moves when the first of them does. */
    public void keepRoom() {
        keepsRoom = true;
        look.setVisible(true);
        place(beside);
    }

    /**
     * Names the first of the fields that need a look, each a link to it, and counts the rest.
     *
     * @param heading how many there are, already worded
     * @param rest how many more than are named, in words
     * @param fields in order; nothing is shown when there are none
     * @param label of a field, without a letter to press
     */
    public <F> void look(
            String heading, IntFunction<String> rest, List<F> fields, Function<F, String> label, Consumer<F> goTo) {
        if (shown.equals(fields)) {
            return;
        }
        shown = List.copyOf(fields);
        look.removeAll();
        look.setVisible(keepsRoom || !fields.isEmpty());
        if (!fields.isEmpty()) {
            look.add(Lettering.line(heading, Styles.STOP));
        }
        int named = fields.size() > NAMED + 1 ? NAMED : fields.size();
        for (F field : fields.subList(0, named)) {
            look.add(link(label.apply(field), () -> goTo.accept(field)), "wmin 0");
        }
        if (named < fields.size()) {
            look.add(Lettering.line(rest.apply(fields.size() - named), Styles.NOTE));
        }
        revalidate();
        repaint();
    }
}
