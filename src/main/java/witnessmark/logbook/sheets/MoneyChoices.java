package witnessmark.logbook.sheets;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import witnessmark.cost.Seasons;
import witnessmark.domain.Car;
import witnessmark.domain.CostBasis;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Event;
import witnessmark.domain.Fact;
import witnessmark.domain.Id;
import witnessmark.domain.Incident;
import witnessmark.outcome.ProblemKind;

/** What sheets of money have in common: what is picked in them, and whose season a day is of. */
final class MoneyChoices {
    private MoneyChoices() {}

    static List<Choice> basis(boolean valuedToo) {
        List<Choice> all = new ArrayList<>(List.of(
                Choice.of(CostBasis.CASH.code(), SheetWord.PAID),
                Choice.of(CostBasis.COMMITTED.code(), SheetWord.STILL_TO_PAY)));
        if (valuedToo) {
            all.add(Choice.of(CostBasis.VALUED.code(), SheetWord.OWN_LABOUR));
        }
        return all;
    }

    static List<Choice> events(SheetSight sight) {
        return orNone(EnterCar.events(sight));
    }

    static List<Choice> cars(SheetSight sight) {
        return orNone(sight.all(Car.class, car -> true));
    }

    static List<Choice> engines(SheetSight sight) {
        return orNone(sight.all(Engine.class, engine -> true));
    }

    /** The latest first. */
    static List<Choice> incidents(SheetSight sight) {
        return orNone(sight.facts()
                .of(Incident.class)
                .inForce()
                .sorted(Comparator.comparing(
                                (Entry<Incident> incident) -> incident.fact().at())
                        .reversed())
                .map(incident -> Choice.of(
                        incident.id().text(), incident.fact(), incident.fact().title()))
                .toList());
    }

    static List<Choice> yesNo() {
        return List.of(SheetWord.NO.choice(), SheetWord.YES.choice());
    }

    static List<Choice> orNone(List<Choice> choices) {
        List<Choice> all = new ArrayList<>(List.of(SheetWord.NONE.choice()));
        all.addAll(choices);
        return all;
    }

    /** The entry picked, or null for none. */
    static <F extends Fact> @Nullable Id<F> picked(ReadSheet in, SheetField field, Class<F> kind) {
        Entry<F> entry = in.text(field).isEmpty() ? null : in.chosen(field, kind);
        return entry == null ? null : entry.id();
    }

    static String text(@Nullable Id<?> id) {
        return id == null ? "" : id.text();
    }

    static String text(@Nullable LocalDate day) {
        return day == null ? "" : day.toString();
    }

    /** Asks where a day is of another season than today, or than the event picked. */
    static void season(ReadSheet in, SheetField field, SheetField event, @Nullable LocalDate day) {
        if (day == null) {
            return;
        }
        SheetSight sight = in.sight();
        String now = Seasons.of(sight.facts(), sight.today()).name();
        String of = Seasons.of(sight.facts(), day).name();
        String meant = Optional.of(in.text(event))
                .flatMap(id -> sight.find(Event.class, id))
                .map(found -> Seasons.of(sight.facts(), found.fact().firstDay()).name())
                .orElse(now);
        if (!of.equals(meant) || !of.equals(now)) {
            in.wrong(field, ProblemKind.DAY_OF_ANOTHER_SEASON, day, of);
        }
    }
}
