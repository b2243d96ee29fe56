package witnessmark.logbook.told;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.EnumMap;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import witnessmark.domain.Engine;
import witnessmark.domain.Id;
import witnessmark.domain.ToldRunning;
import witnessmark.ledger.result.Life;
import witnessmark.logbook.Desk;
import witnessmark.logbook.run.SampleBook;
import witnessmark.outcome.Outcome;
import witnessmark.outcome.ProblemKind;
import witnessmark.quantity.Counter;
import witnessmark.quantity.RunningTime;
import witnessmark.quantity.typed.DayOrder;

class TellRunningTest {
    private final Desk book = SampleBook.on(SampleBook.OPENING);
    private final TellRunning telling = new TellRunning(book, SampleBook.ids(), DayOrder.DAY_FIRST);
    private final Id<Engine> k21 =
            book.view().facts().of(Engine.class).named("K21").orElseThrow().id();

    private Map<ToldField, String> filled() {
        Map<ToldField, String> typed = new EnumMap<>(ToldField.class);
        typed.put(ToldField.ENGINE, k21.text());
        typed.put(ToldField.FROM, "10/6");
        typed.put(ToldField.TO, "1 Jul");
        typed.put(ToldField.LIKELY, "3");
        typed.put(ToldField.LOWEST, "2h30");
        typed.put(ToldField.HIGHEST, "4,5 h");
        typed.put(ToldField.TOLD_BY, " customer C1 ");
        typed.put(ToldField.HOW, "his diary");
        return typed;
    }

    private static RunningTime hours(String figure) {
        return RunningTime.ofHours(new BigDecimal(figure));
    }

    @Test
    void bare_figures_are_hours_and_days_count_to_their_end() {
        ToldRunning told = telling.read(filled()).told().fact();

        assertThat(told.likely()).isEqualTo(hours("3"));
        assertThat(told.lowest()).isEqualTo(hours("2.5"));
        assertThat(told.highest()).isEqualTo(hours("4.5"));
        assertThat(told.toldBy()).isEqualTo("customer C1");
        assertThat(told.from().dayOnly()).isTrue();
        assertThat(told.from().day()).hasToString("2026-06-10");
        assertThat(told.to().day()).hasToString("2026-07-01");
    }

    /** What is added lies between the least and the most that was said, and the likely figure is in the total. */
    @Test
    void the_life_grows_by_what_is_likely_and_says_how_much_is_told() {
        var change = telling.life(telling.read(filled())).orElseThrow();
        Life before = change.before();
        Life after = change.after();

        assertThat(after.total() - before.total()).isEqualTo(hours("3").millis());
        assertThat(after.lowest() - before.lowest()).isEqualTo(hours("2.5").millis());
        assertThat(after.highest() - before.highest()).isEqualTo(hours("4.5").millis());
        assertThat(after.toldLowest() - before.toldLowest())
                .isEqualTo(hours("2.5").millis());
        assertThat(book.view().ledger().engineLife(k21, Counter.RUNNING))
                .as("looking writes nothing")
                .isEqualTo(before);
    }

    @Test
    void what_is_saved_is_what_was_shown_and_can_be_taken_back() {
        Life before = book.view().ledger().engineLife(k21, Counter.RUNNING);
        Life shown = telling.life(telling.read(filled())).orElseThrow().after();

        assertThat(telling.save(filled(), "running of K21 told by others").didWork())
                .isTrue();
        assertThat(book.view().ledger().engineLife(k21, Counter.RUNNING)).isEqualTo(shown);

        assertThat(book.undo().didWork()).isTrue();
        assertThat(book.view().ledger().engineLife(k21, Counter.RUNNING)).isEqualTo(before);
    }

    @ParameterizedTest
    @EnumSource
    void every_field_is_needed(ToldField field) {
        Map<ToldField, String> typed = filled();
        typed.remove(field);

        ToldReading reading = telling.read(typed);

        assertThat(reading.stopped()).containsExactly(field);
        assertThat(reading.fields().get(field).problem().kind()).isEqualTo(ProblemKind.NEEDED);
        assertThat(telling.life(reading)).isEmpty();
        assertThat(telling.save(typed, "why").didWork()).isFalse();
    }

    @ParameterizedTest(name = "{0} = {1}: {2}")
    @CsvSource({
        "ENGINE, nobody, NEEDED",
        "FROM, 2 Jul, '' ",
        "FROM, 32/6, CANNOT_READ",
        "TO, 10 Jun, ENDS_BEFORE_IT_BEGINS",
        "TO, 9 Jul 2026, RUN_IN_FUTURE",
        "LIKELY, 12abc, CANNOT_READ",
        "LIKELY, 1:20, TWO_READINGS",
        "LIKELY, 2, OUT_OF_RANGE",
        "LIKELY, 5, OUT_OF_RANGE",
        "LOWEST, 9, OUT_OF_RANGE",
        "HIGHEST, -1, LESS_THAN_NOTHING",
    })
    void what_cannot_be_is_stopped_where_it_stands(ToldField field, String text, String kind) {
        Map<ToldField, String> typed = filled();
        typed.put(field, text);

        ToldReading reading = telling.read(typed);

        assertThat(reading.stops()).isTrue();
        assertThat(reading.told()).isNull();
        ToldField where = kind.isEmpty() ? ToldField.TO : field;
        assertThat(reading.stopped()).containsExactly(where);
        if (!kind.isEmpty()) {
            assertThat(reading.fields().get(field).problem().kind()).hasToString(kind);
        }
    }

    @Test
    void nothing_is_filled_in_before_anybody_types() {
        assertThat(telling.fresh()).isEmpty();
        Outcome<?> saved = telling.save(telling.fresh(), "why");
        assertThat(saved.problems()).hasSize(ToldField.values().length);
    }
}
