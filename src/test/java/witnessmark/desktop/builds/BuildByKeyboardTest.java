package witnessmark.desktop.builds;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.util.List;
import javax.swing.JComboBox;
import javax.swing.JFrame;
import javax.swing.text.JTextComponent;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import witnessmark.desktop.testing.Focus;
import witnessmark.desktop.testing.Keyboard;
import witnessmark.desktop.testing.Looks;
import witnessmark.desktop.testing.Ui;
import witnessmark.desktop.testing.UiTest;
import witnessmark.domain.Build;
import witnessmark.domain.Entry;
import witnessmark.domain.Fitment;
import witnessmark.domain.Id;
import witnessmark.domain.Incident;
import witnessmark.domain.Joint;
import witnessmark.domain.Lesson;
import witnessmark.domain.LessonAnswer;
import witnessmark.domain.Part;
import witnessmark.domain.PartKind;
import witnessmark.domain.Position;
import witnessmark.domain.Quarantine;
import witnessmark.domain.SignOff;
import witnessmark.domain.Standing;
import witnessmark.logbook.Desk;
import witnessmark.logbook.building.BuildDraft;
import witnessmark.logbook.building.BuildField;
import witnessmark.logbook.building.BuildField.Name;
import witnessmark.quantity.Moment;
import witnessmark.sample.SampleBooks;

/** The page of a build in a real window with nothing but keys. */
@UiTest(display = true)
class BuildByKeyboardTest {
    private static final int MENU = InputEvent.CTRL_DOWN_MASK;

    private final JFrame frame = new JFrame();
    private final Desk book = BuildWindow.sample();
    private BuildWindow window;
    private Keyboard keys;

    @BeforeEach
    void show() {
        open();
        window.show("K05");
        Focus.await(window.positions());
    }

    private void open() {
        window = new BuildWindow(Looks.light(), BuildWindow.english(), book);
        keys = new Keyboard(window.tasks::awaitIdle);
        frame.setContentPane(window.pane);
        frame.setJMenuBar(window.pane.menuBar());
        frame.setSize(1366, 768);
        frame.setVisible(true);
        frame.validate();
    }

    @AfterEach
    void close() {
        frame.dispose();
        window.close();
    }

    private List<Fitment> fitted() {
        Entry<Build> build = window.build("K05");
        return book
                .view()
                .facts()
                .of(Fitment.class)
                .where(fitment -> build.id().equals(fitment.buildIn())
                        && fitment.from().day().equals(book.today().day()))
                .stream()
                .map(Entry::fact)
                .toList();
    }

    private String position() {
        return window.page.panel().tables().positions().selected().position();
    }

    /** Letters typed over the list find a position, and Enter takes it in hand. */
    private void find(String letters) {
        keys.type(letters.substring(0, 1));
        JTextComponent filter = new Ui(window.page.panel()).field("Filter this list");
        Focus.await(filter);
        keys.type(letters.substring(1));
        keys.press(KeyEvent.VK_ENTER);
        Focus.await(window.positions());
    }

    /** Letters find the position, Enter goes to what goes in, Down takes the likeliest part, Enter goes on to the next. */
    @Test
    void parts_are_fitted_position_by_position_and_saved_as_one_change() {
        find("timing");
        keys.press(KeyEvent.VK_ENTER);
        assertThat(Keyboard.owner()).isInstanceOf(JComboBox.class);
        keys.press(KeyEvent.VK_DOWN);
        keys.press(KeyEvent.VK_ENTER);
        Focus.await(window.positions());
        assertThat(position()).isEqualTo("Water pump");
        keys.press(KeyEvent.VK_ENTER);
        keys.press(KeyEvent.VK_DOWN);
        keys.press(KeyEvent.VK_ENTER);
        assertThat(position()).isEqualTo("Damper");
        assertThat(fitted()).isEmpty();
        keys.press(KeyEvent.VK_ENTER, MENU);
        assertThat(fitted())
                .extracting(fitment ->
                        book.view().facts().of(Part.class).get(fitment.part()).mark())
                .containsExactlyInAnyOrder("TC-S1", "WP-S1");
        assertThat(window.page.model().isDirty()).isFalse();
        assertThat(book.logbook().drafts().begun()).isEmpty();
        book.undo().orThrow();
        assertThat(fitted()).isEmpty();
    }

