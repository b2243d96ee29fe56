package witnessmark.logbook.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import witnessmark.domain.Build;
import witnessmark.domain.EngineInCar;
import witnessmark.domain.EventEntry;
import witnessmark.domain.MissedHow;
import witnessmark.domain.MissedRun;
import witnessmark.outcome.Outcome;
import witnessmark.outcome.ProblemKind;
import witnessmark.quantity.Counter;
import witnessmark.quantity.Moment;

/**
 * Builds closed, engines taken out, cars entered and starts missed, by sheets alone. Oracle: hours summed by hand in the
 * comments.
 */
class BuildsCarsAndStartsTest extends ByHand {
    @Test
    void an_open_build_is_closed_and_hours_since_rebuild_count_from_then() {
        logRun("60", "8000", "09:00");
        own.save(new WriteBuild(), "engine", "H1", "zones", "full", "opened", "10 Mar", "opened_time", "11:00")
                .orThrow();
        CloseBuild sheet = new CloseBuild();
        own.save(sheet, "build_closed_time", "15:00", "build_signed", "Ada", "close_note", "shells looked good")
                .orThrow();

        Build build = last(Build.class);
        assertThat(Objects.requireNonNull(build.closed()).wallClock().getHour()).isEqualTo(15);
        assertThat(build.signedBy()).isEqualTo("Ada");
        assertThat(build.note()).isEqualTo("shells looked good");
        logRun("30", "8000", "16:00");
        // An hour before, half an hour after.
        assertThat(own.desk
                        .view()
                        .ledger()
                        .engineSince(engine(), Counter.RUNNING, Objects.requireNonNull(build.closed()))
                        .total())
                .isEqualTo(HOUR / 2);
        assertThat(sheet.choices(CloseBuild.BUILD, new SheetTyped(Map.of()), own.sheets.sight()))
                .isEmpty();
    }

    /** Mostly it goes back in: what it says is where it is by the logbook. */
    @Test
    void an_engine_opened_out_of_its_car_is_said_to_be_in_it_by_the_logbook() {
        logRun("60", "8000", "09:00");
        assertThat(said("head, out of the car")).isEqualTo(SheetNote.of("in_car_here", "7"));
        assertThat(said("head")).isNotEqualTo(SheetNote.of("in_car_here", "7"));
        own.save(new TakeEngineOut(), "engine_in", stay(), "out_time", "10:00").orThrow();
        assertThat(said("head, out of the car")).isNotEqualTo(SheetNote.of("in_car_here", "7"));
    }

    private SheetNote said(String zones) {
        return own.sheets
                .read(
                        new WriteBuild(),
                        own.filled(
                                new WriteBuild(),
                                "engine",
                                "H1",
                                "zones",
                                zones,
                                "opened",
                                "10 Mar",
                                "opened_time",
                                "11:00"))
                .of(WriteBuild.OPENED)
                .note();
    }

    @Test
    void a_limit_for_an_engine_as_a_whole_counts_from_its_last_rebuild() {
        logRun("60", "8000", "09:00");
        own.save(
                        new SetLimit(),
                        "scope",
                        "whole_engine",
                        "limit_engine",
                        "H1",
                        "work_due",
                        "rebuild",
                        "figure",
                        "15",
                        "source",
                        "builder",
                        "limit_from",
                        "1 Mar")
                .orThrow();
        assertThat(usedOfEngine()).isEqualTo(HOUR);
        own.save(new WriteBuild(), "engine", "H1", "zones", "full", "opened", "10 Mar", "opened_time", "11:00")
                .orThrow();
        own.save(new CloseBuild(), "build_closed_time", "15:00").orThrow();
        logRun("30", "8000", "16:00");
        // The half hour after the build was closed.
        assertThat(usedOfEngine()).isEqualTo(HOUR / 2);
    }

    private long usedOfEngine() {
        return new witnessmark.ledger.LimitUses(own.desk.view().ledger())
                .of(engine()).stream()
                        .filter(use -> use.part() == null)
                        .map(use -> use.used().total())
                        .findFirst()
                        .orElseThrow();
    }

    @Test
    void a_build_is_not_closed_before_it_was_opened_and_one_is_named() {
        refused(new CloseBuild(), ProblemKind.NEEDED, "open_build");
        own.save(new WriteBuild(), "engine", "H1", "zones", "head", "opened", "9 Mar")
                .orThrow();
        refused(new CloseBuild(), ProblemKind.ENDS_BEFORE_IT_BEGINS, "build_closed", "build_closed", "8 Mar");
    }

