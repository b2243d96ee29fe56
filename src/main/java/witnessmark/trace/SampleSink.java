package witnessmark.trace;

/** Is handed the samples of a trace one after another. */
public interface SampleSink {

    /** Once, before the first sample. */
    void begin(Layout layout);

    /**
     * One row. Time rises from row to row of a part.
     *
     * @param micros after the first sample of the part, microseconds
     * @param values a figure for each column in the unit of its kind, NaN where there is none; not to be kept
     */
    void sample(long micros, double[] values);

    /** Time begins anew: the next sample is the first of another part. */
    void part();

    /** After the last sample. */
    void end();

    /** Hands everything to one, then to the other. */
    static SampleSink both(SampleSink one, SampleSink other) {
        return new SampleSink() {
            @Override
            public void begin(Layout layout) {
                one.begin(layout);
                other.begin(layout);
            }

            @Override
            public void sample(long micros, double[] values) {
                one.sample(micros, values);
                other.sample(micros, values);
            }

            @Override
            public void part() {
                one.part();
                other.part();
            }

            @Override
            public void end() {
                one.end();
                other.end();
            }
        };
    }
}
