package witnessmark.logbook.calendar;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Calibration;
import witnessmark.domain.Car;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Event;
import witnessmark.domain.EventEntry;
import witnessmark.domain.Facts;
import witnessmark.domain.Id;
import witnessmark.domain.PlannedRun;
import witnessmark.domain.Tool;
import witnessmark.ledger.Calibrations;
import witnessmark.ledger.result.Away;
import witnessmark.ledger.result.RunsOut;
import witnessmark.logbook.View;
import witnessmark.logbook.standing.MarkOn;
import witnessmark.logbook.standing.NextEvent;
import witnessmark.logbook.standing.SeeStanding;
import witnessmark.logbook.standing.Standing;
import witnessmark.quantity.Moment;

/**
 * Sees what lies on the days from the one looked at: every event that is not past with its timetable, and beside them
 * what must be done before the next one, what falls due at it, what is promised back, what money
 * can be asked back until when, and which tools are due.
 */
public final class SeeCalendar {
    private final View view;
    private final Facts facts;

    private SeeCalendar(View view) {
        this.view = view;
        this.facts = view.facts();
    }

    /** Everything on the calendar, event by event and then the reminders in the order of their days. */
    public static List<Dated> of(View view) {
        SeeCalendar seen = new SeeCalendar(view);
        List<Dated> all = new ArrayList<>();
        facts(view).forEach(event -> seen.event(event, all));
        Standing standing = SeeStanding.of(view);
        all.addAll(seen.reminders(standing));
        all.addAll(seen.promised(standing));
        all.addAll(standing.open().refunds().stream()
                .filter(refund -> !refund.late())
                .map(Dated.AskBack::new)
                .toList());
        all.addAll(seen.tools());
        return List.copyOf(all);
    }

    private static List<Entry<Event>> facts(View view) {
        return view.facts().of(Event.class).where(event -> !event.lastDay().isBefore(view.day())).stream()
                .sorted(Comparator.comparing(
                                (Entry<Event> event) -> event.fact().firstDay())
                        .thenComparing(Entry::id))
                .toList();
    }

    private void event(Entry<Event> event, List<Dated> all) {
        all.add(new Dated.Meeting(event, going(event)));
        Moment leaves = event.fact().truckLeaves();
        if (leaves != null) {
            all.add(new Dated.Leaves(event, leaves));
        }
        facts.of(PlannedRun.class).where(run -> run.event().equals(event.id())).stream()
                .sorted(Comparator.comparingInt(run -> run.fact().ordinal()))
                .forEach(run -> all.add(new Dated.Timetabled(run, event, out(run.fact(), event.fact()))));
    }

    private static @Nullable Moment out(PlannedRun run, Event event) {
        return run.out() == null
                ? null
                : Moment.of(run.day().atTime(run.out()).atZone(event.zone()).toInstant(), event.zone());
    }

    private List<Dated.Going> going(Entry<Event> event) {
        return facts.of(EventEntry.class).where(entry -> entry.event().equals(event.id())).stream()
                .map(entry -> new Dated.Going(
                        facts.of(Car.class).get(entry.fact().car()).name(), engine(entry.fact())))
                .sorted(Comparator.comparing(Dated.Going::car))
                .toList();
    }

    private @Nullable String engine(EventEntry entry) {
        Id<Engine> engine = entry.engine() != null
                ? entry.engine()
                : view.ledger()
                        .engineIn(entry.car(), view.ledger().asOf().last())
                        .map(stay -> stay.fact().engine())
                        .orElse(null);
        return engine == null ? null : facts.of(Engine.class).get(engine).number();
    }

    private List<Dated> reminders(Standing standing) {
        NextEvent next = standing.next();
        if (next == null) {
            return List.of();
        }
        Entry<Event> event = facts.of(Event.class).find(next.id()).orElseThrow();
        Moment leaves = next.truckLeaves();
        LocalDate before = leaves == null ? next.event().firstDay() : leaves.day();
        LocalDate by = before.isBefore(view.day()) ? view.day() : before;
        List<Dated> all = new ArrayList<>();
        for (MarkOn mark : standing.going()) {
            if (mark.calls()) {
                all.add(new Dated.Reminder(mark, event, by));
            } else if (mark.comesDue()) {
                all.add(due(mark, event, by));
            }
        }
        return all;
    }

    private static Dated due(MarkOn mark, Entry<Event> next, LocalDate by) {
        RunsOut out = mark.runsOut();
        if (out == null) {
            return new Dated.Reminder(mark, next, by);
        }
        LocalDate day = out.planned() == null
                ? out.event().fact().firstDay()
                : out.planned().fact().day();
        return new Dated.Reminder(mark, out.event(), day);
    }

    private List<Dated> promised(Standing standing) {
        List<Dated> all = new ArrayList<>();
        for (Away away : standing.open().out()) {
            LocalDate promised = away.promised();
            if (promised != null && !promised.isBefore(view.day())) {
                all.add(new Dated.Promised(away, promised));
            }
        }
        all.sort(Comparator.comparing(each -> ((Dated.Promised) each).day()));
        return all;
    }

    private List<Dated> tools() {
        return facts.of(Tool.class)
                .inForce()
                .flatMap(tool -> toolDue(tool).stream())
                .sorted(Comparator.comparing(Dated.ToolDue::day))
                .map(Dated.class::cast)
                .toList();
    }

    private Optional<Dated.ToolDue> toolDue(Entry<Tool> tool) {
        Optional<Entry<Calibration>> last = Calibrations.last(facts, tool.id(), view.day());
        return last.filter(each -> each.fact().due() != null)
                .map(each -> new Dated.ToolDue(
                        tool, each, java.util.Objects.requireNonNull(each.fact().due())));
    }
}
