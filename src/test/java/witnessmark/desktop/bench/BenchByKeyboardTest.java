package witnessmark.desktop.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Container;
import java.awt.Rectangle;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.util.ArrayList;
import java.util.List;
import javax.swing.JComponent;
import javax.swing.JFrame;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import witnessmark.desktop.form.SeamState;
import witnessmark.desktop.shell.Theme;
import witnessmark.desktop.testing.Focus;
import witnessmark.desktop.testing.GoldenText;
import witnessmark.desktop.testing.Keyboard;
import witnessmark.desktop.testing.Looks;
import witnessmark.desktop.testing.TabWalk;
import witnessmark.desktop.testing.Ui;
import witnessmark.desktop.testing.UiTest;
import witnessmark.domain.Build;
import witnessmark.domain.Entry;
import witnessmark.domain.HowStood;
import witnessmark.domain.Id;
import witnessmark.domain.Lesson;
import witnessmark.domain.LessonAnswer;
import witnessmark.domain.MeasureKind;
import witnessmark.domain.MeasurePlace;
import witnessmark.domain.Measurement;
import witnessmark.domain.Standing;
import witnessmark.logbook.Desk;
import witnessmark.logbook.run.SampleBook;
import witnessmark.logbook.sheets.Prefilled;
import witnessmark.quantity.Moment;

/** The measuring bench in a real window with nothing but keys. */
@UiTest(display = true)
class BenchByKeyboardTest {
    private static final int MENU = InputEvent.CTRL_DOWN_MASK;

    private final JFrame frame = new JFrame();
    private final Desk book = BenchWindow.sample();
    private BenchWindow window;
    private Keyboard keys;

    @BeforeEach
    void show() {
        open();
    }

