package witnessmark.trace.result;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.ChannelKind;

/**
 * What a trace, or a part of it whose time begins anew, comes to. These are proposals: a person confirms them.
 *
 * @param lasted from its first sample to its last, microseconds
 * @param rows samples
 * @param logged the channels it has
 * @param speed or null when engine speed is not logged
 * @param overRevs or null when speed is not logged or nobody said above which it is one; the first
 *     {@link #MOST_LISTED}
 * @param overRevCount how many there are
 * @param dips of oil pressure, the first {@link #MOST_LISTED}; null when pressure or speed is not logged
 * @param dipCount how many there are
 * @param oilAtSpeed the lowest oil pressure held at speed, bar, or null
 * @param oilOffset what the oil pressure sensor says at rest, bar, when that is off; else null
 * @param oilTrend or null when pressure or speed is not logged
 * @param extremes of oil pressure and of temperatures
 * @param heat or null when water temperature is not logged
 * @param waterTurns or null as above
 * @param falls of water temperature that are none of the engine
 * @param metres driven by the logged car speed, or null when it is not logged
 * @param laps marks or changes of the lap's number, or null when not logged
 * @param pulls the first {@link #MOST_LISTED}
 */
public record Reduction(
        long lasted,
        long rows,
        Set<ChannelKind> logged,
        @Nullable SpeedFound speed,
        @Nullable List<Excursion> overRevs,
        long overRevCount,
        @Nullable List<PressureDip> dips,
        long dipCount,
        @Nullable Double oilAtSpeed,
        @Nullable Double oilOffset,
        @Nullable OilTrend oilTrend,
        Map<ChannelKind, Extremes> extremes,
        @Nullable HeatCycles heat,
        @Nullable TurningPoints waterTurns,
        List<TemperatureFall> falls,
        @Nullable Double metres,
        @Nullable Integer laps,
        List<Pull> pulls) {
    /** Of each kind so many are listed; all are counted. */
    public static final int MOST_LISTED = 500;

    public Reduction {
        logged = Set.copyOf(logged);
        extremes = Map.copyOf(extremes);
        falls = List.copyOf(falls);
        pulls = List.copyOf(pulls);
    }

    public Optional<Extremes> extremes(ChannelKind kind) {
        return Optional.ofNullable(extremes.get(kind));
    }

    /** Whether a channel is there to say anything. */
    public boolean logs(ChannelKind kind) {
        return logged.contains(kind);
    }

    /** How long the engine ran, or how long it lasted where that is not known, milliseconds. */
    public long ran() {
        return speed == null || speed.running() == 0 ? lasted / 1000 : speed.running();
    }

    /** The share of its length in which engine speed was logged, 0 to 1; 0 when it is not logged. */
    public double coverage() {
        return speed == null || lasted == 0 ? 0 : Math.min(1, speed.covered() * 1000.0 / lasted);
    }
}
