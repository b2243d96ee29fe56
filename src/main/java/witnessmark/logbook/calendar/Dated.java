package witnessmark.logbook.calendar;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import witnessmark.cost.result.Refund;
import witnessmark.domain.Calibration;
import witnessmark.domain.Entry;
import witnessmark.domain.Event;
import witnessmark.domain.PlannedRun;
import witnessmark.domain.Tool;
import witnessmark.ledger.result.Away;
import witnessmark.logbook.standing.MarkOn;
import witnessmark.quantity.Moment;

/** Something on the calendar of the team. */
public sealed interface Dated {
    /**
     * An event, from its first day to its last.
     *
     * @param cars those entered, by name
     */
    record Meeting(Entry<Event> event, List<Going> cars) implements Dated {
        public Meeting {
            cars = List.copyOf(cars);
        }
    }

    /**
     * A car entered for an event.
     *
     * @param car its name
     * @param engine the number of the engine meant for it, or of the one in it now; null when there is none
     */
    record Going(String car, @Nullable String engine) {}

    /** The truck leaves for an event. */
    record Leaves(Entry<Event> event, Moment at) implements Dated {}

    /**
     * A run of a timetable.
     *
     * @param out when it goes out, or null when only its day is known
     */
    record Timetabled(
            Entry<PlannedRun> run,
            Entry<Event> event,
            @Nullable Moment out) implements Dated {}

    /**
     * What asks for something before the team goes, or falls due while it is there.
     *
     * @param day by when: the day the truck leaves or the first of the event; of what falls due, the day it does
     */
    record Reminder(MarkOn mark, Entry<Event> event, LocalDate day) implements Dated {}

    /** What is with others is promised back. */
    record Promised(Away away, LocalDate day) implements Dated {}

    /** The last day to ask for money back. */
    record AskBack(Refund refund) implements Dated {}

    /** A tool is due to be held against a standard again. */
    record ToolDue(Entry<Tool> tool, Entry<Calibration> last, LocalDate day) implements Dated {}
}
