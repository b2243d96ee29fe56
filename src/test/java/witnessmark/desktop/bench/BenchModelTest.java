package witnessmark.desktop.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import witnessmark.domain.Engine;
import witnessmark.domain.HowStood;
import witnessmark.domain.MeasureKind;
import witnessmark.domain.MeasurePlace;
import witnessmark.domain.Spot;
import witnessmark.logbook.Desk;
import witnessmark.logbook.measuring.SeeBuildSheet;
import witnessmark.logbook.measuring.SheetPage;
import witnessmark.quantity.typed.TemperatureUnit;

/** What is typed on a build sheet and not written, without a window. */
class BenchModelTest {
    private static final MeasurePlace THRUST = new MeasurePlace(MeasureKind.DECK_CLEARANCE, 1, Spot.THRUST);
    private static final MeasurePlace ANTI = new MeasurePlace(MeasureKind.DECK_CLEARANCE, 1, Spot.ANTI_THRUST);

    private BenchModel model;

    @BeforeEach
    void open() {
        model = model();
    }

    /** K05, build 1: everything on its deck is written. */
    private static BenchModel model() {
        Desk book = BenchWindow.sample();
        var engine = book.view().facts().of(Engine.class).named("K05").orElseThrow();
        SheetPage page = SeeBuildSheet.of(
                        book.view(),
                        SeeBuildSheet.build(book.view(), engine.id(), 1)
                                .orElseThrow()
                                .id())
                .orElseThrow();
        return new BenchModel(page, How.by("CC"), new Hows(TemperatureUnit.values()[0]));
    }

    @Test
    void what_is_written_stands_in_the_field_until_something_else_is_typed() {
        String before = model.text(THRUST);
        assertThat(before).isNotEmpty();
        model.type(THRUST, "0.3");
        assertThat(model.text(THRUST)).isEqualTo("0.3");
        assertThat(model.isDirty()).isTrue();
        model.type(THRUST, before);
        assertThat(model.isDirty()).isFalse();
    }

    @Test
    void an_emptied_field_takes_back_what_is_written_and_keeps_how_it_was_taken_while_it_is_typed_over() {
        String before = model.text(THRUST);
        model.how(model.how().withStood(HowStood.HANGING), null);
        model.type(THRUST, "0.3");
        model.how(model.how().withStood(HowStood.PUSHED_DOWN), null);
        model.type(THRUST, "");
        assertThat(model.takesBack(THRUST)).isTrue();
        assertThat(model.isDirty()).isTrue();
        assertThat(model.entered(THRUST)).isEmpty();
        model.type(THRUST, "0.4");
        assertThat(model.takesBack(THRUST)).isFalse();
        assertThat(model.toWrite().get(THRUST).how().stood()).isEqualTo(HowStood.HANGING);
        model.type(THRUST, before);
        assertThat(model.isDirty()).isFalse();
    }

    @Test
    void a_figure_to_be_taken_back_is_kept_in_the_draft() {
        model.type(THRUST, "");
        BenchModel later = model();
        later.restore(model.draft(THRUST));
        assertThat(later.takesBack(THRUST)).isTrue();
    }

    @Test
    void emptying_a_field_in_which_nothing_is_written_takes_nothing_back() {
        MeasurePlace empty = model.page().order().stream()
                .filter(place -> model.text(place).isEmpty())
                .findFirst()
                .orElseThrow();
        model.type(empty, "0.3");
        model.type(empty, "");
        assertThat(model.takesBack(empty)).isFalse();
        assertThat(model.isDirty()).isFalse();
    }

    /** Left behind with what cannot be read, or unlike its neighbours: both are found again, the former first. */
    @Test
    void what_was_left_unread_or_unlike_its_neighbours_needs_a_look() {
        model.type(THRUST, "20");
        assertThat(model.needLook()).as("still in hand").isEmpty();
        model.leave(THRUST);
        model.type(ANTI, "abc");
        model.leave(ANTI);
        assertThat(model.needLook()).containsExactly(ANTI, THRUST);
        model.type(ANTI, "0.15");
        model.type(THRUST, "0.20");
        assertThat(model.needLook()).isEmpty();
    }

    @Test
    void what_holds_is_changed_for_the_field_in_hand_and_for_what_is_typed_next_alone() {
        model.type(THRUST, "0.3");
        model.type(ANTI, "0.2");
        model.how(model.how().withTemperature("20"), ANTI);
        assertThat(model.toWrite().get(THRUST).how().temperature()).isEmpty();
        assertThat(model.toWrite().get(ANTI).how().temperature()).isEqualTo("20");
        assertThat(model.how().temperature()).isEqualTo("20");
    }

    @Test
    void a_figure_or_a_temperature_that_cannot_be_read_stops_in_measuring_order() {
        model.type(ANTI, "abc");
        model.how(model.how().withTemperature("warm"), null);
        model.type(THRUST, "0.3");
        assertThat(model.stopped()).containsExactly(THRUST, ANTI);
    }

    /** Whatever was typed comes back letter for letter, also what cannot be read. */
    @Test
    void a_draft_brings_back_what_was_typed_and_how() {
        model.how(new How(HowStood.PUSHED_DOWN, "", "68 °F", "A | B"), null);
        model.type(THRUST, "0.2x");
        model.type(ANTI, " 0,15 down ");
        Map<String, String> kept = model.draft(ANTI);
        BenchModel later = model();
        assertThat(later.restore(kept)).contains(ANTI);
        assertThat(later.text(THRUST)).isEqualTo("0.2x");
        assertThat(later.text(ANTI)).isEqualTo(" 0,15 down ");
        assertThat(later.toWrite().get(ANTI).how()).isEqualTo(new How(HowStood.PUSHED_DOWN, "", "68 °F", "A   B"));
        assertThat(later.stopped()).isEqualTo(List.of(THRUST));
    }

    @Test
    void what_was_typed_meanwhile_stays_when_a_draft_comes_back() {
        model.type(THRUST, "0.2");
        Map<String, String> kept = model.draft(THRUST);
        BenchModel later = model();
        later.type(THRUST, "0.9");
        later.restore(kept);
        assertThat(later.text(THRUST)).isEqualTo("0.9");
    }
}
