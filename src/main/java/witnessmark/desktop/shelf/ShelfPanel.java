package witnessmark.desktop.shelf;

import java.util.List;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JPanel;
import witnessmark.desktop.form.FormLayout;
import witnessmark.desktop.form.Lettering;
import witnessmark.desktop.form.NoticeStrip;
import witnessmark.desktop.form.ScrollPage;
import witnessmark.desktop.form.Sheet;
import witnessmark.desktop.form.SheetTools;
import witnessmark.desktop.form.Styles;

/** The page: every part above, stock by batch below. */
final class ShelfPanel extends JPanel {
    private final NoticeStrip notice = new NoticeStrip();
    private final PartsTable parts;
    private final StockTable stock;

    ShelfPanel(SheetTools tools, ShelfAsked asked) {
        super(new FormLayout("insets 0, gap 0, fill, hidemode 3", "[0::,grow,fill]", "[][0::,fill,grow]"));
        setOpaque(false);
        parts = new PartsTable(tools, asked);
        stock = new StockTable(tools, asked);
        JPanel page = new JPanel(
                new FormLayout("insets 0, gap 0, fill", "[0::,grow,fill]", "[fill,grow 70]10[fill,grow 30]"));
        page.setOpaque(false);
        Sheet above = new Sheet("fill, insets 8 14 6 14", "[0::,grow,fill]", "[fill,grow]");
        above.add(parts.sheet(), "grow, h 240:pref:, w 0:0:");
        Sheet below = new Sheet("fill, insets 8 14 6 14", "[][0::,grow,fill][]", "[]2[fill,grow]");
        below.add(Lettering.line(tools.texts().get("shelf.stock"), Styles.SECTION));
        below.add(stock.newBatch(), "cell 2 0");
        below.add(stock.sheet(), "cell 0 1 3 1, grow, h 140:pref:, w 0:0:");
        page.add(above, "grow, wmin 0, wrap");
        page.add(below, "grow, wmin 0");
        add(notice, "cell 0 0, growx");
        add(new ScrollPage(page), "cell 0 1, grow");
    }

    void show(ShelfLines lines) {
        notice.dismiss();
        parts.show(lines);
        stock.show(lines);
    }

    void failed(String sentence, JButton again) {
        notice.show(sentence, List.of(again));
    }

    /** Chooses a part or a batch, by the text form of its identity; false when there is none. */
    boolean choose(String record) {
        return parts.choose(record) || stock.sheet().select(record);
    }

    JComponent firstFocus() {
        return parts.sheet().table();
    }

    PartsTable parts() {
        return parts;
    }

    StockTable stock() {
        return stock;
    }
}
