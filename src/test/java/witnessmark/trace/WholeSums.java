package witnessmark.trace;

import witnessmark.domain.ChannelKind;

/**
 * Sums over a whole story held in memory, each by the plainest loop there is: the speed between two samples is cut into
 * its pieces at every level asked for, one level at a time.
 */
final class WholeSums {
    private final Story story;

    WholeSums(Story story) {
        this.story = story;
    }

    /** Seconds at or above a speed, straight lines between samples. */
    double secondsFrom(double level) {
        double[] rpm = story.channel(ChannelKind.ENGINE_SPEED);
        double seconds = 0;
        for (int i = 1; i < rpm.length; i++) {
            double step = (story.micros(i) - story.micros(i - 1)) / 1e6;
            double a = rpm[i - 1] - level;
            double b = rpm[i] - level;
            if (a >= 0 && b >= 0) {
                seconds += step;
            } else if (a >= 0 || b >= 0) {
                seconds += step * Math.max(a, b) / (Math.max(a, b) - Math.min(a, b));
            }
        }
        return seconds;
    }

    double revolutions() {
        double[] rpm = story.channel(ChannelKind.ENGINE_SPEED);
        double turns = 0;
        for (int i = 1; i < rpm.length; i++) {
            turns += 0.5 * (rpm[i] + rpm[i - 1]) * (story.micros(i) - story.micros(i - 1)) / 60e6;
        }
        return turns;
    }

    double metres() {
        double[] speed = story.channel(ChannelKind.CAR_SPEED);
        double metres = 0;
        for (int i = 1; i < speed.length; i++) {
            metres += 0.5 * (speed[i] + speed[i - 1]) / 3.6 * (story.micros(i) - story.micros(i - 1)) / 1e6;
        }
        return metres;
    }

    /** The highest figure that two samples in a row reach. */
    double highestHeld(ChannelKind kind) {
        double[] values = story.channel(kind);
        double highest = Double.NEGATIVE_INFINITY;
        for (int i = 1; i < values.length; i++) {
            highest = Math.max(highest, Math.min(values[i - 1], values[i]));
        }
        return highest;
    }

    int laps() {
        double[] lap = story.channel(ChannelKind.LAP);
        return (int) (lap[lap.length - 1] - lap[0]);
    }
}
