package witnessmark.launch.jobsheet;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import witnessmark.logbook.jobsheet.JobSheetFacts;
import witnessmark.logbook.standing.MarkOn;
import witnessmark.logbook.standing.NextEvent;
import witnessmark.logbook.standing.PartCount;
import witnessmark.logbook.standing.Standing;
import witnessmark.quantity.Moment;
import witnessmark.report.JobSheet;
import witnessmark.wording.Measures;
import witnessmark.wording.Texts;

/**
 * Words how the team stands as a job sheet: the same marks, jobs and open matters as Before we go, every one of them,
 * what must be done first. The same facts always give the same sheet.
 */
public final class JobSheetWords implements Function<JobSheetFacts, JobSheet> {
    /** Lines to write on, for what is found meanwhile. */
    private static final int BLANK = 3;

    private final Texts texts;
    private final Measures measures;
    private final LookRows looks;
    private final MarkRows marks;
    private final JobRows jobs;
    private final OpenRows open;

    public JobSheetWords(Texts texts, Measures measures) {
        this.texts = texts;
        this.measures = measures;
        this.looks = new LookRows(texts, measures);
        this.marks = new MarkRows(texts, measures);
        this.jobs = new JobRows(texts, measures);
        this.open = new OpenRows(texts, measures);
    }

    @Override
    public JobSheet apply(JobSheetFacts facts) {
        Standing standing = facts.standing();
        NextEvent next = standing.next();
        String day = texts.get("jobsheet.day", measures.date(standing.day()));
        return new JobSheet(
                next == null
                        ? texts.get("jobsheet.title")
                        : texts.get("jobsheet.title.event", next.event().name()),
                board(standing, next),
                under(facts, day),
                facts.logbook(),
                day,
                texts.get("jobsheet.printed", measures.fullMoment(facts.printed())),
                facts.printed().instant(),
                sections(facts));
    }

    private String board(Standing standing, @Nullable NextEvent next) {
        return next == null
                ? texts.get("jobsheet.board.none")
                : texts.get(next.runsLeft() ? "jobsheet.board.run" : "jobsheet.board.load", standing.calling());
    }

    private List<String> under(JobSheetFacts facts, String day) {
        Standing standing = facts.standing();
        List<String> under = new ArrayList<>();
        under.add(texts.get("jobsheet.under", facts.logbook(), day));
        NextEvent next = standing.next();
        if (next != null) {
            List<String> cars = standing.cars();
            under.add(
                    cars.isEmpty()
                            ? when(next)
                            : texts.get("jobsheet.under.cars", when(next), cars.size(), measures.all(cars)));
        }
        PartCount count = standing.goingParts();
        under.add(texts.get("beforewego.quiet", count.inside(), count.notKnown(), count.noLimit()));
        return under;
    }

    private String when(NextEvent next) {
        Moment leaves = next.truckLeaves();
        if (next.running()) {
            return texts.get(
                    "beforewego.board.running",
                    measures.date(next.event().firstDay()),
                    measures.date(next.event().lastDay()));
        }
        return leaves == null
                ? texts.get(
                        "beforewego.board.begins", measures.date(next.event().firstDay()))
                : texts.get("beforewego.board.leaves", measures.moment(leaves));
    }

    /** A section without a row is left out; the lines to write on come last. */
    private List<JobSheet.Section> sections(JobSheetFacts facts) {
        Standing standing = facts.standing();
        NextEvent next = standing.next();
        List<JobSheet.Section> all = new ArrayList<>(looks.sections(standing.nextRuns()));
        all.add(open.bare(standing.open()));
        all.add(open.incomplete(standing.open()));
        all.add(marks.section(
                next != null && next.runsLeft() ? "beforewego.must.next" : "beforewego.must",
                standing.going().stream().filter(MarkOn::calls).toList()));
        all.add(marks.section(
                "beforewego.due",
                standing.going().stream().filter(MarkOn::comesDue).toList()));
        all.addAll(jobs.sections(facts));
        all.addAll(open.sections(standing.open()));
        all.removeIf(section -> section.rows().isEmpty());
        all.add(new JobSheet.Section(
                texts.get("jobsheet.more"),
                texts.get("jobsheet.more.write"),
                "",
                Collections.nCopies(BLANK, JobSheet.Row.blank())));
        return all;
    }
}
