package witnessmark.desktop.start;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import witnessmark.desktop.testing.Looks;
import witnessmark.desktop.testing.UiTest;
import witnessmark.domain.Engine;
import witnessmark.domain.EngineInCar;
import witnessmark.domain.Entry;
import witnessmark.domain.Run;
import witnessmark.domain.Standing;
import witnessmark.quantity.Moment;
import witnessmark.quantity.RunningTime;
import witnessmark.sample.SampleBooks;

/** The story of the sample, walked on from the window. */
@UiTest
class SampleStripTest {
    @TempDir
    Path folder;

    private StartedWindow window;

    @BeforeEach
    void open() {
        window = new StartedWindow(folder, Looks.light());
        window.strip.show();
        window.settle();
    }

    @AfterEach
    void close() {
        window.close();
    }

    @Test
    void the_strip_says_what_this_is_and_offers_three_ways() {
        assertThat(window.said())
                .contains(
                        "This is a sample season. Change anything; it resets when you like.",
                        "Start our logbook",
                        "Reset sample",
                        "Walk on to Round 6, Thornacre");
    }

    @Test
    void what_the_story_brings_says_it_is_from_the_sample_and_what_is_typed_says_who_typed_it() {
        window.press("Walk on to Round 6, Thornacre");
        assertThat(window.logbook.logbook().history())
                .isNotEmpty()
                .allSatisfy(amendment -> assertThat(amendment.who()).isEqualTo("the sample season"));
        window.logbook.undo().orThrow();
        assertThat(window.logbook.logbook().history())
                .last()
                .satisfies(amendment -> assertThat(amendment.who()).isEqualTo(window.logbook.who()));
    }

    @Test
    void a_step_taken_back_with_the_words_of_the_window_is_offered_again() {
        window.press("Walk on to Round 6, Thornacre");
        window.logbook.undo(why -> "saving it was taken back (" + why + ")").orThrow();
        window.desk.changed();
        window.settle();
        assertThat(window.said()).contains("Walk on to Round 6, Thornacre", "Wed 8 Jul 2026");
    }

    @Test
    void walking_on_writes_the_chapter_moves_the_day_and_can_be_taken_back() {
        window.press("Walk on to Round 6, Thornacre");
        assertThat(window.said())
                .contains("Walked on to Round 6, Thornacre. Today is now Sun 26 Jul 2026.", "Walk on to After Round 6");
        assertThat(window.logbook.undoable())
                .hasValueSatisfying(done -> assertThat(done.why()).isEqualTo("walking on to Round 6, Thornacre"));
        assertThat(window.said()).contains("Sun 26 Jul 2026");
        window.press("Undo");
        assertThat(window.opened).containsExactly("undo");
    }

    /** As the command does that is found by "walk on", strip or no strip; and not while another day is looked at. */
    @Test
    void by_its_command_the_story_goes_on_too() {
        window.desk.dismissNotice();
        window.logbook.lookAsOf(java.time.LocalDate.of(2026, 5, 1));
        window.strip.walkOn();
        window.settle();
        assertThat(window.said()).contains("You look at another day.");
        window.logbook.lookAsOf(null);
        window.strip.walkOn();
        window.settle();
        window.settle();
        assertThat(window.said()).contains("Walked on to Round 6, Thornacre.");
    }

    @Test
    void a_step_of_the_story_taken_back_moves_the_day_back_and_is_offered_again() {
        window.press("Walk on to Round 6, Thornacre");
        window.logbook.undo().orThrow();
        window.desk.changed();
        window.settle();
        assertThat(window.said()).contains("Walk on to Round 6, Thornacre", "Wed 8 Jul 2026");
        window.logbook.redo().orThrow();
        window.desk.changed();
        window.settle();
        assertThat(window.said()).contains("Walk on to After Round 6", "Sun 26 Jul 2026");
        window.logbook.undo().orThrow();
        window.desk.changed();
        window.settle();
        window.press("Walk on to Round 6, Thornacre");
        assertThat(window.said()).contains("Walk on to After Round 6", "Sun 26 Jul 2026");
    }

    /** The strip then says which day is looked at, and leads back from there. */
    @Test
    void while_an_earlier_day_is_looked_at_its_strip_stays() {
        window.desk.notice("Looked at as of 1 May.", java.util.List.of());
        window.logbook.lookAsOf(java.time.LocalDate.of(2026, 5, 1));
        window.desk.changed();
        window.settle();
        assertThat(window.said()).contains("Looked at as of 1 May.").doesNotContain("This is a sample season.");
        window.logbook.lookAsOf(null);
        window.desk.dismissNotice();
        window.desk.changed();
        window.settle();
        assertThat(window.said()).contains("This is a sample season.");
    }

