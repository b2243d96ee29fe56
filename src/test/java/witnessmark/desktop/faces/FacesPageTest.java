package witnessmark.desktop.faces;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.Rectangle;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.Locale;
import java.util.Objects;
import javax.swing.JComponent;
import javax.swing.JRootPane;
import javax.swing.JViewport;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import witnessmark.chart.FaceMap;
import witnessmark.chart.FacePlane;
import witnessmark.desktop.form.Caption;
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
import witnessmark.domain.FaceKind;
import witnessmark.domain.FaceLook;
import witnessmark.domain.FaceMark;
import witnessmark.domain.FaceMethod;
import witnessmark.domain.FaceOutline;
import witnessmark.domain.FacePoint;
import witnessmark.logbook.Desk;
import witnessmark.wording.Texts;

/** The faces on the measuring bench: as text, by rules of layout, to screen readers, and in pictures for people. */
@UiTest
class FacesPageTest {
    /** What can be seen of it. */
    enum Side {
        /** Low between 2 and 3 after boiling over. */
        BOILED,
        /** The gasket that lay there, the head laid over it. */
        GASKET,
        /** What goes under a straightedge. */
        STRAIGHTEDGE,
        /** The strip in October, held against May. */
        OCTOBER,
        /** Something is being written down. */
        TYPING,
        BARE
    }

    private FacesWindow window;

    @AfterEach
    void close() {
        if (window != null) {
            window.close();
        }
    }

    private static Desk book(Side side) {
        return switch (side) {
            case BARE -> FacesWindow.bare();
            case OCTOBER -> FacesWindow.end();
            default -> FacesWindow.sample();
        };
    }

    private JRootPane shown(Side side, Theme theme, float zoom, Texts texts) {
        window = new FacesWindow(Looks.look(theme, zoom), texts, book(side));
        window.root(1366, 768);
        switch (side) {
            case BOILED -> window.choose("HD-06").look("HD-06", "2026-05-29", FaceMethod.PLATE_AND_DIAL);
            case GASKET -> {
                window.choose("HG-06a").against("HD-06", "2026-05-29", FaceMethod.PLATE_AND_DIAL);
            }
            case STRAIGHTEDGE -> window.choose("HD-06").look("HD-06", "2026-05-29", FaceMethod.STRAIGHTEDGE);
            case OCTOBER -> {
                window.choose("HD-06").against("HD-06", "2026-05-29", FaceMethod.PLATE_AND_DIAL);
            }
            case TYPING -> {
                window.choose("HD-05");
                type("206 148 0.05\n159 150 0.03\n347 150 0.02\n65 150 0\ngas track 206 112\n206 20 0");
            }
            default -> {} // as it comes up
        }
        window.tasks.awaitIdle();
        return window.root(1366, 768);
    }

    private void type(String text) {
        press("facemap.write");
        window.tasks.awaitIdle();
        window.page.panel().entry().lines().area().setText(text);
        window.page.panel().entry().lines().area().setCaretPosition(18);
    }

    private void press(String key) {
        new Ui(window.pane).button(Caption.of(window.texts.get(key)).text()).doClick();
    }

    @ParameterizedTest
    @EnumSource(Side.class)
    void the_page_reads_as_agreed_is_whole_and_told_to_screen_readers(Side side) {
        Component page = shown(side, Theme.LIGHT, 1.0f, FacesWindow.english());
        GoldenText.check("faces_" + side.name().toLowerCase(Locale.ROOT), window.page.panel());
        assertThat(LayoutRules.broken(page)).isEmpty();
        assertThat(AccessibleWalk.faults(page)).isEmpty();
        assertThat(Contrast.tooLow(page)).isEmpty();
    }

