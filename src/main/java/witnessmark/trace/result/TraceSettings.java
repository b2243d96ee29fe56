package witnessmark.trace.result;

import java.util.EnumMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Coded;

/** By what figures a trace is reduced: the usual ones, but for those that were said. */
public final class TraceSettings {
    private static final TraceSettings USUAL = new TraceSettings(new EnumMap<>(TraceSetting.class));

    private final Map<TraceSetting, Double> said;

    private TraceSettings(Map<TraceSetting, Double> said) {
        this.said = said;
    }

    public static TraceSettings usual() {
        return USUAL;
    }

    /** @throws IllegalArgumentException if the figure is out of the setting's range */
    public TraceSettings with(TraceSetting setting, double figure) {
        if (!(figure >= setting.least() && figure <= setting.most())) {
            throw new IllegalArgumentException(
                    setting.code() + " is " + setting.least() + " to " + setting.most() + ", not " + figure);
        }
        Map<TraceSetting, Double> changed = new EnumMap<>(TraceSetting.class);
        changed.putAll(said);
        changed.put(setting, figure);
        return new TraceSettings(changed);
    }

    /** The figure; NaN if it has no usual value and nobody said one. */
    public double get(TraceSetting setting) {
        return said.getOrDefault(setting, setting.usual());
    }

    public boolean has(TraceSetting setting) {
        return !Double.isNaN(get(setting));
    }

    /** A time of so many seconds, microseconds. */
    public long micros(TraceSetting setting) {
        return Math.round(get(setting) * 1e6);
    }

    /** What was said, {@code running from=600;over-rev above=8200}; empty when all is usual. */
    public String text() {
        StringBuilder text = new StringBuilder();
        said.forEach((setting, figure) -> text.append(text.length() == 0 ? "" : ";")
                .append(setting.code())
                .append('=')
                .append(figure == Math.rint(figure) ? Long.toString(Math.round(figure)) : Double.toString(figure)));
        return text.toString();
    }

    /**
     * Reads back what {@link #text()} wrote.
     *
     * @throws IllegalArgumentException if it is no such text
     */
    public static TraceSettings parse(String text) {
        TraceSettings settings = USUAL;
        for (String pair : text.isEmpty() ? new String[0] : text.split(";", -1)) {
            int equals = Math.max(pair.indexOf('='), 0);
            settings = settings.with(
                    Coded.of(TraceSetting.class, pair.substring(0, equals)),
                    Double.parseDouble(pair.substring(equals + 1)));
        }
        return settings;
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof TraceSettings that && said.equals(that.said);
    }

    @Override
    public int hashCode() {
        return said.hashCode();
    }

    @Override
    public String toString() {
        return text();
    }
}
