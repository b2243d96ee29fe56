package witnessmark.desktop.runsheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.event.KeyEvent;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicReference;
import java.util.stream.IntStream;
import javax.swing.AbstractButton;
import javax.swing.JList;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import witnessmark.desktop.form.Keys;
import witnessmark.desktop.form.NoticeStrip;
import witnessmark.desktop.form.StatusStrip;
import witnessmark.desktop.shell.PlaceId;
import witnessmark.desktop.shell.Visit;
import witnessmark.desktop.testing.Stage;
import witnessmark.desktop.testing.Ui;
import witnessmark.desktop.testing.UiTest;
import witnessmark.domain.Entry;
import witnessmark.domain.Id;
import witnessmark.domain.Run;
import witnessmark.logbook.Desk;
import witnessmark.logbook.port.Drafts;
import witnessmark.logbook.run.MemoryLogbook;
import witnessmark.logbook.run.RunField;
import witnessmark.logbook.run.SampleBook;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;
import witnessmark.quantity.RunningTime;

/** Drafts, saving and taking back, in the window's shell, on the Saturday of round 6. */
@UiTest
class RunSheetActionsTest {
    private static final LocalDate SATURDAY = LocalDate.parse("2026-07-25");

    private final MemoryLogbook logbook = new MemoryLogbook(SampleBook.facts());
    private final Desk book = new Desk(logbook, new SampleBook.Day(SATURDAY), "TE");
    private RunSheetStage stage = new RunSheetStage(book);

    @BeforeEach
    void open() {
        stage.open();
        stage.laidOut(1366, 768);
        stage.pick(RunField.CAR, "41, engine K03");
        settle();
    }

    @AfterEach
    void close() {
        settle();
        stage.close();
    }

    private void settle() {
        stage.tasks.awaitIdle();
    }

    private void save() {
        click("Save run");
        settle();
    }

    private void click(String name) {
        stage.laidOut(1366, 768);
        new Ui(stage.pane).button(name).doClick();
    }

    private <C> C only(Class<C> type, boolean within) {
        AtomicReference<C> found = new AtomicReference<>();
        Stage.walk(within ? stage.place.panel() : stage.pane, component -> {
            if (type.isInstance(component) && found.get() == null) {
                found.set(type.cast(component));
            }
        });
        return found.get();
    }

    private String status() {
        return only(StatusStrip.class, false).sentence();
    }

    private String strip() {
        return only(NoticeStrip.class, true).sentence();
    }

    private long runs() {
        return book.view().facts().of(Run.class).inForce().count();
    }

    @Test
    void what_is_typed_is_kept_as_a_draft_and_said_so() {
        stage.model().type(RunField.RUNNING, "1h7x");
        settle();

        Drafts.Draft draft = logbook.drafts().find("run sheet", "new").orElseThrow();
        assertThat(draft.fields()).containsEntry("running", "1h7x");
        assertThat(draft.keptAt()).isEqualTo(book.today().now());
        assertThat(shownDraft()).isEqualTo("Draft kept 09:41:12. Not in the logbook yet.");
    }

    @Test
    void the_tick_that_something_broke_reports_an_incident_on_the_run_that_was_saved_and_on_no_other() {
        List<Id<Run>> reported = new ArrayList<>();
        stage.place.onReport(reported::add);
        stage.put(RunField.RUNNING, "28:20");
        save();
        assertThat(reported).isEmpty();

        long before = runs();
        stage.put(RunField.RUNNING, "12:00");
        stage.put(RunField.OUT_AT, "06:00");
        settle();
        stage.place.panel().form().broke().doClick();
        save();
        assertThat(runs()).isEqualTo(before + 1);
        assertThat(reported).hasSize(1);
        assertThat(book.view().facts().of(Run.class).get(reported.get(0)).running())
                .isEqualTo(new RunningTime(720_000));
        assertThat(stage.place.panel().form().broke().isSelected()).isFalse();
    }

