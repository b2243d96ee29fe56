package witnessmark.desktop.form;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Component;
import java.awt.KeyboardFocusManager;
import java.util.function.Consumer;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.SwingUtilities;

/**
 * Keeps the foot of a form in sight under its page; where the form is so low that hardly a field would be left above it,
 * the foot stands after the fields instead and scrolls with them. Its keys work all the same.
 */
public final class FootGivesWay {
    /** From this height on, in unscaled pixels, page and foot stand under each other. */
    private static final int UNDER_FROM = 330;

    private final JPanel form;
    private final Consumer<JComponent> scrolled;
    private final JComponent foot;
    private final String place;
    private final int turn;

    /**
     * @param form what page and foot are laid out in; the foot is the last of it so far
     * @param scrolled puts the foot where it scrolls with the page
     * @param place how the foot is laid out in the form
     */
    public FootGivesWay(JPanel form, Consumer<JComponent> scrolled, JComponent foot, String place) {
        this.form = form;
        this.scrolled = scrolled;
        this.foot = foot;
        this.place = place;
        this.turn = form.getComponentZOrder(foot);
    }

    /** Moves the foot when the room has changed. To be called before the form is laid out. */
    public void fit() {
        boolean under = UIScale.unscale(form.getHeight()) >= UNDER_FROM;
        if (form.getHeight() == 0 || under == (foot.getParent() == form)) {
            return;
        }
        Component focused =
                KeyboardFocusManager.getCurrentKeyboardFocusManager().getPermanentFocusOwner();
        if (under) {
            form.add(foot, place, turn);
        } else {
            scrolled.accept(foot);
        }
        form.revalidate();
        if (focused != null && SwingUtilities.isDescendingFrom(focused, foot)) {
            focused.requestFocusInWindow(); // it was taken out on the way
        }
    }
}
