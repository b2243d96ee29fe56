package witnessmark.logbook.sharing;

import java.util.List;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Incident;
import witnessmark.domain.Part;
import witnessmark.domain.PartDesign;
import witnessmark.domain.Position;
import witnessmark.ledger.result.Life;
import witnessmark.logbook.View;
import witnessmark.quantity.Moment;

/**
 * The tags of an engine that comes apart.
 *
 * @param view the logbook as of the day looked at
 * @param engine which engine
 * @param incident the latest that is open on it, or null
 * @param tags in the order its build is read out
 * @param logbook whose it is
 * @param printed when
 */
public record TagFacts(
        View view,
        Entry<Engine> engine,
        @Nullable Entry<Incident> incident,
        List<Tag> tags,
        String logbook,
        Moment printed) {
    public TagFacts {
        tags = List.copyOf(tags);
    }

    /**
     * The tag of a part.
     *
     * @param position where it sits or sat
     * @param off when it came off, or null while it is in
     * @param life what it has run by then
     */
    public record Tag(
            Entry<Part> part,
            PartDesign design,
            Position position,
            @Nullable Moment off,
            Life life) {}
}
