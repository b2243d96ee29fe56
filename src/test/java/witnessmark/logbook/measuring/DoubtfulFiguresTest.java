package witnessmark.logbook.measuring;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import witnessmark.domain.Engine;
import witnessmark.domain.MeasureKind;
import witnessmark.domain.MeasurePlace;
import witnessmark.domain.Spot;
import witnessmark.logbook.View;
import witnessmark.logbook.measuring.WriteFigures.Doubt;
import witnessmark.logbook.run.SampleBook;

/** Which figures are asked about on a sheet on which nothing is measured yet. Common practice, no source. */
class DoubtfulFiguresTest {
    private static SheetPage page;

    /** K05, build 3, in pieces. */
    @BeforeAll
    static void open() {
        View view = SampleBook.on(SampleBook.OPENING).view();
        var engine = view.facts().of(Engine.class).named("K05").orElseThrow();
        page = SeeBuildSheet.of(
                        view,
                        SeeBuildSheet.build(view, engine.id(), 3).orElseThrow().id())
                .orElseThrow();
    }

    /** Not over 0.04 mm: every flatter face is as likely, at every spot of it. */
    @ParameterizedTest
    @CsvSource({"0.00, false", "0.01, false", "0.02, false", "0.05, false", "0.30, false", "3, true", "-3, true"})
    void a_limit_on_one_side_speaks_of_that_side_alone(String typed, boolean asked) {
        for (Spot spot : new Spot[] {Spot.EXHAUST_SIDE, Spot.INLET_SIDE, Spot.BETWEEN_BORES}) {
            MeasurePlace place = new MeasurePlace(MeasureKind.DECK_FLATNESS, null, spot);
            assertThat(WriteFigures.read(page, place, typed).doubts().contains(Doubt.UNLIKE_OTHERS))
                    .as(typed + " " + spot)
                    .isEqualTo(asked);
        }
    }

    /** 0.050 to 0.062 mm: what is a little outside is outside, not a slip of the pen. */
    @ParameterizedTest
    @CsvSource({"0.045, false", "0.07, false", "0.55, true", "3, true"})
    void between_two_limits_it_asks_many_times_their_room_away(String typed, boolean asked) {
        MeasurePlace place = new MeasurePlace(MeasureKind.MAIN_CLEARANCE, 2, null);
        assertThat(WriteFigures.read(page, place, typed).doubts().contains(Doubt.UNLIKE_OTHERS))
                .isEqualTo(asked);
    }

    /** As designed 85 mm: a bore in hundredths is a clearance typed one field too early. */
    @ParameterizedTest
    @CsvSource({"0.02, true", "8.5, true", "1.0, true"})
    void before_any_neighbour_is_measured_the_design_is_one(String typed, boolean asked) {
        MeasurePlace place = new MeasurePlace(MeasureKind.BORE, 1, Spot.TOP_ACROSS);
        long designed = page.designed().get(place);
        assertThat(WriteFigures.read(page, place, typed).doubts().contains(Doubt.UNLIKE_OTHERS))
                .isEqualTo(asked);
        assertThat(WriteFigures.read(page, place, MeasureKind.BORE.dimension().shown(designed + 40_000) + " mm")
                        .doubts())
                .isEmpty();
    }

    @Test
    void every_place_of_the_sheet_has_its_bounds() {
        assertThat(page.order()).allSatisfy(place -> assertThat(page.bounds()).containsKey(place));
    }
}
