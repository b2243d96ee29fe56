package witnessmark.desktop.shell;

import java.awt.event.ActionEvent;
import javax.swing.AbstractAction;
import javax.swing.KeyStroke;
import org.jspecify.annotations.Nullable;
import witnessmark.desktop.form.Caption;
import witnessmark.desktop.form.Keys;
import witnessmark.wording.Texts;

/**
 * One thing a person can do: name, letter, key, tip, and what it does. Menu, button and key share the one object. The
 * bundle holds its name under the key, with {@code &} before the letter, its tip under the key with {@code .tip}, and under
 * that with {@code .found}, where there are any, other words by which people look for it.
 */
public final class Command extends AbstractAction {
    private final String key;
    private final CommandMenu menu;
    private final int section;
    private final String tip;
    private final String also;
    private final Runnable work;
    private boolean choice;

    /**
     * @param key of its name in the bundles: {@code runsheet.logRun}
     * @param section commands of one menu with the same number stand together; lines part the sections
     * @param accelerator its key, {@code null} for none; see {@link Keys}
     */
    public Command(
            Texts texts, String key, CommandMenu menu, int section, @Nullable KeyStroke accelerator, Runnable work) {
        this.key = key;
        this.menu = menu;
        this.section = section;
        this.work = work;
        this.tip = texts.get(key + ".tip");
        this.also = texts.has(key + ".found") ? texts.get(key + ".found") : "";
        Caption caption = Caption.of(texts.get(key));
        putValue(NAME, caption.text());
        if (caption.mnemonic() != 0) {
            putValue(MNEMONIC_KEY, caption.mnemonic());
            putValue(DISPLAYED_MNEMONIC_INDEX_KEY, caption.letter());
        }
        putValue(ACCELERATOR_KEY, accelerator);
        enable();
    }

    /** Makes it one of several of which one is in force: shown with a mark in the menu. */
    public Command asChoice(boolean inForce) {
        choice = true;
        putValue(SELECTED_KEY, inForce);
        return this;
    }

    public void inForce(boolean yes) {
        putValue(SELECTED_KEY, yes);
    }

    /** Can be done now. */
    public void enable() {
        KeyStroke accelerator = accelerator();
        putValue(SHORT_DESCRIPTION, accelerator == null ? tip : tip + "  " + Keys.words(accelerator));
        setEnabled(true);
    }

    /**
     * Cannot be done now.
     *
     * @param reason shown as its tip
     */
    public void disable(String reason) {
        putValue(SHORT_DESCRIPTION, reason);
        setEnabled(false);
    }

    /** Gives it another name for a while, "Undo fitting spring set S-14" for example. */
    public void rename(String name) {
        putValue(NAME, name);
    }

    @Override
    public void actionPerformed(ActionEvent e) {
        work.run();
    }

    /** Does it, as if it had been chosen in the menu; nothing when it is disabled. */
    public void perform() {
        if (isEnabled()) {
            work.run();
        }
    }

    public String key() {
        return key;
    }

    public String name() {
        return String.valueOf(getValue(NAME));
    }

    public String tip() {
        return tip;
    }

    /** Other words by which people look for it; empty for none. */
    String also() {
        return also;
    }

    public CommandMenu menu() {
        return menu;
    }

    public int section() {
        return section;
    }

    public boolean isChoice() {
        return choice;
    }

    public @Nullable KeyStroke accelerator() {
        return getValue(ACCELERATOR_KEY) instanceof KeyStroke stroke ? stroke : null;
    }
}
