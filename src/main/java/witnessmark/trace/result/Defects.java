package witnessmark.trace.result;

import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * All that is wrong with a trace.
 *
 * @param times how often each kind occurs; those that do not are missing
 * @param samples how many samples each kind took
 * @param located where, in the order they ended, no more than {@link #MOST_LOCATED} of each kind
 */
public record Defects(Map<DefectKind, Long> times, Map<DefectKind, Long> samples, List<Defect> located) {
    /** Of each kind so many are kept with their place; the others are only counted. */
    public static final int MOST_LOCATED = 200;

    public Defects {
        times = copy(times);
        samples = copy(samples);
        located = List.copyOf(located);
    }

    private static Map<DefectKind, Long> copy(Map<DefectKind, Long> counts) {
        Map<DefectKind, Long> copy = new EnumMap<>(DefectKind.class);
        copy.putAll(counts);
        return Collections.unmodifiableMap(copy);
    }

    public long times(DefectKind kind) {
        return times.getOrDefault(kind, 0L);
    }

    public List<Defect> of(DefectKind kind) {
        return located.stream().filter(defect -> defect.kind() == kind).toList();
    }

    /** Code and count of each kind: {@code dropout=2;spike=1}; empty when nothing is wrong. */
    public String text() {
        StringBuilder text = new StringBuilder();
        times.forEach((kind, count) -> text.append(text.length() == 0 ? "" : ";")
                .append(kind.code())
                .append('=')
                .append(count));
        return text.toString();
    }
}
