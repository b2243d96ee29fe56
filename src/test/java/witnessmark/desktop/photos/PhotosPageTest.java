package witnessmark.desktop.photos;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.event.KeyEvent;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import javax.swing.ComboBoxModel;
import javax.swing.JComponent;
import javax.swing.JRootPane;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
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
import witnessmark.domain.Entry;
import witnessmark.domain.Finding;
import witnessmark.domain.FindingMark;
import witnessmark.domain.FindingPlace;
import witnessmark.domain.Id;
import witnessmark.domain.Incident;
import witnessmark.domain.Standing;
import witnessmark.ledger.Story;
import witnessmark.logbook.Desk;
import witnessmark.logbook.photos.PhotosOf;
import witnessmark.picture.MadePictures;
import witnessmark.sample.SampleBooks;
import witnessmark.wording.Texts;

/** Photos on the page of an incident, brought in and looked at large: as text, by rules, to screen readers, in pictures. */
@UiTest
class PhotosPageTest {
    @TempDir
    private static Path folder;

    private static Desk desk;
    private static final List<Path> FILES = new ArrayList<>();

    private PhotosWindow window;

    @BeforeAll
    static void make() throws IOException {
        desk = new SampleBooks(folder).open();
        for (int i = 1; i <= 3; i++) {
            FILES.add(Files.write(
                    folder.resolve("IMG_000" + i + ".JPG"), MadePictures.photographed(640, 480, i == 2 ? 6 : 1, i)));
        }
        FILES.add(Files.writeString(folder.resolve("letter.jpg"), "MZ", StandardCharsets.US_ASCII));
    }

    @AfterAll
    static void end() {
        desk.logbook().close();
    }

    @AfterEach
    void close() {
        if (window != null) {
            window.close();
        }
        while (desk.undoable().isPresent()) {
            desk.undo().orThrow();
        }
    }

    private PhotosWindow open(Theme theme, float zoom) {
        window = new PhotosWindow(desk, Looks.look(theme, zoom), Texts.in(Locale.UK));
        return window;
    }

    @ParameterizedTest
    @CsvSource({"LIGHT,1.0", "DARK,1.5"})
    void photos_on_a_page_are_whole_and_told_to_screen_readers(Theme theme, float zoom) {
        open(theme, zoom).bring(FILES, "shell of 3");
        assertThat(GoldenText.of(window.page())).contains("letter.jpg is no picture");
        window.window.changed();
        JRootPane root = window.root();
        for (int i = 0; i < 2; i++) {
            Pictures.paint(root, 1); // what is painted first asks for its small picture
            window.tasks.awaitIdle();
        }
        Pictures.write("photos_" + theme.name().toLowerCase(Locale.ROOT), root);
        assertThat(window.strip.pictures().getModel().getSize()).isEqualTo(3);
        if (theme == Theme.LIGHT) {
            GoldenText.check("photos_strip", window.strip);
        }
        assertThat(LayoutRules.broken(root)).isEmpty();
        assertThat(AccessibleWalk.faults(root)).isEmpty();
        assertThat(Contrast.tooLow(root)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"LIGHT,1.0", "DARK,1.5"})
    void the_page_that_brings_them_in_and_the_one_that_shows_them_large(Theme theme, float zoom) {
        open(theme, zoom).strip.take(FILES);
        JComponent asked = window.page();
        Pictures.write("photos_bring_" + theme.name().toLowerCase(Locale.ROOT), asked);
        looksWhole(asked, theme, "photos_bring");

        ((BringInPage) window.aside()).keep();
        window.tasks.awaitIdle();
        window.root();
        Ui.press(window.strip.pictures(), Keys.plain(KeyEvent.VK_ENTER));
        JComponent large = window.page();
        Pictures.write("photos_large_" + theme.name().toLowerCase(Locale.ROOT), large);
        looksWhole(large, theme, "photos_large");
    }

    private static void looksWhole(JComponent page, Theme theme, String name) {
        if (theme == Theme.LIGHT) {
            GoldenText.check(name, page);
        }
        assertThat(LayoutRules.broken(page)).isEmpty();
        assertThat(AccessibleWalk.faults(page)).isEmpty();
        assertThat(Contrast.tooLow(page)).isEmpty();
    }

    @Test
    void keys_go_from_photo_to_photo_look_closer_and_lead_to_striking_out() {
        open(Theme.LIGHT, 1.0f).bring(FILES, "shell of 3");
        window.root();
        PhotoList list = window.strip.pictures();
        Ui.press(list, Keys.plain(KeyEvent.VK_DELETE));
        assertThat(window.asked).containsExactly("correct");
        Ui.press(list, Keys.plain(KeyEvent.VK_ENTER));
        PhotoView view = (PhotoView) window.aside().firstFocus();
        window.page();
        Ui.press(view, Keys.plain(KeyEvent.VK_PLUS));
        assertThat(view.closer()).isGreaterThan(1);
        Ui.press(view, Keys.plain(KeyEvent.VK_0));
        assertThat(view.closer()).isEqualTo(1);
        Ui.press(view, Keys.plain(KeyEvent.VK_RIGHT));
        assertThat(GoldenText.of(window.page())).contains("2 of 3");
    }

    /** Four shells looked at on one day, none with a word beside its mark. */
    @Test
    void findings_of_one_day_can_be_told_from_each_other() {
        open(Theme.LIGHT, 1.0f);
        Id<Incident> incident = desk.view()
                .facts()
                .of(Incident.class)
                .inForce()
                .findFirst()
                .orElseThrow()
                .id();
        List<Entry<Finding>> four = IntStream.rangeClosed(1, 4)
                .mapToObj(number -> new Entry<>(
                        SampleBooks.ids().<Finding>next(), back(incident, number), Standing.IN_FORCE, null, 1))
                .toList();
        desk.write("seen at the strip", four).orThrow();

        window.photographs.bringIn(FILES, PhotosOf.incident(incident), () -> {});

        ComboBoxModel<?> offered =
                ((BringInPage) window.aside()).finding().combo().getModel();
        List<String> words = IntStream.range(0, offered.getSize())
                .mapToObj(i -> offered.getElementAt(i).toString())
                .map(option -> option.replaceAll("id=[^,]*", ""))
                .toList();
        assertThat(words).doesNotHaveDuplicates().anyMatch(option -> option.contains("Back of a shell 3, fretted"));
    }

    private static Finding back(Id<Incident> incident, int number) {
        return new Finding(
                incident,
                null,
                null,
                null,
                "",
                FindingPlace.SHELL_BACK,
                number,
                "",
                FindingMark.FRETTED,
                null,
                null,
                null,
                null,
                null,
                Story.at("2026-06-05T18:00Z[UTC]"),
                "",
                "");
    }
}
