package witnessmark.trace.reduce;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import witnessmark.trace.DefectLog;
import witnessmark.trace.Layout;
import witnessmark.trace.SampleSink;
import witnessmark.trace.result.Defects;
import witnessmark.trace.result.Reduction;
import witnessmark.trace.result.TraceSettings;

/** Works out what an engine did while its trace is read: one {@link Reduction} for each part whose time begins anew. */
public final class Reducer implements SampleSink {
    private final TraceSettings settings;
    private final DefectLog defects = new DefectLog();
    private final List<Reduction> parts = new ArrayList<>();
    private @Nullable Layout layout;
    private @Nullable Part part;

    public Reducer(TraceSettings settings) {
        this.settings = settings;
    }

    @Override
    public void begin(Layout of) {
        layout = of;
        part = new Part(settings, of, 0, defects);
    }

    @Override
    public void sample(long micros, double[] values) {
        Objects.requireNonNull(part).sample(micros, values);
    }

    @Override
    public void part() {
        parts.add(Objects.requireNonNull(part).found());
        part = new Part(settings, Objects.requireNonNull(layout), parts.size(), defects);
    }

    @Override
    public void end() {
        parts.add(Objects.requireNonNull(part).found());
        part = null;
    }

    /** What each part comes to, once all was read. */
    public List<Reduction> parts() {
        return List.copyOf(parts);
    }

    /** What was wrong with the figures, beside what was wrong with rows and cells. */
    public Defects defects(Defects ofRows) {
        return defects.with(ofRows);
    }
}
