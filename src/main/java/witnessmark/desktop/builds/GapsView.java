package witnessmark.desktop.builds;

import java.util.List;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JPanel;
import witnessmark.desktop.builds.BuildLines.GapLine;
import witnessmark.desktop.form.Buttons;
import witnessmark.desktop.form.Caption;
import witnessmark.desktop.form.FocusStays;
import witnessmark.desktop.form.FormLayout;
import witnessmark.desktop.form.Lettering;
import witnessmark.desktop.form.SeamMark;
import witnessmark.desktop.form.StateWords;
import witnessmark.desktop.form.Styles;
import witnessmark.wording.Texts;

/** What is still open in a build, worst first; a line leads to where it is put right. */
final class GapsView {
    private final Texts texts;
    private final StateWords states;
    private final Consumer<GapLine> open;
    private final Supplier<JComponent> first;
    private final JPanel panel =
            new JPanel(new FormLayout("insets 0, gap 6 0, fillx, hidemode 3, wrap", "[24!][0::,grow,fill]"));
    private List<GapLine> shown = List.of();

    /** @param first where the focus goes when what had it is put right */
    GapsView(Texts texts, Consumer<GapLine> open, Supplier<JComponent> first) {
        this.first = first;
        this.texts = texts;
        this.states = new StateWords(texts);
        this.open = open;
        panel.setOpaque(false);
    }

    JComponent component() {
        return panel;
    }

    void show(List<GapLine> gaps) {
        if (!gaps.equals(shown) || panel.getComponentCount() == 0) {
            shown = List.copyOf(gaps);
            FocusStays.on(panel, this::fill, first);
        }
    }

    private void fill() {
        panel.removeAll();
        if (shown.isEmpty()) {
            panel.add(Lettering.paragraph(texts.get("builds.open.none"), Styles.QUIET_INK), "span, wmin 0, growx");
        }
        for (GapLine gap : shown) {
            panel.add(new SeamMark(gap.state(), states.of(gap.state()), gap.words()));
            boolean leads = gap.row() != null || gap.way() != null;
            panel.add(
                    leads ? way(gap) : Lettering.cutLine(gap.words(), Styles.FIELD_LABEL),
                    leads ? "wmin 0, growx 0" : "wmin 0, gapleft 8");
        }
        panel.revalidate();
        panel.repaint();
    }

    private JButton way(GapLine gap) {
        JButton way = Buttons.link(Caption.of(gap.words().replace("&", "&&")), () -> open.accept(gap));
        way.putClientProperty(Lettering.MAY_BE_CUT, true);
        way.setToolTipText(gap.words());
        return way;
    }
}
