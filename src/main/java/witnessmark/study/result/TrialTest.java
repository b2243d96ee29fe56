package witnessmark.study.result;

/**
 * The log-rank test of what is tried against what is usual ({@link witnessmark.statistics.LogRank}).
 *
 * @param failed of what is tried
 * @param expected of what is tried, were both alike
 * @param failures of both together
 * @param room the figure of Mantel and Fleiss: how much room the expected failures have
 * @param needed from which room on the chance says anything
 * @param chiSquare of one degree of freedom
 * @param p the chance of as great a difference were both alike
 */
public record TrialTest(
        int failed, double expected, int failures, double room, double needed, double chiSquare, double p) {
    /** Whether enough failed for the chance to say anything. */
    public boolean enough() {
        return room >= needed;
    }
}
