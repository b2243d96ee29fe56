package witnessmark.desktop.strip;

import java.util.List;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import javax.swing.JViewport;
import witnessmark.desktop.form.Caption;
import witnessmark.desktop.form.ChoiceBox;
import witnessmark.desktop.form.FormLayout;
import witnessmark.desktop.form.Lettering;
import witnessmark.desktop.form.NoticeStrip;
import witnessmark.desktop.form.ScrollPage;
import witnessmark.desktop.form.Sheet;
import witnessmark.desktop.form.SideBySide;
import witnessmark.desktop.form.Styles;
import witnessmark.wording.Texts;

/** The page: which strip above, what it comes to, its table, and beside it the position in hand. */
final class StripPanel extends JPanel {
    private static final int SIDE = 330;
    private static final int BOTH_FROM = 820;

    private final NoticeStrip notice = new NoticeStrip();
    private final ChoiceBox<StripChoice.Of> which;
    private final JTextArea headline = Lettering.paragraph(" ", Styles.NOTE);
    private final JTextArea empty = Lettering.paragraph("", Styles.QUIET_INK);
    private final JPanel room = new Sheet("fillx, wrap, hidemode 3", "[0::,grow,fill]", "");
    private final StripTable table;
    private final StripSide side;
    private final SideBySide both;

    StripPanel(Texts texts, StripTable.Asked asked, StripTold told, Runnable chosen) {
        super(new FormLayout("insets 0, gap 0, fill", "[0::,grow,fill]", "[grow,fill]"));
        setOpaque(false);
        which = new ChoiceBox<>(texts, Caption.of(texts.get("strip.page.which")), StripChoice.Of::words);
        which.onChange(chosen);
        table = new StripTable(texts.get("strip.page.table"), asked);
        side = new StripSide(texts, told);
        room.add(Lettering.paragraph(texts.get("strip.page.keys"), Styles.QUIET_INK), "growx, wmin 0");
        room.add(table, "growx, wmin 0");
        both = new SideBySide(scrolls(room), side, SIDE, BOTH_FROM).mainStays();
        JPanel page = new JPanel(new FormLayout("insets 0, gap 0 6, fillx, wrap, hidemode 3", "[0::,grow,fill]"));
        page.setOpaque(false);
        page.add(notice, "growx");
        page.add(which, "split 2, w 345::460");
        page.add(headline, "growx, wmin 0, gapleft 12");
        page.add(empty, "growx, wmin 0");
        page.add(both, "grow, pushy, wmin 0");
        add(scrolls(page), "grow, w 0:0:, h 0:0:");
    }

    /** The head of the table stays while all else moves, so that what is there already cannot be moved as it is. */
    private static ScrollPage scrolls(JPanel content) {
        ScrollPage scroll = new ScrollPage(content);
        scroll.getViewport().setScrollMode(JViewport.SIMPLE_SCROLL_MODE);
        return scroll;
    }

    void show(StripModel.Shown shown, boolean another) {
        notice.dismiss();
        empty.setVisible(false);
        which.setVisible(true);
        headline.setVisible(true);
        both.setVisible(true);
        which.load(shown.builds(), shown.build());
        headline.setText(shown.headline());
        table.show(shown.lines(), another);
        revalidate();
        repaint();
    }

    /** There is no strip to show, for this reason. */
    void none(String reason) {
        empty.setText(reason);
        empty.setVisible(true);
        which.setVisible(false);
        headline.setVisible(false);
        both.setVisible(false);
    }

    void failed(String sentence, JButton again) {
        notice.show(sentence, List.of(again));
    }

    JComponent firstFocus() {
        return both.isVisible() ? table : this;
    }

    ChoiceBox<StripChoice.Of> which() {
        return which;
    }

    StripTable table() {
        return table;
    }

    StripSide side() {
        return side;
    }
}
