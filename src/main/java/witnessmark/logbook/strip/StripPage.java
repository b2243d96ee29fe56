package witnessmark.logbook.strip;

import java.util.List;
import java.util.Map;
import witnessmark.domain.Entry;
import witnessmark.domain.Finding;
import witnessmark.domain.Id;
import witnessmark.domain.Incident;
import witnessmark.study.result.StripReport;

/**
 * The report of one strip with what stands around it.
 *
 * @param report what was found
 * @param open whether the engine is apart still
 * @param incidents of that engine, of which a finding may be evidence, the last first
 * @param photos how many photos a finding has; those without are not in it
 */
public record StripPage(
        StripReport report, boolean open, List<Entry<Incident>> incidents, Map<Id<Finding>, Long> photos) {
    public StripPage {
        incidents = List.copyOf(incidents);
        photos = Map.copyOf(photos);
    }
}
