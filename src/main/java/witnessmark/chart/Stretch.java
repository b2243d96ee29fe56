package witnessmark.chart;

/** The part of an axis that is seen, and how it is looked at more closely and moved along. Not for several threads. */
public final class Stretch {
    private final double first;
    private final double last;
    private final double closest;
    private double from;
    private double to;

    /**
     * @param first the least there is to see
     * @param last the greatest, above it
     * @param closest the least width somebody can look at, above 0
     */
    public Stretch(double first, double last, double closest) {
        this.first = first;
        this.last = last;
        this.closest = closest;
        this.from = first;
        this.to = last;
    }

    public double from() {
        return from;
    }

    public double to() {
        return to;
    }

    public double width() {
        return to - from;
    }

    /** Whether all there is is seen. */
    public boolean isWhole() {
        return from == first && to == last;
    }

    public void showAll() {
        from = first;
        to = last;
    }

    /**
     * Looks closer or from further away.
     *
     * @param factor less than 1 for closer
     * @param about the place that stays where it is
     */
    public void zoom(double factor, double about) {
        double wide = Math.max(Math.min(last - first, width() * factor), Math.min(closest, last - first));
        double share = (about - from) / width();
        look(about - share * wide, wide);
    }

    /** Moves what is seen by a share of its width, to the right when more than 0. */
    public void pan(double share) {
        look(from + share * width(), width());
    }

    /** Moves what is seen just so far that a place is in it. */
    public void bringIntoView(double place) {
        if (place < from) {
            look(place - 0.05 * width(), width());
        } else if (place > to) {
            look(place - 0.95 * width(), width());
        }
    }

    /** Sees from one place to another, as far as there is something. */
    public void see(double least, double greatest) {
        look(least, Math.max(greatest - least, Math.min(closest, last - first)));
    }

    private void look(double least, double wide) {
        double width = Math.min(wide, last - first);
        from = Math.max(first, Math.min(least, last - width));
        to = from + width;
    }
}