    @Test
    void a_group_that_was_opened_is_tightened_by_its_name_with_method_value_and_lubricant_on_one_line() {
        window.joints().requestFocusInWindow();
        Focus.await(window.joints());
        keys.press(KeyEvent.VK_DOWN);
        keys.press(KeyEvent.VK_ENTER);
        String row = window.page.model().inHand().orElseThrow();
        assertThat(window.page.model().text(new BuildField(row, Name.FASTENERS)))
                .isEqualTo("head studs");
        assertThat(window.page.model().text(new BuildField(row, Name.VALUE))).isEmpty();
        assertThat(window.page.model().text(new BuildField(row, Name.LUBRICANT)))
                .isEmpty();
        keys.press(KeyEvent.VK_ENTER);
        keys.press(KeyEvent.VK_ENTER);
        keys.type("3 of 3");
        keys.press(KeyEvent.VK_ENTER);
        keys.press(KeyEvent.VK_ENTER);
        keys.type("95 Nm");
        assertThat(window.said()).contains("Torque 95 Nm, lubricant not said");
        keys.press(KeyEvent.VK_ENTER);
        keys.type("moly paste");
        keys.press(KeyEvent.VK_ENTER, MENU);
        assertThat(book.view()
                        .facts()
                        .of(Joint.class)
                        .where(joint -> joint.build() != null
                                && joint.build().equals(window.build("K05").id())))
                .singleElement()
                .satisfies(joint -> {
                    assertThat(joint.fact().value()).isEqualTo("95 Nm");
                    assertThat(joint.fact().lubricant()).isEqualTo("moly paste");
                    assertThat(joint.fact().which()).isEqualTo("all ten, from the middle out");
                });
        assertThat(window.said()).contains("3 of 3: Torque 95 Nm, on moly paste");
    }

    @Test
    void what_stops_is_said_beside_its_field_and_nothing_is_written() {
        find("block");
        keys.press(KeyEvent.VK_ENTER);
        keys.press(KeyEvent.VK_DOWN);
        keys.press(KeyEvent.VK_DOWN);
        keys.press(KeyEvent.VK_ENTER, MENU);
        assertThat(window.said()).contains("1 field needs a look", "Block: Why it comes out");
        assertThat(book.view().facts().of(Quarantine.class).inForce()).hasSize(quarantines());
        assertThat(window.page.model().isDirty()).isTrue();
        keys.type("cracked");
        keys.press(KeyEvent.VK_ENTER, MENU);
        assertThat(window.page.model().isDirty()).isFalse();
        assertThat(book.view().facts().of(Quarantine.class).inForce()).hasSize(quarantines() + 1);
    }

    /** What was to come out of a position goes with the fitting that is taken back; the position can be filled again. */
    @Test
    void a_fitting_taken_back_takes_what_was_said_of_it_along_and_the_position_is_filled_again() {
        find("timing");
        keys.press(KeyEvent.VK_ENTER);
        keys.press(KeyEvent.VK_DOWN);
        keys.press(KeyEvent.VK_ENTER, MENU);
        assertThat(fitted()).hasSize(1);
        Id<Position> chain = window.page.model().written().positions().stream()
                .filter(at -> at.position().fact().kind() == PartKind.TIMING_CHAIN)
                .findFirst()
                .orElseThrow()
                .position()
                .id();
        window.page.model().type(BuildField.of(chain, Name.OUT), "shelf");
        window.tasks.awaitIdle();
        assertThat(window.page.model().isDirty()).isTrue();
        book.undo().orThrow();
        window.show("K05");
        assertThat(window.page.model().isDirty()).isFalse();
        window.page.model().type(BuildField.of(chain, Name.IN), free(chain));
        window.tasks.awaitIdle();
        keys.press(KeyEvent.VK_ENTER, MENU);
        assertThat(fitted()).hasSize(1);
    }

    private String free(Id<Position> position) {
        return BuildDraft.part(window.page.model().free(position).get(0));
    }

    private int quarantines() {
        return (int) BuildWindow.sample()
                .view()
                .facts()
                .of(Quarantine.class)
                .inForce()
                .count();
    }

