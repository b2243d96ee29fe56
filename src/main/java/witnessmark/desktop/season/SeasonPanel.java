package witnessmark.desktop.season;

import java.awt.CardLayout;
import java.util.List;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JPanel;
import org.jspecify.annotations.Nullable;
import witnessmark.desktop.form.Buttons;
import witnessmark.desktop.form.Caption;
import witnessmark.desktop.form.FocusStays;
import witnessmark.desktop.form.FormLayout;
import witnessmark.desktop.form.Kept;
import witnessmark.desktop.form.Lettering;
import witnessmark.desktop.form.NoticeStrip;
import witnessmark.desktop.form.ScrollPage;
import witnessmark.desktop.form.Sheet;
import witnessmark.desktop.form.Styles;
import witnessmark.wording.Texts;

/** The season, the lines behind a figure in its place while one is open, and what to do while there is no season yet. */
final class SeasonPanel extends JPanel {
    private static final String PAGE = "page";
    private static final String LINES = "lines";
    private static final String EMPTY = "empty";

    private final NoticeStrip notice = new NoticeStrip();
    private final CardLayout cards = new CardLayout();
    private final JPanel below = new JPanel(cards);
    private final Texts texts;
    private final SeasonPageView page;
    private final LinesPane lines;
    private final ScrollPage scroll;
    private final JButton write;
    private @Nullable JComponent from;
    private boolean empty;

    SeasonPanel(Texts texts, SeasonPageView page, LinesPane lines, Runnable writeCost, Runnable weekend) {
        super(new FormLayout("insets 0, gap 0, fill, hidemode 3", "[0::,grow,fill]", "[][0::,fill,grow]"));
        setOpaque(false);
        below.setOpaque(false);
        this.texts = texts;
        this.page = page;
        this.lines = lines;
        this.write = Buttons.plain(Caption.of(texts.get("season.empty.write")), writeCost);
        scroll = new ScrollPage(page);
        below.add(scroll, PAGE);
        below.add(lines.component(), LINES);
        below.add(empty(weekend), EMPTY);
        add(notice, "cell 0 0, growx");
        add(below, "cell 0 1, grow");
        lines.component().setVisible(false);
        Kept.leaves(lines.component());
    }

    private JComponent empty(Runnable weekend) {
        JPanel bench = new JPanel(new FormLayout("insets 0, fillx", "[0::,grow,fill]"));
        bench.setOpaque(false);
        Sheet sheet = new Sheet("fillx, wrap", "[0::,grow,fill]", "");
        sheet.add(Lettering.line(texts.get("season.empty.title"), Styles.SECTION));
        sheet.add(Lettering.paragraph(texts.get("season.empty"), Styles.QUIET_INK), "growx, wmin 0, gaptop 4");
        JPanel ways = new JPanel(new FormLayout("insets 0, gap 8"));
        ways.setOpaque(false);
        ways.add(write);
        ways.add(Buttons.plain(Caption.of(texts.get("season.empty.weekend")), weekend));
        sheet.add(ways, "gaptop 8, growx 0");
        bench.add(sheet, "growx");
        return bench;
    }

    void show(SeasonLines read) {
        FocusStays.on(this, () -> put(read), this::firstFocus);
    }

    private void put(SeasonLines read) {
        notice.dismiss();
        empty = read.empty() && read.seasons().size() < 2;
        page.show(read);
        if (!isBehind()) {
            cards.show(below, empty ? EMPTY : PAGE);
        }
    }

    void failed(String sentence, JButton again) {
        notice.show(sentence, List.of(again));
    }

    /** Shows the lines behind a figure. */
    void openLines(String heading, List<CostRow> rows, JComponent opener) {
        from = opener;
        lines.show(heading, rows);
        Kept.returns(lines.component());
        cards.show(below, LINES);
        lines.table().table().requestFocusInWindow();
    }

    /** Brings the page back, with the focus where it was. */
    void closeLines() {
        if (isBehind()) {
            Kept.leaves(lines.component());
            cards.show(below, empty ? EMPTY : PAGE);
            JComponent back = from;
            (back == null ? page.firstFocus() : back).requestFocusInWindow();
        }
    }

    /** The page from its top. */
    void fromTop() {
        closeLines();
        scroll.fromTop();
    }

    /** Whether the lines behind a figure are shown. */
    boolean isBehind() {
        return lines.component().isVisible();
    }

    JComponent firstFocus() {
        return isBehind() ? lines.table().table() : empty ? write : page.firstFocus();
    }

    SeasonPageView page() {
        return page;
    }

    LinesPane lines() {
        return lines;
    }
}
