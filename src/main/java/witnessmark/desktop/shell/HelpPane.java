package witnessmark.desktop.shell;

import java.awt.BorderLayout;
import javax.swing.JButton;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import witnessmark.desktop.form.Buttons;
import witnessmark.desktop.form.Caption;
import witnessmark.desktop.form.Lettering;
import witnessmark.desktop.form.ScrollPage;
import witnessmark.desktop.form.Sheet;
import witnessmark.desktop.form.Styles;
import witnessmark.wording.Texts;

/** About the page in view, at the right: what it answers, how its figures come about, its keys. */
final class HelpPane extends JPanel {
    private static final String[] PARTS = {"answers", "figures", "cannot", "keys"};

    private final Texts texts;
    private final JButton close;

    /** @param onClose told that the pane is not wanted any more */
    HelpPane(Texts texts, Runnable onClose) {
        super(new BorderLayout());
        this.texts = texts;
        setOpaque(false);
        getAccessibleContext().setAccessibleName(texts.get("shell.help"));
        close = Buttons.link(Caption.of(texts.get("shell.help.close")), onClose);
        setVisible(false);
    }

    JButton firstFocus() {
        return close;
    }

    /** @param stem of the keys: {@code help.runSheet} */
    void show(String stem) {
        removeAll();
        Sheet sheet = new Sheet("fillx, flowy, aligny top", "[0::,grow,fill]", "");
        JPanel head = new JPanel(new MigLayout("insets 0, fillx", "[0::,grow,fill][]", "[baseline]"));
        head.setOpaque(false);
        head.add(Lettering.line(texts.get("shell.help"), Styles.SECTION), "wmin 0");
        head.add(close);
        sheet.add(head, "growx");
        for (String part : PARTS) {
            if (texts.has(stem + "." + part + ".1")) {
                sheet.add(Lettering.line(texts.get("help.part." + part), Styles.STRONG), "gaptop 8");
                for (int i = 1; texts.has(stem + "." + part + "." + i); i++) {
                    String words = texts.get(stem + "." + part + "." + i);
                    sheet.add(Lettering.paragraph(words, Styles.FIELD_LABEL), "growx, wmin 0");
                }
            }
        }
        add(new ScrollPage(sheet));
        revalidate();
        repaint();
    }
}
