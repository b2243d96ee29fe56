package witnessmark.logbook.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import witnessmark.domain.Clearance;
import witnessmark.ledger.Holds;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;

/** A rule asks for several looks, and not all of them are written down when it is signed clear: asked, never refused. */
class SignedWithLessThanAskedTest extends ByHand {
    @BeforeEach
    void hold() {
        trigger(
                "trigger_kind",
                "speed above",
                "trigger_figure",
                "8500",
                "holds",
                "rods; valve spr",
                "held_asks",
                "crack test; leak-down; springs looked at");
        logRun("30", "9340");
    }

    @ParameterizedTest(name = "{0}, {1}: {2}")
    @CsvSource(
            delimiter = '|',
            nullValues = "-",
            value = {
                "rods crack tested | no indication | leak-down, springs looked at",
                "Crack-tested, springs measured | 2 % down | leak-down",
                "crack test, leakdown 4 %, valve springs out | all good | -",
                "crack test of the rods | leak-down 4 %, 5 %, 4 %, 4 %; springs fine | -",
                "everything | good | crack test, leak-down, springs looked at",
                "looked at it, tested | good | crack test, leak-down, springs looked at",
            })
    void what_nobody_named_is_asked_about_by_its_name(String done, String found, String missing) {
        Problem problem = problem(signed(done, found, ""));
        if (missing == null) {
            assertThat(problem).isNull();
        } else {
            assertThat(problem).isEqualTo(Problem.of(ProblemKind.NOT_LOOKED_AT, missing));
        }
    }

    @Test
    void it_is_signed_with_a_reason_that_is_kept_and_not_without() {
        Map<SheetField, String> silent = signed("rods crack tested", "no indication", "");
        assertThat(own.sheets.read(new SignClear(), silent).stopped()).containsExactly(SignClear.WORDS);
        Map<SheetField, String> told = signed("rods crack tested", "no indication", "leak-down on Friday, cold now");
        SheetReading reading = own.sheets.read(new SignClear(), told);
        assertThat(reading.stops()).isFalse();
        assertThat(problem(told)).isNotNull();
        own.sheets.save(new SignClear(), told, "by hand").orThrow();
        assertThat(last(Clearance.class).words()).isEqualTo("leak-down on Friday, cold now");
        assertThat(new Holds(own.desk.view().ledger()).open()).isEmpty();
    }

    /** A leak-down of the engine and a crack test of its rods since the run: both are written down where they belong. */
    @Test
    void what_was_written_down_since_as_a_reading_or_work_is_not_asked_for_again() {
        own.save(new WriteReading(), "reading_on", "H1", "reading_place", "1", "reading_value", "4")
                .orThrow();
        assertThat(problem(signed("rods crack tested", "none", "")))
                .isEqualTo(Problem.of(ProblemKind.NOT_LOOKED_AT, "springs looked at"));
        own.save(new WriteWork(), "work_kind", "crack test", "work_on", "RS-1", "by", "Tarn")
                .orThrow();
        assertThat(problem(signed("springs out", "all alike", ""))).isNull();
        own.desk.undo().orThrow();
        own.desk.undo().orThrow();
        assertThat(problem(signed("springs out", "all alike", "")))
                .isEqualTo(Problem.of(ProblemKind.NOT_LOOKED_AT, "crack test, leak-down"));
    }

    @Test
    void what_was_measured_before_it_happened_answers_nothing() {
        own.save(
                        new WriteReading(),
                        "reading_on",
                        "H1",
                        "reading_place",
                        "1",
                        "reading_value",
                        "4",
                        "reading_day",
                        "5 Mar")
                .orThrow();
        assertThat(problem(signed("rods crack tested, springs out", "none", "")))
                .isEqualTo(Problem.of(ProblemKind.NOT_LOOKED_AT, "leak-down"));
    }

    private Map<SheetField, String> signed(String done, String found, String words) {
        Map<SheetField, String> typed = own.filled(
                new SignClear(), "clear_done", done, "clear_found", found, "clear_words", words, "clear_by", "Bea");
        List<Choice> held = clearChoices();
        typed.put(SignClear.HELD, held.get(0).key());
        return typed;
    }

    private Problem problem(Map<SheetField, String> typed) {
        return own.sheets.read(new SignClear(), typed).of(SignClear.DONE).problem();
    }
}
