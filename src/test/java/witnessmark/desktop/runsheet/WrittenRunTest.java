package witnessmark.desktop.runsheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.concurrent.atomic.AtomicReference;
import javax.swing.text.JTextComponent;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import witnessmark.desktop.form.StatusStrip;
import witnessmark.desktop.shell.PlaceId;
import witnessmark.desktop.shell.Visit;
import witnessmark.desktop.testing.Stage;
import witnessmark.desktop.testing.Ui;
import witnessmark.desktop.testing.UiTest;
import witnessmark.domain.Entry;
import witnessmark.domain.Id;
import witnessmark.domain.Run;
import witnessmark.domain.Standing;
import witnessmark.logbook.Desk;
import witnessmark.logbook.run.MemoryLogbook;
import witnessmark.logbook.run.RunField;
import witnessmark.logbook.run.SampleBook;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;
import witnessmark.quantity.RunningTime;

/** A written run on the run sheet: corrected, put back, struck out, settled; on the evening the sample opens. */
@UiTest
class WrittenRunTest {
    private final MemoryLogbook logbook = new MemoryLogbook(SampleBook.facts());
    private final Desk book = new Desk(logbook, new SampleBook.Day(SampleBook.OPENING), "TE");
    private RunSheetStage stage = new RunSheetStage(book);
    private Id<Run> race2;

    @BeforeEach
    void open() {
        race2 = stage.run("K03", "2026-07-05", "Race 2");
        stage.open(race2);
    }

    @AfterEach
    void close() {
        stage.tasks.awaitIdle();
        stage.close();
    }

    private void click(String name) {
        stage.laidOut(1366, 768);
        new Ui(stage.pane).button(name).doClick();
        stage.tasks.awaitIdle();
    }

    private String status() {
        AtomicReference<String> found = new AtomicReference<>("");
        Stage.walk(stage.pane, component -> {
            if (component instanceof StatusStrip strip) {
                found.set(strip.sentence());
            }
        });
        return found.get();
    }

    private String strip() {
        return stage.place.writtenPanel().said();
    }

    private Entry<Run> run() {
        return run(race2);
    }

    private Entry<Run> run(Id<Run> id) {
        return book.view().facts().of(Run.class).find(id).orElseThrow();
    }

    private String text(RunField field) {
        return stage.place.writtenModel().text(field);
    }

    @Test
    void a_figure_is_corrected_and_taken_back() {
        Run before = run().fact();
        stage.correct(RunField.LAPS, "11");

        click("Save changes");

        assertThat(run().fact().laps()).isEqualTo(11);
        assertThat(status()).isEqualTo("Corrected: Race 2 of car 41.");
        assertThat(book.undoable().orElseThrow().why()).isEqualTo("correcting Race 2 of car 41");
        assertThat(stage.place.writtenModel().isDirty()).isFalse();
        assertThat(logbook.drafts().find("run sheet", race2.text())).isEmpty();
        assertThat(stage.place.writtenActions().by())
                .isEqualTo("Written by TE, Thu 1 Jan 1970, 01:00.")
                .as("the clock of this logbook counts its amendments");

        assertThat(stage.elsewhere.recounted)
                .as("what waits elsewhere is counted anew")
                .isEqualTo(1);

        stage.undo.undo();
        stage.tasks.awaitIdle();

        assertThat(run().fact()).isEqualTo(before);
        assertThat(status()).isEqualTo("Taken back: correcting Race 2 of car 41.");
        assertThat(text(RunField.LAPS)).as("what stands on the sheet follows").isEqualTo("12");
    }

    @Test
    void why_it_is_corrected_goes_into_its_history_and_the_next_correction_begins_without() {
        because("  counted again from the lap sheet ");
        stage.correct(RunField.LAPS, "11");
        click("Save changes");

        String why = "correcting Race 2 of car 41: counted again from the lap sheet";
        assertThat(logbook.history().get(0).why()).isEqualTo(why);
        assertThat(stage.place.writtenActions().history().get(0).why()).isEqualTo(why);
        assertThat(stage.place.writtenPanel().why().text()).isEmpty();

        stage.correct(RunField.LAPS, "12");
        click("Save changes");
        assertThat(logbook.history().get(1).why()).isEqualTo("correcting Race 2 of car 41");
    }

    @Test
    void why_it_is_corrected_is_kept_in_the_draft_and_put_back_with_the_run() {
        because("counted again");
        stage.correct(RunField.LAPS, "11");
        stage.close();
        stage = new RunSheetStage(book).open();
        stage.open(race2);
        assertThat(stage.place.writtenPanel().why().text()).isEqualTo("counted again");

        click("Put back");
        assertThat(stage.place.writtenPanel().why().text()).isEmpty();
        click("Undo");
        assertThat(stage.place.writtenPanel().why().text()).isEqualTo("counted again");
    }

