package witnessmark.logbook.measuring;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import witnessmark.domain.Build;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.HowStood;
import witnessmark.domain.Id;
import witnessmark.domain.MeasureKind;
import witnessmark.domain.MeasurePlace;
import witnessmark.domain.Measurement;
import witnessmark.domain.Spot;
import witnessmark.logbook.Desk;
import witnessmark.logbook.measuring.WriteFigures.Doubt;
import witnessmark.logbook.measuring.WriteFigures.Setting;
import witnessmark.quantity.Moment;
import witnessmark.sample.SampleBooks;
import witnessmark.store.TimeOrderedIds;

/** Figures typed on the sheet of K05's third build, which is open and has none, and on that of K03. */
class WriteFiguresTest {
    private static final MeasurePlace THRUST = new MeasurePlace(MeasureKind.DECK_CLEARANCE, 1, Spot.THRUST);

    @TempDir
    private Path folder;

    private Desk desk;
    private final WriteFigures write = new WriteFigures(new TimeOrderedIds());

    @BeforeEach
    void open() {
        desk = new SampleBooks(folder).open();
    }

    @AfterEach
    void close() {
        desk.logbook().close();
    }

    private SheetPage page(String engine, int number) {
        Id<Engine> id =
                desk.view().facts().of(Engine.class).named(engine).orElseThrow().id();
        Entry<Build> build = SeeBuildSheet.build(desk.view(), id, number).orElseThrow();
        return SeeBuildSheet.of(desk.view(), build.id()).orElseThrow();
    }

    private Setting setting() {
        Moment at = Moment.of(LocalDateTime.of(2026, 7, 8, 15, 0), desk.view().zone());
        return new Setting(null, null, HowStood.PUSHED_DOWN, at, "Crew chief");
    }

    private void type(String engine, int number, MeasurePlace place, String text) {
        desk.write("figure", write.entries(page(engine, number), place, text, setting()))
                .orThrow();
    }

    @Test
    void a_figure_is_kept_exactly_and_as_typed_and_the_checks_know_it_at_once() {
        type("K05", 3, THRUST, "2 thou proud");
        type("K05", 3, new MeasurePlace(MeasureKind.DECK_CLEARANCE, 1, Spot.ANTI_THRUST), "0.05");
        Measurement figure = page("K05", 3).figure(THRUST).orElseThrow();
        assertThat(figure.value()).isEqualTo(-50_800);
        assertThat(figure.typed()).isEqualTo("2 thou proud");
        assertThat(figure.stood()).isEqualTo(HowStood.PUSHED_DOWN);
        assertThat(page("K05", 3)
                        .answer(MeasureKind.DECK_MEAN)
                        .orElseThrow()
                        .checks()
                        .get(0)
                        .value())
                .isEqualTo(-400);
    }

    @Test
    void the_same_place_typed_twice_keeps_both_and_the_later_counts_until_somebody_says_otherwise() {
        type("K05", 3, THRUST, "0.18 down");
        assertThat(WriteFigures.read(page("K05", 3), THRUST, "0.20 down").doubts())
                .containsExactly(Doubt.REPEAT);
        type("K05", 3, THRUST, "0.20 down");
        List<Entry<Measurement>> both = page("K05", 3).figures();
        assertThat(both).hasSize(2);
        assertThat(page("K05", 3).figure(THRUST).orElseThrow().value()).isEqualTo(200_000);
        Entry<Measurement> first = both.stream()
                .filter(entry -> entry.fact().value() == 180_000)
                .findFirst()
                .orElseThrow();
        desk.write("again", WriteFigures.countAgain(page("K05", 3), first)).orThrow();
        assertThat(page("K05", 3).figure(THRUST).orElseThrow().value()).isEqualTo(180_000);
        desk.undo().orThrow();
        assertThat(page("K05", 3).figure(THRUST).orElseThrow().value()).isEqualTo(200_000);
    }

    /** What is taken back is struck out with its reason; the one before it stays a repeat, and undo brings it back. */
    @Test
    void a_figure_taken_back_is_struck_out_and_the_sheet_asks_for_it_again() {
        type("K05", 3, THRUST, "0.18 down");
        type("K05", 3, THRUST, "0.20 down");
        SheetPage before = page("K05", 3);
        List<Entry<Measurement>> change = WriteFigures.takeBack(before, THRUST, "cleared");
        SheetPage tried = SeeBuildSheet.with(desk.view(), before, change);
        assertThat(tried.figure(THRUST)).isEmpty();
        assertThat(page("K05", 3).figure(THRUST)).as("nothing is written yet").isPresent();
        desk.write("taken back", change).orThrow();
        SheetPage after = page("K05", 3);
        assertThat(after.figure(THRUST)).isEmpty();
        assertThat(after.figures()).hasSize(1);
        assertThat(after.counts()).isEqualTo(tried.counts());
        desk.undo().orThrow();
        assertThat(page("K05", 3).figure(THRUST).orElseThrow().value()).isEqualTo(200_000);
    }

