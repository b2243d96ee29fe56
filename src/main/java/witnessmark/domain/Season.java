package witnessmark.domain;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import witnessmark.quantity.Moment;
import witnessmark.quantity.Money;
import witnessmark.quantity.RunningTime;

/**
 * The days a team counts as one season, and what was reported when it was closed.
 *
 * @param name unique
 * @param firstDay its first day
 * @param lastDay its last day
 * @param closed when it was closed, or null while it is open
 * @param by who closed it; empty while it is open
 * @param reportedBudget what was planned to be spent, as reported when it was closed, or null
 * @param reportedSpent what was spent in cash or is owed, as reported, or null
 * @param reportedIncome what came in, as reported, or null
 * @param reportedCash cash out for failures, as reported, or null
 * @param reportedLabour own labour for failures at the team's rate, as reported, or null
 * @param reportedMissed lost on events not attended, as reported, or null
 * @param reportedRunning running of all engines, as reported, or null
 * @param note anything else
 */
public record Season(
        String name,
        LocalDate firstDay,
        LocalDate lastDay,
        @Nullable Moment closed,
        String by,
        @Nullable Money reportedBudget,
        @Nullable Money reportedSpent,
        @Nullable Money reportedIncome,
        @Nullable Money reportedCash,
        @Nullable Money reportedLabour,
        @Nullable Money reportedMissed,
        @Nullable RunningTime reportedRunning,
        String note)
        implements Fact {
    public Season {
        if (lastDay.isBefore(firstDay)) {
            throw new IllegalArgumentException("a season ends after it begins");
        }
    }

    @Override
    public String knownAs() {
        return name;
    }

    /** Whether a day falls in it. */
    public boolean has(LocalDate day) {
        return !day.isBefore(firstDay) && !day.isAfter(lastDay);
    }
}
