package witnessmark.trace.look;

import witnessmark.domain.RevExponent;
import witnessmark.domain.SpeedHistogram;
import witnessmark.mechanics.RevDamage;
import witnessmark.trace.result.PartWear;

/** What time at each speed wears a kind of part, by the exponent its team wrote ({@link RevDamage}). */
public final class SpeedWear {
    private SpeedWear() {}

    public static PartWear of(SpeedHistogram speeds, RevExponent wear) {
        double[] edges = new double[speeds.bands() + 1];
        double[] seconds = new double[speeds.bands()];
        for (int i = 0; i < edges.length; i++) {
            edges[i] = (double) i * SpeedHistogram.WIDTH;
        }
        for (int i = 0; i < seconds.length; i++) {
            seconds[i] = speeds.millis(i) / 1e3;
        }
        double exponent = wear.hundredths() / 100.0;
        RevDamage.Equivalent found = new RevDamage(wear.reference().rpm(), exponent).ofBands(edges, seconds);
        return new PartWear(
                wear.partKind(),
                wear.reference(),
                exponent,
                wear.source(),
                millis(found.seconds()),
                millis(found.least()),
                millis(found.most()));
    }

    private static long millis(double seconds) {
        return Math.round(seconds * 1e3);
    }
}
