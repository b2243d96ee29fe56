package witnessmark.desktop.engines;

import java.awt.Component;
import java.awt.KeyboardFocusManager;
import java.awt.event.KeyEvent;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javax.swing.JButton;
import javax.swing.JPanel;
import javax.swing.SwingUtilities;
import org.jspecify.annotations.Nullable;
import witnessmark.desktop.form.Buttons;
import witnessmark.desktop.form.Caption;
import witnessmark.desktop.form.FieldBox;
import witnessmark.desktop.form.FormKeys;
import witnessmark.desktop.form.FormLayout;
import witnessmark.desktop.form.Keys;
import witnessmark.desktop.form.Styles;
import witnessmark.wording.Texts;

/** The buttons under the entries, each enabled while it can be done, and the reason asked for striking out. */
final class EntryActions extends JPanel {
    private final Texts texts;
    private final EntryWork work;
    private final Supplier<@Nullable BehindLine> inHand;
    private final JButton strike;
    private final JButton restore;
    private final JButton same;
    private final JButton another;
    private final JButton open;
    private final JButton history;
    private final JPanel buttons = row();
    private final JPanel asking = row();
    private final FieldBox reason;
    private boolean readOnly;

    EntryActions(Texts texts, EntryWork work, Supplier<@Nullable BehindLine> inHand) {
        super(new FormLayout("insets 0, gap 0, fillx, hidemode 3, wrap", "[0::,grow,fill]"));
        this.texts = texts;
        this.work = work;
        this.inHand = inHand;
        setOpaque(false);
        strike = button("engines.entry.strike", line -> ask());
        restore = button("engines.entry.restore", work::restore);
        same = button("engines.entry.same", work::same);
        another = button("engines.entry.another", work::another);
        open = button("engines.entry.open", work::open);
        history = button("engines.entry.history", work::history);
        buttons.add(open);
        buttons.add(strike);
        buttons.add(restore);
        buttons.add(same);
        buttons.add(another);
        buttons.add(history);
        reason = new FieldBox(Caption.of(texts.get("engines.entry.reason")));
        JButton really = Styles.as(
                Styles.MAIN, Buttons.plain(Caption.of(texts.get("engines.entry.strikeNow")), this::strikeOut));
        JButton not = Buttons.plain(Caption.of(texts.get("engines.entry.cancel")), this::stopAsking);
        asking.setLayout(new FormLayout("insets 0, gap 8, fillx", "[0::,grow,fill][][]", "[bottom]"));
        asking.add(reason, "growx");
        asking.add(not, "gapbottom 18");
        asking.add(really, "gapbottom 18");
        reason.onEnter(this::strikeOut);
        FormKeys.bindWithin(asking, Keys.menu(KeyEvent.VK_ENTER), "wm-strike", this::strikeOut);
        asking.setVisible(false);
        add(buttons, "w 0:0:");
        add(asking, "w 0:0:");
        follow(null);
    }

    /** Nothing but the history can be had while an earlier day is looked at. */
    void readOnly(boolean yes) {
        readOnly = yes;
    }

    /** Offers what can be done to the entry. The focus stays here when it is here, though its button may go. */
    void follow(@Nullable BehindLine line) {
        Component owner = KeyboardFocusManager.getCurrentKeyboardFocusManager().getPermanentFocusOwner();
        boolean focused = owner != null && SwingUtilities.isDescendingFrom(owner, this);
        asking.setVisible(false);
        buttons.setVisible(true);
        enable(strike, line != null && line.canStrike(), "engines.entry.strike");
        enable(restore, line != null && line.canRestore(), "engines.entry.restore");
        same.setVisible(line != null && line.canSettle());
        another.setVisible(line != null && line.canSettle());
        enable(same, line != null && line.canSettle(), "engines.entry.same");
        enable(another, line != null && line.canSettle(), "engines.entry.another");
        strike.setVisible(line == null || !line.canRestore());
        restore.setVisible(line != null && line.canRestore());
        open.setEnabled(line != null);
        open.setToolTipText(texts.get("engines.entry.open.tip"));
        history.setEnabled(line != null);
        revalidate();
        if (focused && !owner.isShowing()) {
            takeFocus();
        }
    }

    private void takeFocus() {
        JButton first = restore.isVisible() ? restore : strike;
        (first.isEnabled() ? first : history).requestFocusInWindow();
    }

    boolean asking() {
        return asking.isVisible();
    }

    void ask() {
        buttons.setVisible(false);
        asking.setVisible(true);
        reason.load("");
        reason.note(texts.get("engines.entry.reason.note"));
        revalidate();
        reason.takeFocus();
    }

    void stopAsking() {
        if (asking.isVisible()) {
            follow(inHand.get());
        }
    }

    FieldBox reason() {
        return reason;
    }

    JButton strikeButton() {
        return strike;
    }

    JButton restoreButton() {
        return restore;
    }

    JButton historyButton() {
        return history;
    }

    void strikeOut() {
        BehindLine line = inHand.get();
        if (line == null) {
            return;
        }
        if (reason.text().isBlank()) {
            reason.stop(texts.get("engines.entry.reason.needed"));
            reason.takeFocus();
            return;
        }
        work.strikeOut(line, reason.text().strip());
    }

    private JButton button(String key, Consumer<BehindLine> does) {
        return Buttons.plain(Caption.of(texts.get(key)), () -> {
            BehindLine line = inHand.get();
            if (line != null) {
                does.accept(line);
            }
        });
    }

    private void enable(JButton button, boolean possible, String key) {
        button.setEnabled(possible && !readOnly);
        button.setToolTipText(readOnly ? texts.get("engines.entry.readOnly") : texts.get(key + ".tip"));
    }

    private static JPanel row() {
        JPanel row = new JPanel(new FormLayout("insets 0, gap 8, hidemode 3"));
        row.setOpaque(false);
        return row;
    }
}
