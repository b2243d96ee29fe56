package witnessmark.logbook.sheets;

import static witnessmark.logbook.sheets.SheetField.choice;
import static witnessmark.logbook.sheets.SheetField.of;
import static witnessmark.logbook.sheets.SheetField.text;

import java.util.List;
import java.util.Map;
import java.util.Set;
import witnessmark.domain.Entry;
import witnessmark.domain.Job;
import witnessmark.outcome.ProblemKind;
import witnessmark.quantity.Moment;
import witnessmark.quantity.RunningTime;

/** A planned job is done: when, how long it took, what came of it. */
public final class JobDone implements LogSheet {
    public static final SheetField JOB = choice("job", 4);
    public static final SheetField WHEN = of("when", FieldKind.DAY);
    public static final SheetField WHEN_TIME = of("when_time", FieldKind.CLOCK);
    public static final SheetField TOOK = of("job_took", FieldKind.HOURS);
    public static final SheetField RESULT = text("job_result", 4);

    @Override
    public String key() {
        return "job_done";
    }

    @Override
    public List<SheetGroup> groups() {
        return List.of(SheetGroup.of("job_done", List.of(JOB), List.of(WHEN, WHEN_TIME, TOOK), List.of(RESULT)));
    }

    @Override
    public Map<SheetField, String> fresh(SheetSight sight) {
        List<Entry<Job>> open = open(sight);
        return Map.of(
                JOB,
                open.size() == 1 ? open.get(0).id().text() : "",
                WHEN,
                sight.today().toString());
    }

    @Override
    public Set<SheetField> kept() {
        return Set.of(WHEN);
    }

    @Override
    public boolean oneAfterTheOther() {
        return true;
    }

    @Override
    public List<Choice> choices(SheetField field, SheetTyped typed, SheetSight sight) {
        return field.equals(JOB)
                ? open(sight).stream().map(job -> JobSubject.choice(sight, job)).toList()
                : List.of();
    }

    @Override
    public void read(ReadSheet in) {
        ReadValues values = new ReadValues(in);
        if (open(in.sight()).isEmpty()) {
            in.note(JOB, SheetNote.of("no_open_job"));
        }
        Entry<Job> job = in.chosen(JOB, Job.class);
        Moment when = values.moment(WHEN, WHEN_TIME);
        RunningTime took = values.hours(TOOK);
        in.note(RESULT, SheetNote.of("job_result_example"));
        if (job == null || when == null || !in.fine()) {
            return;
        }
        Job was = job.fact();
        if (when.isBefore(was.asked()) && !when.day().equals(was.asked().day())) {
            in.wrong(WHEN, ProblemKind.ENDS_BEFORE_IT_BEGINS, was.what(), was.asked(), when);
            return;
        }
        in.change(
                JOB,
                job,
                new Job(
                        was.what(),
                        was.engine(),
                        was.part(),
                        was.car(),
                        was.before(),
                        was.who(),
                        was.minutesExpected(),
                        took == null ? was.minutesSpent() : PlanJob.minutes(took),
                        "",
                        was.run(),
                        was.asked(),
                        was.by(),
                        when,
                        in.text(RESULT)));
    }

    @Override
    public List<String> about(SheetTyped typed, SheetSight sight) {
        return List.of(sight.find(Job.class, typed.text(JOB))
                .map(job -> job.fact().what())
                .orElse(""));
    }

    private static List<Entry<Job>> open(SheetSight sight) {
        return sight.facts().of(Job.class).where(job -> job.done() == null);
    }
}
