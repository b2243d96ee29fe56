package witnessmark.desktop.bench;

import java.awt.Component;
import java.awt.event.KeyEvent;
import java.util.List;
import java.util.function.Consumer;
import javax.swing.DefaultComboBoxModel;
import javax.swing.DefaultListCellRenderer;
import javax.swing.JComboBox;
import javax.swing.JList;
import javax.swing.JPanel;
import org.jspecify.annotations.Nullable;
import witnessmark.desktop.form.FormKeys;
import witnessmark.desktop.form.FormLayout;
import witnessmark.desktop.form.Keys;
import witnessmark.desktop.form.Lettering;
import witnessmark.wording.Texts;

/** Which build is on the bench. */
final class BuildChoice extends JPanel {
    private static final int ROWS = 14;

    private final JComboBox<BenchLines.Choice> combo = new JComboBox<>();
    private List<BenchLines.Choice> shown = List.of();
    private boolean loading;

    BuildChoice(Texts texts, Consumer<String> chosen) {
        super(new FormLayout("insets 0, fillx", "[0::,grow,fill]"));
        setOpaque(false);
        Lettering.plain(combo);
        combo.setRenderer(new Words());
        combo.setMaximumRowCount(ROWS);
        combo.setMinimumSize(new java.awt.Dimension(0, 0));
        combo.getAccessibleContext().setAccessibleName(texts.get("bench.build.choose"));
        combo.setToolTipText(
                texts.get("bench.tip", texts.get("bench.build.choose"), Keys.words(Keys.alt(KeyEvent.VK_B))));
        FormKeys.enterMovesOn(combo);
        combo.addActionListener(e -> {
            int at = combo.getSelectedIndex();
            if (!loading && at >= 0) {
                chosen.accept(combo.getItemAt(at).id());
            }
        });
        add(combo, "growx, wmin 0");
    }

    void show(List<BenchLines.Choice> all, BenchLines.@Nullable Choice chosen) {
        loading = true;
        if (!all.equals(shown)) {
            shown = List.copyOf(all);
            DefaultComboBoxModel<BenchLines.Choice> model = new DefaultComboBoxModel<>();
            model.addAll(all);
            combo.setModel(model);
        }
        combo.setSelectedItem(chosen);
        loading = false;
    }

    JComboBox<BenchLines.Choice> combo() {
        return combo;
    }

    private static final class Words extends DefaultListCellRenderer {
        Words() {
            Lettering.plain(this);
        }

        @Override
        public Component getListCellRendererComponent(
                JList<?> list, @Nullable Object value, int index, boolean selected, boolean focused) {
            String words = value instanceof BenchLines.Choice choice ? choice.words() : " ";
            return super.getListCellRendererComponent(list, words, index, selected, focused);
        }
    }
}
