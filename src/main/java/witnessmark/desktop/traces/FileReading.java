package witnessmark.desktop.traces;

import java.nio.file.Path;
import java.time.Duration;
import java.util.function.BiConsumer;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import witnessmark.desktop.task.Latest;
import witnessmark.desktop.task.Ticking;
import witnessmark.logbook.tracing.TraceAnswers;
import witnessmark.trace.result.TraceSettings;

/** Reads the file in hand off the event thread, says how far it is, and reads no further once that is called off. */
final class FileReading {
    private static final Logger LOG = LoggerFactory.getLogger(FileReading.class);
    private static final Duration BETWEEN_LOOKS = Duration.ofMillis(100);

    private final TracesContext context;
    private final UnderstoodWords words;
    private final BiConsumer<Integer, String> progress;
    private final Latest reading;
    private @Nullable ReadFile underWay;
    private @Nullable Ticking ticking;
    private long begun;

    /** @param progress told how far it is in thousandths, -1 when that is not known, and in words */
    FileReading(TracesContext context, UnderstoodWords words, BiConsumer<Integer, String> progress) {
        this.context = context;
        this.words = words;
        this.progress = progress;
        this.reading = new Latest(context.tasks());
    }

    boolean isUnderWay() {
        return underWay != null;
    }

    /**
     * Reads a file by what was answered of it; what was under way is called off.
     *
     * @param taken gets what was read
     * @param failed something broke inside the program
     */
    void start(TraceModel of, Path at, BiConsumer<TraceModel, TraceModel.Read> taken, Runnable failed) {
        stop();
        ReadFile file = new ReadFile(context.files().file(at));
        underWay = file;
        begun = System.nanoTime();
        ticking = context.tasks().every(BETWEEN_LOOKS, this::tick);
        TraceAnswers answers = of.answers();
        TraceSettings settings = of.settings();
        reading.run(
                context.texts().get("traces.reading.file", of.file()),
                () -> TraceModel.Read.of(
                        context.bringIn(),
                        context.book(),
                        context.bringIn().read(file, answers, settings, true, bytes -> !file.isStopped())),
                read -> {
                    ended();
                    taken.accept(of, read);
                },
                failure -> {
                    ended();
                    LOG.error("a trace could not be read", failure);
                    failed.run();
                });
    }

    /** Reads no further, and wants no answer. */
    void stop() {
        ReadFile file = underWay;
        if (file != null) {
            file.stop();
        }
        reading.drop();
        ended();
    }

    private void ended() {
        underWay = null;
        Ticking now = ticking;
        if (now != null) {
            now.close();
            ticking = null;
        }
    }

    private void tick() {
        ReadFile file = underWay;
        if (file == null) {
            return;
        }
        long all = file.all();
        long bytes = file.bytes();
        double seconds = (System.nanoTime() - begun) / 1e9;
        String rate = words.size(Math.round(bytes / Math.max(0.001, seconds)));
        progress.accept(
                all <= 0 ? -1 : (int) Math.min(1000, bytes * 1000 / all),
                context.texts().get("traces.progress", words.size(bytes), words.size(Math.max(all, bytes)), rate));
    }
}
