package witnessmark.desktop.task;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicReference;
import org.junit.jupiter.api.Test;
import witnessmark.desktop.testing.UiTest;

/** What is looked at again and again: only changes are told, and no answer comes to another question. */
@UiTest
class LookoutTest {
    private final AtomicReference<String> asked = new AtomicReference<>("");
    private final AtomicReference<String> there = new AtomicReference<>("a card");
    private final List<String> told = new ArrayList<>();
    private int looks;

    @Test
    void changes_are_told_and_an_answer_to_what_is_asked_no_more_is_dropped() {
        try (Tasks tasks = new Tasks((thread, failure) -> {
                    throw new IllegalStateException(failure);
                });
                Lookout<String> lookout = new Lookout<>(
                        tasks,
                        "looking",
                        Duration.ofHours(1),
                        () -> !asked.get().isEmpty(),
                        () -> {
                            looks++;
                            return asked.get() + ": " + there.get();
                        },
                        "nothing")) {
            lookout.onChange(() -> told.add(lookout.last()));
            lookout.look();
            tasks.awaitIdle();
            assertThat(looks).as("nothing is wanted").isZero();

            asked.set("one");
            lookout.changed("nothing yet");
            tasks.awaitIdle();
            lookout.look();
            tasks.awaitIdle();
            assertThat(told).as("the second look found the same").containsExactly("nothing yet", "one: a card");

            told.clear();
            there.set("another card");
            lookout.look();
            String before = lookout.last();
            asked.set("two");
            lookout.changed("not known");
            tasks.awaitIdle();
            assertThat(before).isEqualTo("one: a card");
            assertThat(told).containsExactly("not known", "two: another card");
        }
    }
}
