package witnessmark.desktop.runsheet;

import com.formdev.flatlaf.util.UIScale;
import java.awt.BorderLayout;
import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import javax.swing.JComponent;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import witnessmark.desktop.form.ScrollPage;

/** A form with what it does beside it, or under it where there is no room. */
final class SheetBeside extends JPanel {
    /** From this width on, in unscaled pixels, the two stand beside each other. */
    private static final int BESIDE_FROM = 960;

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
        MigLayout layout = next
                ? new MigLayout("insets 0, gap 0, fill", "[0::,grow,fill]17[338!,fill]", "[grow,fill]")
                : new MigLayout("insets 0, gap 0, fillx, wrap", "[0::,grow,fill]", "[]14[]");
        sheets.setLayout(layout);
        layout.addLayoutComponent(form, "wmin 0");
        layout.addLayoutComponent(does, "wmin 0");
    }
}