    /** Started again, the rail says that something waits before anybody has opened the sheet, and until it is cleared. */
    @Test
    void a_draft_from_before_is_told_beside_the_place() {
        assertThat(placesSaid()).doesNotContain("Run sheet, draft");
        stage.model().type(RunField.RUNNING, "1h7x");
        settle();
        RunSheetStage first = stage;
        stage = new RunSheetStage(book);
        settle();
        stage.pane.go(Visit.to(PlaceId.ENGINES));
        assertThat(stage.model().isOpen()).isFalse();
        assertThat(placesSaid()).contains("Run sheet, draft");
        stage.open();
        assertThat(placesSaid()).contains("Run sheet, draft");
        click("Clear sheet");
        settle();
        assertThat(placesSaid()).doesNotContain("Run sheet, draft");
        first.close();
    }

    /** Nothing is written while another day is looked at, and the sheet is not for that day either. */
    @Test
    void a_run_begun_while_an_earlier_day_was_looked_at_is_of_today() {
        LocalDate earlier = LocalDate.parse("2026-05-01");
        book.lookAsOf(earlier);
        stage.place.refresh();
        settle();
        String date = stage.model().text(RunField.DATE);
        stage.model().type(RunField.RUNNING, "10");
        long before = runs();
        save();
        assertThat(runs()).isEqualTo(before);
        assertThat(strip()).contains("as of");
        book.lookAsOf(null);
        stage.place.refresh();
        settle();
        assertThat(strip()).isEmpty();
        assertThat(stage.model().text(RunField.DATE)).isEqualTo(date);
        save();
        assertThat(book.view()
                        .facts()
                        .of(Run.class)
                        .inForce()
                        .map(run -> run.fact().start().day()))
                .filteredOn(SATURDAY::equals)
                .isNotEmpty();
        assertThat(runs()).isEqualTo(before + 1);
    }

    private List<String> placesSaid() {
        JList<?> places = only(JList.class, false);
        return IntStream.range(0, places.getModel().getSize())
                .mapToObj(i -> places.getAccessibleContext()
                        .getAccessibleChild(i)
                        .getAccessibleContext()
                        .getAccessibleName())
                .toList();
    }

    private String shownDraft() {
        AtomicReference<String> found = new AtomicReference<>("");
        Stage.walk(stage.place.panel(), component -> {
            if (component instanceof javax.swing.JLabel label
                    && label.getText() != null
                    && label.getText().contains("raft")) {
                found.set(label.getText());
            }
        });
        return found.get();
    }

    @Test
    void a_draft_that_went_elsewhere_or_nowhere_is_said_so() {
        logbook.drafts().goTo(Drafts.Kept.IN_FALLBACK_FILE);
        stage.model().type(RunField.RUNNING, "28");
        settle();
        assertThat(shownDraft())
                .isEqualTo("Draft kept 09:41:12 in a file of its own, as the logbook could not take it."
                        + " Not in the logbook yet.");

        logbook.drafts().goTo(Drafts.Kept.NOT_KEPT);
        stage.model().type(RunField.RUNNING, "28:20");
        settle();
        assertThat(shownDraft()).startsWith("The draft could not be kept at 09:41:12.");
    }

    @Test
    void a_program_begun_again_shows_what_was_typed_before() {
        stage.put(RunField.RUNNING, "1h7x");
        stage.model().type(RunField.LAPS, "14");
        settle();
        stage.close();

        stage = new RunSheetStage(book).open();

        assertThat(stage.model().text(RunField.RUNNING)).isEqualTo("1h7x");
        assertThat(stage.model().text(RunField.LAPS)).isEqualTo("14");
        assertThat(stage.model().line(RunField.RUNNING).level()).isEqualTo(FieldLine.Level.STOP);
        assertThat(shownDraft()).isEqualTo("Draft kept 09:41:12. Not in the logbook yet.");
        assertThat(new Ui(stage.laidOut(1366, 768)).field("Running time, min").getText())
                .isEqualTo("1h7x");
    }