    /** Whatever is typed, the sheet tried with it is the sheet after it is written. Seeded. */
    @Test
    void a_sheet_with_what_is_typed_comes_to_what_it_comes_to_once_that_is_written() {
        Random random = new Random(6);
        for (int i = 0; i < 12; i++) {
            SheetPage before = page("K05", 3);
            List<Entry<Measurement>> changes = new ArrayList<>();
            for (int n = 0; n < 15; n++) {
                MeasurePlace place =
                        before.order().get(random.nextInt(before.order().size()));
                String text = String.format(Locale.ROOT, "%.3f", random.nextDouble() * 2);
                if (changes.stream().noneMatch(entry -> entry.fact().place().equals(place))) {
                    changes.addAll(write.entries(before, place, text, setting()));
                }
            }
            SheetPage tried = SeeBuildSheet.with(desk.view(), before, changes);
            desk.write("figures", changes).orThrow();
            SheetPage after = page("K05", 3);
            assertThat(tried.answers()).isEqualTo(after.answers());
            assertThat(tried.counts()).isEqualTo(after.counts());
            assertThat(tried.contradictions()).isEqualTo(after.contradictions());
            assertThat(tried.measured()).isEqualTo(after.measured());
        }
    }

    /** Neighbours typed on the same sheet count as soon as they can be read: 0.20 among hundredths is asked about. */
    @Test
    void neighbours_not_yet_written_are_known_too() {
        SheetPage before = page("K05", 3);
        List<Entry<Measurement>> changes = new ArrayList<>();
        List<MeasurePlace> flat = before.order().stream()
                .filter(place -> place.kind() == MeasureKind.DECK_FLATNESS)
                .toList();
        flat.stream().skip(1).forEach(place -> changes.addAll(write.entries(before, place, "0.04", setting())));
        assertThat(WriteFigures.read(before, flat.get(0), "0.20").doubts()).isEmpty();
        SheetPage typed = SeeBuildSheet.with(desk.view(), before, changes);
        assertThat(WriteFigures.read(typed, flat.get(0), "0.20").doubts()).containsExactly(Doubt.UNLIKE_OTHERS);
        assertThat(WriteFigures.read(typed, flat.get(0), "0.02").doubts()).isEmpty();
    }

    @Test
    void what_an_engine_is_none_without_is_named_where_nothing_of_it_is_fitted() {
        assertThat(page("K03", 1).lacking()).isEmpty();
    }

    @Test
    void a_bare_minus_asks_which_side_and_words_do_not() {
        SheetPage page = page("K03", 1);
        assertThat(WriteFigures.read(page, THRUST, "-0.05").doubts()).contains(Doubt.SIDE_NOT_SAID);
        assertThat(WriteFigures.read(page, THRUST, "0.05 proud").doubts()).doesNotContain(Doubt.SIDE_NOT_SAID);
    }

    @Test
    void three_millimetres_in_a_field_of_hundredths_is_asked_about_and_says_what_is_known() {
        SheetPage page = page("K03", 1);
        MeasurePlace main = new MeasurePlace(MeasureKind.MAIN_CLEARANCE, 1, null);
        WriteFigures.Understood far = WriteFigures.read(page, main, "3");
        assertThat(far.doubts()).contains(Doubt.UNLIKE_OTHERS);
        assertThat(far.low()).isEqualTo(50_000);
        assertThat(far.high()).isEqualTo(62_000);
        assertThat(WriteFigures.read(page, main, "0.055").doubts()).isEmpty();
        assertThat(WriteFigures.read(page, main, "0.058").doubts()).containsExactly(Doubt.REPEAT);
        assertThat(WriteFigures.read(page, new MeasurePlace(MeasureKind.PISTON, 2, null), "8.5123")
                        .doubts())
                .contains(Doubt.UNLIKE_OTHERS);
    }

    @Test
    void what_cannot_be_read_says_how_it_is_written_and_nothing_is_made_of_it() {
        SheetPage page = page("K03", 1);
        assertThat(WriteFigures.read(page, THRUST, "nought").parts()).isNull();
        assertThat(WriteFigures.read(page, THRUST, "nought").example()).isEqualTo("0.05 proud");
        assertThatThrownBy(() -> write.entries(page, THRUST, "nought", setting()))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
