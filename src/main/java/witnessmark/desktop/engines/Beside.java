package witnessmark.desktop.engines;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Rectangle;
import javax.swing.JPanel;
import javax.swing.JTabbedPane;
import witnessmark.desktop.form.FormLayout;
import witnessmark.desktop.task.EventThread;

/** What is under the tabs, and at its side the entries behind a figure; where there is no room for both, in its place. */
final class Beside extends JPanel {
    /** Below this width, in unscaled pixels, one stands in the other's place. */
    static final int FROM = 900;

    private static final String ALONE = "[0:0:,grow,fill]";
    private static final String BOTH = "[0:0:,grow 48,fill][0:0:,grow 52,fill]";

    private final JTabbedPane tabs;
    private final BehindPane behind;
    private final FormLayout layout = new FormLayout("insets 0, gap 18, fill, hidemode 3", ALONE, "[fill,grow]");

    Beside(JTabbedPane tabs, BehindPane behind) {
        this.tabs = tabs;
        this.behind = behind;
        setLayout(layout);
        setOpaque(false);
        add(tabs, "grow, h 230:pref:, wmin 0");
        add(behind, "grow, h 230:pref:, wmin 0");
        behind.setVisible(false);
    }

    /** Shows the pane, all of it in view. */
    void open() {
        if (!behind.isVisible()) {
            behind.setVisible(true);
            arrange();
            revalidate();
        }
        EventThread.later(() -> behind.scrollRectToVisible(new Rectangle(0, 0, behind.getWidth(), behind.getHeight())));
    }

    void close() {
        behind.setVisible(false);
        arrange();
        revalidate();
    }

    @Override
    public void doLayout() {
        if (behind.isVisible() && tabs.isVisible() != hasRoom()) {
            arrange();
        }
        super.doLayout();
    }

    BehindPane behind() {
        return behind;
    }

    private boolean hasRoom() {
        return UIScale.unscale(getWidth()) >= FROM;
    }

    private void arrange() {
        boolean both = behind.isVisible() && hasRoom();
        tabs.setVisible(both || !behind.isVisible());
        layout.setColumnConstraints(both ? BOTH : ALONE);
    }
}
