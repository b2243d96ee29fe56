package witnessmark.desktop.form;

import java.awt.Component;
import java.awt.Container;
import java.awt.KeyboardFocusManager;
import java.awt.event.HierarchyEvent;
import java.beans.PropertyChangeEvent;
import java.beans.PropertyChangeListener;
import java.util.Arrays;
import java.util.Optional;
import javax.accessibility.AccessibleContext;
import javax.swing.JComponent;
import javax.swing.SwingUtilities;
import org.jspecify.annotations.Nullable;

/** Remembers which component of a page had the focus last, so that who comes back goes on where he was. */
public final class LastFocus implements PropertyChangeListener {
    private static final String OWNER = "permanentFocusOwner";

    private final JComponent page;
    private @Nullable JComponent last;
    private String name = "";
    private boolean listening;

    /** @param page listened to while it is in a window; what was remembered stays when it leaves it */
    public LastFocus(JComponent page) {
        this.page = page;
        page.addHierarchyListener(event -> {
            if ((event.getChangeFlags() & HierarchyEvent.DISPLAYABILITY_CHANGED) != 0) {
                listen(page.isDisplayable());
            }
        });
        listen(page.isDisplayable());
    }

    /** The component, or the one that came in its place under the same name; empty when neither takes the focus. */
    public Optional<JComponent> component() {
        return Optional.ofNullable(last)
                .filter(LastFocus::takes)
                .or(() -> name.isEmpty() ? Optional.empty() : named(page));
    }

    private Optional<JComponent> named(Component from) {
        if (from instanceof JComponent one && takes(one) && name.equals(nameOf(one))) {
            return Optional.of(one);
        }
        Component[] within = from instanceof Container container ? container.getComponents() : new Component[0];
        return Arrays.stream(within).flatMap(each -> named(each).stream()).findFirst();
    }

    private static boolean takes(JComponent component) {
        return component.isShowing() && component.isEnabled() && component.isFocusable();
    }

    private static String nameOf(JComponent component) {
        AccessibleContext context = component.getAccessibleContext();
        String name = context == null ? null : context.getAccessibleName();
        return name == null ? "" : name;
    }

    @Override
    public void propertyChange(PropertyChangeEvent event) {
        if (event.getNewValue() instanceof JComponent owner && SwingUtilities.isDescendingFrom(owner, page)) {
            last = owner;
            name = nameOf(owner);
        }
    }

    private void listen(boolean yes) {
        if (yes == listening) {
            return;
        }
        listening = yes;
        KeyboardFocusManager manager = KeyboardFocusManager.getCurrentKeyboardFocusManager();
        if (yes) {
            manager.addPropertyChangeListener(OWNER, this);
        } else {
            manager.removePropertyChangeListener(OWNER, this);
        }
    }
}
