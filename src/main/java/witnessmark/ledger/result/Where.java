package witnessmark.ledger.result;

import java.util.List;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Entry;
import witnessmark.domain.Fitment;
import witnessmark.domain.Part;
import witnessmark.quantity.Moment;

/**
 * Where a part is as of a day.
 *
 * @param part which part or set
 * @param state in which way it is there
 * @param since since when; null for a spare of which nothing says so
 * @param fitment what it is fitted by, or null when it is not fitted
 * @param asides whatever puts the whole part aside on the day, a set's before it was split off included; oldest first
 * @param members what puts members aside that are still in the set; oldest first
 * @param away what is known of its being away, the engine's that it is fitted in included; null when it is not
 * @param before the last time it was fitted that is over, or null when it never was
 */
public record Where(
        Entry<Part> part,
        State state,
        @Nullable Moment since,
        @Nullable Entry<Fitment> fitment,
        List<PutAside> asides,
        List<PutAside> members,
        @Nullable Away away,
        @Nullable Stay before) {
    /** The ways in which a part can be somewhere. */
    public enum State {
        /** In an engine or a car. */
        FITTED,
        /** On the shelf, free to be fitted. */
        SPARE,
        /** Put aside until somebody decides; a set of which every member is aside too. */
        QUARANTINE,
        /** By itself with a machinist, a maker, another team. */
        AWAY,
        /** Out of use for good; a set of which every member is too. */
        SCRAPPED,
        /** A set that is no more: every member was split off. */
        SPLIT
    }

    public Where {
        asides = List.copyOf(asides);
        members = List.copyOf(members);
    }

    /** Whether it is in quarantine, or a member of it is, and nobody decided what becomes of it. */
    public boolean undecided() {
        return state != State.SCRAPPED
                && (asides.stream().anyMatch(Where::quarantine)
                        || members.stream().anyMatch(Where::quarantine));
    }

    /** Whether it is away by itself and not back on the day it was last promised for. */
    public boolean late() {
        return state == State.AWAY && away != null && away.late();
    }

    /** Whether somebody must decide about it or ask after it. */
    public boolean needsHand() {
        return undecided() || late();
    }

    /** Whether it is fitted and is to go back where it came from. */
    public boolean borrowed() {
        return fitment != null && fitment.fact().borrowed();
    }

    private static boolean quarantine(PutAside aside) {
        return aside.kind() == PutAside.Kind.QUARANTINE;
    }
}
