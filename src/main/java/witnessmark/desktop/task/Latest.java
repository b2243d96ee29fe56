package witnessmark.desktop.task;

import java.util.concurrent.Callable;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/**
 * Asks the same question again and again and takes only the answer to the newest: an older one that arrives late is
 * dropped. Each screen that reads keeps one of its own. To be used on the event thread only.
 */
public final class Latest {
    private final Tasks tasks;
    private long asked;
    private @Nullable Running current;

    public Latest(Tasks tasks) {
        this.tasks = tasks;
    }

    /** Like {@link Tasks#run}; every earlier request through this object is called off. */
    public <T> void run(String name, Callable<T> work, Consumer<? super T> onDone, Consumer<Throwable> onFail) {
        drop();
        long mine = asked;
        current = tasks.run(
                name,
                work,
                answer -> {
                    if (mine == asked) {
                        onDone.accept(answer);
                    }
                },
                failure -> {
                    if (mine == asked) {
                        onFail.accept(failure);
                    }
                });
    }

    /** Wants no answer any more. */
    public void drop() {
        EventThread.require();
        asked++;
        Running before = current;
        if (before != null) {
            before.cancel();
            current = null;
        }
    }
}
