package witnessmark.domain;

import org.jspecify.annotations.Nullable;
import witnessmark.quantity.RunningTime;

/**
 * A part an incident names, with its life as it was known then.
 *
 * @param incident which incident
 * @param part which part or set
 * @param member which member of the set; empty for the whole
 * @param harm what happened to it
 * @param ran its running by then, as the logbook had it when this was written, or null
 * @param atLeast some of its life was not known, so it had run that much or more
 * @param limit the running it was limited to then, or null
 * @param note what was seen on it
 */
public record IncidentPart(
        Id<Incident> incident,
        Id<Part> part,
        String member,
        PartHarm harm,
        @Nullable RunningTime ran,
        boolean atLeast,
        @Nullable RunningTime limit,
        String note)
        implements Fact {}
