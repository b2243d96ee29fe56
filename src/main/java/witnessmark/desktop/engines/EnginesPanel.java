package witnessmark.desktop.engines;

import java.util.List;
import javax.swing.AbstractButton;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import witnessmark.desktop.form.Lettering;
import witnessmark.desktop.form.NoticeStrip;
import witnessmark.desktop.form.ScrollPage;
import witnessmark.desktop.form.Sheet;
import witnessmark.desktop.form.Styles;
import witnessmark.wording.Texts;

/** The page: the lists above, the engine in hand below; in a logbook without engines what to do first. */
final class EnginesPanel extends JPanel {
    private final NoticeStrip notice = new NoticeStrip();
    private final JPanel none;
    private final ListSheets lists;
    private final EngineSheetView sheet;
    private final AsOfStrip asOf;

    EnginesPanel(Texts texts, ListSheets lists, EngineSheetView sheet, AsOfStrip asOf) {
        super(new MigLayout("insets 0, gap 0, fill", "[0::,grow,fill]", "[][0::,fill,grow]"));
        setOpaque(false);
        this.lists = lists;
        this.sheet = sheet;
        this.asOf = asOf;
        this.none = none(texts);
        JPanel top = new JPanel(new MigLayout("insets 0, gap 0, fillx, hidemode 3, wrap", "[0::,grow,fill]"));
        top.setOpaque(false);
        top.add(notice);
        top.add(asOf, "gapbottom 4");
        add(top, "growx, wmin 0, wrap");
        JPanel page =
                new JPanel(new MigLayout("insets 0, gap 0, fill, hidemode 3", "[0::,grow,fill]", "[]10[fill,grow]"));
        page.setOpaque(false);
        page.add(lists, "growx, wmin 0, wrap");
        page.add(sheet.component(), "grow, wmin 0, wrap");
        page.add(none, "aligny top");
        add(new ScrollPage(page), "grow");
        asOf.setVisible(false);
        none.setVisible(false);
    }

    void showPage(boolean any) {
        notice.dismiss();
        lists.setVisible(any);
        sheet.component().setVisible(any);
        none.setVisible(!any);
        revalidate();
        repaint();
    }

    void failed(String sentence, AbstractButton again) {
        notice.show(sentence, List.of(again));
    }

    void askAsOf(boolean yes) {
        asOf.setVisible(yes);
        revalidate();
    }

    NoticeStrip notice() {
        return notice;
    }

    private static JPanel none(Texts texts) {
        Sheet sheet = new Sheet("[0::,grow,fill]");
        sheet.add(Lettering.line(texts.get("engines.empty"), Styles.SECTION), "wrap 8");
        sheet.add(Lettering.paragraph(texts.get("engines.empty.what"), Styles.FIELD_LABEL), "growx, wmin 0");
        return sheet;
    }
}
