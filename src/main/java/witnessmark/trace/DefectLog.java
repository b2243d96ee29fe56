package witnessmark.trace;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import witnessmark.trace.result.Defect;
import witnessmark.trace.result.DefectKind;
import witnessmark.trace.result.Defects;

/** Gathers what is wrong with a trace. What goes on from one sample to the next is one defect. */
public final class DefectLog {
    private record Key(DefectKind kind, String channel) {}

    private static final class Open {
        private final int part;
        private final long from;
        private long until;
        private long row;
        private long samples = 1;

        Open(int part, long micros, long row) {
            this.part = part;
            this.from = micros;
            this.until = micros;
            this.row = row;
        }
    }

    private final Map<Key, Open> open = new HashMap<>();
    private final Map<DefectKind, Long> times = new EnumMap<>(DefectKind.class);
    private final Map<DefectKind, Long> samples = new EnumMap<>(DefectKind.class);
    private final Map<DefectKind, Integer> kept = new EnumMap<>(DefectKind.class);
    private final List<Defect> located = new ArrayList<>();

    /**
     * A sample is wrong; it goes on a defect when the one before it was wrong in the same way.
     *
     * @param channel the column's heading, or empty for the row
     * @param row its running number
     */
    public void sample(DefectKind kind, String channel, int part, long micros, long row) {
        Key key = new Key(kind, channel);
        Open going = open.get(key);
        if (going != null && going.part == part && row <= going.row + 1) {
            going.until = micros;
            going.row = row;
            going.samples++;
            return;
        }
        if (going != null) {
            close(key, going);
        }
        open.put(key, new Open(part, micros, row));
    }

    /** A defect whose end is known too. */
    public void whole(Defect defect) {
        times.merge(defect.kind(), 1L, Long::sum);
        samples.merge(defect.kind(), defect.samples(), Long::sum);
        if (kept.merge(defect.kind(), 1, Integer::sum) <= Defects.MOST_LOCATED) {
            located.add(defect);
        }
    }

    /** Takes over what another found. */
    public Defects with(Defects other) {
        Defects own = found();
        Map<DefectKind, Long> bothTimes = new EnumMap<>(DefectKind.class);
        bothTimes.putAll(own.times());
        other.times().forEach((kind, count) -> bothTimes.merge(kind, count, Long::sum));
        Map<DefectKind, Long> bothSamples = new EnumMap<>(DefectKind.class);
        bothSamples.putAll(own.samples());
        other.samples().forEach((kind, count) -> bothSamples.merge(kind, count, Long::sum));
        List<Defect> all = new ArrayList<>(own.located());
        all.addAll(other.located());
        return new Defects(bothTimes, bothSamples, all);
    }

    /** All that was found; nothing may be added afterwards. */
    public Defects found() {
        open.entrySet().stream()
                .sorted((one, other) -> Long.compare(one.getValue().row, other.getValue().row))
                .toList()
                .forEach(entry -> close(entry.getKey(), entry.getValue()));
        open.clear();
        return new Defects(times, samples, located);
    }

    private void close(Key key, Open going) {
        whole(new Defect(key.kind(), key.channel(), going.part, going.from, going.until, going.samples));
    }
}
