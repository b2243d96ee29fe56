package witnessmark.logbook.sheets;

import java.time.LocalTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.BiPredicate;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.EngineInCar;
import witnessmark.domain.Entry;
import witnessmark.domain.Fact;
import witnessmark.domain.Fitment;
import witnessmark.outcome.ProblemKind;
import witnessmark.quantity.Moment;
import witnessmark.quantity.typed.TypedClock;

/**
 * What went in on a day without a time, when it comes out on that day. Both happened after its last run; which was first
 * is kept in the last milliseconds of the day, and nothing ran in between. Or else somebody says when it went in.
 *
 * @param <F> fitments, or stays of engines in cars
 */
final class SameDay<F extends Fact> {
    static final SameDay<Fitment> OF_PARTS = new SameDay<>(
            Fitment.class,
            Fitment::from,
            Fitment::to,
            SameDay::moved,
            (one, other) -> one.part().equals(other.part())
                    || one.position().equals(other.position())
                            && Objects.equals(one.engine(), other.engine())
                            && Objects.equals(one.car(), other.car()));

    static final SameDay<EngineInCar> OF_ENGINES = new SameDay<>(
            EngineInCar.class,
            EngineInCar::from,
            EngineInCar::to,
            (stay, from, to) -> new EngineInCar(stay.engine(), stay.car(), from, to, stay.note()),
            (one, other) -> one.engine().equals(other.engine()) || one.car().equals(other.car()));

    private final Class<F> kind;
    private final Function<F, Moment> from;
    private final Function<F, @Nullable Moment> to;
    private final Lasting<F> lasting;
    private final BiPredicate<F, F> touches;

    /** The same with other ends. */
    private interface Lasting<F> {
        F with(F fact, Moment from, @Nullable Moment to);
    }

    private SameDay(
            Class<F> kind,
            Function<F, Moment> from,
            Function<F, @Nullable Moment> to,
            Lasting<F> lasting,
            BiPredicate<F, F> touches) {
        this.kind = kind;
        this.from = from;
        this.to = to;
        this.lasting = lasting;
        this.touches = touches;
    }

    /** Whether it began without a time on the day of this moment, and not before it. */
    boolean is(F fact, Moment at) {
        Moment began = from.apply(fact);
        return began.dayOnly() && began.day().equals(at.day()) && !began.isBefore(at);
    }

    /** What goes on at a moment as asked, or began on its day without a time and has not ended. */
    boolean goesOn(F fact, Moment at) {
        Moment end = to.apply(fact);
        return from.apply(fact).isBefore(at) ? end == null || at.isBefore(end) : end == null && is(fact, at);
    }

    /**
     * Ends it on that day. When it went in is typed, or left empty when nothing ran in between.
     *
     * @param entry what {@link #is} of that moment
     * @param clock the field for the time at which it went in
     * @param name what it is, for the sentence when it would end before it begins
     * @param ended the same as it is to stand, once its beginning is settled
     */
    void end(ReadSheet in, Entry<F> entry, Moment when, SheetField clock, String name, UnaryOperator<F> ended) {
        LocalTime at = new ReadValues(in).echoed(clock, TypedClock::read);
        if (at == null && !when.dayOnly()) {
            in.note(clock, SheetNote.of("in_before_out", when));
            if (in.text(clock).isEmpty()) {
                in.wrong(clock, ProblemKind.NEEDED, clock);
            }
            return;
        }
        List<Entry<F>> moved = List.of();
        if (at == null) {
            in.note(clock, SheetNote.of("ran_nothing"));
            moved = earlier(in.sight(), entry);
        } else {
            Moment day = from.apply(entry.fact());
            Moment began = Moment.of(day.day().atTime(at), day.zone());
            Moment least = notBefore(in.sight(), entry.fact()).orElse(null);
            if (!began.isBefore(when)) {
                in.wrong(clock, ProblemKind.ENDS_BEFORE_IT_BEGINS, name, began, when);
            } else if (least != null && !least.isBefore(began)) {
                in.wrong(clock, ProblemKind.ENDS_BEFORE_IT_BEGINS, name, least, began);
            } else {
                moved = beginning(in.sight(), entry, began);
            }
        }
        if (in.fine()) {
            for (Entry<F> each : moved) {
                in.change(clock, each, each.id().equals(entry.id()) ? ended.apply(each.fact()) : each.fact());
            }
        }
    }

