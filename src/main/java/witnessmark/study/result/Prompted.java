package witnessmark.study.result;

import java.util.List;
import witnessmark.domain.Entry;
import witnessmark.domain.Finding;
import witnessmark.domain.Part;

/**
 * What may be asked about a failure, and what leads to asking it.
 *
 * @param mode how engines fail that show such marks
 * @param findings that show it, in the order they were seen
 * @param failed failed parts of a kind that fails so
 */
public record Prompted(FailureMode mode, List<Entry<Finding>> findings, List<Entry<Part>> failed) {
    public Prompted {
        findings = List.copyOf(findings);
        failed = List.copyOf(failed);
    }
}
