package witnessmark.wording;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.Currency;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import witnessmark.cost.result.IncidentCost;
import witnessmark.cost.result.Piece;
import witnessmark.cost.result.Place;
import witnessmark.cost.result.Switches;
import witnessmark.domain.Id;
import witnessmark.quantity.Money;
import witnessmark.quantity.RunningTime;

/** Amounts for each hour run: worked by hand. */
class MoneyWordsTest {
    private static final Texts TEXTS = Texts.in(Locale.UK);
    private static final MoneyWords WORDS = new MoneyWords(TEXTS, new Measures(TEXTS, Units.METRIC));

    @Test
    void an_amount_is_shared_among_the_hours_run_to_whole_units() {
        Money springs = Money.parse("738.00 EUR");
        assertThat(WORDS.perHour(springs, new RunningTime(90 * 60_000L))).isEqualTo("492 EUR an hour run");
        assertThat(WORDS.perHour(Money.parse("1.49 EUR"), new RunningTime(3_600_000L)))
                .isEqualTo("1 EUR an hour run");
    }

    @Test
    void where_nothing_ran_nothing_is_said() {
        assertThat(WORDS.perHour(Money.parse("738.00 EUR"), RunningTime.NONE)).isEmpty();
        assertThat(WORDS.perHour(Money.parse("738.00 EUR"), null)).isEmpty();
    }

    /** Common sense, no source: nothing written, nothing of what counts written, and none written are three things. */
    @Test
    void a_total_that_leaves_out_all_that_is_written_is_neither_0_nor_not_written() {
        Piece labour = new Piece(
                new Id<>(new UUID(1, 1)),
                Place.LABOUR,
                LocalDate.of(2026, 5, 3),
                Money.parse("1092.00 EUR"),
                null,
                null,
                new Id<>(new UUID(1, 2)),
                false,
                false);
        Switches without = new Switches(false, true, false, true, true);
        IncidentCost own = cost(List.of(labour), Set.of(Place.CASH));
        assertThat(WORDS.together(own, Switches.USUAL)).isEqualTo("1\u2009092.00");
        assertThat(WORDS.together(own, without)).isEqualTo("left out");
        assertThat(WORDS.whole(own, without)).isEqualTo("all that is written is left out");
        IncidentCost nothing = cost(List.of(), Set.of(Place.CASH, Place.LABOUR));
        assertThat(WORDS.together(nothing, without)).isEqualTo("not written");
        assertThat(WORDS.whole(nothing, without)).isEqualTo("no cost written yet");
        IncidentCost none = cost(List.of(), Set.of());
        assertThat(WORDS.together(none, without)).isEqualTo("0.00");
        assertThat(WORDS.together(cost(List.of(), Set.of(Place.LABOUR)), without))
                .as("that it took no cash is written")
                .isEqualTo("0.00");
    }

    private static IncidentCost cost(List<Piece> pieces, Set<Place> unwritten) {
        return new IncidentCost(new Id<>(new UUID(1, 2)), Currency.getInstance("EUR"), pieces, unwritten);
    }
}
