package witnessmark.desktop.form;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import witnessmark.desktop.testing.UiTest;
import witnessmark.wording.Texts;

/** Choosing by typing what a choice is called. */
@UiTest
class ChoiceByLettersTest {
    private static final long SECOND = 1_000_000_000L;

    private final ChoiceBox<String> choice =
            new ChoiceBox<>(Texts.in(Locale.UK), Caption.of("Position"), Function.identity());
    private long now = 100 * SECOND;

    @BeforeEach
    void load() {
        choice.load(List.of("Pistons", "Inlet valves", "Valve spring caps", "Valve springs", "Vent"), "Pistons");
    }

    /** Types a letter as the drop-down does: the choice stands on what it went to. */
    private void type(String letters) {
        for (char letter : letters.toCharArray()) {
            now += SECOND / 5;
            int at = choice.startingWith(letter, now);
            if (at >= 0) {
                choice.combo().setSelectedIndex(at);
            }
        }
    }

    /** A word that no choice goes on with picks none, not the one that half of it would: VS-22b is not VS-22a. */
    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource({
        "v, Valve spring caps",
        "valve sp, Valve spring caps",
        "valve springs, Valve springs",
        "VALVE SPRINGS, Valve springs",
        "ve, Vent",
        "vv, Valve springs",
        "vvv, Vent",
        "vvvv, Valve spring caps",
        "vx, Pistons",
        "valve springs 2, Pistons",
    })
    void letters_without_a_pause_are_one_word_and_one_letter_again_is_the_next(String letters, String chosen) {
        type(letters);
        assertThat(choice.chosen()).isEqualTo(chosen);
    }

    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource({"k, Engine K05", "kk, Engine K03", "k05, Engine K05", "41, Car 41", "e, Engine K05", "3, Engine K03"})
    void a_word_within_a_choice_will_do_where_none_begins_so(String letters, String chosen) {
        choice.load(List.of("Engine K03", "Engine K05", "Car 41"), "Engine K03");
        type(letters);
        assertThat(choice.chosen()).isEqualTo(chosen);
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource({"x, x", "vx, vx", "valve springs 2, valve springs 2"})
    void letters_that_lead_nowhere_are_said_at_the_field(String letters, String said) {
        choice.note("as fitted last");
        type(letters);
        assertThat(choice.line().words()).isEqualTo("Nothing here begins with '" + said + "'; what stood there stays.");
        assertThat(choice.line().level()).isEqualTo(NoteLine.Level.QUERY);
        assertThat(choice.chosen()).isEqualTo("Pistons");

        choice.note("told by the form meanwhile");
        assertThat(choice.line().words()).as("it is not gone before it is read").startsWith("Nothing here");

        now += 2 * SECOND;
        type("v");
        assertThat(choice.line().words()).isEqualTo("told by the form meanwhile");
    }

    /** What people look for may be nowhere among the choices for a reason that they have to know. */
    @Test
    void letters_of_what_is_never_offered_are_answered_with_its_reason() {
        choice.notOffered(() -> Map.of("Rod bolts: RB-1", "Rod bolts are never picked here."));
        for (String letters : List.of("rod", "rb-1")) {
            now += 2 * SECOND;
            type(letters);
            assertThat(choice.line().words()).as(letters).isEqualTo("Rod bolts are never picked here.");
            assertThat(choice.chosen()).isEqualTo("Pistons");
        }
        now += 2 * SECOND;
        type("bolts: rb-2");
        assertThat(choice.line().words()).startsWith("Nothing here begins with 'bolts: rb-2'");
    }

    @Test
    void what_stops_the_form_is_said_before_it() {
        type("x");
        choice.stop("Needed to save");
        assertThat(choice.line().words()).isEqualTo("Needed to save");
    }

    /** Half of the letters chose something, so that the form looks at the field: empty again it says it is needed. */
    @Test
    void that_the_field_is_empty_again_is_not_said_instead() {
        choice.load(List.of("Engine K03", "Car 41"), null);
        choice.onChange(() -> {
            if (choice.chosen() == null) {
                choice.stop("Needed to save");
            }
        });
        type("k9");
        assertThat(choice.chosen()).isNull();
        assertThat(choice.line().words()).isEqualTo("Nothing here begins with 'k9'; what stood there stays.");
        choice.stop("Needed to save");
        assertThat(choice.line().words())
                .as("said once more, as the draft is kept")
                .contains("'k9'");
        now += 2 * SECOND;
        type("e");
        assertThat(choice.chosen()).isEqualTo("Engine K03");
    }

    @Test
    void choosing_by_hand_ends_it() {
        choice.note("");
        type("x");
        choice.combo().setSelectedItem("Vent");
        assertThat(choice.line().words()).isEmpty();
    }

    @Test
    void after_a_pause_a_letter_begins_anew() {
        type("v");
        now += 2 * SECOND;
        type("p");
        assertThat(choice.chosen()).isEqualTo("Pistons");
    }
}
