package witnessmark.desktop.testing;

import java.util.Arrays;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import javax.swing.JComponent;
import javax.swing.RepaintManager;
import javax.swing.SwingUtilities;

/** Notes every change of a component that is made off the event thread, with where it was made. */
public final class EventThreadGuard extends RepaintManager {
    private final List<String> violations = new CopyOnWriteArrayList<>();

    EventThreadGuard() {
        // Pictures are painted straight into an image.
        setDoubleBufferingEnabled(false);
    }

    public List<String> violations() {
        return violations;
    }

    public void forget() {
        violations.clear();
    }

    @Override
    public synchronized void addInvalidComponent(JComponent component) {
        check(component);
        super.addInvalidComponent(component);
    }

    @Override
    public void addDirtyRegion(JComponent component, int x, int y, int w, int h) {
        check(component);
        super.addDirtyRegion(component, x, y, w, h);
    }

    private void check(JComponent component) {
        if (!SwingUtilities.isEventDispatchThread()) {
            StackTraceElement[] stack = new Throwable().getStackTrace();
            String where = Arrays.stream(stack)
                    .skip(2)
                    .limit(12)
                    .map(StackTraceElement::toString)
                    .reduce("", (all, line) -> all + "\n    at " + line);
            violations.add(component.getClass().getName() + " on "
                    + Thread.currentThread().getName() + where);
        }
    }
}