    private void because(String text) {
        stage.place.writtenPanel().why().field().setText(text);
        stage.tasks.awaitIdle();
    }

    @Test
    void saving_what_nobody_changed_writes_nothing() {
        click("Save changes");

        assertThat(logbook.history()).isEmpty();
        assertThat(status()).isEqualTo("Nothing is changed: the run stays as it is written.");
    }

    @Test
    void a_changed_field_says_what_it_was_until_it_is_that_again() {
        RunWords words = new RunWords(
                witnessmark.wording.Texts.in(java.util.Locale.UK),
                new witnessmark.wording.Measures(
                        witnessmark.wording.Texts.in(java.util.Locale.UK), witnessmark.wording.Units.METRIC));
        stage.correct(RunField.LAPS, "11");
        assertThat(words.line(stage.place.writtenModel().line(RunField.LAPS))).isEqualTo("was 12");
        stage.correct(RunField.OIL_ADDED, "0.2");
        assertThat(words.line(stage.place.writtenModel().line(RunField.OIL_ADDED)))
                .isEqualTo("was empty");

        stage.correct(RunField.LAPS, "12");
        assertThat(words.line(stage.place.writtenModel().line(RunField.LAPS))).doesNotContain("was");
    }

    @Test
    void put_back_shows_what_is_written_and_can_be_undone() {
        stage.correct(RunField.LAPS, "11");

        click("Put back");
        assertThat(text(RunField.LAPS)).isEqualTo("12");
        assertThat(logbook.drafts().find("run sheet", race2.text())).isEmpty();

        click("Undo");
        assertThat(text(RunField.LAPS)).isEqualTo("11");
        assertThat(logbook.drafts().find("run sheet", race2.text())).isPresent();
    }

    @Test
    void each_run_keeps_its_own_draft_and_so_does_the_fresh_sheet() {
        stage.correct(RunField.LAPS, "1h7x");
        Id<Run> other = stage.run("K03", "2026-07-05", "Race 1");
        stage.open(other);
        stage.correct(RunField.LAPS, "9");
        stage.pane.go(Visit.to(PlaceId.RUN_SHEET));
        stage.tasks.awaitIdle();
        stage.model().type(RunField.LAPS, "3");
        stage.tasks.awaitIdle();
        stage.close();

        stage = new RunSheetStage(book).open();
        assertThat(stage.model().text(RunField.LAPS)).isEqualTo("3");
        stage.open(race2);
        assertThat(text(RunField.LAPS)).isEqualTo("1h7x");
        assertThat(stage.place.writtenModel().line(RunField.LAPS).level()).isEqualTo(FieldLine.Level.STOP);
        stage.open(other);
        assertThat(text(RunField.LAPS)).isEqualTo("9");
    }

    @Test
    void what_cannot_be_read_stops_and_is_pointed_at() {
        stage.correct(RunField.RUNNING, "1h7x");

        click("Save changes");

        assertThat(logbook.history()).isEmpty();
        assertThat(stage.place.writtenModel().stopped()).containsExactly(RunField.RUNNING);
    }

    @Test
    void what_the_logbook_refuses_is_said_and_kept_on_the_sheet() {
        logbook.refuse(Problem.of(ProblemKind.DISK_FULL, logbook.path()));
        stage.correct(RunField.LAPS, "11");

        click("Save changes");

        assertThat(strip()).isNotEmpty();
        assertThat(text(RunField.LAPS)).isEqualTo("11");
    }

    @Test
    void somebody_who_changed_it_meanwhile_is_named_and_typing_stays() {
        stage.correct(RunField.LAPS, "11");
        Run longer = changed();
        book.write("by another hand", List.of(new Entry<>(race2, longer, Standing.IN_FORCE, null, run().rev() + 1)))
                .orThrow();

        stage.open(race2);

        assertThat(strip())
                .isEqualTo("The run was changed meanwhile by TE. What you typed stays;"
                        + " under each field you changed stands what is written now.");
        assertThat(text(RunField.LAPS)).isEqualTo("11");
        assertThat(text(RunField.REMARKS)).as("nobody typed here").isEqualTo("by another hand");
        click("Save changes");
        assertThat(run().fact().laps()).isEqualTo(11);
        assertThat(run().fact().remarks()).isEqualTo("by another hand");
        assertThat(strip()).isEmpty();
    }

    /** The same run with other remarks, written past the sheet. */
    private Run changed() {
        var image = new java.util.TreeMap<>(witnessmark.domain.image.EntryImage.of(run()));
        image.put("remarks", "by another hand");
        return witnessmark.domain.image.EntryImage.entry(
                        witnessmark.domain.image.RecordTypes.of(Run.class), race2.value(), image, 2)
                .fact();
    }

