package witnessmark.desktop.bench;

import java.awt.BorderLayout;
import javax.swing.JComponent;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import witnessmark.desktop.form.FootGivesWay;
import witnessmark.desktop.form.NoticeStrip;
import witnessmark.desktop.form.ScrollPage;

/** The field in hand above, the sheet scrolling under it, and the foot; where that is too low, all of it scrolls. */
final class LeftPane extends JPanel {
    private final ScrollPage page;
    private final transient FootGivesWay above;
    private final transient FootGivesWay below;

    LeftPane(JComponent inHand, JComponent sheet, NoticeStrip said, JComponent foot) {
        super(new MigLayout("insets 0, gap 0, fill, hidemode 3", "[0::,grow,fill]", "[]8[0::,grow,fill]8[]0[]"));
        setOpaque(false);
        JPanel top = new JPanel(new BorderLayout());
        top.setOpaque(false);
        JPanel all = new JPanel(new BorderLayout());
        all.setOpaque(false);
        all.add(top, BorderLayout.NORTH);
        all.add(sheet, BorderLayout.CENTER);
        page = new ScrollPage(all);
        add(inHand, "cell 0 0, growx, wmin 0");
        add(page, "cell 0 1, grow, h 0:0:");
        add(said, "cell 0 2, growx, wmin 0");
        add(foot, "cell 0 3, growx, wmin 0");
        above = new FootGivesWay(this, top::add, inHand, "cell 0 0, growx, wmin 0");
        below = new FootGivesWay(this, page::end, foot, "cell 0 3, growx, wmin 0");
    }

    /** Begins at the top: of another sheet nobody looked at its middle. */
    void fromTop() {
        page.fromTop();
    }

    @Override
    public void doLayout() {
        above.fit();
        below.fit();
        super.doLayout();
    }
}
