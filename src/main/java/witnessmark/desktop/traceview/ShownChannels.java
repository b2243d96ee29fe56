package witnessmark.desktop.traceview;

import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import witnessmark.domain.ChannelKind;
import witnessmark.logbook.port.Settings;
import witnessmark.logbook.tracing.KeptTrace;

/** Which channels are shown, remembered from one start to the next. Any thread. */
final class ShownChannels {
    private static final String KEY = "trace.channels";
    private static final String BETWEEN = ";";

    /** In which order they stand, and those shown to begin with. */
    private static final List<ChannelKind> FIRST = List.of(
            ChannelKind.ENGINE_SPEED,
            ChannelKind.OIL_PRESSURE,
            ChannelKind.THROTTLE,
            ChannelKind.WATER_TEMPERATURE,
            ChannelKind.OIL_TEMPERATURE);

    private final Settings settings;
    private volatile Set<String> ids;

    ShownChannels(Settings settings) {
        this.settings = settings;
        this.ids = settings.get(KEY)
                .filter(text -> !text.isBlank())
                .map(text -> (Set<String>) new LinkedHashSet<>(List.of(text.split(BETWEEN, -1))))
                .orElseGet(() -> {
                    Set<String> usual = new LinkedHashSet<>();
                    FIRST.forEach(kind -> usual.add(kind.code()));
                    return usual;
                });
    }

    /** By which a channel is known again: its kind, or its heading where nothing is known of it. */
    static String id(KeptTrace.Channel channel) {
        return channel.form().kind().oftenMany()
                ? channel.form().heading().replace(BETWEEN, " ")
                : channel.form().kind().code();
    }

    boolean isShown(KeptTrace.Channel channel) {
        return ids.contains(id(channel));
    }

    /** All of a trace, in the order in which they stand. */
    static List<KeptTrace.Channel> all(KeptTrace kept) {
        return kept.channels().stream()
                .sorted(Comparator.comparingInt(channel -> {
                    int first = FIRST.indexOf(channel.form().kind());
                    return first < 0 ? FIRST.size() + channel.form().kind().ordinal() : first;
                }))
                .toList();
    }

    /** Those shown; the first where none of those chosen was logged. */
    List<KeptTrace.Channel> drawn(KeptTrace kept) {
        List<KeptTrace.Channel> all = all(kept);
        List<KeptTrace.Channel> drawn = all.stream().filter(this::isShown).toList();
        return drawn.isEmpty() ? all.stream().limit(1).toList() : drawn;
    }

    void show(KeptTrace.Channel channel, boolean yes) {
        Set<String> next = new LinkedHashSet<>(ids);
        if (yes) {
            next.add(id(channel));
        } else {
            next.remove(id(channel));
        }
        ids = next;
        settings.put(KEY, String.join(BETWEEN, next));
    }
}
