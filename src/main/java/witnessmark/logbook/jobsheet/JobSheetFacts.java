package witnessmark.logbook.jobsheet;

import java.util.List;
import witnessmark.domain.Entry;
import witnessmark.domain.Job;
import witnessmark.logbook.standing.Standing;
import witnessmark.quantity.Moment;

/**
 * What a job sheet is made of.
 *
 * @param logbook the team's name, or the name of the file while no team is written down
 * @param standing how the team stands on the day looked at
 * @param needs what is kept for the open jobs
 * @param printed when the sheet was made, by the clocks of the team's zone
 */
public record JobSheetFacts(String logbook, Standing standing, List<JobNeed> needs, Moment printed) {
    public JobSheetFacts {
        needs = List.copyOf(needs);
    }

    /** What is kept for one job, parts first. */
    public List<JobNeed> neededFor(Entry<Job> job) {
        return needs.stream().filter(need -> need.kept().job().equals(job.id())).toList();
    }
}
