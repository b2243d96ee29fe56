package witnessmark.ledger;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Entry;
import witnessmark.domain.Limit;
import witnessmark.domain.LimitRank;

/**
 * Which limits fall on what. Among limits for the same action and counter the one that names its subject most closely
 * holds: the part, then its design, then its kind, and within each the engine or car, then the engine design. A
 * limit of the rule book is never put aside by a closer one.
 */
final class LimitScope {
    private LimitScope() {}

    /** The limits that hold for what sits there. */
    static List<Entry<Limit>> holding(List<Entry<Limit>> limits, Seat seat) {
        List<Entry<Limit>> falling = new ArrayList<>();
        for (Entry<Limit> limit : limits) {
            if (falls(limit.fact(), seat)) {
                falling.add(limit);
            }
        }
        if (falling.size() < 2) {
            return falling;
        }
        List<Entry<Limit>> holding = new ArrayList<>();
        for (Entry<Limit> limit : falling) {
            if (limit.fact().rank() == LimitRank.RULE_BOOK
                    || falling.stream().noneMatch(other -> closer(other.fact(), limit.fact()))) {
                holding.add(limit);
            }
        }
        return holding;
    }

    /** Whether a limit is for an engine or a car as a whole. */
    static boolean whole(Limit limit) {
        return limit.part() == null && limit.partDesign() == null && limit.partKind() == null;
    }

    private static boolean falls(Limit limit, Seat seat) {
        return whole(limit) == (seat.part() == null)
                && (!whole(limit) || (limit.engine() == null) == (seat.engine() == null))
                && fits(limit.part(), seat.part())
                && fits(limit.partDesign(), seat.partDesign())
                && fits(limit.partKind(), seat.partKind())
                && fits(limit.engine(), seat.engine())
                && fits(limit.design(), seat.design())
                && fits(limit.car(), seat.car());
    }

    private static boolean fits(@Nullable Object named, @Nullable Object there) {
        return named == null || named.equals(there);
    }

    private static boolean closer(Limit other, Limit limit) {
        return other.action() == limit.action()
                && other.counter() == limit.counter()
                && closeness(other) > closeness(limit);
    }

    private static int closeness(Limit limit) {
        int subject = limit.part() != null ? 3 : limit.partDesign() != null ? 2 : limit.partKind() != null ? 1 : 0;
        int place = limit.engine() != null || limit.car() != null ? 2 : limit.design() != null ? 1 : 0;
        return subject * 3 + place;
    }
}
