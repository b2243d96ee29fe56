package witnessmark.desktop.form;

import com.formdev.flatlaf.FlatClientProperties;
import java.awt.event.KeyEvent;
import java.time.Duration;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;
import java.util.function.Predicate;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextField;
import witnessmark.desktop.task.Later;

/**
 * The field above a list: only rows that hold every word typed are shown, a moment after typing pauses. It is there
 * while it is asked for or filters, and says how many rows are left of how many.
 */
final class SheetFilter extends JPanel {
    private static final Duration PAUSE = Duration.ofMillis(120);

    private final SheetTools tools;
    private final JTextField field = new JTextField();
    private final JLabel count = Lettering.line("", Styles.NOTE);
    private final JButton clear;
    private final transient Later soon;
    private boolean stays;

    /**
     * @param filter told the words whenever other ones are to hold
     * @param leave run when the focus is to go back to the rows
     */
    SheetFilter(SheetTools tools, Consumer<List<String>> filter, Runnable leave) {
        super(layout(4));
        this.tools = tools;
        this.soon = tools.tasks().later(PAUSE, () -> filter.accept(words()));
        setOpaque(false);
        setVisible(false);
        Styles.as(Styles.FIND, field);
        field.putClientProperty(
                FlatClientProperties.PLACEHOLDER_TEXT, tools.texts().get("form.list.filter.example"));
        field.getAccessibleContext().setAccessibleName(tools.texts().get("form.list.filter"));
        TextUndo.install(field);
        field.getDocument().addDocumentListener(new TextChange(soon::poke));
        add(field);
        add(count);
        clear = Buttons.link(Caption.of(tools.texts().get("form.list.clear")), () -> {
            clear();
            leave.run();
        });
        add(clear);
        bind(KeyEvent.VK_ESCAPE, () -> {
            clear();
            leave.run();
        });
        bind(KeyEvent.VK_DOWN, leave);
        bind(KeyEvent.VK_ENTER, () -> {
            soon.now();
            leave.run();
        });
    }

    private static FormLayout layout(int below) {
        return new FormLayout(
                "insets 0 0 " + below + " 0, gap 8, fillx, hidemode 3", "[0::300,grow,fill][]push[]", "[center]");
    }

    /** Stays in sight from now on, also while it filters nothing. */
    void stay() {
        stays = true;
        // a letter typed over the rows is to stand when the field takes the focus
        field.putClientProperty(
                FlatClientProperties.SELECT_ALL_ON_FOCUS_POLICY, FlatClientProperties.SELECT_ALL_ON_FOCUS_POLICY_NEVER);
        setLayout(layout(0));
        setVisible(true);
        clear.setVisible(filters());
    }

    /** Comes up with the first letter of what is looked for. */
    void begin(char letter) {
        setVisible(true);
        field.setText(String.valueOf(letter));
        field.requestFocusInWindow();
    }

    /** Comes up, with what stands in it selected. */
    void ask() {
        setVisible(true);
        revalidate();
        field.requestFocusInWindow();
        field.selectAll();
    }

    /** Filters by a text at once. */
    void load(String text) {
        field.setText(text);
        setVisible(stays || !text.isBlank());
        soon.now();
    }

    /** Filters by what stands there without waiting. */
    void settle() {
        soon.now();
    }

    /** Shows every row again and goes. */
    void clear() {
        load("");
    }

    boolean filters() {
        return !words().isEmpty();
    }

    String text() {
        return field.getText().strip();
    }

    JTextField field() {
        return field;
    }

    String counted() {
        return count.getText();
    }

    void count(int shown, int of) {
        String words = filters() ? tools.texts().get("form.list.count", shown, of) : "";
        count.setText(words);
        clear.setVisible(!stays || filters());
        field.getAccessibleContext().setAccessibleDescription(words);
    }

    /** Whether a text holds every word, without regard to case. */
    static Predicate<String> holding(List<String> words) {
        return text -> {
            String lower = text.toLowerCase(Locale.ROOT);
            return words.stream().allMatch(lower::contains);
        };
    }

    private List<String> words() {
        return Arrays.stream(text().toLowerCase(Locale.ROOT).split("\\s+"))
                .filter(word -> !word.isEmpty())
                .toList();
    }

    private void bind(int key, Runnable work) {
        FormKeys.bind(field, Keys.plain(key), "wm-" + key, work);
    }
}
