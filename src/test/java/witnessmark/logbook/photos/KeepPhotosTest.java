package witnessmark.logbook.photos;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.function.IntPredicate;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import witnessmark.domain.Entry;
import witnessmark.domain.Photo;
import witnessmark.logbook.Desk;
import witnessmark.logbook.StrikeOut;
import witnessmark.logbook.photos.KeepPhotos.About;
import witnessmark.logbook.port.Logbook;
import witnessmark.outcome.Outcome;
import witnessmark.outcome.ProblemKind;
import witnessmark.picture.MadePictures;
import witnessmark.sample.FixedToday;
import witnessmark.store.Garage;
import witnessmark.store.TestLogbooks;
import witnessmark.store.TimeOrderedIds;

class KeepPhotosTest {
    @TempDir
    private Path folder;

    private Logbook logbook;
    private Desk desk;
    private KeepPhotos keep;
    private final Garage garage = new Garage();
    private About about;
    private PhotosOf of;

    @BeforeEach
    void open() {
        logbook = new TestLogbooks(folder).create();
        TestLogbooks.write(logbook, garage.all()).orThrow();
        desk = new Desk(logbook, new FixedToday(LocalDate.of(2026, 5, 9)), "Ada");
        keep = new KeepPhotos(desk, new TimeOrderedIds());
        about = new About(null, null, garage.e1.id(), garage.r1.id(), 3, "rod bolt");
        of = PhotosOf.part(garage.r1.id());
    }

    @AfterEach
    void close() {
        logbook.close();
    }

    private Outcome<KeepPhotos.Kept> keep(List<Path> files, About of, IntPredicate goOn) {
        return keep.take(files, of, goOn).then(batch -> keep.write(batch, "photos"));
    }

    private List<Path> files(int count) throws IOException {
        List<Path> files = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            files.add(Files.write(folder.resolve("p" + i + ".jpg"), MadePictures.photographed(40, 30, 1, i)));
        }
        return files;
    }

    @Test
    void a_batch_is_one_change_and_says_of_each_file_that_it_could_not_take_why() throws IOException {
        List<Path> files = files(3);
        files.add(1, Files.write(folder.resolve("no.jpg"), "MZ".getBytes(StandardCharsets.US_ASCII)));
        files.add(Files.copy(files.get(0), folder.resolve("again.jpg")));
        KeepPhotos.Kept kept = keep(files, about, done -> true).orThrow();

        assertThat(kept.kept()).isEqualTo(3);
        assertThat(kept.problems())
                .extracting(problem -> problem.kind())
                .containsExactly(ProblemKind.PHOTO_NO_PICTURE, ProblemKind.PHOTO_HERE_ALREADY);
        List<Entry<Photo>> there = of.in(desk.view());
        assertThat(there).hasSize(3).allSatisfy(photo -> {
            assertThat(photo.fact().caption()).isEqualTo("rod bolt");
            assertThat(photo.fact().number()).isEqualTo(3);
            assertThat(photo.fact().taken().text()).startsWith("2026-05-03T16:07:09");
        });
        assertThat(PhotosOf.engine(garage.e1.id()).in(desk.view())).hasSize(3);
        desk.undo().orThrow();
        assertThat(of.in(desk.view())).isEmpty();
        assertThat(keep(files(3), about, done -> true).orThrow().kept())
                .as("after it was taken back it is not here")
                .isEqualTo(3);
    }

    @Test
    void one_whose_bytes_were_lost_or_spoilt_is_mended_by_bringing_it_in_again() throws IOException {
        List<Path> files = files(2);
        keep(files, about, done -> true).orThrow();
        List<Entry<Photo>> photos = of.in(desk.view());
        Files.delete(lies(photos.get(0)));
        Files.write(lies(photos.get(1)), MadePictures.bytes("png", 3, 3, 1));

        KeepPhotos.Kept kept = keep(files, about, done -> true).orThrow();
        assertThat(kept.kept()).isZero();
        assertThat(kept.problems())
                .extracting(problem -> problem.kind())
                .containsExactly(ProblemKind.PHOTO_MENDED, ProblemKind.PHOTO_MENDED);
        assertThat(of.in(desk.view())).hasSize(2);
        assertThat(logbook.photos().check(logbook.facts())).isEmpty();
        assertThat(keep(files, about, done -> true).orThrow().problems())
                .as("once more")
                .extracting(problem -> problem.kind())
                .containsExactly(ProblemKind.PHOTO_HERE_ALREADY, ProblemKind.PHOTO_HERE_ALREADY);
    }

    private Path lies(Entry<Photo> photo) {
        String name = photo.fact().content();
        return logbook.photos().folder().resolve(name.substring(0, 2)).resolve(name);
    }

    @Test
    void one_of_a_thousand_can_be_the_last() throws IOException {
        List<Path> files = new ArrayList<>(files(5));
        for (int i = 0; i < 995; i++) {
            files.add(folder.resolve("never-looked-at-" + i));
        }
        List<Integer> told = new ArrayList<>();
        KeepPhotos.Kept kept = keep(files, about, done -> {
                    told.add(done);
                    return done < 4;
                })
                .orThrow();
        assertThat(told).containsExactly(0, 1, 2, 3, 4);
        assertThat(kept.kept()).isEqualTo(4);
        assertThat(kept.left()).isEqualTo(996);
    }

    @Test
    void a_caption_is_changed_and_a_photo_struck_out_and_brought_back() throws IOException {
        keep(files(1), about, done -> true).orThrow();
        Entry<Photo> photo = of.in(desk.view()).get(0);
        keep.caption(photo, "bolt of 3, head side", "caption").orThrow();
        photo = of.in(desk.view()).get(0);
        assertThat(photo.fact().caption()).isEqualTo("bolt of 3, head side");

        new StrikeOut(desk).strikeOut(photo, "another engine", "strike").orThrow();
        assertThat(of.in(desk.view())).isEmpty();
        desk.undo().orThrow();
        assertThat(of.in(desk.view())).hasSize(1);
    }

    @Test
    void on_an_earlier_day_none_is_put_in() throws IOException {
        desk.lookAsOf(LocalDate.of(2026, 3, 1));
        assertThat(keep(files(1), about, done -> true).problems())
                .extracting(problem -> problem.kind())
                .containsExactly(ProblemKind.AS_OF_EARLIER_DAY);
    }
}
