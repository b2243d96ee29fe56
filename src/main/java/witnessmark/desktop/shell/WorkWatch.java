package witnessmark.desktop.shell;

import java.time.Duration;
import java.time.Instant;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import witnessmark.desktop.form.StatusStrip;
import witnessmark.desktop.task.Tasks;
import witnessmark.desktop.task.Ticking;

/** Says in the status strip what is being done once it has taken a second; what is quicker goes unsaid. */
final class WorkWatch {
    static final Duration UNSAID = Duration.ofSeconds(1);

    private static final Duration PERIOD = Duration.ofMillis(250);

    private final Tasks tasks;
    private final StatusStrip strip;
    private final Supplier<Instant> clock;
    private @Nullable Ticking ticking;

    WorkWatch(Tasks tasks, StatusStrip strip, Supplier<Instant> clock) {
        this.tasks = tasks;
        this.strip = strip;
        this.clock = clock;
        tasks.onChange(this::follow);
    }

    /** Looks again and again as long as there is anything to look at. */
    private void follow() {
        Ticking now = ticking;
        boolean busy = !tasks.underWay().isEmpty();
        if (busy && now == null) {
            ticking = tasks.every(PERIOD, this::look);
        } else if (!busy && now != null) {
            now.close();
            ticking = null;
            look();
        }
    }

    void look() {
        Instant now = clock.get();
        strip.working(tasks.underWay().stream()
                .filter(work -> work.age(now).compareTo(UNSAID) >= 0)
                .findFirst()
                .map(work -> work.name())
                .orElse(""));
    }
}
