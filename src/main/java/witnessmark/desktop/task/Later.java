package witnessmark.desktop.task;

import java.time.Duration;
import java.util.Set;
import javax.swing.Timer;

/** Runs an action once, when it has been quiet for a while: drafts, live preview, filtering. Event thread only. */
public final class Later {
    private final Timer timer;
    private final Runnable action;
    private final Set<Later> waiting;

    Later(Duration quiet, Runnable action, Set<Later> waiting) {
        this.action = action;
        this.waiting = waiting;
        this.timer = new Timer(Math.toIntExact(quiet.toMillis()), e -> now());
        timer.setRepeats(false);
    }

    /** Starts the while over. */
    public void poke() {
        EventThread.require();
        waiting.add(this);
        timer.restart();
    }

    /** Lets at most one while pass from the first poke: further pokes do not put the action off. */
    public void pokeOnce() {
        EventThread.require();
        if (waiting.add(this)) {
            timer.restart();
        }
    }

    /** Runs the action at once if it is waiting, for example when a field loses the focus. */
    public void now() {
        EventThread.require();
        timer.stop();
        if (waiting.remove(this)) {
            action.run();
        }
    }

    public void cancel() {
        EventThread.require();
        timer.stop();
        waiting.remove(this);
    }

    public boolean isWaiting() {
        return waiting.contains(this);
    }
}
