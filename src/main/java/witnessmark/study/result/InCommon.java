package witnessmark.study.result;

import java.util.List;
import witnessmark.domain.Entry;
import witnessmark.domain.Incident;

/**
 * What incidents share and what they do not.
 *
 * @param incidents two or more, the earliest first
 * @param alike by aspect, what all share first, then what most share
 */
public record InCommon(List<Entry<Incident>> incidents, List<Alike> alike) {
    /**
     * One thing, and which incidents had it.
     *
     * @param aspect what kind of thing
     * @param what as people call it: the number of an engine, the mark of a tool, the word of a mark
     * @param in the incidents that had it, the earliest first
     */
    public record Alike(Aspect aspect, String what, List<Entry<Incident>> in) {
        public Alike {
            in = List.copyOf(in);
        }
    }

    public InCommon {
        incidents = List.copyOf(incidents);
        alike = List.copyOf(alike);
    }

    /** What every one of them had. */
    public List<Alike> shared() {
        return alike.stream()
                .filter(each -> each.in().size() == incidents.size())
                .toList();
    }

    /** What only that one had. */
    public List<Alike> onlyIn(Entry<Incident> incident) {
        return alike.stream()
                .filter(each -> each.in().size() == 1 && each.in().get(0).id().equals(incident.id()))
                .toList();
    }
}
