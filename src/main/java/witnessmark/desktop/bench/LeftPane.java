package witnessmark.desktop.bench;

import com.formdev.flatlaf.util.UIScale;
import java.awt.BorderLayout;
import javax.swing.JComponent;
import javax.swing.JPanel;
import witnessmark.desktop.form.FootGivesWay;
import witnessmark.desktop.form.FormLayout;
import witnessmark.desktop.form.NoticeStrip;
import witnessmark.desktop.form.ScrollPage;

/**
 * The field in hand above, the sheet scrolling under it, and the foot. Where that is too low what the figures were taken
 * with and the foot scroll with the sheet; the field in hand and what was understood stay in sight.
 */
final class LeftPane extends JPanel {
    /** From this height on, in unscaled pixels, what the figures are taken with stands above the sheet. */
    private static final int ALL_FROM = 460;

    private final transient InHand inHand;
    private final JPanel top = new JPanel(new BorderLayout());
    private final ScrollPage page;
    private final transient FootGivesWay below;

    LeftPane(InHand inHand, JComponent sheet, NoticeStrip said, JComponent foot) {
        super(new FormLayout("insets 0, gap 0, fill, hidemode 3", "[0::,grow,fill]", "[]8[0::,grow,fill]8[]0[]"));
        this.inHand = inHand;
        setOpaque(false);
        top.setOpaque(false);
        JPanel all = new JPanel(new BorderLayout());
        all.setOpaque(false);
        all.add(top, BorderLayout.NORTH);
        all.add(sheet, BorderLayout.CENTER);
        page = new ScrollPage(all);
        add(inHand.component(), "cell 0 0, growx, wmin 0");
        add(page, "cell 0 1, grow, h 0:0:");
        add(said, "cell 0 2, growx, wmin 0");
        add(foot, "cell 0 3, growx, wmin 0");
        below = new FootGivesWay(this, page::end, foot, "cell 0 3, growx, wmin 0");
    }

    /** Begins at the top: of another sheet nobody looked at its middle. */
    void fromTop() {
        page.fromTop();
    }

    /** Shows the field in hand very large, or as usual; its field on the sheet stays in sight. */
    void large(boolean yes) {
        inHand.large(yes);
        page.toFocus();
    }

    @Override
    public void doLayout() {
        if (getHeight() > 0) {
            inHand.low(UIScale.unscale(getHeight()) < ALL_FROM, top);
        }
        below.fit();
        super.doLayout();
    }
}
