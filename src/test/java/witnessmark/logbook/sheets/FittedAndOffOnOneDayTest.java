package witnessmark.logbook.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import witnessmark.domain.Entry;
import witnessmark.domain.Fitment;
import witnessmark.domain.Part;
import witnessmark.ledger.LifeLedger;
import witnessmark.outcome.ProblemKind;
import witnessmark.quantity.Counter;
import witnessmark.quantity.Moment;

/**
 * A part fitted on a day without a time comes off on that day. Oracle: what each part ran, summed by hand in the
 * comments.
 */
class FittedAndOffOnOneDayTest extends ByHand {
    @Test
    void without_any_time_it_came_off_after_it_was_fitted_and_ran_nothing() {
        logRun("60", "8000");
        fitToday("VS-2");

        takeOff("VS-2").orThrow();

        // VS-1 ran the hour of that day, as VS-2 went in after it; VS-2 ran nothing.
        assertThat(ran("VS-1")).isEqualTo(HOUR);
        assertThat(ran("VS-2")).isZero();
        assertThat(fitment("VS-2")).satisfies(fitment -> {
            Moment off = Objects.requireNonNull(fitment.to());
            assertThat(off).isEqualTo(Moment.endOf(OwnLogbook.TODAY, zone()));
            assertThat(fitment.from().dayOnly()).isTrue();
            assertThat(fitment.from().day()).isEqualTo(OwnLogbook.TODAY);
            assertThat(fitment.why()).isEqualTo("soft");
        });
        assertThat(own.desk.logbook().verify()).isEmpty();
    }

    @Test
    void three_in_a_row_on_one_day_keep_their_order_and_one_undo_takes_the_last_back() {
        fitToday("VS-2");
        takeOff("VS-2").orThrow();
        fitToday("VS-3");
        takeOff("VS-3").orThrow();
        fitToday("VS-4");

        assertThat(List.of(fitment("VS-1"), fitment("VS-2"), fitment("VS-3"), fitment("VS-4")))
                .isSortedAccordingTo((one, other) -> one.from().compareTo(other.from()));
        assertThat(new FittedThere().at(Moment.endOf(OwnLogbook.TODAY, zone()))).contains("VS-4");

        takeOff("VS-4").orThrow();
        assertThat(new FittedThere().at(Moment.endOf(OwnLogbook.TODAY, zone()))).doesNotContain("VS-1", "VS-2", "VS-4");
        own.desk.undo().orThrow();
        assertThat(fitment("VS-4").to()).isNull();
        assertThat(own.desk.logbook().verify()).isEmpty();
    }

    @Test
    void with_the_time_it_was_fitted_it_takes_what_ran_after_that_and_the_one_before_ends_then() {
        logRunOut("60", "11:00");
        fitToday("VS-2");

        takeOff("VS-2", "fitted_at", "10:00").orThrow();

        // It went in at 10:00 and the hour went out at 11:00.
        assertThat(ran("VS-1")).isZero();
        assertThat(ran("VS-2")).isEqualTo(HOUR);
        assertThat(fitment("VS-1").to()).isEqualTo(fitment("VS-2").from());
        assertThat(own.desk.logbook().verify()).isEmpty();
    }

    @Test
    void taken_off_at_a_time_it_must_have_been_fitted_before_that() {
        fitToday("VS-2");
        Map<SheetField, String> typed = off("VS-2", "off_time", "18:00");

        assertThat(own.sheets
                        .read(new TakeOffPart(), typed)
                        .of(TakeOffPart.FITTED_AT)
                        .problem())
                .satisfies(problem ->
                        assertThat(Objects.requireNonNull(problem).kind()).isEqualTo(ProblemKind.NEEDED));
        typed.put(TakeOffPart.FITTED_AT, "19:00");
        assertThat(own.sheets
                        .read(new TakeOffPart(), typed)
                        .of(TakeOffPart.FITTED_AT)
                        .problem())
                .satisfies(problem -> assertThat(Objects.requireNonNull(problem).kind())
                        .isEqualTo(ProblemKind.ENDS_BEFORE_IT_BEGINS));
        typed.put(TakeOffPart.FITTED_AT, "12:00");
        own.sheets.save(new TakeOffPart(), typed, "off").orThrow();
        assertThat(fitment("VS-2").from().dayOnly()).isFalse();
    }

    @Test
    void it_is_asked_only_for_one_that_was_fitted_that_day_without_a_time() {
        assertThat(own.sheets.read(new TakeOffPart(), off("VS-1")).asked()).doesNotContain(TakeOffPart.FITTED_AT);
        fitToday("VS-2");
        assertThat(own.sheets.read(new TakeOffPart(), off("VS-2")).asked()).contains(TakeOffPart.FITTED_AT);
    }

    /** Marks of what is fitted at a moment. */
    private final class FittedThere {
        List<String> at(Moment moment) {
            LifeLedger ledger = own.desk.view().ledger();
            return ledger.fittedAt(engine(), moment).values().stream()
                    .map(there -> own.desk
                            .view()
                            .facts()
                            .of(Part.class)
                            .get(there.fact().part())
                            .mark())
                    .toList();
        }
    }

    private void fitToday(String mark) {
        own.save(
                        new FitPart(),
                        "place",
                        "H1",
                        "position",
                        "valve springs",
                        "since",
                        LocalDate.of(2026, 3, 10).toString(),
                        "mark",
                        mark,
                        "part_design",
                        "new_design",
                        "part_design_name",
                        "Design of " + mark)
                .orThrow();
    }

    private Map<SheetField, String> off(String mark, String... more) {
        TakeOffPart sheet = new TakeOffPart();
        Map<SheetField, String> typed = own.filled(sheet, "place", "H1", "fitted", mark, "off_reason", "soft");
        for (int i = 0; i < more.length; i += 2) {
            typed.put(OwnLogbook.field(sheet, more[i]), more[i + 1]);
        }
        return typed;
    }

    private witnessmark.outcome.Outcome<?> takeOff(String mark, String... more) {
        return own.sheets.save(new TakeOffPart(), off(mark, more), "off");
    }

    private long ran(String mark) {
        return own.desk.view().ledger().life(part(mark), Counter.RUNNING).total();
    }

    private Fitment fitment(String mark) {
        return own
                .desk
                .view()
                .facts()
                .of(Fitment.class)
                .where(fitment -> fitment.part().equals(part(mark)))
                .stream()
                .map(Entry::fact)
                .findFirst()
                .orElseThrow();
    }

    private void logRunOut(String running, String out) {
        logRun(running, "8000", out);
    }
}
