package witnessmark.launch;

import java.time.LocalDate;
import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Event;
import witnessmark.domain.PlannedRun;
import witnessmark.logbook.calendar.Dated;
import witnessmark.logbook.port.CalendarEntry;
import witnessmark.logbook.standing.MarkOn;
import witnessmark.quantity.Moment;
import witnessmark.quantity.RunningTime;
import witnessmark.wording.Measures;
import witnessmark.wording.OutWords;
import witnessmark.wording.ReasonWords;
import witnessmark.wording.RecordWords;
import witnessmark.wording.RefundWords;
import witnessmark.wording.Texts;

/** Says what lies on the team's calendar as entries of a calendar file. */
public final class DatedWords implements Function<Dated, CalendarEntry> {
    private final Texts texts;
    private final Measures measures;
    private final RecordWords records;
    private final ReasonWords reasons;
    private final OutWords outs;
    private final RefundWords refunds;

    public DatedWords(Texts texts, Measures measures) {
        this.texts = texts;
        this.measures = measures;
        this.records = new RecordWords(texts);
        this.reasons = new ReasonWords(texts, measures);
        this.outs = new OutWords(texts, measures);
        this.refunds = new RefundWords(texts, measures);
    }

    @Override
    public CalendarEntry apply(Dated dated) {
        if (dated instanceof Dated.Meeting meeting) {
            Event event = meeting.event().fact();
            List<String> cars = meeting.cars().stream().map(this::going).toList();
            return new CalendarEntry(
                    meeting.event().id().text(),
                    event.name(),
                    event.circuit(),
                    cars.isEmpty() ? texts.get("calendar.noCars") : measures.row(cars),
                    event.firstDay(),
                    event.lastDay(),
                    null,
                    null);
        }
        if (dated instanceof Dated.Leaves leaves) {
            return timed(
                    "leaves-" + leaves.event().id().text(),
                    texts.get("calendar.leaves", leaves.event().fact().name()),
                    "",
                    leaves.at(),
                    null);
        }
        if (dated instanceof Dated.Timetabled run) {
            return run(run);
        }
        if (dated instanceof Dated.Reminder reminder) {
            return reminder(reminder);
        }
        if (dated instanceof Dated.Promised promised) {
            return day(
                    "promised-" + promised.away().sent().id().text(),
                    texts.get("calendar.promised", outs.what(promised.away())),
                    outs.with(promised.away()),
                    promised.day());
        }
        if (dated instanceof Dated.AskBack back) {
            return day(
                    "refund-" + back.refund().line().id().text(),
                    texts.get("calendar.refund", refunds.what(back.refund())),
                    refunds.still(back.refund()),
                    back.refund().by());
        }
        Dated.ToolDue tool = (Dated.ToolDue) dated;
        return day(
                "tool-" + tool.tool().id().text(),
                texts.get("calendar.tool", tool.tool().fact().mark()),
                texts.get("calendar.tool.last", measures.date(tool.last().fact().day())),
                tool.day());
    }

    private String going(Dated.Going going) {
        return going.engine() == null
                ? texts.get("calendar.car", going.car())
                : texts.get("calendar.car.engine", going.car(), going.engine());
    }

    private CalendarEntry run(Dated.Timetabled run) {
        PlannedRun planned = run.run().fact();
        Event event = run.event().fact();
        String title = texts.get("calendar.run", planned.name(), event.name());
        String id = run.run().id().text();
        return run.out() == null
                ? new CalendarEntry(id, title, event.circuit(), "", planned.day(), planned.day(), null, null)
                : timed(id, title, event.circuit(), run.out(), planned.expected());
    }

    private CalendarEntry reminder(Dated.Reminder reminder) {
        MarkOn on = reminder.mark();
        String what = on.kind() == null
                ? String.valueOf(on.engine() != null ? on.engine() : on.car())
                : records.label(records.word(on.kind())) + " " + on.serial();
        return day(
                "mark-" + on.subject() + "-" + on.mark().reason().against(),
                texts.get("calendar.reminder", what, reasons.why(on.mark())),
                texts.get(
                        on.calls() ? "calendar.before" : "calendar.due",
                        reminder.event().fact().name()),
                reminder.day());
    }

    private static CalendarEntry day(String id, String title, String note, LocalDate day) {
        return new CalendarEntry(id, title, "", note, day, day, null, null);
    }

    private static CalendarEntry timed(String id, String title, String where, Moment at, @Nullable RunningTime lasts) {
        return new CalendarEntry(id, title, where, "", at.day(), at.day(), at, lasts);
    }
}
