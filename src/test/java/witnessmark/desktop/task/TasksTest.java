package witnessmark.desktop.task;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.atomic.AtomicReference;
import java.util.stream.IntStream;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import witnessmark.desktop.testing.UiTest;

@UiTest
class TasksTest {
    private final List<Throwable> unforeseen = Collections.synchronizedList(new ArrayList<>());
    private final Tasks tasks = new Tasks((thread, failure) -> unforeseen.add(failure));

    @AfterEach
    void close() {
        tasks.close();
    }

    @Test
    void work_runs_elsewhere_and_its_answer_arrives_on_the_event_thread() {
        List<String> seen = new ArrayList<>();
        tasks.run(
                "asking",
                () -> SwingUtilities.isEventDispatchThread() ? "there" : "elsewhere",
                answer -> seen.add(answer + (SwingUtilities.isEventDispatchThread() ? ", delivered there" : "")),
                failure -> seen.add("failed"));
        assertThat(seen).isEmpty();
        tasks.awaitIdle();
        assertThat(seen).containsExactly("elsewhere, delivered there");
    }

    @Test
    void what_the_work_throws_arrives_at_on_fail_and_nowhere_else() {
        List<String> seen = new ArrayList<>();
        tasks.run(
                "failing",
                () -> {
                    throw new java.io.IOException("the disk is full");
                },
                answer -> seen.add("done"),
                failure -> seen.add(failure.getMessage()));
        tasks.awaitIdle();
        assertThat(seen).containsExactly("the disk is full");
        assertThat(unforeseen).isEmpty();
    }

    @Test
    void what_a_receiver_throws_is_told_to_the_handler_and_the_queue_goes_on() {
        List<String> seen = new ArrayList<>();
        tasks.write(
                "first",
                () -> 1,
                answer -> {
                    throw new IllegalStateException("in the receiver");
                },
                failure -> seen.add("failed"));
        tasks.write("second", () -> 2, answer -> seen.add("second"), failure -> seen.add("failed"));
        tasks.awaitIdle();
        assertThat(unforeseen).hasSize(1).first().hasToString("java.lang.IllegalStateException: in the receiver");
        assertThat(seen).containsExactly("second");
    }

    @Test
    void writes_are_done_one_at_a_time_in_the_order_asked() {
        List<Integer> order = Collections.synchronizedList(new ArrayList<>());
        List<Integer> wanted = IntStream.range(0, 200).boxed().toList();
        wanted.forEach(i -> tasks.write("write " + i, () -> order.add(i), done -> {}, failure -> {}));
        tasks.awaitIdle();
        assertThat(order).isEqualTo(wanted);
    }

    @Test
    void work_called_off_before_it_begins_is_never_done_and_leaves_nothing_waiting() {
        CountDownLatch gate = new CountDownLatch(1);
        List<String> seen = Collections.synchronizedList(new ArrayList<>());
        tasks.write("holding the queue", () -> gate.await(5, java.util.concurrent.TimeUnit.SECONDS), a -> {}, f -> {});
        Running second =
                tasks.write("second", () -> seen.add("worked"), a -> seen.add("told"), f -> seen.add("failed"));
        second.cancel();
        gate.countDown();
        tasks.awaitIdle();
        assertThat(seen).isEmpty();
        assertThat(tasks.idle()).isTrue();
        assertThat(tasks.underWay()).isEmpty();
    }

    @Test
    void after_closing_work_is_refused_through_on_fail() {
        tasks.close();
        AtomicReference<Throwable> failed = new AtomicReference<>();
        tasks.run("too late", () -> 1, answer -> {}, failed::set);
        tasks.awaitIdle();
        assertThat(failed.get()).isInstanceOf(java.util.concurrent.RejectedExecutionException.class);
    }

    @Test
    void only_the_answer_to_the_newest_question_is_taken() {
        Latest latest = new Latest(tasks);
        CountDownLatch gate = new CountDownLatch(1);
        List<String> seen = new ArrayList<>();
        latest.run(
                "old",
                () -> {
                    gate.await(5, java.util.concurrent.TimeUnit.SECONDS);
                    return "old";
                },
                seen::add,
                failure -> seen.add("failed"));
        latest.run("new", () -> "new", seen::add, failure -> seen.add("failed"));
        gate.countDown();
        tasks.awaitIdle();
        assertThat(seen).containsExactly("new");
    }

    @Test
    void a_late_failure_of_an_old_question_is_dropped_too() {
        Latest latest = new Latest(tasks);
        List<String> seen = new ArrayList<>();
        latest.run(
                "old",
                () -> {
                    throw new IllegalStateException("old");
                },
                answer -> seen.add("done"),
                failure -> seen.add("failed"));
        latest.drop();
        tasks.awaitIdle();
        assertThat(seen).isEmpty();
    }

    @Test
    void pokes_in_a_row_make_one_action() {
        List<String> seen = new ArrayList<>();
        Later later = tasks.later(Duration.ofHours(1), () -> seen.add("drafted"));
        later.poke();
        later.poke();
        later.poke();
        assertThat(seen).isEmpty();
        assertThat(tasks.idle()).isFalse();
        tasks.awaitIdle();
        assertThat(seen).containsExactly("drafted");
        later.now();
        assertThat(seen).as("nothing waits any more").hasSize(1);
    }

    @Test
    void a_cancelled_timer_does_nothing() {
        List<String> seen = new ArrayList<>();
        Later later = tasks.later(Duration.ofHours(1), () -> seen.add("drafted"));
        later.poke();
        later.cancel();
        tasks.awaitIdle();
        assertThat(seen).isEmpty();
    }

    @Test
    void waiting_for_idle_follows_work_that_work_starts() {
        List<String> seen = new ArrayList<>();
        tasks.run(
                "first",
                () -> "first",
                first -> tasks.run("second", () -> first + " second", seen::add, failure -> seen.add("failed")),
                failure -> seen.add("failed"));
        tasks.awaitIdle();
        assertThat(seen).containsExactly("first second");
    }

    @Test
    void the_guards_know_the_event_thread() {
        EventThread.require();
        assertThatThrownBy(EventThread::refuse).isInstanceOf(IllegalStateException.class);
        AtomicReference<Throwable> elsewhere = new AtomicReference<>();
        tasks.run(
                "guarding",
                () -> {
                    EventThread.refuse();
                    EventThread.require();
                    return 0;
                },
                answer -> {},
                elsewhere::set);
        tasks.awaitIdle();
        assertThat(elsewhere.get()).hasMessageContaining("only on the event thread");
    }
}
