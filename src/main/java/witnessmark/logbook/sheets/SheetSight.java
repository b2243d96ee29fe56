package witnessmark.logbook.sheets;

import java.time.LocalDate;
import java.util.Currency;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import witnessmark.cost.HomeCurrency;
import witnessmark.domain.Entry;
import witnessmark.domain.Fact;
import witnessmark.domain.Facts;
import witnessmark.domain.Id;
import witnessmark.logbook.View;
import witnessmark.quantity.Moment;
import witnessmark.quantity.typed.DayOrder;

/**
 * What a sheet can look at.
 *
 * @param view the logbook
 * @param today the day taken for today
 * @param units the units of bare figures, and day or month first in a date
 * @param who who writes
 * @param standing what holds and what is near its limit there
 */
public record SheetSight(View view, LocalDate today, SheetUnits units, String who, StandingNow standing) {
    /** Day or month first in a date of figures. */
    public DayOrder days() {
        return units.days();
    }

    /** The currency of bare amounts of money: the team's. */
    public Currency currency() {
        return HomeCurrency.of(facts());
    }

    public Facts facts() {
        return view.facts();
    }

    /** The entry in force with this id in text form. */
    public <F extends Fact> Optional<Entry<F>> find(Class<F> kind, String id) {
        return facts().of(kind)
                .inForce()
                .filter(entry -> entry.id().text().equals(id))
                .findFirst();
    }

    /** After everything that happened up to the end of today. */
    Moment now() {
        return Moment.endOf(today, view.zone());
    }

    /** One choice for each entry in force as asked, named by its own word. */
    <F extends Fact> List<Choice> all(Class<F> kind, Predicate<F> asked) {
        return facts().of(kind).where(asked).stream()
                .map(entry -> Choice.of(entry.id().text(), entry.fact()))
                .toList();
    }

    /** The word people know an entry by, empty when there is no such entry. */
    <F extends Fact> String name(Class<F> kind, Id<F> id) {
        return facts().of(kind)
                .find(id)
                .map(entry -> String.valueOf(entry.fact().knownAs()))
                .orElse("");
    }
}
