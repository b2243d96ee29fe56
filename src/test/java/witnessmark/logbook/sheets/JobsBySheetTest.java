package witnessmark.logbook.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import witnessmark.domain.Car;
import witnessmark.domain.Job;
import witnessmark.outcome.ProblemKind;

/** Jobs planned and done by their sheets. */
class JobsBySheetTest {
    @TempDir
    Path folder;

    private OwnLogbook own;

    @BeforeEach
    void begin() {
        own = new OwnLogbook(folder);
        own.save(new AddCar(), "name", "7").orThrow();
    }

    @AfterEach
    void end() {
        own.close();
    }

    @Test
    void a_job_is_planned_and_done_and_nothing_said_before_is_lost() {
        own.save(
                        new PlanJob(),
                        "job_what",
                        "clamps tightened",
                        "job_on",
                        "7",
                        "job_who",
                        "Jo",
                        "job_takes",
                        "20 min",
                        "job_waits",
                        "a cold engine")
                .orThrow();
        Job planned = own.only(Job.class);
        assertThat(planned.car()).isEqualTo(own.the(Car.class, "7").id());
        assertThat(planned.minutesExpected()).isEqualTo(20);
        assertThat(planned.done()).isNull();
        own.save(new JobDone(), "job_took", "30 min", "job_result", "two took a quarter turn")
                .orThrow();
        Job done = own.only(Job.class);
        assertThat(done.done()).isNotNull();
        assertThat(done.minutesSpent()).isEqualTo(30);
        assertThat(done.minutesExpected()).isEqualTo(20);
        assertThat(done.what()).isEqualTo("clamps tightened");
        assertThat(done.who()).isEqualTo("Jo");
        assertThat(done.waitingFor()).isEmpty();
    }

    @Test
    void a_job_says_what_is_to_be_done_and_is_not_done_before_it_was_asked_for() {
        own.refuses(new PlanJob(), ProblemKind.NEEDED, "job_what", "job_who", "Jo");
        own.refuses(new PlanJob(), ProblemKind.CANNOT_READ, "job_takes", "job_what", "springs", "job_takes", "long");
        own.refuses(new PlanJob(), ProblemKind.NOT_FOUND, "job_on", "job_what", "springs", "job_on", "nobody");
        own.refuses(new JobDone(), ProblemKind.NEEDED, "job", "job_result", "done");
        own.save(new PlanJob(), "job_what", "springs").orThrow();
        own.refuses(new JobDone(), ProblemKind.ENDS_BEFORE_IT_BEGINS, "when", "when", "1 Mar", "job_result", "done");
    }
}