    @Test
    void an_engine_taken_out_of_a_car_is_in_none_until_it_is_put_in_again() {
        logRun("60", "8000", "09:00");
        own.save(new TakeEngineOut(), "engine_in", stay(), "out_time", "12:00", "put_note", "oil kept")
                .orThrow();
        assertThat(last(EngineInCar.class).to()).isNotNull();
        assertThat(last(EngineInCar.class).note()).isEqualTo("oil kept");
        assertThat(new TakeEngineOut().choices(TakeEngineOut.ENGINE, new SheetTyped(Map.of()), own.sheets.sight()))
                .isEmpty();
        own.desk.undo().orThrow();
        assertThat(last(EngineInCar.class).to()).isNull();
    }

    @Test
    void an_engine_that_went_in_today_without_a_time_comes_out_today() {
        own.save(new TakeEngineOut(), "engine_in", stay(), "out_when", "9 Mar").orThrow();
        own.save(new PutEngine(), "engine", "H1", "car", "7").orThrow();
        own.save(new TakeEngineOut(), "engine_in", stay()).orThrow();

        EngineInCar last = last(EngineInCar.class);
        assertThat(last.from().day()).isEqualTo(OwnLogbook.TODAY);
        assertThat(last.from().dayOnly()).isTrue();
        assertThat(last.to()).isEqualTo(Moment.endOf(OwnLogbook.TODAY, zone()));
        assertThat(own.desk.logbook().verify()).isEmpty();
    }

    @Test
    void an_engine_does_not_come_out_before_a_run_it_made_in_that_car() {
        logRun("60", "8000", "09:00");
        refused(
                new TakeEngineOut(),
                ProblemKind.ENGINE_NOT_IN_CAR,
                "out_when",
                "engine_in",
                stay(),
                "out_when",
                "9 Mar");
    }

    @Test
    void cars_are_entered_with_the_event_or_later_each_once() {
        own.save(new AddCar(), "name", "12").orThrow();
        own.save(new AddEvent(), "name", "Round 1", "first_day", "10 Mar", "cars_entered", "7")
                .orThrow();
        own.save(new EnterCar(), "entry_car", "12", "entry_engine", "H1").orThrow();

        assertThat(own.desk.view().facts().of(EventEntry.class).where(entry -> true))
                .extracting(entry -> own.sheets
                                .sight()
                                .name(witnessmark.domain.Car.class, entry.fact().car())
                        + (entry.fact().engine() == null ? "" : " with H1"))
                .containsExactly("7", "12 with H1");
        refused(new EnterCar(), ProblemKind.NAME_TAKEN, "entry_car", "entry_car", "7");
        refused(
                new AddEvent(),
                ProblemKind.NOT_FOUND,
                "cars_entered",
                "name",
                "Round 2",
                "first_day",
                "14 Mar",
                "cars_entered",
                "7, 99");
    }

    @Test
    void a_start_not_taken_is_written_down_with_the_engine_that_was_in_the_car() {
        own.save(
                        new AddEvent(),
                        "name",
                        "Round 1",
                        "first_day",
                        "10 Mar",
                        "cars_entered",
                        "7",
                        "timetable",
                        "P1 09:00 25 min\nR1 15:00 40 min")
                .orThrow();
        LogMissed sheet = new LogMissed();
        own.save(sheet, "missed_car", "7", "missed_planned", "Race 1", "missed_words", "no oil pressure")
                .orThrow();

        MissedRun missed = last(MissedRun.class);
        assertThat(missed.how()).isEqualTo(MissedHow.DID_NOT_START);
        assertThat(missed.engine()).isEqualTo(engine());
        assertThat(missed.at().wallClock().getHour()).isEqualTo(15);
        assertThat(missed.words()).isEqualTo("no oil pressure");
        refused(
                sheet,
                ProblemKind.PLANNED_RUN_TAKEN,
                "missed_planned",
                "missed_car",
                "7",
                "missed_planned",
                "Race 1",
                "missed_words",
                "again");
        refused(sheet, ProblemKind.NEEDED, "missed_words", "missed_car", "7", "missed_planned", "Practice 1");
    }

    private String stay() {
        List<Choice> stays =
                new TakeEngineOut().choices(TakeEngineOut.ENGINE, new SheetTyped(Map.of()), own.sheets.sight());
        return stays.get(0).key();
    }

    private void refused(LogSheet sheet, ProblemKind kind, String field, String... typed) {
        Map<SheetField, String> filled = own.filled(sheet, typed);
        SheetReading reading = own.sheets.read(sheet, filled);
        List<String> said = new java.util.ArrayList<>();
        reading.asked().forEach(asked -> {
            if (reading.of(asked).problem() != null) {
                said.add(Objects.requireNonNull(reading.of(asked).problem()).kind() + " beside " + asked.key());
            }
        });
        said.addAll(found(sheet, filled));
        assertThat(said).contains(kind + " beside " + field);
        Outcome<?> saved = own.sheets.save(sheet, filled, "by hand");
        assertThat(saved.didWork()).isFalse();
    }
}
