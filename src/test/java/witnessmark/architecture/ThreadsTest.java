package witnessmark.architecture;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.assignableTo;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.equivalentTo;
import static com.tngtech.archunit.lang.conditions.ArchConditions.callCodeUnitWhere;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import com.tngtech.archunit.lang.syntax.elements.GivenClassesConjunction;
import java.awt.EventQueue;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.Executor;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.ThreadFactory;
import java.util.stream.BaseStream;
import javax.swing.SwingUtilities;
import javax.swing.SwingWorker;
import org.junit.jupiter.api.Test;

/** Everything that runs beside the event thread starts in one place, where a stale answer is dropped. */
class ThreadsTest {
    private static final String TASKS = Room.DESKTOP.packageName() + ".task..";
    private static final String WHY =
            "one queue writes, a small pool reads, and a stale answer is dropped in one place";

    @Test
    void executors_workers_and_timers_live_in_desktop_task() {
        outside(TASKS)
                .should()
                .dependOnClassesThat(assignableTo(Executor.class)
                        .or(equivalentTo(Executors.class))
                        .or(assignableTo(ExecutorService.class))
                        .or(assignableTo(Future.class))
                        .or(equivalentTo(CompletableFuture.class))
                        .or(equivalentTo(ThreadFactory.class))
                        .or(assignableTo(SwingWorker.class))
                        .or(equivalentTo(javax.swing.Timer.class))
                        .or(equivalentTo(java.util.Timer.class)))
                .because(WHY)
                .check(ProgramClasses.main());
    }

    @Test
    void threads_live_in_desktop_task_and_the_last_resort_handler_in_launch() {
        outside(TASKS, Room.LAUNCH.packageName() + "..")
                .should()
                .dependOnClassesThat(assignableTo(Thread.class))
                .because(WHY)
                .check(ProgramClasses.main());
    }

    @Test
    void only_desktop_task_posts_to_the_event_thread() {
        outside(TASKS)
                .should(callCodeUnitWhere(Calls.to(SwingUtilities.class, "invokeLater", "invokeAndWait")))
                .orShould(callCodeUnitWhere(Calls.to(EventQueue.class, "invokeLater", "invokeAndWait", "postEvent")))
                .because(WHY)
                .check(ProgramClasses.main());
    }

    @Test
    void no_stream_is_parallel() {
        noClasses()
                .should(callCodeUnitWhere(Calls.to(BaseStream.class, "parallel")))
                .orShould(callCodeUnitWhere(Calls.to(java.util.Collection.class, "parallelStream")))
                .because(WHY)
                .check(ProgramClasses.main());
    }

    private static GivenClassesConjunction outside(String... packages) {
        return noClasses().that().resideOutsideOfPackages(packages);
    }
}
