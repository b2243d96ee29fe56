package witnessmark.trace;

/** Moves single figures of a logged run a little until its sums are those wanted. Sums by the trapezium, as in any textbook. */
final class Fitting {
    private final LoggedRun run;
    private final double step;

    Fitting(LoggedRun run) {
        this.run = run;
        this.step = 1e3 / run.is.rate();
    }

    /** Time above a speed within one piece, which goes evenly, ms. */
    private static double above(double one, double other, double limit, double millis) {
        double low = Math.min(one, other);
        double top = Math.max(one, other);
        return low >= limit ? millis : top < limit ? 0 : (top - limit) / (top - low) * millis;
    }

    private int next(int sample) {
        int at = sample + 1;
        while (at < run.samples && run.lost[at]) {
            at++;
        }
        return at;
    }

    private int before(int sample) {
        int at = sample - 1;
        while (at >= 0 && run.lost[at]) {
            at--;
        }
        return at;
    }

    private double high(int sample) {
        int next = next(sample);
        return next >= run.samples ? 0 : above(run.rpm[sample], run.rpm[next], LoggedRun.HIGH, step * (next - sample));
    }

    /** Engine speed beside high speed is moved until so much lies above, to a tenth of a millisecond. */
    void high() {
        double missing = run.is.high() * 1e3;
        for (int i = 0; i < run.samples; i++) {
            missing -= run.lost[i] ? 0 : high(i);
        }
        for (int round = 0; round < 40 && Math.abs(missing) > 0.1; round++) {
            for (int i = run.first + 2; i < run.last - 2 && Math.abs(missing) > 0.1; i++) {
                if (!run.lost[i] && Math.abs(run.rpm[i] - LoggedRun.HIGH) < 300) {
                    missing -= moved(i, missing);
                }
            }
        }
        if (Math.abs(missing) > 0.4) {
            throw new IllegalStateException(missing + " ms at high speed are missing");
        }
    }

    /** Moves one sample to where it brings most of what is missing and not more; answers what it brought. */
    private double moved(int sample, double missing) {
        int before = before(sample);
        double was = high(before) + high(sample);
        double own = run.rpm[sample];
        double best = own;
        double brought = 0;
        for (int by = -25; by <= 25; by++) {
            run.rpm[sample] = own + by;
            double now = high(before) + high(sample) - was;
            if (Math.abs(missing - now) < Math.abs(missing - brought)) {
                best = own + by;
                brought = now;
            }
        }
        run.rpm[sample] = best;
        return brought;
    }

    /** The car's speed is scaled until it went as far as was written down. */
    void distance() {
        double[] own = run.speed.clone();
        double low = 0.5;
        double high = 2;
        for (int i = 0; i < 60; i++) {
            double factor = (low + high) / 2;
            for (int k = 0; k < run.samples; k++) {
                run.speed[k] = Math.rint(own[k] * factor * 10) / 10;
            }
            if (metres() < run.is.metres()) {
                low = factor;
            } else {
                high = factor;
            }
        }
        if (Math.abs(metres() - run.is.metres()) > 0.4) {
            throw new IllegalStateException(metres() + " m instead of " + run.is.metres());
        }
    }

    private double metres() {
        double metres = 0;
        int from = 0;
        for (int i = next(0); i < run.samples; i = next(i)) {
            metres += (run.speed[from] + run.speed[i]) / 2 * (i - from) * step / 3600;
            from = i;
        }
        return metres;
    }

    /** Oil pressure is shifted as a whole until its lowest at speed, held for two samples, is the one wanted. */
    void pressure() {
        double shift = run.is.pressure() - lowest();
        for (int i = 0; i < run.samples; i++) {
            run.pressure[i] = Math.max(0.8, Math.rint((run.pressure[i] + shift) * 100) / 100);
        }
        if (Math.abs(lowest() - run.is.pressure()) > 1e-9) {
            throw new IllegalStateException(lowest() + " bar instead of " + run.is.pressure());
        }
    }

    double lowest() {
        double lowest = Double.POSITIVE_INFINITY;
        for (int i = 1; i < run.samples; i++) {
            boolean told = !run.lost[i] && !run.lost[i - 1] && !run.unpressed[i] && !run.unpressed[i - 1];
            if (told && run.rpm[i] > LoggedRun.OIL_FROM && run.rpm[i - 1] > LoggedRun.OIL_FROM) {
                lowest = Math.min(lowest, Math.max(run.pressure[i], run.pressure[i - 1]));
            }
        }
        return lowest;
    }
}
