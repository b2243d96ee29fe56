package witnessmark.desktop.shell;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Back and Forward over what was visited. The oldest of a hundred is forgotten. */
public final class Visits {
    private static final int MOST = 100;

    private final Deque<Visit> back = new ArrayDeque<>();
    private final Deque<Visit> forward = new ArrayDeque<>();
    private @Nullable Visit current;

    /** Goes somewhere new: what was ahead is forgotten. Going where one is changes nothing. */
    public void go(Visit next) {
        Visit before = current;
        if (next.equals(before)) {
            return;
        }
        if (before != null) {
            back.push(before);
            if (back.size() > MOST) {
                back.removeLast();
            }
        }
        forward.clear();
        current = next;
    }

    public Optional<Visit> current() {
        return Optional.ofNullable(current);
    }

    public boolean canGoBack() {
        return !back.isEmpty();
    }

    public boolean canGoForward() {
        return !forward.isEmpty();
    }

    /** One step back; where that is. */
    public Optional<Visit> goBack() {
        return step(back, forward);
    }

    /** One step forward; where that is. */
    public Optional<Visit> goForward() {
        return step(forward, back);
    }

    /** One step back to where one came from, if that is where it goes: what was gone to meanwhile is forgotten. */
    boolean returnTo(Visit from) {
        if (!from.equals(back.peek())) {
            return false;
        }
        current = back.pop();
        return true;
    }

    private Optional<Visit> step(Deque<Visit> from, Deque<Visit> to) {
        if (from.isEmpty()) {
            return Optional.empty();
        }
        Visit before = current;
        if (before != null) {
            to.push(before);
        }
        current = from.pop();
        return Optional.of(current);
    }
}
