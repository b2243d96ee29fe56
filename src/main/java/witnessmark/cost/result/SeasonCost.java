package witnessmark.cost.result;

import java.util.List;
import org.jspecify.annotations.Nullable;
import witnessmark.quantity.Money;
import witnessmark.quantity.RunningTime;

/**
 * One season in money. What was spent, less what is kept for later, with what earlier seasons had kept, is exactly what
 * failures and running took: {@code spent - kept + broughtIn = failures in cash + missed + spoiled + running}.
 *
 * @param season which one
 * @param budget what was planned
 * @param spent paid or owed for costs of this season, less what was got back
 * @param committed of that, what is not yet paid
 * @param kept of that, what is still to be used, or was used or lost in a later season
 * @param broughtIn bought in earlier seasons, and used or lost in this one
 * @param income what came in
 * @param cash out for failures
 * @param labour own work on failures, at the team's rate
 * @param missed lost on events not attended
 * @param spoiled of the running of weekends attended, what failures spoiled
 * @param runningCosts what racing cost when nothing broke, spoiled weekends apart
 * @param ownWork own work that no failure asked for, at the team's rate
 * @param running running of all engines
 * @param provision what was to be put aside for that running, or null where nobody set a rate
 * @param noRate costs, budget and income that are in no total
 */
public record SeasonCost(
        SeasonSpan season,
        Money budget,
        Money spent,
        Money committed,
        Money kept,
        Money broughtIn,
        Money income,
        Money cash,
        Money labour,
        Money missed,
        Money spoiled,
        Money runningCosts,
        Money ownWork,
        RunningTime running,
        @Nullable Money provision,
        List<Money> noRate) {
    public SeasonCost {
        noRate = List.copyOf(noRate);
    }
}
