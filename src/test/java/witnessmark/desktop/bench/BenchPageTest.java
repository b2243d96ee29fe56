package witnessmark.desktop.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.Container;
import java.awt.Rectangle;
import java.awt.image.BufferedImage;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.stream.Stream;
import javax.swing.JComponent;
import javax.swing.JRootPane;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import witnessmark.desktop.form.Palette;
import witnessmark.desktop.form.SeamState;
import witnessmark.desktop.shell.Theme;
import witnessmark.desktop.testing.AccessibleWalk;
import witnessmark.desktop.testing.Contrast;
import witnessmark.desktop.testing.GoldenText;
import witnessmark.desktop.testing.LayoutRules;
import witnessmark.desktop.testing.Looks;
import witnessmark.desktop.testing.Pictures;
import witnessmark.desktop.testing.Ui;
import witnessmark.desktop.testing.UiTest;
import witnessmark.domain.Entry;
import witnessmark.domain.Fact;
import witnessmark.domain.LimitRank;
import witnessmark.domain.MeasureKind;
import witnessmark.domain.SizeLimit;
import witnessmark.domain.Standing;
import witnessmark.logbook.View;
import witnessmark.logbook.measuring.Finding;
import witnessmark.logbook.measuring.SeeBuildSheet;
import witnessmark.logbook.measuring.SheetPage;
import witnessmark.logbook.measuring.SignBuildSheet;
import witnessmark.logbook.sheets.Prefilled;
import witnessmark.quantity.Moment;
import witnessmark.store.TimeOrderedIds;
import witnessmark.wording.Texts;

/** The measuring bench: as text, by rules of layout, to screen readers, and in pictures for people. */
@UiTest
class BenchPageTest {
    /** What can be seen of it. */
    enum Side {
        /** An engine in pieces of which nothing is measured. */
        OPEN,
        /** A sheet on which two sides are outside and accepted. */
        ACCEPTED,
        /** The same with what its crown to head rests on. */
        CROWN,
        /** The same with how the pull of its joints comes about. */
        JOINTS,
        /** The fit at speed in place of the sheet. */
        SPEED,
        BARE
    }

    private BenchWindow window;

    @AfterEach
    void close() {
        if (window != null) {
            window.close();
        }
    }

    private JRootPane shown(Side side, Theme theme, float zoom, Texts texts) {
        window = new BenchWindow(
                Looks.look(theme, zoom), texts, side == Side.BARE ? BenchWindow.bare() : BenchWindow.sample());
        switch (side) {
            case ACCEPTED -> window.choose("K05", 1);
            case CROWN -> {
                window.choose("K05", 1);
                window.place.panel().answers().open(MeasureKind.CROWN_TO_HEAD);
            }
            case JOINTS -> {
                window.choose("K05", 1);
                window.place.panel().joints().toggle(0);
                window.place.panel().joints().toggle(2);
            }
            case SPEED -> {
                window.choose("K05", 1);
                window.place.panel().turnToSpeed();
                window.tasks.awaitIdle();
            }
            default -> {} // as it comes up
        }
        return window.root(1366, 768);
    }

    @ParameterizedTest
    @EnumSource(Side.class)
    void the_page_reads_as_agreed_is_whole_and_told_to_screen_readers(Side side) {
        Component page = shown(side, Theme.LIGHT, 1.0f, BenchWindow.english());
        GoldenText.check("bench_" + side.name().toLowerCase(Locale.ROOT), window.place.panel());
        assertThat(LayoutRules.broken(page)).isEmpty();
        assertThat(AccessibleWalk.faults(page)).isEmpty();
        assertThat(Contrast.tooLow(page)).isEmpty();
    }

    @ParameterizedTest
    @EnumSource(Side.class)
    void large_and_dark_nothing_is_cut_and_every_word_can_be_told_from_what_it_stands_on(Side side) {
        Component page = shown(side, Theme.DARK, 1.5f, BenchWindow.english());
        assertThat(LayoutRules.broken(page)).as("1366 x 768").isEmpty();
        assertThat(Contrast.tooLow(page)).isEmpty();
        window.place.panel().turn();
        assertThat(LayoutRules.broken(window.root(1366, 768))).as("turned").isEmpty();
        assertThat(LayoutRules.broken(window.root(1100, 700))).as("1100 x 700").isEmpty();
    }

    @ParameterizedTest
    @EnumSource(Side.class)
    void in_a_longer_language_nothing_overlaps(Side side) {
        assertThat(LayoutRules.broken(shown(side, Theme.LIGHT, 1.0f, Texts.pseudo())))
                .filteredOn(fault -> fault.contains("overlaps"))
                .isEmpty();
    }

