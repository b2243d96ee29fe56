package witnessmark.chart;

/** A curve of so many samples that they are asked for by the width they are drawn in. Times are seconds. */
public interface Sampled {
    /** How many points lie between two times. */
    int count(double from, double until);

    /** Least and most in each of so many equal pieces of a stretch as there is room for; NaN where there is nothing. */
    void envelope(double from, double until, double[] least, double[] most);

    /** Every point between two times in the order of time, and the one before and after. */
    void points(double from, double until, Point told);

    /** The least at a time, NaN where there is nothing; the same as the most where its samples are at hand. */
    double least(double at);

    double most(double at);

    /** Is told points. */
    @FunctionalInterface
    interface Point {
        /** @param hole whether nothing leads to it from the point before; least and most are NaN where it has no figure */
        void at(double time, double least, double most, boolean hole);
    }
}
