package witnessmark.desktop.traceview;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleFunction;
import java.util.function.DoubleUnaryOperator;
import org.jspecify.annotations.Nullable;
import witnessmark.chart.Chart;
import witnessmark.chart.Sampled;
import witnessmark.chart.TraceRows;
import witnessmark.domain.ChannelKind;
import witnessmark.logbook.tracing.KeptTrace;
import witnessmark.trace.result.TraceSetting;
import witnessmark.trace.result.TraceSettings;
import witnessmark.trace.result.Wave;
import witnessmark.wording.ChannelWords;
import witnessmark.wording.SeenTraceWords;
import witnessmark.wording.Texts;

/** The rows of a trace's chart: curves in the team's units, the floor of oil pressure, limits. */
final class TraceRowsOf {
    private final ChannelWords channels;
    private final SeenTraceWords words;
    private final Texts texts;

    TraceRowsOf(ChannelWords channels, SeenTraceWords words, Texts texts) {
        this.channels = channels;
        this.words = words;
        this.texts = texts;
    }

    TraceRows of(Shown shown, long shift, String finding, String note, List<TraceRows.Mark> marks, String description) {
        KeptTrace kept = shown.kept();
        List<TraceRows.Row> rows = new ArrayList<>();
        if (kept != null) {
            for (KeptTrace.Channel channel : ShownChannels.all(kept)) {
                Wave wave = shown.waves().get(channel.column());
                if (wave != null) {
                    rows.add(row(shown, channel, wave, shift));
                }
            }
        }
        long end = Math.max(
                shown.lasted(), shown.over().map(over -> over.lasted() + shift).orElse(0L));
        boolean fine = end < 600_000_000L;
        DoubleFunction<String> time = seconds -> words.at(Math.round(seconds * 1e6));
        return new TraceRows(
                finding, note, end / 1e6, rows, marks, fine ? time : seconds -> whole(seconds, time), description);
    }

    /** Without tenths where a tick stands at a whole second. */
    private static String whole(double seconds, DoubleFunction<String> time) {
        String words = time.apply(seconds);
        return Math.abs(seconds - Math.rint(seconds)) < 1e-6 && words.endsWith(".0")
                ? words.substring(0, words.length() - 2)
                : words;
    }

    /** What a channel is called: what it measures, or its heading where nothing is known of it. */
    String name(KeptTrace.Channel channel) {
        return channel.form().kind().oftenMany()
                ? channel.form().heading()
                : channels.name(channel.form().kind());
    }

    private TraceRows.Row row(Shown shown, KeptTrace.Channel channel, Wave wave, long shift) {
        ChannelKind kind = channel.form().kind();
        DoubleUnaryOperator in = figure -> channels.shown(kind, figure);
        List<Sampled> curves = new ArrayList<>(List.of(curve(shown, channel.column(), wave, in, 0)));
        Wave other = null;
        Shown over = shown.over().orElse(null);
        if (over != null) {
            KeptTrace.Channel same = same(over, channel).orElse(null);
            other = same == null ? null : over.waves().get(same.column());
            if (same != null && other != null) {
                curves.add(curve(over, same.column(), other, in, shift));
            }
        }
        List<Chart.Mark> levels = levels(kind, shown.seen().settings());
        double low = Math.min(least(wave), other == null ? Double.POSITIVE_INFINITY : least(other));
        double high = Math.max(most(wave), other == null ? Double.NEGATIVE_INFINITY : most(other));
        for (Chart.Mark level : levels) {
            high = Math.max(high, level.at());
        }
        if (!(low <= high)) {
            low = 0; // no figure at all
            high = 1;
        } else {
            low = kind == ChannelKind.ENGINE_SPEED || kind == ChannelKind.THROTTLE ? Math.min(0, low) : low;
            double shownLow = channels.shown(kind, low);
            high = Math.max(channels.shown(kind, high), shownLow + 1e-3);
            low = shownLow;
        }
        List<Chart.Mark> lines = levels.stream()
                .map(level -> new Chart.Mark(channels.shown(kind, level.at()), level.label()))
                .toList();
        return new TraceRows.Row(
                ShownChannels.id(channel),
                name(channel),
                channels.unit(kind),
                low,
                high,
                channels::tick,
                figure -> channels.shownFigure(kind, figure),
                curves,
                floor(shown, kind),
                lines);
    }

    private static Sampled curve(Shown of, int column, Wave whole, DoubleUnaryOperator in, long shift) {
        WaveCurve curve = new WaveCurve(whole, in, shift);
        Shown.Near near = of.near();
        Wave closer = near == null ? null : near.waves().get(column);
        return near == null || closer == null
                ? curve
                : new CloserCurve(
                        curve,
                        new WaveCurve(closer, in, shift),
                        (near.from() + shift) / 1e6,
                        (near.until() + shift) / 1e6);
    }

    /** The same channel of the run laid over it. */
    private static Optional<KeptTrace.Channel> same(Shown over, KeptTrace.Channel channel) {
        KeptTrace kept = over.kept();
        return kept == null
                ? Optional.empty()
                : kept.channels().stream()
                        .filter(each -> ShownChannels.id(each).equals(ShownChannels.id(channel)))
                        .findFirst();
    }

    /** Limits the trace was worked out with, in the kind's own unit. */
    private List<Chart.Mark> levels(ChannelKind kind, TraceSettings settings) {
        TraceSetting setting = switch (kind) {
            case ENGINE_SPEED -> TraceSetting.OVER_REV_ABOVE;
            case WATER_TEMPERATURE -> TraceSetting.WATER_LIMIT;
            case OIL_TEMPERATURE -> TraceSetting.OIL_LIMIT;
            default -> null;
        };
        if (setting == null || !settings.has(setting)) {
            return List.of();
        }
        double at = settings.get(setting);
        return List.of(new Chart.Mark(at, texts.get("traceview.limit", channels.with(kind, at))));
    }

    /** What oil pressure is to be at the speed of that time; nothing below the speed from which it counts. */
    private @Nullable Sampled floor(Shown shown, ChannelKind kind) {
        KeptTrace kept = shown.kept();
        if (kind != ChannelKind.OIL_PRESSURE || kept == null) {
            return null;
        }
        KeptTrace.Channel channel = kept.channel(ChannelKind.ENGINE_SPEED).orElse(null);
        Wave speed = channel == null ? null : shown.waves().get(channel.column());
        if (channel == null || speed == null) {
            return null;
        }
        TraceSettings settings = shown.seen().settings();
        double each = settings.get(TraceSetting.OIL_FLOOR) / 1000;
        double from = settings.get(TraceSetting.OIL_FLOOR_ABOVE);
        return curve(
                shown, channel.column(), speed, rpm -> rpm > from ? channels.shown(kind, rpm * each) : Double.NaN, 0);
    }

    private static double least(Wave wave) {
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < wave.size(); i++) {
            least = Math.min(least, Double.isNaN(wave.least(i)) ? least : wave.least(i));
        }
        return least;
    }

    private static double most(Wave wave) {
        double most = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < wave.size(); i++) {
            most = Math.max(most, Double.isNaN(wave.most(i)) ? most : wave.most(i));
        }
        return most;
    }
}
