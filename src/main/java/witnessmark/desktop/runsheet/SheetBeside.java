package witnessmark.desktop.runsheet;

import com.formdev.flatlaf.util.UIScale;
import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import javax.swing.JComponent;
import javax.swing.JPanel;
import witnessmark.desktop.form.FormLayout;
import witnessmark.desktop.form.ScrollPage;

/** A form with what it does beside it, or under it where there is no room. */
final class SheetBeside extends JPanel {
    /** From this width on, in unscaled pixels, the two stand beside each other. */
    private static final int BESIDE_FROM = 960;

    private static final String FOOT = "cell 0 1, growx, wmin 0, gaptop 8";

    private final JPanel sheets = new JPanel();
    private final JComponent form;
    private final JComponent does;
    private boolean beside;

    SheetBeside(JComponent form, JComponent does) {
        super(new BorderLayout());
        setOpaque(false);
        this.form = form;
        this.does = does;
        sheets.setOpaque(false);
        sheets.add(form);
        sheets.add(does);
        place(true);
        add(new ScrollPage(sheets));
        addComponentListener(new ComponentAdapter() {
            @Override
            public void componentResized(ComponentEvent e) {
                fit();
            }
        });
    }

    /** Puts the foot of the form right under its fields, where it scrolls with them. */
    void end(JComponent foot) {
        sheets.add(foot, FOOT, 1);
        sheets.revalidate();
    }

    /** Lays them out anew when the room has become too narrow or wide enough. */
    void fit() {
        boolean room = UIScale.unscale(getWidth()) >= BESIDE_FROM;
        if (room != beside) {
            place(room);
            revalidate();
        }
    }

    /** Neither is taken out on the way: the focus would be lost. */
    private void place(boolean next) {
        beside = next;
        FormLayout layout = next
                ? new FormLayout("insets 0, gap 0, fill", "[0::,grow,fill]17[338!,fill]", "[grow,fill]0[]")
                : new FormLayout("insets 0, gap 0, fillx", "[0::,grow,fill]", "[]0[]0[]");
        sheets.setLayout(layout);
        for (Component each : sheets.getComponents()) {
            layout.addLayoutComponent(each, each == form ? "cell 0 0, wmin 0" : each == does ? besides() : FOOT);
        }
    }

    private String besides() {
        return beside ? "cell 1 0 1 2, wmin 0" : "cell 0 2, wmin 0, gaptop 14";
    }
}
