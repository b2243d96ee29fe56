package witnessmark.study.result;

import java.util.List;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Finding;
import witnessmark.domain.Id;
import witnessmark.domain.Incident;
import witnessmark.domain.IncidentPart;
import witnessmark.domain.Part;
import witnessmark.ledger.result.Stay;

/**
 * What a part lived through one time it was fitted. Ages are the part's own, in milliseconds of the counter its kind is lifed by.
 *
 * @param part which part or set
 * @param stay since when and until when it was there
 * @param engine in which engine, or null when in a car
 * @param place the number of the engine or the name of the car
 * @param position where there
 * @param entry how old it was when it was fitted, 0 or more; from then on it was watched
 * @param exit how old it was when it failed, came off, or was last seen; not below the entry
 * @param doubt why it stands in no comparison, if it stands in none
 * @param end how it ended
 * @param harms what incidents say of it in that time, the earliest first
 * @param findings what was found on it in that time, or at its place when it came off; the earliest first
 */
public record TrialLife(
        Entry<Part> part,
        Stay stay,
        @Nullable Id<Engine> engine,
        String place,
        String position,
        long entry,
        long exit,
        Doubt doubt,
        End end,
        List<Harm> harms,
        List<Entry<Finding>> findings) {
    /** How a life ended. */
    public enum End {
        /** An incident names it as failed. */
        FAILED,
        /** It came off for another reason, damaged by something else among them. */
        CAME_OFF,
        STILL_IN
    }

    /** What keeps a life out of a comparison. */
    public enum Doubt {
        NONE,
        /** Its life before the logbook is not known. */
        BEFORE_NOT_KNOWN,
        /** Some of it is somebody's word, and reaches from so much to so much. */
        TOLD,
        /** Runs in it do not say this counter. */
        NOT_READ
    }

    /**
     * What an incident did to it.
     *
     * @param named the part in the incident
     * @param incident which
     */
    public record Harm(Entry<IncidentPart> named, Entry<Incident> incident) {}

    public TrialLife {
        harms = List.copyOf(harms);
        findings = List.copyOf(findings);
    }

    /** What it ran in that time, in milliseconds. */
    public long ran() {
        return exit - entry;
    }

    /** Whether it stands in a comparison: its age is known, and it has run. */
    public boolean counts() {
        return doubt == Doubt.NONE && exit > entry;
    }
}
