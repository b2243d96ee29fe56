package witnessmark.logbook.tracing;

import java.util.EnumSet;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.HowKnown;
import witnessmark.domain.Run;
import witnessmark.quantity.Counter;
import witnessmark.quantity.EngineSpeed;
import witnessmark.quantity.Pressure;
import witnessmark.quantity.Temperature;
import witnessmark.trace.result.DefectKind;
import witnessmark.trace.result.Defects;
import witnessmark.trace.result.Reduction;

/** Which figures of a trace become its run's where nobody says otherwise: what the run does not say, and says less well. */
final class TakenUnasked {
    /** Less than this of a run logged leaves its running time as it was timed (common practice, no source). */
    static final double COVERED = 0.9;

    private TakenUnasked() {}

    /**
     * Not the running time of a trace with holes; where the end of the run is missing nothing that adds up, and how far
     * something went only where the run does not say that it went as far; and nothing at all of a file that is not what was
     * packed.
     *
     * @param figures of the trace
     * @param defects of the file, or null
     * @param last whether it is the file's last part
     */
    static Set<TraceField> of(
            Run run, Map<TraceField, Object> figures, Reduction part, @Nullable Defects defects, boolean last) {
        Set<TraceField> taken = EnumSet.noneOf(TraceField.class);
        if (has(defects, DefectKind.CHECKSUM)) {
            return taken;
        }
        taken.addAll(figures.keySet());
        if (part.coverage() < COVERED || run.knownBy().of(Counter.RUNNING) == HowKnown.HOUR_METER) {
            taken.remove(TraceField.RUNNING);
        }
        if (last
                && has(defects, DefectKind.CUT_OFF)
                && part.ran() < COVERED * run.running().millis()) {
            taken.removeIf(field -> !isSeen(run, field, Objects.requireNonNull(figures.get(field))));
        }
        return taken;
    }

    /** Whether what was seen of a run says more than is written, whatever came after it. */
    private static boolean isSeen(Run run, TraceField field, Object figure) {
        return switch (field) {
            case START -> true;
            case RUNNING, LOADED, HIGH_SPEED, DISTANCE, HEAT_CYCLES, PULLS -> false;
            case OVER_REVS -> isBeyond((Integer) figure, run.overRevs());
            case HIGHEST -> isBeyond((EngineSpeed) figure, run.highest());
            case WATER -> isBeyond((Temperature) figure, run.waterHighest());
            case OIL_TEMPERATURE -> isBeyond((Temperature) figure, run.oilHighest());
            case OIL_PRESSURE -> run.oilPressure() == null || ((Pressure) figure).compareTo(run.oilPressure()) < 0;
        };
    }

    private static <F extends Comparable<F>> boolean isBeyond(F figure, @Nullable F written) {
        return written == null || figure.compareTo(written) > 0;
    }

    private static boolean has(@Nullable Defects defects, DefectKind kind) {
        return defects != null && defects.times(kind) > 0;
    }
}
