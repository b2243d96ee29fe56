package witnessmark.ledger;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Entry;
import witnessmark.domain.Event;
import witnessmark.domain.Facts;
import witnessmark.domain.Id;
import witnessmark.domain.Job;
import witnessmark.quantity.Moment;

/** Work that is planned and not done yet. */
public final class OpenJobs {
    private OpenJobs() {}

    /**
     * The jobs asked for by the end of the day and not done by then, those for the earliest event first, those for no
     * event last; for one event in the order they were asked for.
     */
    public static List<Entry<Job>> of(Facts facts, AsOf asOf) {
        return facts.of(Job.class).where(job -> isOpen(job, asOf)).stream()
                .sorted(Comparator.comparing(
                                (Entry<Job> job) -> first(facts, job.fact().before()))
                        .thenComparing(job -> job.fact().asked())
                        .thenComparing(Entry::id))
                .toList();
    }

    /** Whether a job was asked for and not done by the end of the day. */
    public static boolean isOpen(Job job, AsOf asOf) {
        Moment done = job.done();
        return asOf.counts(job.asked()) && (done == null || !asOf.counts(done));
    }

    private static LocalDate first(Facts facts, @Nullable Id<Event> event) {
        return event == null
                ? LocalDate.MAX
                : facts.of(Event.class)
                        .find(event)
                        .map(entry -> entry.fact().firstDay())
                        .orElse(LocalDate.MAX);
    }
}
