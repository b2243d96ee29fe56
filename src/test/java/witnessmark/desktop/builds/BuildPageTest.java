package witnessmark.desktop.builds;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.image.BufferedImage;
import java.util.Locale;
import javax.swing.JCheckBox;
import javax.swing.JRootPane;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import witnessmark.desktop.form.Palette;
import witnessmark.desktop.shell.Theme;
import witnessmark.desktop.testing.AccessibleWalk;
import witnessmark.desktop.testing.Contrast;
import witnessmark.desktop.testing.GoldenText;
import witnessmark.desktop.testing.LayoutRules;
import witnessmark.desktop.testing.Looks;
import witnessmark.desktop.testing.Pictures;
import witnessmark.desktop.testing.Ui;
import witnessmark.desktop.testing.UiTest;
import witnessmark.logbook.building.BuildField;
import witnessmark.logbook.building.BuildField.Name;
import witnessmark.wording.Texts;

/** The page of a build: as text, by rules of layout, to screen readers, and in pictures for people. */
@UiTest
class BuildPageTest {
    /** What can be seen of it. */
    enum Side {
        /** An engine in pieces. */
        OPEN,
        /** The same with a group of fasteners being written. */
        TIGHTENING,
        /** A part that comes out and goes into quarantine, on an engine that is opened with it. */
        STRIPPING,
        /** An engine of which no zone is ticked yet. */
        FRESH,
        CLOSED
    }

    private BuildWindow window;

    @AfterEach
    void close() {
        if (window != null) {
            window.close();
        }
    }

    private JRootPane shown(Side side, Theme theme, float zoom, Texts texts) {
        window = new BuildWindow(Looks.look(theme, zoom), texts, BuildWindow.sample());
        switch (side) {
            case OPEN -> window.show("K05");
            case TIGHTENING -> {
                window.show("K05");
                new Ui(window.root(1366, 768)).button(label("builds.tighten")).doClick();
                type(BuildField.ofJoint(1, Name.FASTENERS), "head studs");
                type(BuildField.ofJoint(1, Name.VALUE), "95 N·m");
            }
            case STRIPPING -> {
                window.anew("K06");
                type(BuildField.of(Name.ZONES), "head,covers");
                if (texts.get("builds.empty").equals("empty")) {
                    window.hold("Valve springs");
                    String row = window.page.model().inHand().orElseThrow();
                    type(new BuildField(row, Name.OUT), "quarantine");
                    type(new BuildField(row, Name.WHY), "one weak");
                }
            }
            case FRESH -> window.anew("K06");
            case CLOSED -> window.show("K03");
        }
        window.tasks.awaitIdle();
        return window.root(1366, 768);
    }

    private String label(String key) {
        return witnessmark.desktop.form.Caption.of(window.texts.get(key)).text();
    }

    private void type(BuildField field, String text) {
        window.page.model().type(field, text);
        window.tasks.awaitIdle();
    }

    @ParameterizedTest
    @EnumSource(Side.class)
    void the_page_reads_as_agreed_is_whole_and_told_to_screen_readers(Side side) {
        Component page = shown(side, Theme.LIGHT, 1.0f, BuildWindow.english());
        GoldenText.check("build_" + side.name().toLowerCase(Locale.ROOT), window.page.panel());
        assertThat(LayoutRules.broken(page)).isEmpty();
        assertThat(AccessibleWalk.faults(page)).isEmpty();
        assertThat(Contrast.tooLow(page)).isEmpty();
    }

