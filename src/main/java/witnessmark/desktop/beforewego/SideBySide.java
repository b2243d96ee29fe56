package witnessmark.desktop.beforewego;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Dimension;
import java.util.List;
import javax.swing.JComponent;
import javax.swing.JPanel;
import witnessmark.desktop.form.FormLayout;

/** The main sheet with the others in a column at its right; where there is no room for that, in a row under it. */
final class SideBySide extends JPanel {
    /** Below this width, in unscaled pixels, the others go under the main sheet. */
    static final int BESIDE_FROM = 960;

    private static final String WIDE = "[0::,grow,fill]16[280!,fill]";

    private final JComponent main;
    private final List<JComponent> others;
    private boolean beside;

    SideBySide(JComponent main, List<JComponent> others) {
        super(new FormLayout(""));
        this.main = main;
        this.others = List.copyOf(others);
        setOpaque(false);
        arrange(true);
    }

    @Override
    public void doLayout() {
        boolean room = UIScale.unscale(getWidth()) >= BESIDE_FROM;
        if (room != beside) {
            arrange(room);
            revalidate();
        }
        super.doLayout();
    }

    @Override
    public Dimension getPreferredSize() {
        return new Dimension(0, super.getPreferredSize().height);
    }

    private void arrange(boolean room) {
        beside = room;
        removeAll();
        if (room) {
            setLayout(new FormLayout("insets 0, gap 0, fill", WIDE, "[grow,fill]"));
            JPanel side = column();
            add(main, "grow");
            add(side, "growx, aligny top");
            return;
        }
        setLayout(new FormLayout(
                "insets 0, gap 16, fillx, aligny top, hidemode 3, wrap 2", "[0:0:,grow,fill][0:0:,grow,fill]"));
        add(main, "span, growx, wrap");
        others.forEach(other -> add(other, "grow, aligny top"));
    }

    private JPanel column() {
        JPanel side = new JPanel(new FormLayout("insets 0, gap 16, fillx, wrap, hidemode 3", "[0::,grow,fill]"));
        side.setOpaque(false);
        others.forEach(side::add);
        return side;
    }
}