    /** K05, build 1: the builder's note says 0.99 to 1.01 by the nearer side, accepted as it is. */
    @Test
    void what_is_outside_and_accepted_stands_under_a_mark_of_its_own() {
        shown(Side.ACCEPTED, Theme.LIGHT, 1.0f, BenchWindow.english());
        String said = window.said();
        assertThat(said).contains("accepted as they are", "Crown to head, cylinder 1, anti-thrust side: 0.99 mm");
        AnswerLine crown = Objects.requireNonNull(window.place.lines()).answers().stream()
                .filter(line -> line.kind() == MeasureKind.CROWN_TO_HEAD)
                .findFirst()
                .orElseThrow();
        assertThat(crown.group()).isEqualTo(Finding.Group.ACCEPTED);
        assertThat(crown.stand().state()).isEqualTo(SeamState.RUN_ON);
        assertThat(crown.accept()).isNull();
    }

    /** A limit set after the signing judges otherwise; what stood when it was signed is told beside it. */
    @Test
    void what_stood_when_the_sheet_was_signed_is_told_where_it_stands_otherwise_now() {
        shown(Side.OPEN, Theme.LIGHT, 1.0f, BenchWindow.english());
        View view = window.book.view();
        SheetPage page = SeeBuildSheet.of(view, window.build("K03", 1).id()).orElseThrow();
        List<Entry<? extends Fact>> all = new ArrayList<>();
        List<Entry<?>> signing = new SignBuildSheet(new TimeOrderedIds())
                .entries(
                        page,
                        Moment.of(LocalDateTime.of(2026, 1, 28, 18, 0), view.zone()),
                        "Crew chief",
                        "Team engineer",
                        "");
        all.addAll(signing);
        all.add(new Entry<>(
                new TimeOrderedIds().next(),
                new SizeLimit(
                        MeasureKind.CROWN_TO_HEAD,
                        null,
                        page.engine().fact().design(),
                        null,
                        1_100_000L,
                        null,
                        null,
                        null,
                        LimitRank.OWN,
                        "after the marks on the crowns",
                        LocalDate.of(2026, 1, 1),
                        null),
                Standing.IN_FORCE,
                null,
                1));
        window.book.write("signed", all).orThrow();
        window.choose("K03", 1);
        window.place.panel().answers().open(MeasureKind.CROWN_TO_HEAD);
        window.root(1366, 768);
        assertThat(window.said())
                .contains("Crew chief", "Team engineer")
                .containsPattern("1\\.0\\d mm, inside when it was signed; by the limits of now outside");
    }

    /** Tried by hand: 0.20 mm more gasket leaves 0.20 mm more; nothing of it is written, and as it is again it is gone. */
    @Test
    void what_is_tried_at_speed_moves_the_answer_and_is_never_written() {
        shown(Side.SPEED, Theme.LIGHT, 1.0f, BenchWindow.english());
        String before = window.said();
        assertThat(before)
                .contains("at rest 0.99 mm (not under 1.00 mm)", "about 0.62 mm", "No ring hangs over a crown");
        Ui ui = new Ui(window.place.panel());
        ui.field("Gasket, clamped, mm").setText("1.05");
        window.tasks.awaitIdle();
        window.root(1366, 768);
        assertThat(window.said())
                .contains("Tried, and not written", "at rest 1.19 mm", "about 0.82 mm", "Compression ratio, ");
        ui.field("Gasket, clamped, mm").setText("thick");
        window.tasks.awaitIdle();
        assertThat(window.said()).contains("Can't read 'thick'");
        ui.button("As it is").doClick();
        window.tasks.awaitIdle();
        window.root(1366, 768);
        assertThat(window.said()).isEqualTo(before);
        ui.button("The sheet").doClick();
        window.root(1366, 768);
        assertThat(window.said()).contains("How it stands").doesNotContain("What is left at speed");
    }

    /** By hand: 95 / (0.16 × 0.011) is 53 977 N; ten over four cylinders are 2.5 each. */
    @Test
    void a_joint_opens_to_how_its_pull_comes_about_and_says_what_is_missing() {
        shown(Side.JOINTS, Theme.LIGHT, 1.0f, BenchWindow.english());
        assertThat(window.said())
                .contains(
                        "95 N·m by torque on moly paste; pull 54.0 kN (37.8 to 70.2) each",
                        "nut factor, on moly paste",
                        "round a cylinder, 10 over 4 cylinders",
                        "Main caps 1 to 5: 65 N·m by torque on engine oil; what they pull with is not known",
                        "Nobody wrote down what these fasteners are",
                        "Use the fastener maker's value, lubricant and method");
    }

    /** Added by hand: half of both sides of the deck, less nothing, and the gasket as clamped. */
    @Test
    void a_line_opens_to_the_column_that_adds_up_to_it() {
        shown(Side.CROWN, Theme.LIGHT, 1.0f, BenchWindow.english());
        assertThat(window.said()).contains("together", "Accepted as it is", "verify it on the engine");
    }