    /** What the hose of May taught is asked of K05 too: Enter on its answer opens the sheet for it. */
    @Test
    void nobody_signs_before_a_lesson_is_answered_and_its_incident_and_answer_are_a_key_away() {
        window.page.model().type(BuildField.of(Name.SIGNED), "Crew chief");
        window.tasks.awaitIdle();
        keys.press(KeyEvent.VK_ENTER, MENU);
        assertThat(book.view()
                        .facts()
                        .of(SignOff.class)
                        .where(signed ->
                                signed.build().equals(window.build("K05").id())))
                .isEmpty();
        assertThat(window.said())
                .contains("Lessons that are not met or not answered, and that nobody accepted: 1. They say: clamps");

        new Ui(window.page.panel())
                .button("1 lesson not met or not answered: it cannot be signed so")
                .doClick();
        Focus.await(new Ui(window.page.panel())
                .button("Answer it…: Clamps tightened again after the first heat cycle, by whom?"));
        keys.press(KeyEvent.VK_SPACE);
        Id<Lesson> lesson = book.view().facts().of(Lesson.class).all().get(0).id();
        assertThat(window.asked)
                .containsExactly("answer " + window.build("K05").id().text() + " " + lesson.text());
        new Ui(window.page.panel()).button("INC-04").doClick();
        assertThat(window.asked.get(1))
                .isEqualTo("incident "
                        + book.view()
                                .facts()
                                .of(Incident.class)
                                .named("INC-04")
                                .orElseThrow()
                                .id()
                                .text());
    }

    private void answerTheLesson() {
        Id<Lesson> lesson = book.view().facts().of(Lesson.class).all().get(0).id();
        LessonAnswer answer = new LessonAnswer(
                lesson,
                window.build("K05").id(),
                Moment.endOf(book.today().day(), book.view().zone()),
                true,
                null,
                "hot",
                "Mechanic 1");
        book.write("answered", List.of(new Entry<>(SampleBooks.ids().next(), answer, Standing.IN_FORCE, null, 1)))
                .orThrow();
        window.show("K05");
        window.tasks.awaitIdle();
    }

    @Test
    void closing_with_things_open_asks_once_and_is_written_then_with_both_who_signed() {
        answerTheLesson();
        BuildModel model = window.page.model();
        model.type(BuildField.of(Name.CLOSED), "8 Jul 2026");
        model.type(BuildField.of(Name.SIGNED), "Crew chief");
        model.type(BuildField.of(Name.SECOND), "Team engineer");
        window.tasks.awaitIdle();
        keys.press(KeyEvent.VK_ENTER, MENU);
        assertThat(window.build("K05").fact().closed()).isNull();
        assertThat(window.said()).contains("The build has not been closed");
        keys.press(KeyEvent.VK_ENTER, MENU);
        assertThat(window.build("K05").fact().closed()).isNotNull();
        assertThat(book.view()
                        .facts()
                        .of(SignOff.class)
                        .where(signed ->
                                signed.build().equals(window.build("K05").id())))
                .singleElement()
                .satisfies(signed -> assertThat(signed.fact().seenByTwo()).isTrue());
        assertThat(window.said()).contains("Signed Wed 8 Jul 2026 by Crew chief, second pair of eyes Team engineer");
    }

    @Test
    void a_parts_list_is_copied_as_a_proposal_and_escape_goes_back_to_the_lists_and_to_the_engine() {
        new Ui(window.page.panel()).button("Copy its parts list").doClick();
        window.tasks.awaitIdle();
        assertThat(window.page.model().taken()).isNotEmpty();
        assertThat(window.page.model().draft().joints()).isEmpty();
        assertThat(fitted()).isEmpty();
        keys.press(KeyEvent.VK_ENTER);
        keys.press(KeyEvent.VK_ESCAPE);
        Focus.await(window.positions());
        keys.press(KeyEvent.VK_ESCAPE);
        assertThat(window.page.panel().isShowing()).isFalse();
        assertThat(window.engines.component().isShowing()).isTrue();
    }

    @Test
    void what_is_typed_is_found_again_when_the_program_is_opened_anew() {
        find("clutch");
        keys.press(KeyEvent.VK_ENTER);
        keys.press(KeyEvent.VK_DOWN);
        keys.press(KeyEvent.VK_ENTER);
        assertThat(window.said()).contains("Draft kept");
        window.close();
        open();
        window.show("K05");
        assertThat(window.page.model().isDirty()).isTrue();
        assertThat(window.page.panel().tables().positions().shown())
                .filteredOn(line -> line.position().equals("Clutch"))
                .extracting(BuildLines.PositionLine::in)
                .containsExactly("CL-S1, went in");
        assertThat(fitted()).isEmpty();
    }
}
