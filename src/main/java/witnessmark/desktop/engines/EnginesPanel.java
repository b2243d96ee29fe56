package witnessmark.desktop.engines;

import java.util.List;
import javax.swing.AbstractButton;
import javax.swing.JPanel;
import witnessmark.desktop.form.FormLayout;
import witnessmark.desktop.form.Lettering;
import witnessmark.desktop.form.NoticeStrip;
import witnessmark.desktop.form.ScrollPage;
import witnessmark.desktop.form.Sheet;
import witnessmark.desktop.form.Styles;
import witnessmark.wording.Texts;

/** The page: the lists above, the engine or part in hand below; in a logbook without engines what to do first. */
final class EnginesPanel extends JPanel {
    private final NoticeStrip notice = new NoticeStrip();
    private final JPanel none;
    private final ListSheets lists;
    private final EngineSheetView sheet;
    private final PartView part;
    private final AsOfStrip asOf;
    private boolean any;
    private boolean partShown;

    EnginesPanel(Texts texts, ListSheets lists, EngineSheetView sheet, PartView part, AsOfStrip asOf) {
        super(new FormLayout("insets 0, gap 0, fill", "[0::,grow,fill]", "[][0::,fill,grow]"));
        setOpaque(false);
        this.lists = lists;
        this.sheet = sheet;
        this.part = part;
        this.asOf = asOf;
        this.none = none(texts);
        JPanel top = new JPanel(new FormLayout("insets 0, gap 0, fillx, hidemode 3, wrap", "[0::,grow,fill]"));
        top.setOpaque(false);
        top.add(notice);
        top.add(asOf, "gapbottom 4");
        add(top, "growx, wmin 0, wrap");
        JPanel page =
                new JPanel(new FormLayout("insets 0, gap 0, fill, hidemode 3", "[0::,grow,fill]", "[]10[fill,grow]"));
        page.setOpaque(false);
        page.add(lists, "growx, wmin 0, wrap");
        page.add(sheet.component(), "cell 0 1, grow, wmin 0");
        page.add(part.component(), "cell 0 1, grow, wmin 0");
        page.add(none, "cell 0 2, aligny top");
        add(new ScrollPage(page), "grow");
        asOf.setVisible(false);
        none.setVisible(false);
        part.component().setVisible(false);
    }

    void showPage(boolean anything) {
        notice.dismiss();
        any = anything;
        arrange();
    }

    /** Shows the part in hand in the place of the engine, or the engine again. */
    void showPart(boolean yes) {
        partShown = yes;
        arrange();
    }

    private void arrange() {
        lists.setVisible(any);
        sheet.component().setVisible(any && !partShown);
        part.component().setVisible(any && partShown);
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
