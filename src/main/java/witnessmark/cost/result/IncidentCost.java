package witnessmark.cost.result;

import java.util.Currency;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;
import witnessmark.domain.Id;
import witnessmark.domain.Incident;
import witnessmark.quantity.Money;

/**
 * What one incident cost.
 *
 * @param incident which one
 * @param home the currency of its amounts
 * @param pieces everything it is owed
 * @param unwritten of cash out and own labour, what nobody has written anything of, in any season: then nothing can be
 *     said of it, where none of it would be 0
 */
public record IncidentCost(Id<Incident> incident, Currency home, List<Piece> pieces, Set<Place> unwritten) {
    public IncidentCost {
        pieces = List.copyOf(pieces);
        unwritten = Set.copyOf(unwritten);
    }

    /** Whether nobody has written anything of what it cost: then it has no total, where one that cost nothing has 0. */
    public boolean isUnwritten() {
        return pieces.isEmpty() && unwritten.contains(Place.CASH) && unwritten.contains(Place.LABOUR);
    }

    /**
     * Whether all that is written is left out of a total: then that total is not known, where one of which all was
     * written as none is 0. What is written may be own labour that comes to no piece here.
     */
    public boolean isLeftOut(Switches switches) {
        return pieces.isEmpty()
                ? !switches.labour() && unwritten.equals(Set.of(Place.CASH))
                : switches.leaveOutAll(pieces);
    }

    /** Whether all that is written in a column is spent either way or due anyway, and such is left out. */
    public boolean isLeftOut(Place column, Switches switches) {
        return open(switches)
                .leaveOutAll(
                        pieces.stream().filter(piece -> piece.place() == column).toList());
    }

    /** Whether there is a total: something is written, and not all of it left out. */
    public boolean hasTotal(Switches switches) {
        return !isUnwritten() && !isLeftOut(switches);
    }

    /** One of the four columns, as far as the switches for what is spent either way and due anyway let it. */
    public Money column(Place column, Switches switches) {
        return sum(piece -> piece.place() == column && open(switches).takes(piece));
    }

    private static Switches open(Switches switches) {
        return Switches.ALL.with(switches.allocated(), switches.planned());
    }

    /** Of a column, what was due anyway. */
    public Money planned(Place column) {
        return sum(piece -> piece.place() == column && piece.planned());
    }

    /** Of a column, what is spent either way. */
    public Money allocated(Place column) {
        return sum(piece -> piece.place() == column && piece.allocated());
    }

    /** Everything the switches take in. */
    public Money total(Switches switches) {
        return sum(switches::takes);
    }

    /** The lowest and the highest total, whichever way what is spent either way and what was due anyway are taken. */
    public Span span(Switches switches) {
        return Span.of(Stream.of(true, false)
                .flatMap(allocated -> Stream.of(true, false).map(planned -> total(switches.with(allocated, planned))))
                .toList());
    }

    private Money sum(Predicate<Piece> which) {
        return pieces.stream().filter(which).map(Piece::amount).reduce(Money.none(home), Money::plus);
    }
}
