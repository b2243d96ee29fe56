package witnessmark.ledger;

import static org.assertj.core.api.Assertions.assertThat;
import static witnessmark.ledger.Story.asOf;
import static witnessmark.ledger.Story.at;

import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import witnessmark.domain.Car;
import witnessmark.domain.Engine;
import witnessmark.domain.Grade;
import witnessmark.domain.Id;
import witnessmark.domain.Part;
import witnessmark.domain.PartKind;
import witnessmark.domain.Position;
import witnessmark.domain.Reading;
import witnessmark.domain.ReadingKind;
import witnessmark.domain.Warmth;
import witnessmark.domain.WorkKind;
import witnessmark.domain.WorkResult;
import witnessmark.quantity.Moment;

/**
 * Metal that stays in coolers and lines of a car. That debris of a bearing stays in cooler and lines and goes into the next shells is
 * common practice, no source.
 */
class DebrisLeftTest {
    private final Story story = new Story();
    private final Id<Engine> engine = story.engine("A1", story.design("Four"));
    private final Id<Engine> other = story.engine("A2", story.design("Six"));
    private final Id<Car> car = story.car("7");
    private final Id<Position> place = story.carPosition(car, PartKind.OIL_COOLER, "oil cooler", 1);
    private final Id<Part> cooler = story.part("OC-1", story.partDesign("cooler", PartKind.OIL_COOLER, false));

    @BeforeEach
    void runs() {
        story.put(engine, car, at("2026-03-01T08:00Z[UTC]"), null);
    }

    private void fitted(String from, String to) {
        story.fitToCar(cooler, car, place, at(from), to.isEmpty() ? null : at(to));
    }

    private void filter(Id<Engine> of, Grade grade, Moment when) {
        story.add(new Reading(
                ReadingKind.FILTER, when, of, null, "", null, grade, "", Warmth.COLD, false, "Ada", "", null));
    }

    private List<String> on(String day) {
        return new DebrisLeft(LifeLedger.of(story.facts(), asOf(day)))
                .all().stream()
                        .map(each -> each.part().fact().mark() + " "
                                + each.filter().fact().at().day())
                        .toList();
    }

    @Test
    void flakes_are_in_the_cooler_from_that_day_until_it_comes_out() {
        fitted("2026-03-01T08:00Z[UTC]", "2026-05-01T08:00Z[UTC]");
        filter(engine, Grade.FLAKES, at("2026-04-14T18:00Z[UTC]"));

        assertThat(on("2026-04-13")).isEmpty();
        assertThat(on("2026-04-14")).containsExactly("OC-1 2026-04-14");
        assertThat(on("2026-04-30")).containsExactly("OC-1 2026-04-14");
        assertThat(on("2026-05-01")).isEmpty();
    }

    @Test
    void the_last_that_was_found_is_told_and_specks_are_no_debris() {
        fitted("2026-03-01T08:00Z[UTC]", "");
        filter(engine, Grade.FEW_SPECKS, at("2026-04-10T18:00Z[UTC]"));
        assertThat(on("2026-04-12")).isEmpty();
        filter(engine, Grade.FLAKES, at("2026-04-14T18:00Z[UTC]"));
        filter(engine, Grade.BEARING_COLOUR, at("2026-04-20T18:00Z[UTC]"));
        assertThat(on("2026-04-19")).containsExactly("OC-1 2026-04-14");
        assertThat(on("2026-04-21")).containsExactly("OC-1 2026-04-20");
    }

    @Test
    void cleaning_takes_it_out_and_cleaning_before_it_or_that_failed_does_not() {
        fitted("2026-03-01T08:00Z[UTC]", "");
        filter(engine, Grade.FLAKES, at("2026-04-14T18:00Z[UTC]"));
        story.work(cooler, WorkKind.CLEAN, at("2026-04-01T18:00Z[UTC]"), WorkResult.DONE);
        story.work(cooler, WorkKind.CLEAN, at("2026-04-15T18:00Z[UTC]"), WorkResult.FAILED);
        story.work(cooler, WorkKind.LOOK, at("2026-04-16T18:00Z[UTC]"), WorkResult.DONE);
        assertThat(on("2026-04-16")).hasSize(1);
        story.work(cooler, WorkKind.CLEAN, at("2026-04-17T18:00Z[UTC]"), WorkResult.DONE);
        assertThat(on("2026-04-16")).as("not yet then").hasSize(1);
        assertThat(on("2026-04-17")).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"2026-04-14T23:59:59.999Z[UTC]", "2026-04-14T12:00Z[UTC]", "2026-04-13T12:00Z[UTC]"})
    void a_filter_opened_when_its_engine_is_out_tells_of_the_car_it_ran_in(String out) {
        Id<Engine> taken = story.engine("A3", story.design("Flat"));
        Id<Car> left = story.car("8");
        Id<Part> there = story.part("OC-2", story.partDesign("cooler of it", PartKind.OIL_COOLER, false));
        story.fitToCar(
                there,
                left,
                story.carPosition(left, PartKind.OIL_COOLER, "cooler of it", 1),
                at("2026-03-01T08:00Z[UTC]"),
                null);
        story.put(taken, left, at("2026-03-01T08:00Z[UTC]"), at(out));
        story.put(taken, story.car("9"), at("2026-04-20T08:00Z[UTC]"), null);
        filter(taken, Grade.BEARING_COLOUR, at("2026-04-14T23:59:59.999Z[UTC]"));

        assertThat(on("2026-04-14")).containsExactly("OC-2 2026-04-14");
        assertThat(on("2026-05-01")).containsExactly("OC-2 2026-04-14");
    }

    @Test
    void a_cooler_fitted_since_and_an_engine_that_was_not_in_the_car_bring_none() {
        fitted("2026-04-20T08:00Z[UTC]", "");
        filter(engine, Grade.FLAKES, at("2026-04-14T18:00Z[UTC]"));
        filter(other, Grade.BEARING_COLOUR, at("2026-04-25T18:00Z[UTC]"));
        assertThat(on("2026-05-01")).isEmpty();
    }
}
