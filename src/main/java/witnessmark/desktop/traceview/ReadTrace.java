package witnessmark.desktop.traceview;

import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Id;
import witnessmark.domain.Trace;
import witnessmark.logbook.Desk;
import witnessmark.logbook.tracing.KeptTrace;
import witnessmark.logbook.tracing.SeeTrace;
import witnessmark.logbook.tracing.SeenTrace;
import witnessmark.outcome.Outcome;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;
import witnessmark.trace.result.ChannelFigures;
import witnessmark.trace.result.ThermalRanges;
import witnessmark.trace.result.Wave;

/** Reads traces to be shown. Off the event thread. */
final class ReadTrace {
    /** Points of a channel held at once, about: those of an hour and a half at fifty a second. */
    static final long POINTS = 1 << 18;

    private final Desk book;
    private final ShownChannels channels;

    ReadTrace(Desk book, ShownChannels channels) {
        this.book = book;
        this.channels = channels;
    }

    /**
     * Everything for a page.
     *
     * @param shown the trace; null when it is not there any more
     * @param others those that may be chosen or laid over it, the newest first
     */
    record Page(@Nullable Shown shown, List<SeenTrace> others) {
        Page {
            others = List.copyOf(others);
        }
    }

    Page read(Id<Trace> trace, @Nullable Id<Trace> over) {
        List<SeenTrace> all = SeeTrace.all(book.view());
        Shown shown = find(all, trace).map(this::samples).orElse(null);
        if (shown != null && over != null) {
            shown = shown.over(find(all, over).map(this::samples).orElse(null));
        }
        return new Page(shown, all);
    }

    private static Optional<SeenTrace> find(List<SeenTrace> all, Id<Trace> trace) {
        return all.stream().filter(each -> each.trace().id().equals(trace)).findFirst();
    }

    private Shown samples(SeenTrace seen) {
        Outcome<Optional<KeptTrace>> found =
                SeeTrace.samples(book.logbook(), seen.trace().fact());
        KeptTrace kept = found.didWork() ? found.orThrow().orElse(null) : null;
        if (kept == null) {
            return new Shown(seen, null, Map.of(), null, List.of(), found.problems(), Optional.empty());
        }
        try {
            List<ThermalRanges> ranges = kept.ranges(seen.settings());
            return new Shown(
                    seen, kept, waves(kept, 0, kept.lasted()), null, ranges, found.problems(), Optional.empty());
        } catch (IOException e) {
            List<Problem> spoilt = List.of(
                    Problem.of(ProblemKind.SAMPLES_CHANGED, seen.trace().fact().name()));
            return new Shown(seen, null, Map.of(), null, List.of(), spoilt, Optional.empty());
        }
    }

    /** The channels that are shown, from one time to another. */
    Map<Integer, Wave> waves(KeptTrace kept, long from, long until) throws IOException {
        Map<Integer, Wave> waves = new HashMap<>();
        for (KeptTrace.Channel channel : channels.drawn(kept)) {
            waves.put(channel.column(), kept.wave(channel, from, until, POINTS));
        }
        return waves;
    }

    /** A stretch of a trace and of what is laid over it, and as much again on both sides. */
    Shown closer(Shown shown, long from, long until, long shift) throws IOException {
        Shown over = shown.over().orElse(null);
        return near(shown, from, until).over(over == null ? null : near(over, from - shift, until - shift));
    }

    private Shown near(Shown shown, long from, long until) throws IOException {
        KeptTrace kept = shown.kept();
        if (kept == null || !shown.isCoarse(from, until)) {
            return shown;
        }
        long span = until - from;
        long first = Math.max(0, from - span);
        long last = Math.min(kept.lasted(), until + span);
        return shown.near(new Shown.Near(first, last, waves(kept, first, last)));
    }

    /** What a channel did in a stretch. */
    record Did(KeptTrace.Channel channel, ChannelFigures figures) {}

    List<Did> between(KeptTrace kept, long from, long until) throws IOException {
        List<Did> all = new ArrayList<>();
        for (KeptTrace.Channel channel : channels.drawn(kept)) {
            kept.between(channel, from, until).ifPresent(figures -> all.add(new Did(channel, figures)));
        }
        return all;
    }
}
