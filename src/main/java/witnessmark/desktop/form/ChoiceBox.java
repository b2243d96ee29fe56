package witnessmark.desktop.form;

import java.awt.Component;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.function.Supplier;
import javax.swing.DefaultComboBoxModel;
import javax.swing.DefaultListCellRenderer;
import javax.swing.JComboBox;
import javax.swing.JList;
import javax.swing.ListCellRenderer;
import javax.swing.UIManager;
import org.jspecify.annotations.Nullable;
import witnessmark.wording.Texts;

/**
 * One of a short list: label, drop-down, note line. Up and Down choose, letters typed without a pause jump; letters that
 * lead nowhere are said in the note line until the next key or until the focus leaves.
 */
public final class ChoiceBox<T> extends LabelledBox {
    /** After this a letter begins anew. */
    private static final long PAUSE_NANOS = 1_000_000_000L;

    private final Texts texts;
    private final JComboBox<T> combo;
    private final Function<? super T, String> words;
    private final StringBuilder typed = new StringBuilder();
    private long typedAt;
    private int before = -1;
    private Supplier<Map<String, String>> notOffered = Map::of;
    private boolean loading;

    /** @param words how a choice reads */
    public ChoiceBox(Texts texts, Caption caption, Function<? super T, String> words) {
        this(texts, caption, new JComboBox<>(), words);
    }

    private ChoiceBox(Texts texts, Caption caption, JComboBox<T> combo, Function<? super T, String> words) {
        super(caption, combo, combo, false);
        this.texts = texts;
        this.combo = combo;
        this.words = words;
        Lettering.plain(combo);
        combo.setRenderer(new Renderer());
        combo.setKeySelectionManager((key, model) -> startingWith(key, System.nanoTime()));
        combo.addActionListener(e -> {
            if (combo.getSelectedIndex() != before) {
                goOn();
            }
        });
        combo.addFocusListener(new FocusAdapter() {
            @Override
            public void focusLost(FocusEvent e) {
                goOn();
            }
        });
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

    /**
     * What somebody may look for that is not among the choices: how it would read there, and the sentence that says why
     * it is not. Asked when letters lead nowhere.
     */
    public void notOffered(Supplier<Map<String, String>> known) {
        notOffered = known;
    }

    /**
     * The choice that begins with the letters typed without a pause, or has a word that does, from the chosen one on; one letter alone, typed
     * again, goes to the next that begins with it.
     *
     * @param now in nanoseconds
     * @return its index; when no choice goes on with these letters that of what was chosen before them, -1 for none
     */
    int startingWith(char key, long now) {
        if (Character.isISOControl(key)) {
            return -1;
        }
        goOn();
        if (now - typedAt > PAUSE_NANOS) {
            typed.setLength(0);
        }
        if (typed.isEmpty()) {
            before = combo.getSelectedIndex();
        }
        typedAt = now;
        typed.append(Character.toLowerCase(key));
        boolean same = typed.chars().allMatch(letter -> letter == typed.charAt(0));
        int all = beginning(typed.toString(), typed.length() == 1 ? 1 : 0);
        int found = all < 0 && same ? beginning(typed.substring(0, 1), 1) : all;
        return found >= 0 ? found : nothingSo();
    }

    /** What half of the letters meant is not meant: what stood there before stands again, and it is heard and read. */
    private int nothingSo() {
        UIManager.getLookAndFeel().provideErrorFeedback(combo);
        if (combo.getSelectedIndex() != before) {
            combo.setSelectedIndex(before); // now, so that what the form says of it is said before this
        }
        interrupt(whyNothing(typed.toString()));
        return before;
    }

    private String whyNothing(String letters) {
        return notOffered.get().entrySet().stream()
                .filter(each -> begins(each.getKey(), letters))
                .map(Map.Entry::getValue)
                .findFirst()
                .orElseGet(() -> texts.get("form.choice.nothing", letters));
    }

    private static boolean begins(String words, String letters) {
        String lower = words.toLowerCase(Locale.ROOT);
        return lower.startsWith(letters) || lower.contains(" " + letters);
    }

    /** The choice that begins so, or else the one in which a word does: {@code K03} finds {@code Engine K03}. */
    private int beginning(String letters, int from) {
        int whole = next(from, words -> words.startsWith(letters));
        return whole >= 0 ? whole : next(from, words -> words.contains(" " + letters));
    }

    private int next(int from, Predicate<String> asked) {
        int count = combo.getItemCount();
        for (int step = from; step < count + from; step++) {
            int index = Math.floorMod(combo.getSelectedIndex() + step, count);
            T item = combo.getItemAt(index);
            if (item != null && asked.test(words.apply(item).toLowerCase(Locale.ROOT))) {
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