    @ParameterizedTest
    @EnumSource(Side.class)
    void large_and_dark_nothing_is_cut_and_every_word_can_be_told_from_what_it_stands_on(Side side) {
        Component page = shown(side, Theme.DARK, 1.5f, BuildWindow.english());
        assertThat(LayoutRules.broken(page)).as("1366 x 768").isEmpty();
        assertThat(Contrast.tooLow(page)).isEmpty();
        window.page.panel().turn();
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

    @Test
    void the_zones_ticked_bring_their_positions_up_before_anything_is_saved() {
        shown(Side.FRESH, Theme.LIGHT, 1.0f, BuildWindow.english());
        assertThat(window.said()).contains("Tick what is opened");
        JCheckBox head = (JCheckBox) new Ui(window.page.panel()).button("Head");
        head.doClick();
        window.tasks.awaitIdle();
        assertThat(window.page.panel().tables().positions().shown())
                .extracting(BuildLines.PositionLine::position)
                .contains("Head gasket", "Valve springs")
                .doesNotContain("Crank", "Clutch");
        assertThat(window.said()).contains("Not saved yet.");
    }

    @Test
    void positions_within_reach_stay_in_sight_while_a_field_cannot_be_read() {
        shown(Side.FRESH, Theme.LIGHT, 1.0f, BuildWindow.english());
        ((JCheckBox) new Ui(window.page.panel()).button("Head")).doClick();
        window.tasks.awaitIdle();
        type(BuildField.of(Name.OPENED_TIME), "springs look weak");
        assertThat(window.page.panel().tables().positions().shown())
                .extracting(BuildLines.PositionLine::position)
                .contains("Head gasket");
        ((JCheckBox) new Ui(window.page.panel()).button("Head")).doClick();
        window.tasks.awaitIdle();
        assertThat(window.page.panel().tables().positions().shown()).isEmpty();
    }

    @Test
    void an_engine_opened_here_is_there_once_saved_and_gone_again_when_that_is_taken_back() {
        shown(Side.FRESH, Theme.LIGHT, 1.0f, BuildWindow.english());
        ((JCheckBox) new Ui(window.page.panel()).button("Head")).doClick();
        window.tasks.awaitIdle();
        new Ui(window.page.panel()).button("Save").doClick();
        window.tasks.awaitIdle();
        window.root(1366, 768); // who signed it stands in a line of its own once there is a build
        assertThat(window.said()).contains("K06, build 3", "Head. Open since Wed 8 Jul 2026.", "Not signed");
        assertThat(window.page.model().isDirty()).isFalse();
        assertThat(window.build("K06").fact().number()).isEqualTo(3);
        window.book.undo().orThrow();
        window.window.changed();
        window.tasks.awaitIdle();
        assertThat(window.said()).contains("K06, build 2", "closed");
    }

    @Test
    void on_an_earlier_day_a_build_is_only_looked_at() {
        shown(Side.OPEN, Theme.LIGHT, 1.0f, BuildWindow.english());
        window.book.lookAsOf(java.time.LocalDate.of(2026, 6, 20));
        window.window.changed();
        window.tasks.awaitIdle();
        assertThat(window.page.model().isOpen()).isFalse();
        assertThat(window.said()).contains("K05, build 3").doesNotContain("What goes in");
    }

    @Test
    void the_build_sheet_is_a_button_away_and_a_closed_build_is_signed_and_opened_anew_from_here() {
        shown(Side.CLOSED, Theme.LIGHT, 1.0f, BuildWindow.english());
        Ui ui = new Ui(window.page.panel());
        ui.button("Build sheet").doClick();
        ui.button("Sign the sheet…").doClick();
        String build = window.build("K03").id().text();
        assertThat(window.asked).containsExactly("sheet " + build, "sign " + build);
        ui.button("Open it anew").doClick();
        window.tasks.awaitIdle();
        assertThat(window.said()).contains("K03, to be opened");
    }

    @ParameterizedTest(name = "{0} {1} at {2}")
    @CsvSource({
        "OPEN, LIGHT, 1.0",
        "OPEN, DARK, 1.0",
        "TIGHTENING, LIGHT, 1.0",
        "TIGHTENING, DARK, 1.5",
        "STRIPPING, LIGHT, 1.0",
        "STRIPPING, DARK, 1.5",
        "FRESH, LIGHT, 1.0",
        "CLOSED, LIGHT, 1.5",
    })
    void it_is_painted_on_its_bench_in_many_colours(Side side, Theme theme, float zoom) {
        JRootPane root = shown(side, theme, zoom, BuildWindow.english());
        String name = "build-" + side + "-" + theme + "-" + Math.round(zoom * 100);
        BufferedImage image = Pictures.write(name.toLowerCase(Locale.ROOT), root);
        assertThat(Pictures.colours(image, 51)).isGreaterThan(10);
        assertThat(image.getRGB(1364, 40)).isEqualTo(Palette.BENCH.colour().getRGB());
    }
}