    private void open() {
        window = new BenchWindow(Looks.light(), BenchWindow.english(), book);
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

    private FigureField goTo(MeasureKind kind, int number, int spot) {
        FigureField field = window.field(kind, number, spot);
        field.requestFocusInWindow();
        Focus.await(field);
        return field;
    }

    private List<Measurement> written(MeasureKind kind) {
        return book.view()
                .facts()
                .of(Measurement.class)
                .inForce()
                .map(Entry::fact)
                .filter(figure -> figure.build().equals(window.build("K05", 3).id()) && figure.kind() == kind)
                .toList();
    }

    private static MeasurePlace here() {
        return ((FigureField) Keyboard.owner()).cell().place();
    }

    /** Eight figures, eight times Enter, saved with Ctrl+Enter: a number pad is enough for all but the last. */
    @Test
    void the_whole_deck_is_typed_in_measuring_order_and_written_in_one_change() {
        goTo(MeasureKind.DECK_CLEARANCE, 1, 0);
        List<MeasurePlace> went = new ArrayList<>();
        for (String figure : List.of("0.20", "0.15", "0.21", "0.16", "0.19", "0.15", "0.20", "0.16 down")) {
            went.add(here());
            keys.type(figure);
            keys.press(KeyEvent.VK_ENTER);
        }
        List<MeasurePlace> order = window.place.model().page().order().stream()
                .filter(place -> place.kind() == MeasureKind.DECK_CLEARANCE)
                .toList();
        assertThat(went).containsExactlyElementsOf(order);
        assertThat(written(MeasureKind.DECK_CLEARANCE)).isEmpty();
        keys.press(KeyEvent.VK_ENTER, MENU);
        assertThat(written(MeasureKind.DECK_CLEARANCE))
                .extracting(Measurement::value)
                .containsExactlyInAnyOrder(
                        200_000L, 150_000L, 210_000L, 160_000L, 190_000L, 150_000L, 200_000L, 160_000L);
        assertThat(window.place.model().isDirty()).isFalse();
        assertThat(book.logbook().drafts().begun()).isEmpty();
        book.undo().orThrow();
        assertThat(written(MeasureKind.DECK_CLEARANCE)).isEmpty();
    }

    @Test
    void enter_and_shift_enter_go_over_every_field_of_the_sheet_in_measuring_order_and_back() {
        List<MeasurePlace> order = window.place.model().page().order();
        FigureField first = window.place.panel().grids().field(order.get(0)).orElseThrow();
        first.requestFocusInWindow();
        Focus.await(first);
        List<MeasurePlace> went = new ArrayList<>(List.of(here()));
        for (int i = 1; i < order.size(); i++) {
            keys.press(i % 2 == 0 ? KeyEvent.VK_ENTER : KeyEvent.VK_TAB);
            went.add(here());
        }
        assertThat(went).containsExactlyElementsOf(order);
        keys.press(KeyEvent.VK_ENTER, InputEvent.SHIFT_DOWN_MASK);
        assertThat(here()).isEqualTo(order.get(order.size() - 2));
    }

    @Test
    void what_was_understood_is_echoed_and_never_put_in_place_of_what_is_typed() {
        FigureField field = goTo(MeasureKind.MAIN_CLEARANCE, 1, 0);
        keys.type("2 thou");
        assertThat(field.getText()).isEqualTo("2 thou");
        assertThat(window.said()).contains("= 0.0508 mm (2.0 thou)");
        assertThat(field.state()).isEqualTo(SeamState.WITHIN);
        keys.press(KeyEvent.VK_ENTER);
        assertThat(field.getText()).isEqualTo("2 thou");
    }

    /** A bare minus, 3 mm where 0.05 is usual, and a text that is no figure. */
    @Test
    void what_is_doubtful_asks_and_what_cannot_be_read_stops_with_an_example() {
        goTo(MeasureKind.DECK_CLEARANCE, 1, 0);
        keys.type("-0.05");
        assertThat(window.said()).contains("0.05 mm (2.0 thou) proud of the deck, as the minus says");
        goTo(MeasureKind.MAIN_CLEARANCE, 1, 0);
        keys.type("3");
        assertThat(window.said()).contains("What is known of such a place lies between 0.050 mm and 0.062 mm.");
        goTo(MeasureKind.MAIN_CLEARANCE, 3, 0);
        keys.type("0.056");
        assertThat(window.said()).contains("= 0.056 mm (2.2 thou); inside");
        FigureField wrong = goTo(MeasureKind.MAIN_CLEARANCE, 2, 0);
        keys.type("abc");
        keys.press(KeyEvent.VK_ENTER);
        assertThat(wrong.getText()).isEqualTo("abc");
        keys.press(KeyEvent.VK_ENTER, MENU);
        Focus.await(wrong);
        assertThat(window.said()).contains("Can't read 'abc'. Try 0.05 mm.", "2 fields need a look");
        assertThat(written(MeasureKind.MAIN_CLEARANCE)).isEmpty();
        keys.type("0.055");
        keys.press(KeyEvent.VK_ENTER, MENU);
        assertThat(written(MeasureKind.MAIN_CLEARANCE)).hasSize(3);
    }

    @Test
    void what_is_typed_is_found_again_with_how_it_was_taken_when_the_program_is_opened_anew() {
        goTo(MeasureKind.DECK_CLEARANCE, 1, 0);
        window.place.inHand().stood().combo().setSelectedItem(HowStood.PUSHED_DOWN);
        keys.type("0.2x");
        keys.press(KeyEvent.VK_ENTER);
        keys.type("0.15");
        window.tasks.awaitIdle();
        assertThat(window.said()).contains("Draft kept");
        window.close();
        open();
        window.tasks.awaitIdle();
        assertThat(window.field(MeasureKind.DECK_CLEARANCE, 1, 0).getText()).isEqualTo("0.2x");
        FigureField typed = window.field(MeasureKind.DECK_CLEARANCE, 1, 1);
        assertThat(window.place.firstFocus()).isSameAs(typed);
        assertThat(typed.getText()).isEqualTo("0.15");
        assertThat(window.place.inHand().stood().chosen()).isEqualTo(HowStood.PUSHED_DOWN);
        goTo(MeasureKind.DECK_CLEARANCE, 1, 0);
        keys.type("0.2");
        keys.press(KeyEvent.VK_ENTER, MENU);
        assertThat(written(MeasureKind.DECK_CLEARANCE))
                .hasSize(2)
                .allSatisfy(figure -> assertThat(figure.stood()).isEqualTo(HowStood.PUSHED_DOWN));
    }

    @Test
    void a_figure_measured_again_counts_and_the_one_before_can_be_made_to_count_again() {
        goTo(MeasureKind.MAIN_CLEARANCE, 1, 0);
        keys.type("0.055");
        keys.press(KeyEvent.VK_ENTER, MENU);
        keys.press(KeyEvent.VK_ENTER).press(KeyEvent.VK_ENTER, InputEvent.SHIFT_DOWN_MASK);
        keys.type("0.057");
        assertThat(window.said()).contains("before it was 0.055");
        keys.press(KeyEvent.VK_ENTER, MENU);
        assertThat(inUse()).containsExactly("0.057");
        window.place
                .bench()
                .count(window.place.model().page().figures().stream()
                        .filter(entry -> !entry.fact().inUse())
                        .findFirst()
                        .orElseThrow());
        window.tasks.awaitIdle();
        assertThat(inUse()).containsExactly("0.055");
        assertThat(window.field(MeasureKind.MAIN_CLEARANCE, 1, 0).getText()).isEqualTo("0.055");
    }

    private List<String> inUse() {
        return written(MeasureKind.MAIN_CLEARANCE).stream()
                .filter(Measurement::inUse)
                .map(Measurement::typed)
                .toList();
    }

    /** Said in words before it is written; undo, and typing it again, bring it back. */
    @Test
    void a_field_that_was_emptied_takes_its_figure_back_once_that_is_written() {
        window.choose("K05", 1);
        FigureField field = goTo(MeasureKind.DECK_CLEARANCE, 1, 0);
        MeasurePlace place = field.cell().place();
        String before = field.getText();
        int measured = window.place.model().page().measured();
        keys.press(KeyEvent.VK_DELETE);
        assertThat(window.said()).contains("Writing takes " + before + " back: it is struck out here");
        keys.press(KeyEvent.VK_ENTER);
        assertThat(field.getText()).isEmpty();
        assertThat(window.said()).contains((measured - 1) + " of ");
        assertThat(window.place.model().page().figure(place))
                .as("not written yet")
                .isPresent();
        keys.press(KeyEvent.VK_ENTER, MENU);
        assertThat(GoldenText.of(window.pane)).contains("1 figure taken back on the sheet of K05, build 1.");
        assertThat(window.place.model().page().figure(place)).isEmpty();
        book.undo().orThrow();
        window.window.changed();
        window.tasks.awaitIdle();
        assertThat(field.getText()).isEqualTo(before);
    }

    /** K05, build 3, counted by what is written once it is. */
    @Test
    void head_and_answers_follow_what_is_typed_once_it_is_understood_and_say_so() {
        assertThat(laidOut())
                .contains("1 lesson open, 64 figures not measured", "0 of 1")
                .doesNotContain("With what is typed");
        goTo(MeasureKind.MAIN_CLEARANCE, 1, 0);
        keys.type("0.055");
        keys.press(KeyEvent.VK_ENTER);
        assertThat(laidOut())
                .contains(
                        "With what is typed: 1 lesson open, 63 figures not measured",
                        "How it stands with what is typed, not yet written");
        keys.type("0.155");
        keys.press(KeyEvent.VK_ENTER);
        assertThat(laidOut()).contains("With what is typed: 1 lesson open, 1 figure outside, 62 figures not measured");
        keys.press(KeyEvent.VK_ENTER, MENU);
        assertThat(laidOut())
                .contains("1 lesson open, 1 figure outside, 62 figures not measured", "2 of 1")
                .doesNotContain("With what is typed", "not yet written");
    }

    /** What the hose of May taught is asked of K05 too: it is answered from here, and is open no more once it is. */
    @Test
    void a_lesson_that_is_open_stands_on_the_bench_and_is_answered_from_there() {
        assertThat(laidOut()).contains("Lessons asked here", "Clamps tightened again after the first heat cycle");
        JComponent way = new Ui(window.place.panel())
                .button("Answer it…: Clamps tightened again after the first heat cycle, by whom?");
        assertThat(TabWalk.namesFrom(window.place.panel().firstFocus()))
                .containsSubsequence(
                        "INC-04", "Answer it…: Clamps tightened again after the first heat cycle, by whom?");
        way.requestFocusInWindow();
        Focus.await(way);
        keys.press(KeyEvent.VK_SPACE);
        Entry<Lesson> lesson = book.view().facts().of(Lesson.class).all().get(0);
        Id<Build> build = window.place.model().page().build().id();
        assertThat(window.asked).containsExactly(Prefilled.answering(build, lesson.id()));

        LessonAnswer answer = new LessonAnswer(
                lesson.id(),
                build,
                Moment.endOf(book.today().day(), book.view().zone()),
                true,
                null,
                "hot",
                "Mechanic 1");
        book.write("answered", List.of(new Entry<>(SampleBook.ids().next(), answer, Standing.IN_FORCE, null, 1)))
                .orThrow();
        window.window.changed();
        window.tasks.awaitIdle();
        assertThat(laidOut()).contains("64 figures not measured").doesNotContain("Lessons asked here", "1 lesson open");
        book.undo().orThrow();
        window.window.changed();
        window.tasks.awaitIdle();
    }

    /** What is said once all of it has its place. */
    private String laidOut() {
        frame.validate();
        return window.said();
    }

    /** Refused and doubtful fields stay marked and are listed with their reason, one press away. */
    @Test
    void fields_left_unread_or_unlike_the_others_keep_a_mark_and_are_listed_with_their_reason() {
        FigureField wrong = goTo(MeasureKind.MAIN_CLEARANCE, 1, 0);
        keys.type("abc");
        keys.press(KeyEvent.VK_ENTER);
        keys.type("3");
        keys.press(KeyEvent.VK_ENTER);
        assertThat(wrong.state()).isEqualTo(SeamState.NOT_KNOWN);
        assertThat(wrong.getClientProperty("JComponent.outline")).isEqualTo("error");
        assertThat(window.said())
                .contains(
                        "2 fields need a look:",
                        "Main bearing clearance, main bearing 1 (can't read 'abc')",
                        "Main bearing clearance, main bearing 2 (3, unlike what is known)");
        new Ui(window.place.panel())
                .button("Main bearing clearance, main bearing 1 (can't read 'abc')")
                .doClick();
        Focus.await(wrong);
        assertThat(window.said()).contains("Can't read 'abc'. Try 0.05 mm.");
    }

    /** Whatever has to be said of it, no other field moves: the sheet is as high as before. */
    @Test
    void nothing_moves_when_a_field_is_refused() {
        goTo(MeasureKind.MAIN_CLEARANCE, 1, 0);
        frame.validate();
        Container sheet = window.place.panel().grids().component().getParent();
        int before = sheet.getParent().getParent().getHeight();
        keys.type("abc");
        keys.press(KeyEvent.VK_ENTER);
        keys.type("3");
        keys.press(KeyEvent.VK_ENTER);
        frame.validate();
        assertThat(sheet.getParent().getParent().getHeight()).isEqualTo(before);
    }

    @Test
    void a_key_goes_to_the_build_that_is_on_the_bench() {
        goTo(MeasureKind.MAIN_CLEARANCE, 1, 0);
        keys.press(KeyEvent.VK_B, InputEvent.ALT_DOWN_MASK);
        Focus.await(window.place.panel().head().choice().combo());
        assertThat(window.place.panel().head().choice().combo().getToolTipText())
                .contains("Alt+B");
    }

    /** A low window at half as large again: the field in hand and what was understood are seen at every field. */
    @Test
    void in_a_low_window_the_field_in_hand_stays_in_sight_all_along_the_sheet() {
        window.close();
        frame.dispose();
        window = new BenchWindow(Looks.look(Theme.LIGHT, 1.5f), BenchWindow.english(), book);
        keys = new Keyboard(window.tasks::awaitIdle);
        frame.setContentPane(window.pane);
        frame.setJMenuBar(window.pane.menuBar());
        frame.setSize(1366, 700);
        frame.setVisible(true);
        frame.validate();
        List<MeasurePlace> order = window.place.model().page().order();
        FigureField first = window.place.panel().grids().field(order.get(0)).orElseThrow();
        first.requestFocusInWindow();
        Focus.await(first);
        JComponent words = window.place.inHand().component();
        for (int i = 1; i < order.size(); i++) {
            keys.press(KeyEvent.VK_ENTER);
            frame.validate();
            JComponent field = (JComponent) Keyboard.owner();
            Rectangle seen = field.getVisibleRect();
            assertThat(seen.height).as(here().toString()).isGreaterThan(field.getHeight() - 3);
            assertThat(words.getVisibleRect().height).isEqualTo(words.getHeight());
            assertThat(words.getLocationOnScreen().y + words.getHeight())
                    .isLessThanOrEqualTo(field.getLocationOnScreen().y);
        }
        assertThat(GoldenText.of(words)).contains("not measured yet");
    }

    @Test
    void the_field_in_hand_is_shown_very_large_and_as_usual_again() {
        goTo(MeasureKind.DECK_CLEARANCE, 1, 0);
        keys.type("0.2");
        assertThat(window.said()).doesNotContain("0.20 mm down");
        window.place.commands().get(1).perform();
        frame.validate();
        assertThat(window.said()).contains("0.20 mm down", "Deck clearance, cylinder 1, thrust side");
        keys.press(KeyEvent.VK_ESCAPE);
        frame.validate();
        assertThat(window.said()).doesNotContain("0.20 mm down");
    }

    @Test
    void the_sheet_is_printed_once_what_is_typed_is_written() {
        FigureField field = goTo(MeasureKind.DECK_CLEARANCE, 1, 0);
        keys.press(KeyEvent.VK_P, MENU);
        assertThat(window.printed).isEqualTo(1);
        assertThat(window.place.buildShown()).contains(window.build("K05", 3).id());
        Focus.await(field);
        keys.type("0.2");
        keys.press(KeyEvent.VK_P, MENU);
        assertThat(window.printed).isEqualTo(1);
        assertThat(GoldenText.of(window.pane)).contains("would not be on the paper");
    }

    @Test
    void an_earlier_day_is_only_looked_at() {
        book.lookAsOf(java.time.LocalDate.of(2026, 7, 1));
        window.window.changed();
        window.tasks.awaitIdle();
        FigureField field = window.field(MeasureKind.DECK_CLEARANCE, 1, 0);
        assertThat(field.isEditable()).isFalse();
        assertThat(window.said()).doesNotContain("Write figures");
        book.lookAsOf(null);
        window.window.changed();
        window.tasks.awaitIdle();
        assertThat(field.isEditable()).isTrue();
    }

    @Test
    void a_doubt_is_told_by_its_outline_too() {
        FigureField field = goTo(MeasureKind.MAIN_CLEARANCE, 1, 0);
        keys.type("3");
        assertThat(field.getClientProperty("JComponent.outline")).isEqualTo("warning");
        assertThat(field.getAccessibleContext().getAccessibleDescription()).contains("Is it meant so?");
    }
}
