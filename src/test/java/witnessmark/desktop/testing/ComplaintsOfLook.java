package witnessmark.desktop.testing;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.logging.Handler;
import java.util.logging.LogRecord;
import java.util.logging.Logger;

/** What the look logs and goes on from: a style that does not exist, a colour that cannot be read, a missing icon. */
final class ComplaintsOfLook extends Handler {
    private static final Logger LOG = Logger.getLogger("com.formdev.flatlaf");

    private final List<String> said = Collections.synchronizedList(new ArrayList<>());

    void listen() {
        said.clear();
        LOG.addHandler(this);
    }

    List<String> stop() {
        LOG.removeHandler(this);
        return List.copyOf(said);
    }

    @Override
    public void publish(LogRecord entry) {
        said.add(entry.getMessage() + " " + entry.getThrown());
    }

    @Override
    public void flush() {
        // nothing is kept back
    }

    @Override
    public void close() {
        LOG.removeHandler(this);
    }
}
