package witnessmark.desktop.form;

import java.awt.Component;
import java.util.List;
import java.util.function.Function;
import javax.swing.DefaultComboBoxModel;
import javax.swing.DefaultListCellRenderer;
import javax.swing.JComboBox;
import javax.swing.JList;
import javax.swing.ListCellRenderer;
import org.jspecify.annotations.Nullable;

/** One of a short list: label, drop-down, note line. Up and Down choose, letters jump. */
public final class ChoiceBox<T> extends LabelledBox {
    private final JComboBox<T> combo;
    private final Function<? super T, String> words;
    private boolean loading;

    /** @param words how a choice reads */
    public ChoiceBox(Caption caption, Function<? super T, String> words) {
        this(caption, new JComboBox<>(), words);
    }

    private ChoiceBox(Caption caption, JComboBox<T> combo, Function<? super T, String> words) {
        super(caption, combo, combo, false);
        this.combo = combo;
        this.words = words;
        Lettering.plain(combo);
        combo.setRenderer(new Renderer());
        combo.setKeySelectionManager((key, model) -> startingWith(key));
        combo.setMaximumRowCount(14);
        combo.setMinimumSize(new java.awt.Dimension(0, 0));
    }

    /** Puts other choices in, without telling anybody that the choice changed. */
    public void load(List<? extends T> choices, @Nullable T chosen) {
        loading = true;
        DefaultComboBoxModel<T> model = new DefaultComboBoxModel<>();
        model.addAll(choices);
        combo.setModel(model);
        combo.setSelectedItem(chosen);
        loading = false;
    }

    public void choose(@Nullable T choice) {
        loading = true;
        combo.setSelectedItem(choice);
        loading = false;
    }

    public @Nullable T chosen() {
        int index = combo.getSelectedIndex();
        return index < 0 ? null : combo.getItemAt(index);
    }

    public JComboBox<T> combo() {
        return combo;
    }

    /** Told when somebody chooses. */
    public void onChange(Runnable listener) {
        combo.addActionListener(e -> {
            if (!loading) {
                listener.run();
            }
        });
    }

    private int startingWith(char key) {
        int count = combo.getItemCount();
        for (int step = 1; step <= count; step++) {
            int index = Math.floorMod(combo.getSelectedIndex() + step, count);
            String word = words.apply(combo.getItemAt(index));
            if (!word.isEmpty() && Character.toLowerCase(word.charAt(0)) == Character.toLowerCase(key)) {
                return index;
            }
        }
        return -1;
    }

    /** Shows the words of a choice. */
    private final class Renderer implements ListCellRenderer<T> {
        private final DefaultListCellRenderer label = Lettering.plain(new DefaultListCellRenderer());

        @Override
        public Component getListCellRendererComponent(
                JList<? extends T> list, @Nullable T value, int index, boolean selected, boolean focused) {
            String text = value == null ? " " : words.apply(value);
            return label.getListCellRendererComponent(list, text, index, selected, focused);
        }
    }
}
