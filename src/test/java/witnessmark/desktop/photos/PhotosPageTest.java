package witnessmark.desktop.photos;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Container;
import java.awt.event.KeyEvent;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import javax.swing.AbstractButton;
import javax.swing.ComboBoxModel;
import javax.swing.JComponent;
import javax.swing.JList;
import javax.swing.JRootPane;
import javax.swing.JTextArea;
import javax.swing.SwingUtilities;
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
import witnessmark.desktop.testing.Stage;
import witnessmark.desktop.testing.Ui;
import witnessmark.desktop.testing.UiTest;
import witnessmark.domain.Entry;
import witnessmark.domain.Finding;
import witnessmark.domain.FindingMark;
import witnessmark.domain.FindingPlace;
import witnessmark.domain.Id;
import witnessmark.domain.Incident;
import witnessmark.domain.Photo;
import witnessmark.domain.Standing;
import witnessmark.ledger.Story;
import witnessmark.logbook.Desk;
import witnessmark.logbook.photos.KeepPhotos;
import witnessmark.logbook.photos.PhotosOf;
import witnessmark.picture.MadePictures;
import witnessmark.sample.SampleBooks;
import witnessmark.store.TimeOrderedIds;
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

    @Test
    void escape_shows_a_photo_whole_before_it_leaves() {
        open(Theme.LIGHT, 1.0f).bring(FILES, "shell of 3");
        window.root();
        Ui.press(window.strip.pictures(), Keys.plain(KeyEvent.VK_ENTER));
        PhotoAside large = (PhotoAside) window.aside();
        PhotoView view = (PhotoView) large.firstFocus();
        window.page();
        large.caption().load("crack at the oil hole");
        Ui.press(view, Keys.plain(KeyEvent.VK_PLUS));
        Ui.press(view, Keys.shift(KeyEvent.VK_RIGHT));
        Ui.press(large.component(), Keys.plain(KeyEvent.VK_ESCAPE));
        assertThat(view.closer()).isEqualTo(1);
        assertThat(window.aside).as("still there").isSameAs(large);
        assertThat(large.caption().text()).isEqualTo("crack at the oil hole");

        beside(large).doClick();
        PhotoView other = Stage.visible(window.page()).stream()
                .filter(each -> each instanceof PhotoView && each != view)
                .map(PhotoView.class::cast)
                .findFirst()
                .orElseThrow();
        Ui.press(other, Keys.plain(KeyEvent.VK_PLUS));
        Ui.press(large.component(), Keys.plain(KeyEvent.VK_ESCAPE));
        assertThat(other.closer()).isEqualTo(1);
        assertThat(window.aside).isSameAs(large);
        Ui.press(other, Keys.plain(KeyEvent.VK_PLUS));
        beside(large).doClick();
        Ui.press(large.component(), Keys.plain(KeyEvent.VK_ESCAPE));
        assertThat(window.aside).as("what is not in sight keeps nobody").isNull();
    }

    private static AbstractButton beside(PhotoAside large) {
        return Stage.visible(large.component()).stream()
                .filter(each -> each instanceof AbstractButton button
                        && button.getText().equals("Another beside it"))
                .map(AbstractButton.class::cast)
                .findFirst()
                .orElseThrow();
    }

    @Test
    void a_photo_of_what_was_found_is_of_its_incident_engine_part_and_number_too() {
        open(Theme.LIGHT, 1.0f);
        Entry<Finding> finding = desk.view()
                .facts()
                .of(Finding.class)
                .inForce()
                .filter(each -> each.fact().incident() != null && each.fact().number() != null)
                .findFirst()
                .orElseThrow();
        window.strip.show(PhotosOf.finding(finding.id()));
        window.bring(FILES.subList(0, 1), "where it was found");
        assertThat(PhotosOf.finding(finding.id()).in(desk.view()))
                .singleElement()
                .satisfies(photo -> {
                    assertThat(photo.fact().finding()).isEqualTo(finding.id());
                    assertThat(photo.fact().incident()).isEqualTo(finding.fact().incident());
                    assertThat(photo.fact().engine()).isEqualTo(finding.fact().engine());
                    assertThat(photo.fact().part()).isEqualTo(finding.fact().part());
                    assertThat(photo.fact().number()).isEqualTo(finding.fact().number());
                });
    }

    @Test
    void a_caption_follows_the_size_of_the_text() {
        open(Theme.LIGHT, 1.5f).bring(FILES.subList(0, 1), "shell of 3");
        window.root();
        int large = captionSize();
        Looks.light();
        SwingUtilities.updateComponentTreeUI(window.root());
        assertThat(captionSize()).isLessThan(large);
    }

    private int captionSize() {
        JList<PhotoLine> list = window.strip.pictures();
        Container cell = (Container) list.getCellRenderer()
                .getListCellRendererComponent(list, list.getModel().getElementAt(0), 0, false, false);
        return cell.getComponent(0).getFont().getSize();
    }

    @Test
    void a_photo_brought_in_again_is_seen_again() throws IOException {
        open(Theme.LIGHT, 1.0f).bring(FILES.subList(0, 1), "");
        Entry<Photo> photo =
                desk.view().facts().of(Photo.class).inForce().findFirst().orElseThrow();
        String name = photo.fact().content();
        Files.delete(
                desk.logbook().photos().folder().resolve(name.substring(0, 2)).resolve(name));
        Files.deleteIfExists(
                desk.logbook().photos().folder().resolve("small").resolve(name + ".jpg")); // of another test
        SmallPictures pictures = window.photographs.pictures();
        pictures.of(photo.fact(), () -> {});
        window.tasks.awaitIdle();
        assertThat(pictures.of(photo.fact(), () -> {}).orElseThrow().image()).isNull();

        window.strip.take(FILES.subList(0, 1));
        pictures.of(photo.fact(), () -> {}); // painted while it is asked what they are of
        window.tasks.awaitIdle();
        ((BringInPage) window.aside()).keep();
        window.tasks.awaitIdle();
        assertThat(GoldenText.of(window.page())).contains("are whole again");
        pictures.of(photo.fact(), () -> {});
        window.tasks.awaitIdle();
        assertThat(pictures.of(photo.fact(), () -> {}).orElseThrow().image()).isNotNull();
    }

    @Test
    void a_batch_that_was_stopped_or_failed_can_be_kept_after_all() {
        open(Theme.LIGHT, 1.0f).strip.take(FILES.subList(0, 3));
        BringInPage page = (BringInPage) window.aside();
        desk.lookAsOf(LocalDate.of(2020, 1, 1));
        page.keep();
        page.leave();
        window.tasks.awaitIdle();
        desk.lookAsOf(null);

        window.failing = true;
        page.keep();
        window.tasks.awaitIdle();
        window.failing = false;
        page.keep();
        window.tasks.awaitIdle();
        assertThat(desk.view().facts().of(Photo.class).inForce()).hasSize(3);
    }

    @Test
    void a_slow_card_holds_up_no_saving() {
        open(Theme.LIGHT, 1.0f).strip.take(FILES.subList(0, 3));
        window.tasks.awaitIdle();
        ((BringInPage) window.aside()).keep();
        assertThat(window.tasks.underWay()).hasSize(1);
        assertThat(window.tasks.awaited()).as("what a saving stands behind").isEmpty();
        window.tasks.awaitIdle();
        assertThat(desk.view().facts().of(Photo.class).inForce()).hasSize(3);
    }

    /** Closing while a card is slow: every photo of the batch is written down first. */
    @Test
    void closing_waits_for_a_batch_under_way() {
        CountDownLatch card = keptUp();
        List<Integer> closed = new ArrayList<>();
        Runnable count = () -> closed.add(
                desk.view().facts().of(Photo.class).where(each -> true).size());
        window.photographs.last(null, count);
        window.photographs.last(null, count);
        assertThat(closed).as("not yet").isEmpty();
        card.countDown();
        window.tasks.awaitIdle();
        assertThat(closed).as("once, with all of them").containsExactly(3);
        window.photographs.last(null, count);
        assertThat(closed).as("nothing to wait for").hasSize(2);
    }

    @Test
    void where_not_all_could_be_kept_the_program_stays_and_says_why() {
        CountDownLatch card = keptUp();
        List<String> closed = new ArrayList<>();
        window.failing = true;
        window.photographs.last(null, () -> closed.add("closed"));
        card.countDown();
        window.tasks.awaitIdle();
        window.failing = false;
        assertThat(closed).isEmpty();
        assertThat(paragraphs()).anyMatch(each -> each.startsWith("That did not work"));
        window.photographs.last(null, () -> closed.add("closed"));
        assertThat(closed).as("asked again it goes").containsExactly("closed");
    }

    /** The window stays open, and nothing in sight would say why. */
    @Test
    void where_its_page_was_left_by_then_the_strip_says_it() {
        CountDownLatch card = keptUp();
        List<String> closed = new ArrayList<>();
        window.stand(null);
        window.failing = true;
        window.photographs.last(null, () -> closed.add("closed"));
        card.countDown();
        window.tasks.awaitIdle();
        window.failing = false;
        assertThat(closed).isEmpty();
        assertThat(GoldenText.of(window.root())).contains("That did not work");
    }

    /** A batch that does not get on until it is let. */
    private CountDownLatch keptUp() {
        CountDownLatch card = new CountDownLatch(1);
        open(Theme.LIGHT, 1.0f).strip.take(FILES.subList(0, 3));
        window.tasks.awaitIdle();
        window.tasks.apart("card", () -> card.await(30, TimeUnit.SECONDS), late -> {}, thrown -> {});
        ((BringInPage) window.aside()).keep();
        return card;
    }

    @Test
    void before_anything_is_said_there_is_no_line_for_it() {
        open(Theme.LIGHT, 1.0f).strip.take(FILES.subList(0, 3));
        assertThat(paragraphs()).isNotEmpty().noneMatch(String::isBlank);
    }

    private List<String> paragraphs() {
        return Stage.visible(window.page()).stream()
                .filter(JTextArea.class::isInstance)
                .map(each -> ((JTextArea) each).getText())
                .toList();
    }

    @Test
    void a_caption_that_could_not_be_written_comes_back_with_what_was_typed() {
        open(Theme.LIGHT, 1.0f).bring(FILES, "shell of 3");
        window.root();
        Ui.press(window.strip.pictures(), Keys.plain(KeyEvent.VK_ENTER));
        PhotoAside large = (PhotoAside) window.aside();
        PhotoView view = (PhotoView) large.firstFocus();
        window.page();
        PhotoLine line = window.strip.pictures().getModel().getElementAt(0);
        byAnother(line, "by another");

        large.caption().load("crack at the oil hole");
        Ui.press(view, Keys.plain(KeyEvent.VK_RIGHT));
        large.caption().load("typed on the next one");
        window.tasks.awaitIdle();
        assertThat(GoldenText.of(window.page())).contains("1 of 3");
        assertThat(large.caption().text()).isEqualTo("crack at the oil hole");
        Ui.press(view, Keys.plain(KeyEvent.VK_RIGHT));
        assertThat(large.caption().text()).isEqualTo("typed on the next one");
        window.tasks.awaitIdle();

        Ui.press(view, Keys.plain(KeyEvent.VK_LEFT));
        window.aside = null;
        byAnother(line, "by another again");
        large.caption().load("crack of 4 mm");
        Ui.press(large.component(), Keys.plain(KeyEvent.VK_ESCAPE));
        window.tasks.awaitIdle();
        assertThat(window.aside()).as("put up again").isSameAs(large);
        assertThat(large.caption().text()).isEqualTo("crack of 4 mm");
        Ui.press(large.component(), Keys.plain(KeyEvent.VK_ESCAPE));
        window.tasks.awaitIdle();
        assertThat(desk.view()
                        .facts()
                        .of(Photo.class)
                        .inForce()
                        .map(photo -> photo.fact().caption()))
                .as("a second try goes by what stands there now")
                .contains("typed on the next one", "crack of 4 mm");
    }

    private static void byAnother(PhotoLine line, String caption) {
        Entry<Photo> now =
                desk.view().facts().of(Photo.class).find(line.entry().id()).orElseThrow();
        new KeepPhotos(desk, new TimeOrderedIds())
                .caption(now, caption, "meanwhile")
                .orThrow();
    }

    @Test
    void a_copy_that_cannot_be_written_says_why_what_it_means_and_what_to_do() {
        open(Theme.LIGHT, 1.0f).bring(FILES, "shell of 3");
        window.root();
        Ui.press(window.strip.pictures(), Keys.plain(KeyEvent.VK_ENTER));
        window.copyTo = folder.resolve("gone").resolve("copy.jpg");
        new Ui(window.page()).button("Copy without its place…").doClick();
        window.tasks.awaitIdle();
        assertThat(GoldenText.of(window.root()))
                .contains("nothing can be made at that place", "as it was", "choose another place");
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

        window.photographs.bringIn(FILES, PhotosOf.incident(incident), () -> {}, () -> {});

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
                "",
                null,
                null);
    }
}