    @Test
    void a_sheet_typed_empty_again_leaves_no_draft() {
        stage.model().clear(stage.model().texts());
        stage.model().type(RunField.LAPS, "14");
        settle();
        assertThat(logbook.drafts().find("run sheet", "new")).isPresent();

        stage.model().type(RunField.LAPS, "");
        settle();

        assertThat(logbook.drafts().find("run sheet", "new")).isEmpty();
        assertThat(shownDraft()).isEmpty();
    }

    @Test
    void a_saved_run_is_said_with_a_way_back_and_the_sheet_moves_on() {
        long before = runs();
        stage.put(RunField.RUNNING, "28:20");
        save();

        assertThat(runs()).isEqualTo(before + 1);
        assertThat(status()).isEqualTo("Run saved: car 41, Practice 1, Sat 25 Jul, 28 min 20 s.");
        assertThat(logbook.drafts().find("run sheet", "new")).isEmpty();
        assertThat(shownDraft()).isEmpty();
        assertThat(stage.model().text(RunField.RUNNING)).isEmpty();
        assertThat(stage.model().text(RunField.OUT_AT)).isEqualTo("11:30");
        assertThat(logbook.history().get(0).why()).isEqualTo("run of car 41, Practice 1, Sat 25 Jul, 28 min 20 s");

        click("Undo");
        settle();

        assertThat(runs()).isEqualTo(before);
        assertThat(status()).isEqualTo("Taken back: run of car 41, Practice 1, Sat 25 Jul, 28 min 20 s.");
        assertThat(logbook.facts().of(Run.class).all())
                .extracting(Entry::struckBecause)
                .as("a run nobody struck out by hand says so")
                .contains("saving it was taken back (run of car 41, Practice 1, Sat 25 Jul, 28 min 20 s)");
        assertThat(stage.model().text(RunField.OUT_AT))
                .as("the run comes up again")
                .isEqualTo("09:00");
    }

    @Test
    void when_saving_fails_the_sheet_stays_as_it_is_and_says_why() {
        stage.put(RunField.RUNNING, "28:20");
        stage.put(RunField.REMARKS, "Plugs clean.");
        logbook.refuse(Problem.of(ProblemKind.DISK_FULL, logbook.path()));
        save();

        assertThat(strip())
                .isEqualTo("Couldn't save to memory.witness: the disk is full. Nothing is half saved."
                        + " What you typed stays here. Free some space, then save again.");
        assertThat(stage.model().text(RunField.RUNNING)).isEqualTo("28:20");
        assertThat(stage.model().text(RunField.REMARKS)).isEqualTo("Plugs clean.");
        assertThat(logbook.drafts().find("run sheet", "new")).isPresent();

        logbook.refuse(null);
        save();
        assertThat(strip()).isEmpty();
        assertThat(status()).startsWith("Run saved");
    }

    @Test
    void a_query_is_shown_and_saving_goes_through() {
        stage.put(RunField.RUNNING, "28:20");
        stage.put(RunField.OIL_PRESSURE, "45");
        save();

        assertThat(status())
                .isEqualTo(
                        "Run saved: car 41, Practice 1, Sat 25 Jul, 28 min 20 s. Queried: oil pressure, lowest hot.");
        assertThat(book.view().facts().of(Run.class).where(run -> run.queried().equals("oil_pressure")))
                .hasSize(1);
    }

    @Test
    void the_fields_that_need_a_look_are_named_as_links() {
        stage.put(RunField.RUNNING, "1h7x");
        stage.put(RunField.LAPS, "12abc");
        save();

        assertThat(runs()).isEqualTo(69 + added());
        AbstractButton link = new Ui(stage.laidOut(1366, 768)).button("Laps");
        assertThat(link.isEnabled()).isTrue();
        stage.put(RunField.LAPS, "12");
        stage.laidOut(1366, 768);
        assertThat(stage.model().stopped()).containsExactly(RunField.RUNNING);
    }

    private long added() {
        return runs() - 69;
    }

