package witnessmark.desktop.form;

import com.formdev.flatlaf.util.UIScale;
import java.awt.BorderLayout;
import java.awt.Dimension;
import java.awt.KeyboardFocusManager;
import java.awt.Point;
import java.awt.Rectangle;
import java.beans.PropertyChangeListener;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTable;
import javax.swing.JViewport;
import javax.swing.Scrollable;
import javax.swing.SwingUtilities;
import org.jspecify.annotations.Nullable;
import witnessmark.desktop.task.EventThread;

/**
 * A page that scrolls down and never sideways: what is in it is always as wide as the page. What takes the focus comes
 * into view.
 */
public final class ScrollPage extends JScrollPane {
    private static final String FOCUS = "permanentFocusOwner";

    /** What comes into view with an input: its label above it and its note under it. */
    private static final int AROUND = 22;

    private final PropertyChangeListener follow = change -> bringIntoView(change.getNewValue());

    public ScrollPage(JComponent content) {
        super(new Tracking(content));
        setHorizontalScrollBarPolicy(HORIZONTAL_SCROLLBAR_NEVER);
        setOpaque(false);
        getViewport().setOpaque(false);
        setBorder(BorderFactory.createEmptyBorder());
        getVerticalScrollBar().setUnitIncrement(UIScale.scale(24));
    }

    @Override
    public void addNotify() {
        super.addNotify();
        KeyboardFocusManager.getCurrentKeyboardFocusManager().addPropertyChangeListener(FOCUS, follow);
    }

    @Override
    public void removeNotify() {
        KeyboardFocusManager.getCurrentKeyboardFocusManager().removePropertyChangeListener(FOCUS, follow);
        super.removeNotify();
    }

    /** Puts something under all that is on the page. */
    public void end(JComponent last) {
        Tracking all = (Tracking) getViewport().getView();
        all.add(last, BorderLayout.SOUTH);
        all.revalidate();
    }

    /** Shows the page from its top, or as little below it as the focus needs, once it is laid out. */
    public void fromTop() {
        EventThread.later(() -> {
            validate();
            getViewport().setViewPosition(new Point(0, 0));
            bringIntoView(KeyboardFocusManager.getCurrentKeyboardFocusManager().getPermanentFocusOwner());
        });
    }

    /** What has the focus comes into view again, once the page has its new height. */
    public void toFocus() {
        EventThread.later(() -> {
            validate();
            bringIntoView(KeyboardFocusManager.getCurrentKeyboardFocusManager().getPermanentFocusOwner());
        });
    }

    /** A table scrolls its own rows into view; a text field only its own text, so that its parent is asked. */
    void bringIntoView(@Nullable Object focused) {
        if (focused instanceof JComponent component
                && !(focused instanceof JTable)
                && component.getParent() instanceof JComponent parent
                && SwingUtilities.isDescendingFrom(component, getViewport())) {
            Rectangle wanted = component.getBounds();
            wanted.grow(0, UIScale.scale(AROUND));
            parent.scrollRectToVisible(wanted);
        }
    }

    /** As wide as the viewport, and at least as high. */
    private static final class Tracking extends JPanel implements Scrollable {
        Tracking(JComponent content) {
            super(new BorderLayout(0, UIScale.scale(8)));
            setOpaque(false);
            add(content, BorderLayout.CENTER);
        }

        @Override
        public Dimension getPreferredScrollableViewportSize() {
            return getPreferredSize();
        }

        @Override
        public int getScrollableUnitIncrement(Rectangle visible, int orientation, int direction) {
            return UIScale.scale(24);
        }

        @Override
        public int getScrollableBlockIncrement(Rectangle visible, int orientation, int direction) {
            return Math.max(UIScale.scale(24), visible.height - UIScale.scale(48));
        }

        @Override
        public boolean getScrollableTracksViewportWidth() {
            return true;
        }

        @Override
        public boolean getScrollableTracksViewportHeight() {
            return getParent() instanceof JViewport viewport && viewport.getHeight() > getPreferredSize().height;
        }
    }
}
