package witnessmark.logbook.photos;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import witnessmark.desktop.testing.MemorySettings;
import witnessmark.exchange.DiskLoggerFiles;
import witnessmark.logbook.Desk;
import witnessmark.logbook.photos.KeepPhotos.About;
import witnessmark.logbook.port.Logbook;
import witnessmark.picture.MadePictures;
import witnessmark.sample.FixedToday;
import witnessmark.store.Garage;
import witnessmark.store.TestLogbooks;
import witnessmark.store.TimeOrderedIds;

class WatchedPhotosTest {
    @TempDir
    private Path folder;

    @Test
    void what_is_whole_new_and_a_photo_waits_until_it_is_taken_or_left() throws IOException {
        Garage garage = new Garage();
        Path card = Files.createDirectories(folder.resolve("card"));
        try (Logbook logbook = new TestLogbooks(folder).create()) {
            TestLogbooks.write(logbook, garage.all()).orThrow();
            Desk desk = new Desk(logbook, new FixedToday(LocalDate.of(2026, 5, 9)), "Ada");
            WatchedPhotos watched = new WatchedPhotos(desk, new MemorySettings(), new DiskLoggerFiles());
            assertThat(watched.look(0).waiting()).as("no folder is chosen").isEmpty();
            watched.watch(card);
            byte[] whole = MadePictures.photographed(60, 40, 1, 1);
            Path first = Files.write(card.resolve("a.jpg"), Arrays.copyOf(whole, 300));
            Files.writeString(card.resolve("notes.txt"), "no picture");
            Files.write(card.resolve("b.jpg"), MadePictures.photographed(60, 40, 1, 2));
            assertThat(watched.look(0).waiting())
                    .as("looked at for the first time")
                    .isEmpty();
            Files.write(first, whole);
            assertThat(names(watched.look(4_000))).as("one is being written").containsExactly("b.jpg");
            assertThat(names(watched.look(9_000))).containsExactly("a.jpg", "b.jpg");

            KeepPhotos keep = new KeepPhotos(desk, new TimeOrderedIds());
            keep.take(List.of(first), new About(null, null, garage.e1.id(), null, null, ""), done -> true)
                    .then(batch -> keep.write(batch, "why"))
                    .orThrow();
            WatchedPhotos.Look look = watched.look(10_000);
            assertThat(names(look)).containsExactly("b.jpg");
            watched.leave(look.waiting());
            assertThat(watched.look(11_000).waiting()).isEmpty();
            Files.copy(first, card.resolve("the-same.jpg"));
            watched.look(12_000);
            assertThat(watched.look(16_000).waiting()).as("known by its bytes").isEmpty();
            watched.watch(folder.resolve("stick"));
            assertThat(watched.look(17_000).there()).isFalse();
        }
    }

    private static List<String> names(WatchedPhotos.Look look) {
        return look.waiting().stream()
                .map(each -> String.valueOf(each.path().getFileName()))
                .toList();
    }
}
