package witnessmark.desktop.strip;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import java.awt.Component;
import java.awt.event.FocusEvent;
import java.awt.event.FocusListener;
import java.awt.event.KeyEvent;
import java.awt.geom.Point2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import javax.swing.JComboBox;
import javax.swing.JRootPane;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import witnessmark.desktop.form.Keys;
import witnessmark.desktop.shell.Theme;
import witnessmark.desktop.testing.AccessibleWalk;
import witnessmark.desktop.testing.Contrast;
import witnessmark.desktop.testing.GoldenText;
import witnessmark.desktop.testing.LayoutRules;
import witnessmark.desktop.testing.Looks;
import witnessmark.desktop.testing.Pictures;
import witnessmark.desktop.testing.Ui;
import witnessmark.desktop.testing.UiTest;
import witnessmark.domain.Facts;
import witnessmark.domain.Finding;
import witnessmark.domain.FindingMark;
import witnessmark.domain.HowMarked;
import witnessmark.domain.PartSpot;
import witnessmark.logbook.Desk;
import witnessmark.logbook.run.MemoryLogbook;
import witnessmark.logbook.run.SampleBook;
import witnessmark.study.result.StripLine;
import witnessmark.wording.Texts;

/** The strip report on the measuring bench: as text, by rules of layout, to screen readers, by keys, and in pictures. */
@UiTest
class StripReportPageTest {
    /** What can be seen of it. */
    enum Side {
        /** The engine that is apart, its big end turned. */
        APART,
        /** The sump off in April, one shell alone. */
        APRIL,
        BARE
    }

    private StripWindow window;

    @AfterEach
    void close() {
        if (window != null) {
            window.close();
        }
    }

    private JRootPane shown(Side side, Theme theme, float zoom, Texts texts) {
        Desk book = side == Side.BARE
                ? new Desk(new MemoryLogbook(Facts.none()), new SampleBook.Day(SampleBook.OPENING), "TE")
                : SampleBook.on(SampleBook.OPENING);
        window = new StripWindow(Looks.look(theme, zoom), texts, book);
        window.root(1366, 768);
        if (side == Side.APRIL) {
            window.choose("K05", 2).at(StripLine.SHELL_BACK_UPPER, 3);
        }
        return window.root(1366, 768);
    }

    private StripWindow april() {
        shown(Side.APRIL, Theme.LIGHT, 1.0f, Texts.in(Locale.UK));
        return window;
    }

    @ParameterizedTest
    @EnumSource(Side.class)
    void the_page_reads_as_agreed_is_whole_and_told_to_screen_readers(Side side) {
        Component page = shown(side, Theme.LIGHT, 1.0f, Texts.in(Locale.UK));
        GoldenText.check("strip_" + side.name().toLowerCase(Locale.ROOT), window.page.panel());
        assertThat(LayoutRules.broken(page)).isEmpty();
        assertThat(AccessibleWalk.faults(page)).isEmpty();
        assertThat(Contrast.tooLow(page)).isEmpty();
        Pictures.write("strip_" + side.name().toLowerCase(Locale.ROOT) + "_light", page);
    }

    @ParameterizedTest
    @EnumSource(Side.class)
    void large_and_dark_nothing_is_cut(Side side) {
        Component page = shown(side, Theme.DARK, 1.5f, Texts.in(Locale.UK));
        assertThat(LayoutRules.broken(page)).isEmpty();
        assertThat(Contrast.tooLow(page)).isEmpty();
        Pictures.write("strip_" + side.name().toLowerCase(Locale.ROOT) + "_dark_large", page);
    }

    @ParameterizedTest
    @EnumSource(Side.class)
    void in_a_longer_language_nothing_overlaps(Side side) {
        assertThat(LayoutRules.broken(shown(side, Theme.LIGHT, 1.0f, Texts.pseudo())))
                .filteredOn(fault -> fault.contains("overlaps"))
                .isEmpty();
    }

    @Test
    void nought_says_that_it_was_looked_at_and_is_as_it_should_be() {
        april().at(StripLine.ROD_BOLT, 2).type('0');
        assertThat(window.findings(StripLine.ROD_BOLT, 2)).singleElement().satisfies(finding -> {
            assertThat(finding.mark()).isEqualTo(FindingMark.NO_MARK);
            assertThat(finding.how()).isEqualTo(HowMarked.NONE);
            assertThat(finding.part()).isNotNull();
            assertThat(finding.at().day()).hasToString("2026-04-17");
        });
        assertThat(window.said()).contains("no mark");
    }

