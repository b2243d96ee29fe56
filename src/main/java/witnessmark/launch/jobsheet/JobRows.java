package witnessmark.launch.jobsheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Job;
import witnessmark.domain.StockBatch;
import witnessmark.logbook.jobsheet.JobNeed;
import witnessmark.logbook.jobsheet.JobSheetFacts;
import witnessmark.logbook.standing.NextEvent;
import witnessmark.logbook.standing.StillOpen;
import witnessmark.quantity.RunningTime;
import witnessmark.report.JobSheet;
import witnessmark.wording.Measures;
import witnessmark.wording.RecordWords;
import witnessmark.wording.Texts;
import witnessmark.wording.WhereWords;

/** Rows of the open jobs: what each waits for, what lies ready for it and where, who does it and how long it takes. */
final class JobRows {
    private static final long MINUTE = 60_000;

    private final Texts texts;
    private final Measures measures;
    private final RecordWords records;
    private final WhereWords where;

    JobRows(Texts texts, Measures measures) {
        this.texts = texts;
        this.measures = measures;
        this.records = new RecordWords(texts);
        this.where = new WhereWords(texts, measures);
    }

    /** Those for the next event and those that are late, then those for later; all together when no event is known. */
    List<JobSheet.Section> sections(JobSheetFacts facts) {
        NextEvent next = facts.standing().next();
        List<JobSheet.Row> now = new ArrayList<>();
        List<JobSheet.Row> later = new ArrayList<>();
        for (StillOpen.OpenJob open : facts.standing().open().jobs()) {
            boolean isNow = isNow(open, next);
            (isNow ? now : later).add(row(open, isNow && !open.late(), facts.neededFor(open.job())));
        }
        return List.of(section("beforewego.jobs", now), section("jobsheet.jobs.later", later));
    }

    private static boolean isNow(StillOpen.OpenJob open, @Nullable NextEvent next) {
        return next == null || open.late() || next.event().name().equals(open.before());
    }

    private JobSheet.Section section(String heading, List<JobSheet.Row> rows) {
        return new JobSheet.Section(texts.get(heading), texts.get("jobsheet.needs"), texts.get("jobsheet.who"), rows);
    }

    /** @param plain whether the event it is for goes without saying */
    private JobSheet.Row row(StillOpen.OpenJob open, boolean plain, List<JobNeed> needs) {
        Job job = open.job().fact();
        List<String> place = new ArrayList<>();
        place.add(on(open));
        if (open.before() != null && !plain) {
            place.add(texts.get(open.late() ? "beforewego.job.late" : "jobsheet.job.before", open.before()));
        }
        place.removeIf(String::isEmpty);
        List<String> stands = new ArrayList<>();
        if (!job.waitingFor().isBlank()) {
            stands.add(texts.get("beforewego.job.waits", job.waitingFor()));
        }
        needs.forEach(need -> stands.add(take(need)));
        return new JobSheet.Row(false, null, job.what(), place.isEmpty() ? "" : measures.row(place), stands, hand(job));
    }

    private String on(StillOpen.OpenJob open) {
        return switch (open.what()) {
            case PART -> texts.get("beforewego.job.part", open.on());
            case ENGINE -> texts.get("beforewego.job.engine", open.on());
            case CAR -> texts.get("beforewego.job.car", open.on());
            case NOTHING -> "";
        };
    }

    private String take(JobNeed need) {
        if (need.where() != null) {
            return texts.get(
                    "jobsheet.need.part",
                    records.word(need.design().kind()),
                    need.where().part().fact().mark(),
                    where.where(need.where(), need.place()));
        }
        StockBatch batch = Objects.requireNonNull(need.kept().batch()).fact();
        return batch.shelf().isBlank()
                ? texts.get(
                        "jobsheet.need.batch.nowhere",
                        need.kept().count(),
                        need.design().name(),
                        batch.batch())
                : texts.get(
                        "jobsheet.need.batch",
                        need.kept().count(),
                        need.design().name(),
                        batch.batch(),
                        batch.shelf());
    }

    private List<String> hand(Job job) {
        List<String> hand = new ArrayList<>();
        Integer minutes = job.minutesExpected();
        hand.add(job.who().isBlank() ? texts.get("beforewego.job.nobody") : job.who());
        if (minutes != null) {
            hand.add(texts.get("beforewego.job.takes", measures.running(new RunningTime(minutes * MINUTE))));
        }
        return hand;
    }
}
