package witnessmark.logbook.tracing;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import witnessmark.domain.ChannelKind;
import witnessmark.domain.Trace;
import witnessmark.trace.kept.KeptReader;
import witnessmark.trace.kept.Samples;
import witnessmark.trace.look.Between;
import witnessmark.trace.look.Temperatures;
import witnessmark.trace.result.ChannelFigures;
import witnessmark.trace.result.ColumnForm;
import witnessmark.trace.result.ThermalRanges;
import witnessmark.trace.result.TraceSetting;
import witnessmark.trace.result.TraceSettings;
import witnessmark.trace.result.Wave;

/** The samples kept of a trace. Reading them takes its time: off the event thread. */
public final class KeptTrace {
    private static final List<ChannelKind> TEMPERATURES =
            List.of(ChannelKind.WATER_TEMPERATURE, ChannelKind.OIL_TEMPERATURE);

    private final KeptReader reader;
    private final int part;

    private KeptTrace(KeptReader reader, int part) {
        this.reader = reader;
        this.part = part;
    }

    /** The part of a file that a trace is of is the one as long as it. */
    static KeptTrace of(KeptReader reader, Trace trace) {
        int found = 0;
        for (int part = reader.parts() - 1; part >= 0; part--) {
            if (reader.lasted(part) / 1_000 == trace.lasted().millis()) {
                found = part;
            }
        }
        return new KeptTrace(reader, found);
    }

    /**
     * A channel with samples.
     *
     * @param column its place in the file
     */
    public record Channel(int column, ColumnForm form) {}

    /** Those with samples, those that something is known of first, in the order in which kinds are named. */
    public List<Channel> channels() {
        List<Channel> channels = new ArrayList<>();
        for (int i = 0; i < reader.columns().size(); i++) {
            if (reader.count(part, i) > 0) {
                channels.add(new Channel(i, reader.columns().get(i)));
            }
        }
        channels.sort(java.util.Comparator.comparing(channel -> channel.form().kind()));
        return channels;
    }

    /** The first channel of a kind. */
    public Optional<Channel> channel(ChannelKind kind) {
        return channels().stream()
                .filter(channel -> channel.form().kind() == kind)
                .findFirst();
    }

    /** The time of its last sample, microseconds. */
    public long lasted() {
        return reader.lasted(part);
    }

    /**
     * A stretch of a channel to be drawn.
     *
     * @param most points, about
     */
    public Wave wave(Channel channel, long from, long until, long most) throws IOException {
        return reader.wave(part, channel.column(), from, until, most);
    }

    /** What a channel did between two times, both counted; empty when it has no figure there. */
    public Optional<ChannelFigures> between(Channel channel, long from, long until) throws IOException {
        return Between.of(reader.samples(part, channel.column(), from, until));
    }

    /** Ranges of the temperatures that were logged. */
    public List<ThermalRanges> ranges(TraceSettings settings) throws IOException {
        List<ThermalRanges> ranges = new ArrayList<>();
        for (ChannelKind kind : TEMPERATURES) {
            Channel channel = channel(kind).orElse(null);
            if (channel != null) {
                Samples samples = reader.samples(part, channel.column());
                ranges.add(Temperatures.ranges(kind, samples.values(), settings.get(TraceSetting.THERMAL_RANGE)));
            }
        }
        return ranges;
    }
}
