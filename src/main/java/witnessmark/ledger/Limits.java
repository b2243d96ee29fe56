package witnessmark.ledger;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Entry;
import witnessmark.domain.Fitment;
import witnessmark.domain.Id;
import witnessmark.domain.Limit;
import witnessmark.domain.Part;
import witnessmark.domain.PartKind;
import witnessmark.domain.WorkKind;
import witnessmark.domain.Zone;
import witnessmark.ledger.result.LimitUse;
import witnessmark.quantity.Moment;

/**
 * How near every limit is as of the ledger's day. A limit to renew is judged by the part's whole life; a limit to look
 * by what it ran since it was last looked at, crack tested or measured; one to test for cracks since it was last crack
 * tested; one to skim since it was last skimmed; one to rebuild since the bottom end of the engine it sits in was last
 * opened and closed; an engine's limit by what it ran since its bottom end was last opened and closed; a car's by all it ran. Age
 * counts from the day a part was made, uses are its fitments. Thickness is not counted here.
 */
public final class Limits {
    /** What counts as having looked. */
    public static final Set<WorkKind> LOOKS = Set.of(WorkKind.LOOK, WorkKind.CRACK_TEST, WorkKind.MEASURE);

    /** What a build must have opened to count as a rebuild. */
    public static final Set<Zone> REBUILD = Set.of(Zone.BOTTOM_END);

    private final LifeLedger ledger;
    private final List<Entry<Limit>> standing;
    private final Map<Optional<PartKind>, List<Entry<Limit>>> ofKind = new HashMap<>();
    private final Usage usage;
    private final Seats seats;

    public Limits(LifeLedger ledger) {
        this.ledger = ledger;
        this.usage = new Usage(ledger);
        this.seats = new Seats(ledger);
        this.standing =
                ledger.facts().of(Limit.class).where(limit -> ledger.asOf().stands(limit));
    }

    /** How much is used of each limit that holds on a part where it is, or on the shelf. */
    public List<LimitUse> ofPart(Id<Part> part) {
        Moment now = ledger.asOf().last();
        Fitment there = ledger.whereIs(part, now).map(Entry::fact).orElse(null);
        return uses(List.of(seats.seat(part, there, now)));
    }

    /** What limits may fall on. */
    Seats seats() {
        return seats;
    }

    /** Those that can fall on a kind of part, in the order they were written; on an engine or a car for null. */
    private List<Entry<Limit>> forKind(@Nullable PartKind kind) {
        return ofKind.computeIfAbsent(
                Optional.ofNullable(kind),
                asked -> standing.stream()
                        .filter(limit ->
                                limit.fact().partKind() == null || limit.fact().partKind() == kind)
                        .toList());
    }

    /** How much is used of each limit that holds there. */
    List<LimitUse> uses(List<Seat> there) {
        List<LimitUse> uses = new ArrayList<>();
        for (Seat seat : there) {
            for (Entry<Limit> limit : LimitScope.holding(forKind(seat.partKind()), seat)) {
                uses.add(usage.of(limit, seat));
            }
        }
        return uses;
    }
}
