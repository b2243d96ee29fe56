package witnessmark.logbook.money;

import java.util.List;
import witnessmark.cost.result.IncidentCost;
import witnessmark.cost.result.LostLife;
import witnessmark.domain.Cause;
import witnessmark.domain.Entry;
import witnessmark.domain.Incident;
import witnessmark.domain.IncidentPart;
import witnessmark.domain.MissedShare;
import witnessmark.domain.Prevention;

/**
 * One incident with everything that hangs on it.
 *
 * @param incident the incident
 * @param open whether nobody had closed it by the day looked at
 * @param cost what it cost in all
 * @param parts the parts it names
 * @param causes in the order they were written
 * @param shareLeft blame that nobody was given, in hundredths of a percent
 * @param preventions what would have kept it from happening
 * @param kept what that would have taken together
 * @param missed the shares of weekends owed to it
 * @param lost lives that ended with it, as splits of prices already counted
 * @param before what it looks like again, the latest first
 * @param again the incidents that look like it
 * @param decisions that answered it, or led to it
 */
public record IncidentPage(
        Entry<Incident> incident,
        boolean open,
        IncidentCost cost,
        List<Entry<IncidentPart>> parts,
        List<Entry<Cause>> causes,
        int shareLeft,
        List<Entry<Prevention>> preventions,
        Failure.Kept kept,
        List<Entry<MissedShare>> missed,
        List<LostLife> lost,
        List<Entry<Incident>> before,
        List<Entry<Incident>> again,
        List<Decided> decisions) {
    public IncidentPage {
        parts = List.copyOf(parts);
        causes = List.copyOf(causes);
        preventions = List.copyOf(preventions);
        missed = List.copyOf(missed);
        lost = List.copyOf(lost);
        before = List.copyOf(before);
        again = List.copyOf(again);
        decisions = List.copyOf(decisions);
    }
}