    @ParameterizedTest
    @EnumSource(Side.class)
    void large_and_dark_nothing_is_cut_and_every_word_can_be_told_from_what_it_stands_on(Side side) {
        Component page = shown(side, Theme.DARK, 1.5f, FacesWindow.english());
        assertThat(LayoutRules.broken(page)).as("1366 x 768").isEmpty();
        assertThat(Contrast.tooLow(page)).isEmpty();
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
    void the_zone_that_comes_back_and_the_new_one_are_told_apart_in_words() {
        shown(Side.OCTOBER, Theme.LIGHT, 1.0f, FacesWindow.english());
        assertThat(window.said())
                .contains(
                        "0.03 mm low between 2 and 3, exhaust side: coming back. It was 0.08 mm low before the skim, 11.68",
                        "0.05 mm low at cylinder 4, exhaust side: new",
                        "0.05 + 0.03 + 0.02");
    }

    @Test
    void intervals_stay_intervals() {
        shown(Side.STRAIGHTEDGE, Theme.LIGHT, 1.0f, FacesWindow.english());
        assertThat(window.said()).contains("Along the exhaust side: goes 0.05 mm, not 0.06 mm");
        FaceMap model = Objects.requireNonNull(window.page.panel().map().model());
        assertThat(model.lines()).extracting(FaceMap.Line::label).contains("0.05, not 0.06", "not 0.04");
        assertThat(model.shading()).as("nothing to fill in between").isNull();
    }

    @Test
    void what_is_typed_is_drawn_and_the_reading_in_hand_lit_and_it_is_written_as_one_change() {
        shown(Side.TYPING, Theme.LIGHT, 1.0f, FacesWindow.english());
        FacesPanel panel = window.page.panel();
        FaceMap model = Objects.requireNonNull(panel.map().model());
        assertThat(model.values()).hasSize(5).allMatch(value -> value.level() == FaceMap.Level.TYPED);
        assertThat(panel.map().inHand()).isEqualTo(1);
        panel.entry().marked(new Rectangle2D.Double(300, 140, 40, 20), 176);
        panel.entry().lines().area().append("0.04");
        window.tasks.awaitIdle();
        assertThat(panel.entry().text()).endsWith("low area 320 150 40x20 0.04");
        int looks = window.book.view().facts().of(FaceLook.class).size();
        press("facemap.entry.save");
        window.tasks.awaitIdle();
        assertThat(window.book.view().facts().of(FaceLook.class).size()).isEqualTo(looks + 1);
        assertThat(window.book.view().facts().of(FacePoint.class).all())
                .last()
                .satisfies(point -> assertThat(point.fact().y().text()).isEqualTo("20"));
        assertThat(window.book.view().facts().of(FaceMark.class).all())
                .last()
                .satisfies(mark -> assertThat(mark.fact().depth().text()).isEqualTo("0.04"));
        assertThat(window.said()).contains("Head HD-05, seen from the face: 0.05 mm low between 2 and 3");
    }

    @Test
    void what_cannot_be_read_is_said_and_stays_as_it_was_typed() {
        shown(Side.TYPING, Theme.LIGHT, 1.0f, FacesWindow.english());
        window.page.panel().entry().lines().area().setText("206 190 0.05");
        window.tasks.awaitIdle();
        press("facemap.entry.save");
        window.tasks.awaitIdle();
        assertThat(window.said()).contains("is not on the face");
        assertThat(window.page.panel().entry().text()).isEqualTo("206 190 0.05");
    }

    /** The same mark of the gasket lies at the same place of the head, and turned over on the other side of the drawing. */
    @Test
    void the_face_in_sight_is_printed_but_nothing_over_what_is_typed() {
        shown(Side.OCTOBER, Theme.LIGHT, 1.0f, FacesWindow.english());
        press("facesheet.button");
        assertThat(window.printed).singleElement().satisfies(seen -> {
            assertThat(seen.part().text()).isEqualTo(window.part("HD-06"));
            assertThat(seen.look()).isNotNull();
            assertThat(seen.over()).isNotNull();
        });
    }

    @Test
    void what_is_coming_back_stands_on_the_map_with_its_word_and_what_was_low_before_is_outlined() {
        shown(Side.OCTOBER, Theme.LIGHT, 1.0f, FacesWindow.english());
        FaceMap model = Objects.requireNonNull(window.page.panel().map().model());
        assertThat(model.zones())
                .extracting(FaceMap.Zone::word)
                .contains("low, coming back", "low, new", "low on Fri 29 May 2026");
        assertThat(model.before()).isNotNull();
        assertThat(model.values())
                .filteredOn(value -> value.level() == FaceMap.Level.BEFORE)
                .extracting(FaceMap.Value::label)
                .as("read in May where nobody read in October")
                .containsExactlyInAnyOrder("then −0.06", "then −0.05", "then 0");
    }

    @Test
    void one_frame_serves_all_and_turning_over_swaps_only_inlet_and_exhaust() {
        shown(Side.GASKET, Theme.LIGHT, 1.0f, FacesWindow.english());
        FaceMap model = Objects.requireNonNull(window.page.panel().map().model());
        Rectangle2D room = new Rectangle2D.Double(0, 0, 824, 352);
        FacePlane straight = plane(model, FaceTurn.AS_IT_LIES, room);
        FacePlane over = plane(model, FaceTurn.AS_IT_LIES.mirror(), room);
        FacePlane about = plane(model, FaceTurn.AS_IT_LIES.turn(), room);
        assertThat(over.x(206)).isEqualTo(straight.x(206));
        assertThat(over.y(148)).isEqualTo(straight.y(176 - 148));
        assertThat(about.x(100)).isEqualTo(straight.x(412 - 100));
        assertThat(about.y(148)).isEqualTo(straight.y(176 - 148));
        assertThat(straight.face(straight.x(123), straight.y(45))).isEqualTo(new Point2D.Double(123, 45));
    }

    private FacePlane plane(FaceMap map, FaceTurn turn, Rectangle2D room) {
        FaceOutline outline =
                window.book.view().facts().of(FaceOutline.class).all().get(0).fact();
        return new FacePlane(map.edges(), turn.exhaustBelow(outline, FaceKind.GASKET_TO_HEAD), turn.frontLeft(), room);
    }

    @ParameterizedTest
    @CsvSource({
        "BOILED, LIGHT, 1.0, false",
        "BOILED, DARK, 1.0, false",
        "GASKET, LIGHT, 1.0, false",
        "STRAIGHTEDGE, DARK, 1.0, false",
        "OCTOBER, LIGHT, 1.0, false",
        "OCTOBER, LIGHT, 1.0, true",
        "OCTOBER, DARK, 1.5, true",
        "TYPING, LIGHT, 1.0, false",
        "TYPING, DARK, 1.5, false",
    })
    void pictures_for_people(Side side, Theme theme, float zoom, boolean foot) {
        JRootPane root = shown(side, theme, zoom, FacesWindow.english());
        if (foot) {
            JViewport port = (JViewport) SwingUtilities.getAncestorOfClass(
                    JViewport.class, window.page.panel().beside());
            JComponent page = (JComponent) port.getView();
            page.scrollRectToVisible(new Rectangle(0, page.getHeight() - 2, 10, 2));
        }
        String name = "faces-" + side + "-" + theme + "-" + Math.round(zoom * 100) + (foot ? "-foot" : "");
        BufferedImage image = Pictures.write(name.toLowerCase(Locale.ROOT), root);
        assertThat(Pictures.colours(image, 51)).isGreaterThan(10);
        assertThat(image.getRGB(1364, 40)).isEqualTo(Palette.BENCH.colour().getRGB());
    }
}
