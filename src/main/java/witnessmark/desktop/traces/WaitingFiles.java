package witnessmark.desktop.traces;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Files that wait their turn: those that were dropped, then those in the folder that is watched. */
final class WaitingFiles {
    private final TraceWatch watch;
    private final Set<Path> dropped = new LinkedHashSet<>();

    WaitingFiles(TraceWatch watch) {
        this.watch = watch;
    }

    void drop(Collection<Path> files) {
        dropped.addAll(files);
    }

    /** It is opened, and need not be again. */
    void opened(Path file) {
        dropped.remove(file);
    }

    /** All but one, in their order from that one on. */
    List<Path> after(@Nullable Path inHand) {
        Set<Path> all = new LinkedHashSet<>(dropped);
        watch.waiting().forEach(each -> all.add(each.path()));
        List<Path> order = new ArrayList<>(all);
        int at = order.indexOf(inHand);
        if (at >= 0) {
            Collections.rotate(order, -at);
            order.remove(0);
        }
        return order;
    }
}
