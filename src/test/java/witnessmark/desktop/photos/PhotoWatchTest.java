package witnessmark.desktop.photos;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.CountDownLatch;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import witnessmark.desktop.task.Tasks;
import witnessmark.desktop.testing.MemorySettings;
import witnessmark.desktop.testing.UiTest;
import witnessmark.exchange.DiskLoggerFiles;
import witnessmark.logbook.Desk;
import witnessmark.logbook.photos.WatchedPhotos;
import witnessmark.logbook.port.LoggerFile;
import witnessmark.logbook.port.LoggerFiles;
import witnessmark.sample.SampleBooks;
import witnessmark.wording.Texts;

/** What is said of a folder is what was found in that one. */
@UiTest
class PhotoWatchTest {
    @TempDir
    private Path folder;

    private final CountDownLatch looking = new CountDownLatch(1);
    private final CountDownLatch goOn = new CountDownLatch(1);

    /** A folder that takes its time. */
    private final LoggerFiles slow = new LoggerFiles() {
        private final LoggerFiles disk = new DiskLoggerFiles();

        @Override
        public LoggerFile file(Path path) {
            return disk.file(path);
        }

        @Override
        public List<Lying> in(Path in) throws IOException {
            looking.countDown();
            try {
                goOn.await();
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
            }
            return disk.in(in);
        }
    };

    @Test
    void an_answer_about_another_folder_is_dropped() throws Exception {
        Desk desk = new SampleBooks(folder).open();
        Tasks tasks = new Tasks((thread, failure) -> {
            throw new IllegalStateException(failure);
        });
        try (PhotoWatch watch =
                new PhotoWatch(Texts.in(Locale.UK), tasks, new WatchedPhotos(desk, new MemorySettings(), slow))) {
            watch.watch(Files.createDirectories(folder.resolve("card")));
            looking.await();
            watch.watch(folder.resolve("pulled-out"));
            goOn.countDown();
            tasks.awaitIdle();
            assertThat(watch.said()).contains("pulled-out").contains("is not there");
        } finally {
            tasks.close();
            desk.logbook().close();
        }
    }
}