    @Test
    void how_far_alone_says_nothing_as_long_as_no_mark_is_picked() {
        april().at(StripLine.ROD_BOLT, 2).type('3');
        assertThat(window.findings(StripLine.ROD_BOLT, 2)).isEmpty();
        window.root(1366, 768);
        assertThat(GoldenText.of(window.pane)).contains("nobody says what it is");
    }

    @Test
    void a_mark_that_is_picked_is_written_and_then_judged_by_a_figure() {
        april().at(StripLine.ROD_BOLT, 2);
        JComboBox<StripChoice.Mark> marks = window.page.panel().side().mark().combo();
        for (int i = 0; i < marks.getItemCount(); i++) {
            if (marks.getItemAt(i).mark() == FindingMark.STRETCHED) {
                marks.setSelectedIndex(i);
            }
        }
        window.at(StripLine.ROD_BOLT, 3).settle(); // a click elsewhere, before the focus has left
        window.at(StripLine.ROD_BOLT, 2);
        assertThat(window.findings(StripLine.ROD_BOLT, 3)).isEmpty();
        window.type('3');
        assertThat(window.findings(StripLine.ROD_BOLT, 2)).singleElement().satisfies(finding -> {
            assertThat(finding.mark()).isEqualTo(FindingMark.STRETCHED);
            assertThat(finding.how()).isEqualTo(HowMarked.HEAVY);
        });
    }

    @Test
    void the_key_everybody_prints_with_prints_the_strip_in_view() {
        List<String> printed = new ArrayList<>();
        april().page
                .onPrint(
                        () -> printed.add(window.page.buildShown().orElseThrow().text()));
        Ui.press(window.page.panel(), Keys.menu(KeyEvent.VK_P));
        assertThat(printed).containsExactly(window.page.build());
    }

    @Test
    void delete_takes_away_and_words_keep_the_side() {
        april().at(StripLine.BIG_END_UPPER, 3);
        window.page.panel().side().words().field().setText("smeared");
        window.page.panel().side().spot().field().setText("near the parting line");
        window.at(StripLine.BIG_END_UPPER, 4).settle(); // a click elsewhere, before the focus has left
        assertThat(window.findings(StripLine.BIG_END_UPPER, 4)).isEmpty();
        assertThat(window.findings(StripLine.BIG_END_UPPER, 3))
                .extracting(finding -> finding.words())
                .contains("smeared");
        assertThat(window.findings(StripLine.BIG_END_UPPER, 3))
                .extracting(finding -> finding.spot())
                .contains("upper near the parting line");
        window.at(StripLine.BIG_END_UPPER, 3).press(Keys.plain(KeyEvent.VK_DELETE));
        assertThat(window.findings(StripLine.BIG_END_UPPER, 3)).isEmpty();
    }

    @Test
    void a_letter_begins_the_mark() {
        april().at(StripLine.ROD_BOLT, 2).key('s');
        assertThat(window.page.panel().side().mark().chosen().words()).startsWith("s");
    }

    @Test
    void a_line_of_one_position_does_not_change_the_column_one_goes_down_in() {
        shown(Side.APART, Theme.LIGHT, 1.0f, Texts.in(Locale.UK));
        window.at(StripLine.PLUG, 3);
        StripTable table = window.page.panel().table();
        Ui.press(table, Keys.plain(KeyEvent.VK_DOWN));
        assertThat(table.inLine().orElseThrow().line()).isEqualTo(StripLine.CAM);
        window.settle();
        Ui.press(table, Keys.plain(KeyEvent.VK_DOWN));
        assertThat(table.inHand().orElseThrow().number()).isEqualTo(3);
    }

    @Test
    void a_click_on_the_drawing_says_where_and_the_place_can_be_taken_away() {
        PartDrawing drawing = onShell();
        Point2D at = drawing.plane().point(new PartSpot(90, 50));
        Ui.click(drawing, (int) at.getX(), (int) at.getY());
        window.settle();
        assertThat(placed()).isNotNull();
        assertThat(placed().around()).isCloseTo(90, within(1));
        assertThat(placed().out()).isCloseTo(50, within(1));
        assertThat(window.said()).contains("in the middle, middle of its width");
        Ui.press(drawing, Keys.plain(KeyEvent.VK_DELETE));
        window.settle();
        assertThat(placed()).isNull();
    }

