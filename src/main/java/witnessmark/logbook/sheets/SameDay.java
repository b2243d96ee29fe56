package witnessmark.logbook.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Entry;
import witnessmark.domain.Fitment;
import witnessmark.quantity.Moment;

/**
 * Fitments that began on a day without a time, when something else happens on that day. Both happened after its last
 * run; which was first is kept in the last milliseconds of the day, and nothing ran in between.
 */
final class SameDay {
    private SameDay() {}

    /** Whether it began without a time on the day of this moment, and not before it. */
    static boolean is(Fitment fitment, Moment at) {
        return fitment.from().dayOnly()
                && fitment.from().day().equals(at.day())
                && !fitment.from().isBefore(at);
    }

    /**
     * Puts what was fitted and came off without a time on that day before what comes now, in the order it is in. It
     * reaches whatever shares a part or a position with this fitment on that day, so that nothing comes to overlap.
     *
     * @return the other fitments that move with it, as they are to stand; first the fitment itself
     */
    static List<Entry<Fitment>> earlier(SheetSight sight, Entry<Fitment> fitment) {
        Moment day = fitment.fact().from();
        List<Entry<Fitment>> moved = new ArrayList<>(List.of(fitment));
        List<Entry<Fitment>> rest = new ArrayList<>(sight.facts()
                .of(Fitment.class)
                .where(other -> untimed(other.from(), day) || untimed(other.to(), day)));
        rest.removeIf(other -> other.id().equals(fitment.id()));
        for (int i = 0; i < moved.size(); i++) {
            Fitment one = moved.get(i).fact();
            List<Entry<Fitment>> touching =
                    rest.stream().filter(other -> touches(one, other.fact())).toList();
            moved.addAll(touching);
            rest.removeAll(touching);
        }
        return moved.stream()
                .map(entry -> at(entry, moment -> untimed(moment, day) ? moment.before() : moment))
                .toList();
    }

    /** Lets it begin at a time of that day; what it took the place of, and where its part was before, ends then. */
    static List<Entry<Fitment>> beginning(SheetSight sight, Entry<Fitment> fitment, Moment at) {
        Moment from = fitment.fact().from();
        List<Entry<Fitment>> moved = new ArrayList<>(List.of(at(fitment, moment -> at)));
        sight.facts()
                .of(Fitment.class)
                .where(other -> from.equals(other.to()) && touches(fitment.fact(), other))
                .forEach(other -> moved.add(at(other, moment -> moment.equals(from) ? at : moment)));
        return moved;
    }

    /** When the last of what it takes the place of began, which it cannot come before. */
    static Optional<Moment> notBefore(SheetSight sight, Fitment fitment) {
        return sight
                .facts()
                .of(Fitment.class)
                .where(other -> fitment.from().equals(other.to()) && touches(fitment, other))
                .stream()
                .map(other -> other.fact().from())
                .max(Moment::compareTo);
    }

    private static boolean untimed(@Nullable Moment moment, Moment day) {
        return moment != null && moment.dayOnly() && moment.day().equals(day.day());
    }

    private static boolean touches(Fitment one, Fitment other) {
        return one.part().equals(other.part())
                || one.position().equals(other.position())
                        && Objects.equals(one.engine(), other.engine())
                        && Objects.equals(one.car(), other.car());
    }

    private static Entry<Fitment> at(Entry<Fitment> entry, UnaryOperator<Moment> move) {
        Fitment fitment = entry.fact();
        Moment to = fitment.to();
        return new Entry<>(
                entry.id(),
                new Fitment(
                        fitment.part(),
                        fitment.engine(),
                        fitment.car(),
                        fitment.position(),
                        move.apply(fitment.from()),
                        to == null ? null : move.apply(to),
                        fitment.buildIn(),
                        fitment.buildOut(),
                        fitment.why(),
                        fitment.condition(),
                        fitment.borrowed()),
                entry.standing(),
                entry.struckBecause(),
                entry.rev());
    }
}
