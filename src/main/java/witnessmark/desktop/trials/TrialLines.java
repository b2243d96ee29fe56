package witnessmark.desktop.trials;

import java.util.List;
import witnessmark.chart.LivesChart;

/**
 * A trial as its page shows it.
 *
 * @param trial the text form of its identity
 * @param goesOn whether nobody has judged it
 * @param name what it is called
 * @param stands since when it goes on, or how it was judged
 * @param said what is tried against what, what is hoped for, the grounds of the verdict
 * @param figures what figures say of it, and what they rest on
 * @param chart its lives
 * @param whole the lives in one sentence, for screen readers
 * @param found what was found on parts of it, the latest first
 */
record TrialLines(
        String trial,
        boolean goesOn,
        String name,
        String stands,
        List<String> said,
        List<String> figures,
        LivesChart chart,
        String whole,
        List<FoundLine> found) {
    /** Its name, as it is chosen by. */
    @Override
    public String toString() {
        return name;
    }
}
