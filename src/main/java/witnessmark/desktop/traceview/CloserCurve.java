package witnessmark.desktop.traceview;

import witnessmark.chart.Sampled;

/** A whole curve of which a stretch is at hand more finely: asked for something within it, the finer one answers. */
final class CloserCurve implements Sampled {
    private final Sampled whole;
    private final Sampled closer;
    private final double first;
    private final double last;

    CloserCurve(Sampled whole, Sampled closer, double first, double last) {
        this.whole = whole;
        this.closer = closer;
        this.first = first;
        this.last = last;
    }

    private Sampled of(double from, double until) {
        return first <= from && until <= last ? closer : whole;
    }

    @Override
    public int count(double from, double until) {
        return of(from, until).count(from, until);
    }

    @Override
    public void envelope(double from, double until, double[] least, double[] most) {
        of(from, until).envelope(from, until, least, most);
    }

    @Override
    public void points(double from, double until, Point told) {
        of(from, until).points(from, until, told);
    }

    @Override
    public double least(double at) {
        return of(at, at).least(at);
    }

    @Override
    public double most(double at) {
        return of(at, at).most(at);
    }
}
