package witnessmark.desktop.incidents;

import java.util.List;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JPanel;
import witnessmark.desktop.cases.CaseView;
import witnessmark.desktop.form.FocusStays;
import witnessmark.desktop.form.FormLayout;
import witnessmark.desktop.form.NoticeStrip;
import witnessmark.desktop.form.ScrollPage;
import witnessmark.desktop.form.Sheet;
import witnessmark.desktop.form.SheetTools;
import witnessmark.desktop.form.SideBySide;

/** The page: the list, and beside it, or under it in a narrow window, the incident in hand. */
final class IncidentsPanel extends JPanel {
    private static final int PAGE = 550;
    private static final int BESIDE = 1060;

    private final NoticeStrip notice = new NoticeStrip();
    private final IncidentsTable list;
    private final IncidentView view;
    private final ScrollPage page;

    IncidentsPanel(SheetTools tools, IncidentsAsked asked, CaseView cases) {
        super(new FormLayout("insets 0, gap 0, fill, hidemode 3", "[0::,grow,fill]", "[][0::,fill,grow]"));
        setOpaque(false);
        list = new IncidentsTable(tools, asked);
        view = new IncidentView(tools, asked, cases);
        Sheet left = new Sheet("fill, insets 8 14 6 14", "[0::,grow,fill]", "[fill,grow]");
        left.add(list.sheet(), "grow, h 240:pref:, w 0:0:");
        add(notice, "cell 0 0, growx");
        page = new ScrollPage(new SideBySide(left, view.component(), PAGE, BESIDE).mainStays());
        add(page, "cell 0 1, grow");
    }

    void show(IncidentsLines lines) {
        notice.dismiss();
        FocusStays.on(this, () -> list.show(lines), this::firstFocus);
    }

    /** Shows the incident in hand; another one than before from its top. */
    void show(PageLines lines) {
        if (view.show(lines)) {
            page.fromTop();
        }
    }

    void failed(String sentence, JButton again) {
        notice.show(sentence, List.of(again));
    }

    JComponent firstFocus() {
        return list.sheet().table().isShowing() || !list.report().isShowing()
                ? list.sheet().table()
                : list.report();
    }

    IncidentsTable table() {
        return list;
    }

    IncidentView view() {
        return view;
    }
}
