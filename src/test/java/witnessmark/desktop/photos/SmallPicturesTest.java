package witnessmark.desktop.photos;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import witnessmark.desktop.shell.Theme;
import witnessmark.desktop.testing.Looks;
import witnessmark.desktop.testing.UiTest;
import witnessmark.domain.Photo;
import witnessmark.logbook.Desk;
import witnessmark.quantity.Moment;
import witnessmark.sample.SampleBooks;
import witnessmark.wording.Texts;

/** Small pictures are made once while they are in sight, and again after one could not be made. */
@UiTest
class SmallPicturesTest {
    @TempDir
    private Path folder;

    private Desk desk;
    private PhotosWindow window;
    private int told;

    @BeforeEach
    void open() throws IOException {
        desk = new SampleBooks(folder).open();
        window = new PhotosWindow(desk, Looks.look(Theme.LIGHT, 1), Texts.in(Locale.UK));
    }

    @AfterEach
    void close() {
        window.close();
        desk.logbook().close();
    }

    /** @param content SHA-256 of its bytes, which are nowhere */
    private Photo photo(String content) {
        return new Photo(
                "IMG.JPG",
                content,
                1,
                "image/jpeg",
                1,
                1,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                "",
                Moment.of(desk.today().now(), desk.view().zone()),
                "Ada");
    }

    private void paint(List<Photo> inSight) {
        window.photographs.pictures().inSight(inSight.size());
        inSight.forEach(photo -> window.photographs.pictures().of(photo, () -> told++));
        window.tasks.awaitIdle();
    }

    @Test
    void a_hundred_and_twenty_in_sight_are_made_once() {
        List<Photo> inSight = new ArrayList<>();
        for (int i = 0; i < 120; i++) {
            inSight.add(photo(String.format(Locale.ROOT, "%064x", i)));
        }
        paint(inSight);
        paint(inSight);
        assertThat(told).isEqualTo(120);
    }

    @Test
    void one_that_failed_is_asked_for_again() {
        List<Photo> broken = List.of(photo("0".repeat(64)));
        window.tasks.close(); // takes no more work: whatever is asked fails
        paint(broken);
        window.photographs.pictures().lookAgain();
        paint(broken);
        assertThat(told).as("the page is painted anew each time").isEqualTo(2);
    }
}
