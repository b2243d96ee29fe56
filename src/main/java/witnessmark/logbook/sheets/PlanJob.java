package witnessmark.logbook.sheets;

import static witnessmark.logbook.sheets.SheetField.choice;
import static witnessmark.logbook.sheets.SheetField.of;
import static witnessmark.logbook.sheets.SheetField.text;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Event;
import witnessmark.domain.Id;
import witnessmark.domain.Job;
import witnessmark.domain.JobPart;
import witnessmark.domain.StockBatch;
import witnessmark.quantity.RunningTime;

/** Plans work: what, on what, before which event, who, how long it takes, what it waits for and what is kept for it. */
public final class PlanJob implements LogSheet {
    public static final SheetField WHAT = text("job_what", 4);
    public static final SheetField ON = choice("job_on", 2);
    public static final SheetField BEFORE = choice("job_before", 2);
    public static final SheetField WHO = text("job_who", 2);
    public static final SheetField TAKES = of("job_takes", FieldKind.HOURS);
    public static final SheetField WAITS = text("job_waits", 4);
    public static final SheetField KEEP = choice("job_keep", 2);
    public static final SheetField COUNT = text("job_count", 1);

    private static final long MINUTE = 60_000;

    @Override
    public String key() {
        return "plan_job";
    }

    @Override
    public List<SheetGroup> groups() {
        return List.of(
                SheetGroup.of("job", List.of(WHAT), List.of(ON, BEFORE), List.of(WHO, TAKES)),
                SheetGroup.of("job_needs", List.of(WAITS), List.of(KEEP, COUNT)));
    }

    @Override
    public Map<SheetField, String> fresh(SheetSight sight) {
        Map<SheetField, String> out = new HashMap<>();
        next(sight).ifPresent(event -> out.put(BEFORE, event.id().text()));
        out.put(WHO, sight.who());
        return out;
    }

    @Override
    public Map<SheetField, String> picksFor(Id<Engine> engine, SheetSight sight) {
        return Map.of(ON, EngineOrPart.key(engine, null));
    }

    @Override
    public Set<SheetField> kept() {
        return Set.of(ON, BEFORE, WHO);
    }

    @Override
    public boolean asks(SheetField field, SheetTyped typed, SheetSight sight) {
        boolean stock = sight.facts().of(StockBatch.class).inForce().findAny().isPresent();
        return field.equals(KEEP)
                ? stock
                : !field.equals(COUNT) || (stock && !typed.text(KEEP).isEmpty());
    }

    @Override
    public List<Choice> choices(SheetField field, SheetTyped typed, SheetSight sight) {
        List<Choice> choices = new ArrayList<>();
        choices.add(SheetWord.NONE.choice());
        if (field.equals(ON)) {
            choices.addAll(JobSubject.choices(sight));
        } else if (field.equals(BEFORE)) {
            ahead(sight).forEach(event -> choices.add(Choice.of(event.id().text(), event.fact())));
        } else if (field.equals(KEEP)) {
            choices.addAll(sight.all(StockBatch.class, batch -> true));
        } else {
            return List.of();
        }
        return choices;
    }

    @Override
    public void read(ReadSheet in) {
        in.note(WHAT, SheetNote.of("job_what_example"));
        String what = in.needed(WHAT);
        JobSubject on = JobSubject.read(in, ON);
        Entry<Event> before = in.text(BEFORE).isEmpty() ? null : in.chosen(BEFORE, Event.class);
        RunningTime takes = new ReadValues(in).hours(TAKES);
        Entry<StockBatch> kept = in.text(KEEP).isEmpty() ? null : in.chosen(KEEP, StockBatch.class);
        Integer count = kept == null ? null : new ReadValues(in).atLeast(COUNT, 1);
        if (kept != null && in.text(COUNT).isEmpty()) {
            in.needed(COUNT);
        }
        if (!in.fine()) {
            return;
        }
        Id<Job> job = in.make(
                WHAT,
                new Job(
                        what,
                        on.engineId(),
                        on.partId(),
                        on.carId(),
                        before == null ? null : before.id(),
                        in.text(WHO),
                        minutes(takes),
                        null,
                        in.text(WAITS),
                        null,
                        in.sight().now(),
                        in.sight().who(),
                        null,
                        ""));
        if (kept != null && count != null) {
            in.make(KEEP, new JobPart(job, null, kept.id(), count));
        }
    }

    @Override
    public List<String> about(SheetTyped typed, SheetSight sight) {
        return List.of(typed.text(WHAT));
    }

    /** Whole minutes, rounded up: a time typed is never planned as none. */
    static @Nullable Integer minutes(@Nullable RunningTime time) {
        return time == null ? null : Math.toIntExact((time.millis() + MINUTE - 1) / MINUTE);
    }

    private static Optional<Entry<Event>> next(SheetSight sight) {
        return ahead(sight).stream().findFirst();
    }

    /** The events that are not over, the next first. */
    private static List<Entry<Event>> ahead(SheetSight sight) {
        return sight.facts().of(Event.class).where(event -> !event.lastDay().isBefore(sight.today())).stream()
                .sorted(Comparator.comparing(event -> event.fact().firstDay()))
                .toList();
    }
}