    @Test
    void arrows_move_a_cross_and_enter_puts_the_mark_there() {
        PartDrawing drawing = onShell();
        for (FocusListener each : drawing.getFocusListeners()) {
            each.focusGained(new FocusEvent(drawing, FocusEvent.FOCUS_GAINED));
        }
        PartSpot from = drawing.cursor();
        Ui.press(drawing, Keys.plain(KeyEvent.VK_RIGHT));
        Ui.press(drawing, Keys.plain(KeyEvent.VK_DOWN));
        assertThat(drawing.cursor().around()).isEqualTo(from.around() + 18);
        assertThat(drawing.cursor().out()).isEqualTo(from.out() + 10);
        PartSpot to = drawing.cursor();
        Ui.press(drawing, Keys.plain(KeyEvent.VK_ENTER));
        window.settle();
        assertThat(placed()).isEqualTo(to);
    }

    @Test
    void where_nobody_said_what_it_is_the_drawing_asks_for_that_first() {
        april().at(StripLine.SHELL_BACK_LOWER, 2);
        window.root(1366, 768);
        PartDrawing drawing = window.page.panel().side().drawing();
        Ui.click(drawing, drawing.getWidth() / 2, drawing.getHeight() / 2);
        window.settle();
        assertThat(window.findings(StripLine.SHELL_BACK_LOWER, 2)).isEmpty();
        window.root(1366, 768);
        assertThat(GoldenText.of(window.pane)).contains("nobody says what it is");
    }

    @Test
    void a_mark_that_is_picked_and_placed_at_once_is_written_with_its_place() {
        april().at(StripLine.SHELL_BACK_LOWER, 2);
        window.root(1366, 768);
        pick(FindingMark.FRETTED);
        PartDrawing drawing = window.page.panel().side().drawing();
        Ui.click(drawing, drawing.getWidth() / 2, drawing.getHeight() / 2);
        window.settle();
        window.settle();
        assertThat(window.findings(StripLine.SHELL_BACK_LOWER, 2))
                .singleElement()
                .satisfies(finding -> {
                    assertThat(finding.mark()).isEqualTo(FindingMark.FRETTED);
                    assertThat(finding.aroundDegrees()).isBetween(80, 100);
                });
    }

    @Test
    void a_click_while_another_mark_is_picked_does_not_move_the_one_that_was_there() {
        april().at(StripLine.SHELL_BACK_UPPER, 3);
        window.root(1366, 768);
        StripSide side = window.page.panel().side();
        side.addAnother();
        pick(FindingMark.SCORED);
        PartSpot left = side.drawing().plane().place(20, side.drawing().getHeight() / 2.0);
        Ui.click(side.drawing(), 20, side.drawing().getHeight() / 2);
        window.settle();
        assertThat(window.findings(StripLine.SHELL_BACK_UPPER, 3))
                .extracting(Finding::mark, Finding::aroundDegrees)
                .containsExactlyInAnyOrder(tuple(FindingMark.FRETTED, 92), tuple(FindingMark.SCORED, left.around()));
    }

    @Test
    void another_mark_is_in_hand_when_it_was_written_and_the_other_can_be_taken_in_hand_again() {
        april().at(StripLine.SHELL_BACK_UPPER, 3);
        window.root(1366, 768);
        StripSide side = window.page.panel().side();
        assertThat(side.which().isVisible()).isFalse();
        side.addAnother();
        pick(FindingMark.SCORED);
        Ui.click(side.drawing(), 20, side.drawing().getHeight() / 2);
        window.settle();
        assertThat(side.which().isVisible()).isTrue();
        assertThat(side.mark().chosen().mark()).isEqualTo(FindingMark.SCORED);
        window.type('1');
        assertThat(window.findings(StripLine.SHELL_BACK_UPPER, 3))
                .filteredOn(finding -> finding.mark() == FindingMark.SCORED)
                .singleElement()
                .satisfies(finding -> assertThat(finding.how()).isEqualTo(HowMarked.LIGHT));

        side.which().combo().setSelectedIndex(side.which().combo().getSelectedIndex() == 0 ? 1 : 0);
        assertThat(side.mark().chosen().mark()).isEqualTo(FindingMark.FRETTED);
        window.press(Keys.plain(KeyEvent.VK_DELETE));
        assertThat(window.findings(StripLine.SHELL_BACK_UPPER, 3))
                .singleElement()
                .satisfies(finding -> assertThat(finding.mark()).isEqualTo(FindingMark.SCORED));
        assertThat(side.which().isVisible()).isFalse();
    }

