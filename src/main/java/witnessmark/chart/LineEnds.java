package witnessmark.chart;

/** Keeps the names at the ends of lines from lying over each other. */
final class LineEnds {
    private LineEnds() {}

    /**
     * Moves names apart, each as little as is needed, keeping their order.
     *
     * @param wanted where each name would stand, from the top, in ascending order
     * @param apart the least distance between two
     * @param top none stands above this
     * @param bottom none stands below this, unless there are too many
     * @return where each stands
     */
    static double[] spread(double[] wanted, double apart, double top, double bottom) {
        double[] at = wanted.clone();
        double least = top;
        for (int i = 0; i < at.length; i++) {
            at[i] = Math.max(at[i], least);
            least = at[i] + apart;
        }
        double most = bottom;
        for (int i = at.length - 1; i >= 0; i--) {
            at[i] = Math.min(at[i], most);
            most = at[i] - apart;
        }
        least = top;
        for (int i = 0; i < at.length; i++) {
            at[i] = Math.max(at[i], least);
            least = at[i] + apart;
        }
        return at;
    }
}
