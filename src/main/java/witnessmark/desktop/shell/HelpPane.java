package witnessmark.desktop.shell;

import java.awt.BorderLayout;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.swing.JButton;
import javax.swing.JPanel;
import witnessmark.desktop.form.Buttons;
import witnessmark.desktop.form.Caption;
import witnessmark.desktop.form.FormLayout;
import witnessmark.desktop.form.Kept;
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
    private List<String> shown = List.of();

    /** @param onClose told that the pane is not wanted any more */
    HelpPane(Texts texts, Runnable onClose) {
        super(new BorderLayout());
        this.texts = texts;
        setOpaque(false);
        getAccessibleContext().setAccessibleName(texts.get("shell.help"));
        close = Buttons.link(Caption.of(texts.get("shell.help.close")), onClose);
        Kept.leaves(close); // made with the window, and in it once somebody asks for help
        setVisible(false);
    }

    JButton firstFocus() {
        return close;
    }

    /** @param stems of the keys, one said under the other: {@code help.runSheet} */
    void show(List<String> stems) {
        if (stems.equals(shown)) {
            return; // scrolled to where somebody reads
        }
        shown = List.copyOf(stems);
        removeAll();
        Sheet sheet = new Sheet("fillx, flowy, aligny top", "[0::,grow,fill]", "");
        JPanel head = new JPanel(new FormLayout("insets 0, fillx", "[0::,grow,fill][]", "[baseline]"));
        head.setOpaque(false);
        head.add(Lettering.line(texts.get("shell.help"), Styles.SECTION), "wmin 0");
        head.add(close);
        Kept.returns(close);
        sheet.add(head, "growx");
        for (String part : PARTS) {
            List<String> said =
                    stems.stream().flatMap(stem -> said(stem + "." + part)).toList();
            if (!said.isEmpty()) {
                sheet.add(Lettering.line(texts.get("help.part." + part), Styles.STRONG), "gaptop 8");
                said.forEach(words -> sheet.add(Lettering.paragraph(words, Styles.FIELD_LABEL), "growx, wmin 0"));
            }
        }
        add(new ScrollPage(sheet));
        revalidate();
        repaint();
    }

    private Stream<String> said(String key) {
        return IntStream.iterate(1, i -> texts.has(key + "." + i), i -> i + 1).mapToObj(i -> texts.get(key + "." + i));
    }
}
