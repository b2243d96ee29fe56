package witnessmark.logbook.engines;

import java.util.List;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Entry;
import witnessmark.domain.Fitment;
import witnessmark.domain.Part;
import witnessmark.domain.PartDesign;
import witnessmark.domain.Position;
import witnessmark.ledger.result.Life;
import witnessmark.logbook.standing.MarkOn;

/**
 * A position of a build and what is in it.
 *
 * @param position which position
 * @param fitment what is fitted there, or null when it is empty
 * @param part the part or set, or null when the position is empty
 * @param design its design, or null when the position is empty
 * @param members the members of a set that were not split off, in order; empty for a part
 * @param running the part's whole running time, or null when the position is empty
 * @param worst how it stands, and why; null when nothing is held against it
 * @param nearest the limit it stands worst to, or null when none is recorded
 */
public record FittedPart(
        Entry<Position> position,
        @Nullable Entry<Fitment> fitment,
        @Nullable Entry<Part> part,
        @Nullable PartDesign design,
        List<String> members,
        @Nullable Life running,
        @Nullable MarkOn worst,
        @Nullable MarkOn nearest) {
    public FittedPart {
        members = List.copyOf(members);
    }

    public boolean empty() {
        return part == null;
    }
}