    @Test
    void the_open_build_comes_first_and_a_build_of_an_engine_can_be_asked_for() {
        shown(Side.OPEN, Theme.LIGHT, 1.0f, BenchWindow.english());
        assertThat(window.said()).contains("K05, build 3, open since");
        window.choose("K03", 1);
        assertThat(window.said()).contains("K03, build 1, closed");
    }

    /** As the window lays out: every container once, from the outside in. A second pass would hide what the first got wrong. */
    @Test
    void another_sheet_has_its_boxes_under_each_other_at_once() {
        shown(Side.OPEN, Theme.LIGHT, 1.0f, BenchWindow.english());
        window.choose("K05", 1);
        Container sheet = window.place.panel().grids().component();
        layOutOnce(window.place.panel());
        List<Component> blocks = Stream.of(sheet.getComponents())
                .filter(Blocks.class::isInstance)
                .toList();
        assertThat(blocks)
                .hasSizeGreaterThan(4)
                .allSatisfy(block -> assertThat(block.getHeight()).isEqualTo(block.getPreferredSize().height));
    }

    private static void layOutOnce(Container container) {
        container.doLayout();
        for (Component child : container.getComponents()) {
            if (child instanceof Container inner) {
                layOutOnce(inner);
            }
        }
    }

    @Test
    void when_it_cannot_be_read_a_sentence_says_so_and_what_was_seen_stays() {
        shown(Side.ACCEPTED, Theme.LIGHT, 1.0f, BenchWindow.english());
        window.place.failed(new IllegalStateException("the file is gone"));
        window.root(1366, 768);
        assertThat(window.said()).contains("Nothing in the logbook has changed.", "Try again", "K05, build 1");
    }

    /** K05 is 0.01 under its least: what cuts a crown by that much is shut, as no maker says how much may come off. */
    @Test
    void what_would_put_it_right_is_told_with_what_stands_against_it() {
        shown(Side.CROWN, Theme.LIGHT, 1.0f, BenchWindow.english());
        new Ui(window.place.panel()).button("What would put it right").doClick();
        window.tasks.awaitIdle();
        window.root(1366, 768);
        assertThat(window.said()).contains("Cut the crowns", "Skim the deck by", ": no, ", "decide what may be cut");
    }

    @Test
    void a_wanted_figure_that_cannot_be_read_says_so_beside_it() {
        shown(Side.CROWN, Theme.LIGHT, 1.0f, BenchWindow.english());
        Ui ui = new Ui(window.place.panel());
        ui.field("Wanted, mm").setText("tight");
        ui.button("What would put it right").doClick();
        window.root(1366, 768);
        assertThat(window.said()).contains("Can't read 'tight'.");
    }

    @Test
    void what_nobody_accepted_opens_the_sheet_that_accepts_it_and_the_foot_opens_the_one_that_signs() {
        shown(Side.OPEN, Theme.LIGHT, 1.0f, BenchWindow.english());
        window.place.panel().answers().open(MeasureKind.BIG_END_OVALITY);
        window.root(1366, 768);
        Ui ui = new Ui(window.place.panel());
        ui.button("Accept as it is…").doClick();
        ui.button("Sign the sheet…").doClick();
        assertThat(window.asked).extracting(Prefilled::sheet).containsExactly("accept", "sign_sheet");
        assertThat(window.asked.get(0).texts()).containsValue("big-end housing ovality, cylinder 1: not measured");
    }

    @ParameterizedTest(name = "{0} {1} at {2}")
    @CsvSource({
        "OPEN, LIGHT, 1.0",
        "ACCEPTED, LIGHT, 1.0",
        "CROWN, LIGHT, 1.0",
        "CROWN, DARK, 1.0",
        "ACCEPTED, DARK, 1.5",
        "BARE, LIGHT, 1.0",
        "JOINTS, LIGHT, 1.0",
        "JOINTS, DARK, 1.0",
        "SPEED, LIGHT, 1.0",
        "SPEED, DARK, 1.5",
    })
    void it_is_painted_on_its_bench_in_many_colours(Side side, Theme theme, float zoom) {
        JRootPane root = shown(side, theme, zoom, BenchWindow.english());
        if (side == Side.JOINTS) {
            JComponent joints = window.place.panel().joints().component();
            joints.scrollRectToVisible(new Rectangle(joints.getSize()));
        }
        String name = "bench-" + side + "-" + theme + "-" + Math.round(zoom * 100);
        BufferedImage image = Pictures.write(name.toLowerCase(Locale.ROOT), root);
        assertThat(Pictures.colours(image, 51)).isGreaterThan(10);
        assertThat(image.getRGB(1364, 40)).isEqualTo(Palette.BENCH.colour().getRGB());
    }
}
