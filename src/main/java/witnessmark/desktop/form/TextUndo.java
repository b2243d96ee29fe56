package witnessmark.desktop.form;

import java.awt.event.ActionEvent;
import java.awt.event.KeyEvent;
import java.util.function.BooleanSupplier;
import javax.swing.AbstractAction;
import javax.swing.Action;
import javax.swing.KeyStroke;
import javax.swing.event.UndoableEditEvent;
import javax.swing.text.JTextComponent;
import javax.swing.undo.CompoundEdit;
import javax.swing.undo.UndoManager;
import javax.swing.undo.UndoableEdit;

/**
 * Undo and redo of typing in one text component. Typing without a pause at a word's end is one step, and so is typing
 * over what was chosen.
 */
public final class TextUndo {
    private final UndoManager manager = new UndoManager();
    private Step open = new Step();
    private boolean whole;
    private boolean choiceGone;
    private int length;

    private TextUndo(JTextComponent text) {
        length = text.getDocument().getLength();
        text.getDocument().addUndoableEditListener(e -> note(text, e));
        bind(text, "wm-undo", Keys.menu(KeyEvent.VK_Z), this::undo, manager::canUndo);
        bind(text, "wm-redo", Keys.menu(KeyEvent.VK_Y), this::redo, manager::canRedo);
        text.getInputMap().put(Keys.menuShift(KeyEvent.VK_Z), "wm-redo");
    }

    public static TextUndo install(JTextComponent text) {
        return new TextUndo(text);
    }

    /** Forgets every step: what stands there now was loaded, not typed. */
    public void clear() {
        manager.discardAllEdits();
        open = new Step();
    }

    public void undo() {
        open.end();
        if (manager.canUndo()) {
            manager.undo();
        }
    }

    public void redo() {
        open.end();
        if (manager.canRedo()) {
            manager.redo();
        }
    }

    private void note(JTextComponent text, UndoableEditEvent event) {
        int now = text.getDocument().getLength();
        boolean typedOne = now == length + 1;
        boolean wordEnds = typedOne && text.getCaretPosition() > 0 && endsWord(text);
        boolean over = choiceGone && now > length;
        choiceGone = now < length - 1; // more than a character at once: what was chosen, perhaps to be typed over
        length = now;
        if (!open.isInProgress() || open.isEmpty() || (!over && (whole || !typedOne))) {
            open.end();
            open = new Step();
            open.addEdit(event.getEdit());
            manager.addEdit(open);
        } else {
            open.addEdit(event.getEdit());
        }
        whole = wordEnds || (!typedOne && !over);
    }

    private static boolean endsWord(JTextComponent text) {
        String all = text.getText();
        int last = Math.min(text.getCaretPosition(), all.length()) - 1;
        return last >= 0 && Character.isWhitespace(all.charAt(last));
    }

    /** While there is no typing to take back, the key goes on to the window, which takes back the last change. */
    private static void bind(
            JTextComponent text, String name, KeyStroke key, Runnable action, BooleanSupplier possible) {
        Action bound = new AbstractAction(name) {
            @Override
            public boolean isEnabled() {
                return possible.getAsBoolean();
            }

            @Override
            public void actionPerformed(ActionEvent e) {
                action.run();
            }
        };
        text.getActionMap().put(name, bound);
        text.getInputMap().put(key, name);
    }

    /** One step; it can be undone while it is still growing. */
    private static final class Step extends CompoundEdit {
        boolean isEmpty() {
            return edits.isEmpty();
        }

        @Override
        public boolean addEdit(UndoableEdit edit) {
            return super.addEdit(edit);
        }

        @Override
        public boolean canUndo() {
            return !edits.isEmpty();
        }
    }
}
