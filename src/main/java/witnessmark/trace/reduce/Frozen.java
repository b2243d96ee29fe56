package witnessmark.trace.reduce;

import witnessmark.trace.DefectLog;
import witnessmark.trace.result.Defect;
import witnessmark.trace.result.DefectKind;

/** Watches for a channel that says exactly the same for long while another one moves. */
final class Frozen {
    /** Fewer samples than this are a slow channel, not a frozen one. */
    private static final int FEWEST = 20;

    private final long longest;
    private final double moved;
    private final String heading;
    private final int part;
    private final DefectLog defects;
    private double value = Double.NaN;
    private long from;
    private long until;
    private long samples;
    private double least;
    private double most;

    /** Is told of a frozen stretch. */
    interface Told {
        void frozen(double value, long micros);
    }

    /** @param moved by how much the other one must have moved meanwhile */
    Frozen(long longest, double moved, String heading, int part, DefectLog defects) {
        this.longest = longest;
        this.moved = moved;
        this.heading = heading;
        this.part = part;
        this.defects = defects;
    }

    /** @param other a figure of the other channel, NaN when not known */
    void sample(long micros, double figure, double other, boolean next, Told told) {
        if (figure != value || !next) {
            end(told);
            value = figure;
            from = micros;
            samples = 0;
            least = Double.POSITIVE_INFINITY;
            most = Double.NEGATIVE_INFINITY;
        }
        until = micros;
        samples++;
        least = other < least ? other : least;
        most = other > most ? other : most;
    }

    void end(Told told) {
        if (samples >= FEWEST && until - from >= longest && most - least >= moved && value != 0) {
            defects.whole(new Defect(DefectKind.FROZEN, heading, part, from, until, samples));
            told.frozen(value, until - from);
        }
        samples = 0;
        value = Double.NaN;
    }
}