    @Test
    void while_an_earlier_day_is_looked_at_it_is_only_read() {
        book.lookAsOf(LocalDate.parse("2026-07-06"));
        stage.open(race2);

        assertThat(strip())
                .isEqualTo("The logbook is looked at as of Mon 6 Jul 2026."
                        + " This run can be read; go back to today to correct it.");
        JTextComponent laps = (JTextComponent) stage.place.writtenPanel().form().input(RunField.LAPS);
        assertThat(laps.isEditable()).isFalse();
        stage.correct(RunField.LAPS, "11");
        stage.place.writtenActions().save();
        stage.tasks.awaitIdle();
        assertThat(logbook.history()).isEmpty();

        book.lookAsOf(null);
        stage.open(race2);
        assertThat(laps.isEditable()).isTrue();
        assertThat(strip()).isEmpty();
    }

    @Test
    void it_is_struck_out_with_a_reason_and_restored() {
        click("Strike out…");
        click("Strike out");
        assertThat(run().inForce()).as("without a reason it stays in").isTrue();

        stage.place.writtenPanel().asking().reason().field().setText("typed twice");
        click("Strike out");

        assertThat(run().standing()).isEqualTo(Standing.STRUCK_OUT);
        assertThat(status()).isEqualTo("Struck out: Race 2 of car 41.");
        assertThat(strip()).isEqualTo("Struck out: typed twice. It counts nowhere. Restore it to correct it.");
        assertThat(stage.place.writtenActions().canCorrect()).isFalse();

        click("Restore");
        assertThat(run().inForce()).isTrue();
        assertThat(strip()).isEmpty();
        assertThat(stage.place.writtenActions().canCorrect()).isTrue();
    }

    @Test
    void what_is_done_to_the_run_from_here_is_nobody_elses_change() {
        stage.correct(RunField.LAPS, "11");
        stage.place.writtenActions().strikeOut("typed twice");
        stage.tasks.awaitIdle();
        stage.place.writtenActions().restore();
        stage.tasks.awaitIdle();

        assertThat(strip()).isEmpty();
        assertThat(text(RunField.LAPS)).isEqualTo("11");
    }

    @Test
    void a_run_that_may_be_another_is_settled() {
        Id<Run> twin = twin();
        stage.open(twin);
        assertThat(strip()).startsWith("This may be Race 2 of car 41, out ").contains("Same run strikes this one out");

        click("Another run");
        assertThat(run(twin).fact().perhapsSame()).isNull();
        assertThat(strip()).isEmpty();

        stage.undo.undo();
        stage.tasks.awaitIdle();
        click("Same run");
        assertThat(run(twin).standing()).isEqualTo(Standing.STRUCK_OUT);
    }

    /** Race 2 written a second time, and marked. */
    private Id<Run> twin() {
        Id<Run> twin = SampleBook.ids().next();
        book.write("twice", List.of(new Entry<>(twin, run().fact().perhapsSameAs(race2), Standing.IN_FORCE, null, 1)))
                .orThrow();
        return twin;
    }

    @Test
    void the_place_itself_is_the_fresh_sheet_and_a_run_is_a_visit_of_its_own() {
        assertThat(heading()).isEqualTo("Race 2 of car 41, Sun 5 Jul 2026, written");

        stage.pane.go(Visit.to(PlaceId.RUN_SHEET));
        assertThat(stage.place.isWritten()).isFalse();
        assertThat(heading()).isEqualTo("new run");

        stage.open(race2);
        click("Fresh sheet");
        assertThat(stage.pane.current()).contains(Visit.to(PlaceId.RUN_SHEET));
        assertThat(stage.place.isWritten()).isFalse();
    }

    private String heading() {
        stage.laidOut(1366, 768);
        return stage.place.heading();
    }

    @Test
    void a_link_to_nothing_says_so_and_shows_the_fresh_sheet() {
        stage.open(SampleBook.ids().next());

        assertThat(stage.place.isWritten()).isFalse();
        assertThat(status()).isEqualTo("That run is not in this logbook. Here is a fresh sheet.");
    }

    @Test
    void what_it_does_is_shown_at_once_and_follows_the_typing() {
        long written = run().fact().running().millis();
        assertThat(gain()).isEqualTo(written);

        stage.correct(RunField.RUNNING, "30");
        assertThat(gain()).isEqualTo(new RunningTime(1_800_000).millis());
    }

    private long gain() {
        stage.tasks.awaitIdle();
        var does = stage.place.writtenModel().does().orElseThrow();
        return does.after().total() - does.before().total();
    }
}
