package witnessmark.desktop.form;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import witnessmark.desktop.task.Tasks;
import witnessmark.desktop.testing.UiTest;
import witnessmark.logbook.Desk;
import witnessmark.logbook.port.Drafts;
import witnessmark.logbook.port.Today;
import witnessmark.logbook.run.MemoryLogbook;
import witnessmark.logbook.run.SampleBook;
import witnessmark.wording.Texts;

/** What is said of a draft is true of what is on the form. */
@UiTest
class KeptDraftTest {
    private static final String KEPT = "Draft kept 09:41:12. Not in the logbook yet.";

    private final Tasks tasks = new Tasks((thread, failure) -> {
        throw new AssertionError("an answer was not taken", failure);
    });
    private final Map<String, String> form = new HashMap<>();
    private final Clock clock = new Clock();
    private final MemoryLogbook logbook = new MemoryLogbook(SampleBook.facts());
    private final Desk book = new Desk(logbook, clock, "TE");
    private KeptDraft draft = fresh();

    /** Goes on when it is told to. */
    private static final class Clock implements Today {
        private Instant now = Instant.parse(SampleBook.OPENING + "T08:41:12Z");

        @Override
        public LocalDate day() {
            return SampleBook.OPENING;
        }

        @Override
        public Instant now() {
            return now;
        }
    }

    private KeptDraft fresh() {
        return new KeptDraft(
                book, tasks, Texts.in(Locale.UK), "form", KeptDraft.NEW, () -> !form.isEmpty(), () -> form, () -> {});
    }

    @AfterEach
    void close() {
        tasks.close();
    }

    private void type(String text) {
        form.put("laps", text);
        draft.typed();
    }

    @Test
    void a_form_cleared_while_its_draft_is_on_the_way_says_nothing_of_one() {
        type("12");
        draft.now();
        form.clear();
        draft.discard();
        tasks.awaitIdle();

        assertThat(draft.line()).isEmpty();
        assertThat(logbook.drafts().find("form", KeptDraft.NEW)).isEmpty();
    }

    @Test
    void a_program_begun_again_says_when_it_was_typed_and_not_when_it_began() {
        type("12");
        form.put(KeptDraft.CARET, "laps");
        tasks.awaitIdle();
        assertThat(draft.line()).isEqualTo(KEPT);

        clock.now = clock.now.plus(Duration.ofHours(3));
        Map<String, String> kept = Map.copyOf(form);
        form.clear();
        draft = fresh();
        draft.found(draft.find().orElseThrow(), () -> {
            form.putAll(kept);
            form.put("filled in by the program", "today");
            draft.typed();
        });
        tasks.awaitIdle();
        assertThat(draft.line()).isEqualTo(KEPT);

        form.put(KeptDraft.CARET, "running");
        draft.typed();
        tasks.awaitIdle();
        assertThat(draft.line()).as("the caret alone is no typing").isEqualTo(KEPT);
        assertThat(draft.find().orElseThrow())
                .returns("running", found -> found.fields().get(KeptDraft.CARET))
                .returns(Instant.parse(SampleBook.OPENING + "T08:41:12Z"), Drafts.Draft::keptAt);

        type("13");
        tasks.awaitIdle();
        assertThat(draft.line()).startsWith("Draft kept 12:41:12.");
    }

    @Test
    void of_another_day_its_day_is_said_and_of_another_file_its_name() {
        type("12");
        tasks.awaitIdle();
        Drafts.Draft kept = draft.find().orElseThrow();

        clock.now = clock.now.plus(Duration.ofHours(15).minusMinutes(42));
        draft = fresh();
        draft.found(kept, () -> {});
        assertThat(draft.line()).as("at 23:59:12").isEqualTo(KEPT);

        clock.now = clock.now.plus(Duration.ofHours(1));
        draft = fresh();
        draft.found(kept, () -> {});
        assertThat(draft.line()).isEqualTo("Draft kept Wed 8 Jul, 09:41:12. Not in the logbook yet.");

        draft = fresh();
        draft.found(new Drafts.Draft(kept.fields(), kept.keptAt(), "our older.witness"), () -> {});
        assertThat(draft.line())
                .isEqualTo("Draft typed Wed 8 Jul, 09:41:12 in 'our older.witness', another file of this logbook."
                        + " Not in the logbook yet.");
    }
}