    /** Keys are faster than the logbook is read again. */
    @ParameterizedTest
    @ValueSource(strings = {"3", "Delete", "click"})
    void what_is_done_at_once_after_another_mark_is_done_to_it_and_not_to_the_one_before(String done) {
        april().at(StripLine.SHELL_BACK_UPPER, 3);
        window.root(1366, 768);
        Finding before = window.findings(StripLine.SHELL_BACK_UPPER, 3).get(0);
        StripSide side = window.page.panel().side();
        side.addAnother();
        pick(FindingMark.SCORED);
        Ui.press(side.mark().combo(), Keys.plain(KeyEvent.VK_ENTER));
        loseFocus(side.mark().combo());
        StripTable table = window.page.panel().table();
        for (FocusListener each : table.getFocusListeners()) {
            each.focusGained(new FocusEvent(table, FocusEvent.FOCUS_GAINED)); // shows the position anew
        }
        PartSpot left = side.drawing().plane().place(20, side.drawing().getHeight() / 2.0);
        switch (done) {
            case "3" -> window.key('3');
            case "Delete" -> Ui.press(table, Keys.plain(KeyEvent.VK_DELETE));
            default -> Ui.click(side.drawing(), 20, side.drawing().getHeight() / 2);
        }
        window.settle();
        List<Finding> now = window.findings(StripLine.SHELL_BACK_UPPER, 3);
        assertThat(now).contains(before);
        assertThat(now)
                .filteredOn(finding -> finding.mark() == FindingMark.SCORED)
                .hasSize(done.equals("Delete") ? 0 : 1)
                .allSatisfy(finding -> {
                    assertThat(finding.how()).isEqualTo(done.equals("3") ? HowMarked.HEAVY : null);
                    assertThat(finding.onPart()).isEqualTo(done.equals("click") ? left : null);
                });
    }

    @Test
    void a_judgement_given_a_moment_before_another_mark_is_picked_stays() {
        april().at(StripLine.SHELL_BACK_UPPER, 3);
        window.root(1366, 768);
        window.key('4');
        pick(FindingMark.SCORED);
        loseFocus(window.page.panel().side().mark().combo());
        window.settle();
        assertThat(window.findings(StripLine.SHELL_BACK_UPPER, 3))
                .singleElement()
                .satisfies(finding -> {
                    assertThat(finding.mark()).isEqualTo(FindingMark.SCORED);
                    assertThat(finding.how()).isEqualTo(HowMarked.FAILED);
                });
    }

    private static void loseFocus(Component from) {
        for (FocusListener each : from.getFocusListeners()) {
            each.focusLost(new FocusEvent(from, FocusEvent.FOCUS_LOST));
        }
    }

    @ParameterizedTest
    @ValueSource(booleans = {true, false})
    void a_click_that_takes_the_focus_from_the_mark_says_where_the_mark_just_picked_is(boolean another) {
        int position = another ? 3 : 2;
        StripLine line = another ? StripLine.SHELL_BACK_UPPER : StripLine.SHELL_BACK_LOWER;
        april().at(line, position);
        window.root(1366, 768);
        StripSide side = window.page.panel().side();
        if (another) {
            side.addAnother();
        }
        pick(FindingMark.SCORED);
        loseFocus(side.mark().combo());
        PartSpot left = side.drawing().plane().place(20, side.drawing().getHeight() / 2.0);
        Ui.click(side.drawing(), 20, side.drawing().getHeight() / 2);
        window.settle();
        assertThat(window.findings(line, position))
                .filteredOn(finding -> finding.mark() == FindingMark.SCORED)
                .singleElement()
                .satisfies(finding -> assertThat(finding.onPart()).isEqualTo(left));
        assertThat(window.findings(line, position)).hasSize(another ? 2 : 1);
    }

    private void pick(FindingMark mark) {
        JComboBox<StripChoice.Mark> marks = window.page.panel().side().mark().combo();
        for (int i = 0; i < marks.getItemCount(); i++) {
            if (marks.getItemAt(i).mark() == mark) {
                marks.setSelectedIndex(i);
            }
        }
    }

    @Test
    void what_is_not_drawn_has_no_drawing() {
        april().at(StripLine.ROD_BOLT, 2);
        assertThat(window.page.panel().side().drawing().isVisible()).isFalse();
    }

    /** A back of a shell with a mark that has no place yet. */
    private PartDrawing onShell() {
        april().at(StripLine.SHELL_BACK_UPPER, 2);
        window.root(1366, 768);
        assertThat(placed()).isNull();
        return window.page.panel().side().drawing();
    }

    private PartSpot placed() {
        Finding finding = window.findings(StripLine.SHELL_BACK_UPPER, 2).get(0);
        return finding.aroundDegrees() == null ? null : new PartSpot(finding.aroundDegrees(), finding.outPercent());
    }
}