    /**
     * Ends it on that day, where nobody need say when it went in, since nothing ran from then on: what has no time gives
     * way to what is entered later, and keeps its own order.
     *
     * @param entry what {@link #is} of that moment
     * @param field beside which it is shown when it would end before it begins
     * @param name what it is, for that sentence
     */
    void endLater(ReadSheet in, Entry<F> entry, Moment when, SheetField field, String name, UnaryOperator<F> ended) {
        List<Entry<F>> moved = when.dayOnly()
                ? earlier(in.sight(), entry)
                : before(when, from.apply(entry.fact()), together(in.sight(), entry));
        for (Entry<F> each : moved) {
            Moment end = each.id().equals(entry.id()) ? when : to.apply(each.fact());
            Moment began = from.apply(each.fact());
            if (end != null && !began.isBefore(end)) {
                in.wrong(field, ProblemKind.ENDS_BEFORE_IT_BEGINS, name, began, when);
            }
        }
        if (in.fine()) {
            for (Entry<F> each : moved) {
                in.change(field, each, each.id().equals(entry.id()) ? ended.apply(each.fact()) : each.fact());
            }
        }
    }

    /** What has no time is put before a moment of its day: the last a millisecond before it, each one before that one more. */
    private List<Entry<F>> before(Moment when, Moment day, List<Entry<F>> moved) {
        TreeSet<Moment> untimed = new TreeSet<>();
        for (Entry<F> each : moved) {
            untimed.add(from.apply(each.fact()));
            Optional.ofNullable(to.apply(each.fact())).ifPresent(untimed::add);
        }
        untimed.removeIf(moment -> !untimed(moment, day));
        Map<Moment, Moment> puts = new HashMap<>();
        Moment at = when;
        for (Moment moment : untimed.descendingSet()) {
            at = at.before();
            puts.put(moment, at);
        }
        return moved.stream()
                .map(each -> at(each, moment -> puts.getOrDefault(moment, moment)))
                .toList();
    }

    /** Puts it before what comes now, and with it whatever else of that day has no time and touches it. */
    private List<Entry<F>> earlier(SheetSight sight, Entry<F> entry) {
        Moment day = from.apply(entry.fact());
        return together(sight, entry).stream()
                .map(each -> at(each, moment -> untimed(moment, day) ? moment.before() : moment))
                .toList();
    }

    /** It, and whatever else of that day has no time and touches it: they keep their order, so that nothing comes to overlap. */
    private List<Entry<F>> together(SheetSight sight, Entry<F> entry) {
        Moment day = from.apply(entry.fact());
        List<Entry<F>> moved = new ArrayList<>(List.of(entry));
        List<Entry<F>> rest = new ArrayList<>(sight.facts()
                .of(kind)
                .where(other -> untimed(from.apply(other), day) || untimed(to.apply(other), day)));
        rest.removeIf(other -> other.id().equals(entry.id()));
        for (int i = 0; i < moved.size(); i++) {
            F one = moved.get(i).fact();
            List<Entry<F>> touching = rest.stream()
                    .filter(other -> touches.test(one, other.fact()))
                    .toList();
            moved.addAll(touching);
            rest.removeAll(touching);
        }
        return moved;
    }

    /** Lets it begin at a time of that day; what it took the place of ends then. */
    private List<Entry<F>> beginning(SheetSight sight, Entry<F> entry, Moment at) {
        Moment day = from.apply(entry.fact());
        List<Entry<F>> moved = new ArrayList<>(List.of(at(entry, moment -> at)));
        sight.facts()
                .of(kind)
                .where(other -> day.equals(to.apply(other)) && touches.test(entry.fact(), other))
                .forEach(other -> moved.add(at(other, moment -> moment.equals(day) ? at : moment)));
        return moved;
    }

    /** When the last of what it took the place of began, which it cannot come before. */
    private Optional<Moment> notBefore(SheetSight sight, F fact) {
        Moment day = from.apply(fact);
        return sight.facts().of(kind).where(other -> day.equals(to.apply(other)) && touches.test(fact, other)).stream()
                .map(other -> from.apply(other.fact()))
                .max(Moment::compareTo);
    }

    private Entry<F> at(Entry<F> entry, UnaryOperator<Moment> move) {
        Moment end = to.apply(entry.fact());
        F fact = lasting.with(entry.fact(), move.apply(from.apply(entry.fact())), end == null ? null : move.apply(end));
        return new Entry<>(entry.id(), fact, entry.standing(), entry.struckBecause(), entry.rev());
    }

    private static boolean untimed(@Nullable Moment moment, Moment day) {
        return moment != null && moment.dayOnly() && moment.day().equals(day.day());
    }

    private static Fitment moved(Fitment fitment, Moment from, @Nullable Moment to) {
        return new Fitment(
                fitment.part(),
                fitment.engine(),
                fitment.car(),
                fitment.position(),
                from,
                to,
                fitment.buildIn(),
                fitment.buildOut(),
                fitment.why(),
                fitment.condition(),
                fitment.borrowed());
    }
}