    @Test
    void an_overlapping_run_is_told_in_the_strip_and_nothing_is_lost() {
        stage.put(RunField.RUNNING, "28:20");
        save();
        stage.put(RunField.OUT_AT, "09:10");
        stage.put(RunField.RUNNING, "25");
        long before = runs();
        save();

        assertThat(runs()).isEqualTo(before);
        assertThat(strip()).startsWith("Engine K03 was already out on Practice 1, from Sat 25 Jul 2026, 09:00");
        assertThat(stage.model().text(RunField.RUNNING)).isEqualTo("25");
        stage.put(RunField.OUT_AT, "09:40");
        assertThat(strip()).isEmpty();
    }

    @Test
    void a_run_that_may_be_another_again_says_that_it_counts_once() {
        String practice = stage.model().text(RunField.PLANNED);
        stage.put(RunField.RUNNING, "28:20");
        save();
        stage.model().type(RunField.PLANNED, practice);
        stage.put(RunField.OUT_AT, "09:00");
        stage.put(RunField.RUNNING, "28:20");
        assertThat(strip()).startsWith("Engine K03 has Practice 1 written down already");
        save();

        assertThat(status())
                .isEqualTo(
                        "Run saved: car 41, Practice 1, Sat 25 Jul, 28 min 20 s. It looks like one written down already,"
                                + " which alone counts until you say Same run or Another run on its sheet.");
    }

    @Test
    void a_cleared_sheet_is_put_back_by_undo() {
        stage.put(RunField.RUNNING, "1h7x");
        settle();
        click("Clear sheet");
        settle();

        assertThat(stage.model().text(RunField.RUNNING)).isEmpty();
        assertThat(logbook.drafts().find("run sheet", "new")).isEmpty();
        assertThat(status()).isEqualTo("Sheet cleared. Nothing of it is in the logbook.");

        click("Undo");
        settle();

        assertThat(stage.model().text(RunField.RUNNING)).isEqualTo("1h7x");
        assertThat(logbook.drafts().find("run sheet", "new")).isPresent();
    }

    /** The key would take back the last run of the logbook otherwise. */
    @Test
    void a_cleared_sheet_is_put_back_by_the_key_for_undo() {
        stage.put(RunField.RUNNING, "1h7x");
        settle();
        click("Clear sheet");
        settle();
        Ui.press(stage.place.panel(), Keys.menu(KeyEvent.VK_Z));
        settle();
        assertThat(stage.model().text(RunField.RUNNING)).isEqualTo("1h7x");
    }

    @Test
    void what_the_run_does_follows_the_typing() {
        stage.put(RunField.RUNNING, "28:20");
        settle();
        assertThat(stage.model().does().orElseThrow().engine()).isEqualTo("K03");

        stage.put(RunField.RUNNING, "1h7x");
        settle();
        assertThat(stage.model().does()).isEmpty();
    }

    @Test
    void told_running_is_saved_from_the_record_menu() {
        stage.place.commands().get(1).perform();
        settle();
        ToldModel told = stage.place.toldModel();
        told.type(
                witnessmark.logbook.told.ToldField.ENGINE,
                told.engines().stream()
                        .filter(engine -> engine.fact().number().equals("K21"))
                        .findFirst()
                        .orElseThrow()
                        .id()
                        .text());
        told.type(witnessmark.logbook.told.ToldField.FROM, "10 Jun");
        told.type(witnessmark.logbook.told.ToldField.TO, "1 Jul");
        told.type(witnessmark.logbook.told.ToldField.LIKELY, "3");
        told.type(witnessmark.logbook.told.ToldField.LOWEST, "2");
        told.type(witnessmark.logbook.told.ToldField.HIGHEST, "4");
        told.type(witnessmark.logbook.told.ToldField.TOLD_BY, "customer C1");
        settle();
        assertThat(logbook.drafts().find("told running", "new")).isPresent();
        assertThat(told.ask()).isFalse();
        told.type(witnessmark.logbook.told.ToldField.HOW, "his diary");
        settle();
        assertThat(told.life()).isPresent();

        click("Save");
        settle();

        assertThat(status()).isEqualTo("Told running of K21 saved.");
        assertThat(logbook.drafts().find("told running", "new")).isEmpty();
        assertThat(told.isDirty()).isFalse();
    }
}
