package witnessmark.desktop.bench;

import java.util.List;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import net.miginfocom.swing.MigLayout;
import witnessmark.desktop.form.Lettering;
import witnessmark.desktop.form.NoticeStrip;
import witnessmark.desktop.form.ScrollPage;
import witnessmark.desktop.form.Styles;
import witnessmark.wording.Texts;

/** The page: which build above, its sheet, and beside it how its figures stand. */
final class BenchPanel extends JPanel {
    private final NoticeStrip notice = new NoticeStrip();
    private final JTextArea empty;
    private final BenchHead head;
    private final GridsView grids;
    private final AnswersView answers;
    private final TwoPanes panes;

    BenchPanel(Texts texts, GridsView.Told told, java.util.function.Consumer<String> chosen) {
        super(new MigLayout("insets 0, gap 0, fill, hidemode 3", "[0::,grow,fill]", "[][]10[][0::,fill,grow]"));
        setOpaque(false);
        head = new BenchHead(texts, chosen, this::turn);
        grids = new GridsView(told);
        answers = new AnswersView(texts);
        empty = Lettering.paragraph(texts.get("bench.empty"), Styles.QUIET_INK);
        empty.setVisible(false);
        panes = new TwoPanes(new ScrollPage(grids.component()), new ScrollPage(answers.component()));
        add(notice, "cell 0 0, growx");
        add(head, "cell 0 1, growx, wmin 0");
        add(empty, "cell 0 2, growx, wmin 0");
        add(panes, "cell 0 3, grow, w 0:0:, h 0:0:");
    }

    @Override
    public void doLayout() {
        super.doLayout();
        head.turn(!panes.both(), panes.sideFirst());
    }

    void turn() {
        panes.sideFirst(!panes.sideFirst());
        head.turn(!panes.both(), panes.sideFirst());
    }

    void none() {
        notice.dismiss();
        head.setVisible(false);
        panes.setVisible(false);
        empty.setVisible(true);
    }

    void show(List<BenchLines.Choice> all, BenchLines lines) {
        notice.dismiss();
        head.setVisible(true);
        panes.setVisible(true);
        empty.setVisible(false);
        head.choices(
                all,
                all.stream()
                        .filter(choice -> choice.id().equals(lines.build()))
                        .findFirst()
                        .orElse(null));
        head.show(lines);
        grids.show(lines.steps());
        answers.show(lines);
    }

    void failed(String sentence, JButton again) {
        notice.show(sentence, List.of(again));
    }

    JComponent firstFocus() {
        return head.firstFocus();
    }

    GridsView grids() {
        return grids;
    }

    AnswersView answers() {
        return answers;
    }

    BenchHead head() {
        return head;
    }
}
