package witnessmark.domain;

import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import witnessmark.quantity.Distance;
import witnessmark.quantity.EngineSpeed;
import witnessmark.quantity.Moment;
import witnessmark.quantity.Pressure;
import witnessmark.quantity.RunningTime;
import witnessmark.quantity.Temperature;

/**
 * What a logger wrote of a run, and what it comes to. The run's own figures are what a person confirmed; these stay as
 * they were read.
 *
 * @param run of which run
 * @param name the name of the file
 * @param content SHA-256 of its bytes, 64 hexadecimal digits
 * @param samples SHA-256 of what was read in it, so that the same samples in another file are known; 64 digits
 * @param size of the file, bytes, 1 or more
 * @param begins its first sample, or null where its clock was not set
 * @param lasted from its first sample to its last
 * @param rows how many samples, 1 or more
 * @param form how it was read: its signs, its time and its channels
 * @param settings what its figures were worked out with
 * @param running time with the engine turning
 * @param loaded time under load, or null when that cannot be told
 * @param highSpeed time at high speed, or null when nobody said from where
 * @param distance or null when no speed was logged
 * @param highest the highest speed held, or null when no engine speed was logged
 * @param waterHighest or null when not logged
 * @param oilHighest or null when not logged
 * @param oilPressure lowest hot, under load; or null when not logged
 * @param pulls full-load sweeps, or null when not asked for
 * @param heatFromCold heat cycles if the engine was cold when it began, or null when no water temperature was logged
 * @param heatFromHot heat cycles if it was warm when it began, or null as above
 * @param heatEnd how it was left, or null as above
 * @param speeds time at each engine speed, as {@link SpeedHistogram} writes it; empty when none was logged
 * @param defects what was wrong with it and how often, {@code drop-out=2;spike=1}; empty for nothing
 * @param kept SHA-256 of its samples kept in the logbook, or null when they are not
 * @param by who brought it in
 * @param note anything else
 */
public record Trace(
        Id<Run> run,
        String name,
        String content,
        String samples,
        long size,
        @Nullable Moment begins,
        RunningTime lasted,
        int rows,
        String form,
        String settings,
        RunningTime running,
        @Nullable RunningTime loaded,
        @Nullable RunningTime highSpeed,
        @Nullable Distance distance,
        @Nullable EngineSpeed highest,
        @Nullable Temperature waterHighest,
        @Nullable Temperature oilHighest,
        @Nullable Pressure oilPressure,
        @Nullable Integer pulls,
        @Nullable Integer heatFromCold,
        @Nullable Integer heatFromHot,
        @Nullable HeatEnd heatEnd,
        String speeds,
        String defects,
        @Nullable String kept,
        String by,
        String note)
        implements Fact {
    private static final Pattern DIGEST = Pattern.compile("[0-9a-f]{64}");

    public Trace {
        if (size < 1 || rows < 1) {
            throw new IllegalArgumentException("a trace has something in it");
        }
        if (!digest(content) || !digest(samples) || kept != null && !digest(kept)) {
            throw new IllegalArgumentException("a SHA-256 has 64 hexadecimal digits");
        }
        if ((heatFromCold == null) != (heatEnd == null) || (heatFromHot == null) != (heatEnd == null)) {
            throw new IllegalArgumentException("heat cycles are known with how they end, or not at all");
        }
    }

    private static boolean digest(String text) {
        return DIGEST.matcher(text).matches();
    }

    @Override
    public @Nullable Moment happened() {
        return begins;
    }
}