    @Test
    void a_reset_is_asked_for_first_since_undo_cannot_bring_it_back() {
        window.press("Reset sample");
        assertThat(window.opened).isEmpty();
        assertThat(window.said()).contains("undo cannot bring it back");
        window.press("Keep it");
        assertThat(window.said()).contains("This is a sample season.");
        window.press("Reset sample");
        window.press("Reset sample");
        assertThat(window.opened).containsExactly("reset");
    }

    /** The backup is opened as any logbook is: the run is in it. */
    @Test
    void a_reset_says_before_and_after_where_own_entries_are() {
        logARunOfK03During(round6());
        window.press("Reset sample");
        assertThat(window.said()).contains("it is backed up first, and the sample then says where");
        assertThat(window.season.keepOwn(window.logbook.logbook()).orThrow()).isTrue();
        Path backup = window.season.kept().orElseThrow();
        window.strip.show();
        window.settle();
        assertThat(window.said())
                .contains(
                        "What you wrote before is in the backup " + backup,
                        "Restore a backup brings it back as a file of its own")
                .doesNotContain("This is a sample season.");
        window.press("All right");
        assertThat(window.said()).contains("This is a sample season.", "Reset sample");
        assertThat(window.season.kept()).isEmpty();
        assertThat(backup).exists();
    }

    @Test
    void where_all_is_the_storys_nothing_is_kept_and_nothing_said() {
        window.press("Walk on to Round 6, Thornacre");
        assertThat(window.season.keepOwn(window.logbook.logbook()).orThrow()).isFalse();
        assertThat(window.season.kept()).isEmpty();
    }

    @Test
    void entries_that_contradict_the_story_are_named_and_both_ways_out_are_offered() {
        logARunOfK03During(round6());
        long revision = window.logbook.logbook().facts().revision();
        window.press("Walk on to Round 6, Thornacre");
        assertThat(window.said())
                .contains("The story and this logbook differ", "Reset and follow the story", "Go on alone")
                .contains("your entries go from it into a backup");
        assertThat(window.logbook.logbook().facts().revision()).isEqualTo(revision);
        window.press("Go on alone");
        assertThat(window.said())
                .contains("This is a sample season.")
                .doesNotContain("Walk on to", "The story and this logbook differ");
        assertThat(window.opened).isEmpty();
    }

    @Test
    void following_the_story_resets_and_walks_on_to_the_same_chapter_after() {
        logARunOfK03During(round6());
        window.press("Walk on to Round 6, Thornacre");
        window.press("Reset and follow the story");
        assertThat(window.opened).containsExactly("reset");
        window.close();
        try (StartedWindow again = new StartedWindow(folder.resolve("again"), Looks.light())) {
            window.settings.get("sample.follow").ifPresent(chapter -> again.settings.put("sample.follow", chapter));
            again.strip.show();
            again.settle();
            assertThat(again.said()).contains("Walk on to After Round 6", "Sun 26 Jul 2026");
            assertThat(again.settings.get("sample.follow")).hasValue("");
        }
    }

    /** A moment inside the first run of round 6, as its timetable has it: Saturday 25 July, 09:00. */
    private static Moment round6() {
        return Moment.parse("2026-07-25T09:05:00+01:00[Europe/London]");
    }

    private void logARunOfK03During(Moment start) {
        var facts = window.logbook.logbook().facts();
        Entry<Engine> k03 = facts.of(Engine.class).named("K03").orElseThrow();
        Run like = facts.of(Run.class)
                .where(run -> run.engine().equals(k03.id()))
                .get(0)
                .fact();
        EngineInCar in = facts.of(EngineInCar.class)
                .where(stay -> stay.engine().equals(k03.id()) && stay.to() == null)
                .get(0)
                .fact();
        Run own = new Run(
                like.engine(),
                in.car(),
                null,
                null,
                like.kind(),
                "own run",
                start,
                like.startKnown(),
                null,
                null,
                new RunningTime(20 * 60_000),
                like.knownBy(),
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                like.driverAsked(),
                "",
                "",
                "",
                null);
        window.logbook
                .write("own run", List.of(new Entry<>(SampleBooks.ids().<Run>next(), own, Standing.IN_FORCE, null, 1)))
                .orThrow();
    }
}
