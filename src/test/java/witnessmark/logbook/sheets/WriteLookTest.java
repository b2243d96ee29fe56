package witnessmark.logbook.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDateTime;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import witnessmark.domain.Look;
import witnessmark.ledger.result.LookAt;
import witnessmark.logbook.standing.NextRun;
import witnessmark.logbook.standing.SeeStanding;
import witnessmark.quantity.Moment;

/** What is looked at between two runs is ticked by a look, until the car has run again. */
class WriteLookTest extends ByHand {
    @BeforeEach
    void anEvent() {
        own.save(
                        new AddEvent(),
                        "name",
                        "Test day",
                        "first_day",
                        OwnLogbook.TODAY.toString(),
                        "cars_entered",
                        "7",
                        "timetable",
                        "P1 09:00 25 min\nP2 11:00 25 min\nP3 14:00 25 min")
                .orThrow();
    }

    @Test
    void a_tick_holds_until_the_car_has_run_again() {
        assertThat(look("plugs").done()).isNull();
        own.save(new WriteLook(), "look_what", "Plugs", "when_time", "08:30", "look_seen", "light tan")
                .orThrow();
        Look written = look("plugs").done().fact();
        assertThat(written.by()).isEqualTo("Ada");
        assertThat(written.words()).isEqualTo("light tan");
        assertThat(written.at())
                .isEqualTo(Moment.of(LocalDateTime.of(OwnLogbook.TODAY, java.time.LocalTime.of(8, 30)), zone()));
        assertThat(next().open()).isEqualTo(3);

        logRun("25", "8000", "09:00");
        assertThat(look("plugs").done()).isNull();
        own.desk.undo().orThrow();
        assertThat(look("plugs").done()).isNotNull();
        own.desk.undo().orThrow();
        assertThat(look("plugs").done()).isNull();
    }

    @Test
    void a_part_that_went_in_since_is_to_be_looked_at() {
        own.save(
                        new FitPart(),
                        "place",
                        "H1",
                        "position",
                        "head gasket",
                        "since",
                        OwnLogbook.TODAY.toString(),
                        "since_time",
                        "08:00",
                        "mark",
                        "HG-1",
                        "part_design",
                        "new_design",
                        "part_design_name",
                        "copper")
                .orThrow();
        assertThat(next().looks())
                .filteredOn(look -> look.reason() == LookAt.Reason.WENT_IN)
                .extracting(LookAt::what)
                .containsExactly("HG-1");
        assertThat(next().looks())
                .filteredOn(look -> look.what().equals("RS-1"))
                .isEmpty();
    }

    private NextRun next() {
        List<NextRun> runs = SeeStanding.of(own.desk.view()).nextRuns();
        assertThat(runs).hasSize(1);
        return runs.get(0);
    }

    private LookAt look(String what) {
        return next().looks().stream()
                .filter(look -> look.what().equals(what))
                .findFirst()
                .orElseThrow();
    }
}
