package witnessmark.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import witnessmark.domain.Entry;
import witnessmark.domain.Photo;
import witnessmark.exchange.CsvSeasonFolders;
import witnessmark.logbook.Desk;
import witnessmark.logbook.ExportSeason;
import witnessmark.logbook.ImportSeason;
import witnessmark.logbook.port.Change;
import witnessmark.logbook.port.Kept;
import witnessmark.logbook.port.Logbook;
import witnessmark.logbook.port.PhotoFile;
import witnessmark.logbook.port.Written;
import witnessmark.outcome.Outcome;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;
import witnessmark.picture.MadePictures;

/** Photos lie beside the logbook as they came, once each, and go with every copy of it. */
class PhotoFolderTest {
    @TempDir
    private Path folder;

    private TestLogbooks logbooks;
    private Logbook logbook;
    private byte[] bytes;
    private Path camera;

    @BeforeEach
    void make() throws IOException {
        logbooks = new TestLogbooks(folder);
        logbook = logbooks.create();
        bytes = MadePictures.photographed(200, 100, 6, 1);
        camera = Files.write(folder.resolve("IMG_0041.JPG"), bytes);
    }

    @AfterEach
    void close() {
        logbook.close();
    }

    private Entry<Photo> kept(Path file) {
        PhotoFile looked = logbook.photos().look(file).orThrow();
        Entry<Photo> photo = Garage.made(new Photo(
                looked.name(),
                looked.bytes().sha256(),
                looked.bytes().size(),
                looked.media(),
                looked.width(),
                looked.height(),
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                "liner",
                Garage.hour(1),
                "Ada"));
        Outcome<Written> written = logbook.write(new Change("Ada", "because", List.of(photo), List.of(looked.bytes())));
        written.orThrow();
        return photo;
    }

    /** The digest by the platform's own means, apart from the program. */
    private static String sha256(byte[] bytes) throws NoSuchAlgorithmException {
        return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
    }

    private Path lies(Entry<Photo> photo) {
        String name = photo.fact().content();
        return folder.resolve("team.photos").resolve(name.substring(0, 2)).resolve(name);
    }

    @Test
    void the_bytes_lie_under_their_digest_as_they_came_and_once() throws Exception {
        Entry<Photo> photo = kept(camera);
        assertThat(photo.fact().content()).isEqualTo(sha256(bytes));
        assertThat(lies(photo)).hasBinaryContent(bytes);
        assertThat(Files.getPosixFilePermissions(lies(photo)))
                .as("for their owner alone")
                .hasSize(2);
        var before = Files.getLastModifiedTime(lies(photo));

        kept(Files.copy(camera, folder.resolve("again.png")));
        assertThat(Files.getLastModifiedTime(lies(photo))).isEqualTo(before);
        assertThat(inFolder()).as("one photo, nothing half written").hasSize(1);
        assertThat(logbook.kept(photo.fact().content()).orThrow().orElseThrow().bytes())
                .isEqualTo(bytes);
    }

    private List<Path> inFolder() throws IOException {
        try (Stream<Path> all = Files.walk(folder.resolve("team.photos"))) {
            return all.filter(Files::isRegularFile)
                    .filter(file -> !file.toString().contains("small"))
                    .toList();
        }
    }

    @Test
    void a_small_picture_may_be_deleted_at_any_time() throws IOException {
        Entry<Photo> photo = kept(camera);
        var small = logbook.photos().small(photo.fact()).orThrow();
        assertThat(small.width()).isEqualTo(100);
        assertThat(small.height()).as("upright").isEqualTo(200);
        Path there = folder.resolve("team.photos/small").resolve(photo.fact().content() + ".jpg");
        assertThat(there).exists();

        Files.delete(there);
        assertThat(logbook.photos().small(photo.fact()).orThrow().height()).isEqualTo(200);
        Files.writeString(there, "no picture");
        assertThat(logbook.photos().small(photo.fact()).orThrow().height()).isEqualTo(200);
    }

    @Test
    void missing_and_spoilt_bytes_are_said_and_another_reading_mends_them() throws IOException {
        Entry<Photo> photo = kept(camera);
        Files.delete(lies(photo));
        Sentences.only(logbook.photos().drawn(photo.fact(), 100), ProblemKind.PHOTO_MISSING);
        assertThat(logbook.verify()).as("the record is whole").isEmpty();
        assertThat(logbook.verifyWithPhotos()).extracting(Problem::kind).containsExactly(ProblemKind.PHOTO_MISSING);

        Files.write(lies(photo), MadePictures.bytes("png", 30, 30, 2));
        Sentences.only(logbook.photos().drawn(photo.fact(), 100), ProblemKind.PHOTO_CHANGED);
        Sentences.only(logbook.kept(photo.fact().content()), ProblemKind.PHOTO_CHANGED);
        assertThat(logbook.verifyWithPhotos()).extracting(Problem::kind).containsExactly(ProblemKind.PHOTO_CHANGED);
        kept(camera);
        assertThat(logbook.verifyWithPhotos()).isEmpty();
        assertThat(logbook.photos().drawn(photo.fact(), 100).didWork()).isTrue();
        assertThat(lies(photo)).hasBinaryContent(bytes);
        assertThat(inFolder()).as("what lay there is not lost").hasSize(2);
    }

    @Test
    void a_backup_carries_them_and_brings_one_back() throws IOException {
        Entry<Photo> photo = kept(camera);
        Path backup = logbook.backUp().orThrow();
        assertThat(logbook.backUp().problems()).isEmpty();
        Files.delete(lies(photo));
        assertThat(logbook.photos().drawn(photo.fact(), 100).didWork())
                .as("looked for in the backups")
                .isTrue();

        Path back = folder.resolve("elsewhere/back.witness");
        Files.createDirectories(back.getParent());
        logbooks.files.copies().restore(backup, back).orThrow();
        try (Logbook restored = logbooks.files.open(back).orThrow()) {
            assertThat(restored.photos().folder()).isEqualTo(folder.resolve("elsewhere/back.photos"));
            assertThat(restored.photos().drawn(photo.fact(), 100).didWork()).isTrue();
        }
    }

    @Test
    void a_spoilt_photo_gives_way_to_a_good_copy_of_the_backups() throws IOException {
        Entry<Photo> photo = kept(camera);
        logbook.backUp().orThrow();
        Path other = Files.write(folder.resolve("other"), MadePictures.bytes("png", 30, 30, 2));
        Files.move(other, lies(photo), StandardCopyOption.REPLACE_EXISTING);

        assertThat(logbook.photos().drawn(photo.fact(), 100).didWork()).isTrue();
        assertThat(lies(photo)).hasBinaryContent(bytes);
        assertThat(inFolder()).as("what lay there is not lost").hasSize(2);
    }

    @Test
    void a_logbook_opened_for_looking_leaves_the_folder_as_it_is() throws IOException {
        Entry<Photo> photo = kept(camera);
        Path copies = folder.resolve("copies");
        Path copy = copies.resolve(
                lies(photo).subpath(lies(photo).getNameCount() - 2, lies(photo).getNameCount()));
        Files.createDirectories(copy.getParent());
        Files.move(lies(photo), copy);
        Path looked = folder.resolve("team.photos");
        PhotoFolder onlyLooking = new PhotoFolder(looked, copies, true);

        assertThat(onlyLooking.small(photo.fact()).didWork())
                .as("from the copies")
                .isTrue();
        assertThat(inFolder()).isEmpty();
        assertThat(looked.resolve("small")).doesNotExist();
    }

    @Test
    void the_same_bytes_put_twice_at_a_time_leave_one_file() throws IOException {
        PhotoFolder photos = new PhotoFolder(folder.resolve("team.photos"), folder.resolve("none"), false);
        Kept first = Kept.of(bytes);
        photos.put(Kept.at(first.sha256(), first.size(), () -> {
            photos.put(first); // the other is done while this one reads
            return first.open();
        }));
        assertThat(inFolder()).hasSize(1);
    }

    @Test
    void a_second_place_has_them_once_and_another_computer_finds_them_there() throws IOException {
        Entry<Photo> photo = kept(camera);
        Path stick = Files.createDirectories(folder.resolve("stick"));
        Path copy = logbook.secondPlace().begin(stick).orThrow().file();
        Path there = copy.resolveSibling("photos")
                .resolve(photo.fact().content().substring(0, 2))
                .resolve(photo.fact().content());
        assertThat(there).hasBinaryContent(bytes);
        logbook.secondPlace().write(stick).orThrow();

        TestLogbooks other = new TestLogbooks(Files.createDirectories(folder.resolve("other")), "device-b");
        other.files.copies().restore(copy, other.file()).orThrow();
        try (Logbook restored = other.open()) {
            assertThat(restored.photos().drawn(photo.fact(), 100).didWork()).isTrue();
        }
    }

    @Test
    void a_season_folder_carries_them_and_reads_back() throws IOException {
        Entry<Photo> photo = kept(camera);
        CsvSeasonFolders folders = new CsvSeasonFolders();
        Path season = folder.resolve("season");
        assertThat(new ExportSeason(folders).export(desk(logbook), season).problems())
                .isEmpty();
        assertThat(season.resolve("kept").resolve(photo.fact().content())).hasBinaryContent(bytes);

        TestLogbooks other = new TestLogbooks(Files.createDirectories(folder.resolve("other")), "device-b");
        try (Logbook taken = other.create()) {
            ImportSeason importing = new ImportSeason(desk(taken), folders);
            var reading = importing.read(season).orThrow();
            assertThat(reading.taking().problems()).isEmpty();
            assertThat(reading.taking().photos()).isEqualTo(1);
            assertThat(reading.taking().samples()).isZero();
            importing.write(reading.taking(), false, "Ada", "taken in").orThrow();
            assertThat(taken.photos().drawn(photo.fact(), 100).didWork()).isTrue();
        }
        Files.delete(season.resolve("kept").resolve(photo.fact().content()));
        try (Logbook taken =
                logbooks.files.create(folder.resolve("third.witness")).orThrow()) {
            var reading = new ImportSeason(desk(taken), folders).read(season).orThrow();
            assertThat(reading.taking().problems())
                    .extracting(problem -> problem.kind())
                    .containsExactly(ProblemKind.PHOTOS_NOT_IN_FOLDER);
        }
    }

    private static Desk desk(Logbook logbook) {
        return new Desk(
                logbook,
                new witnessmark.logbook.port.Today() {
                    @Override
                    public java.time.LocalDate day() {
                        return java.time.LocalDate.of(2026, 7, 8);
                    }

                    @Override
                    public java.time.Instant now() {
                        return java.time.Instant.parse("2026-07-08T18:00:00Z");
                    }
                },
                "Ada");
    }

    @Test
    void what_is_no_picture_is_refused_with_a_sentence() throws IOException {
        refused("nothing.jpg", new byte[0], ProblemKind.PHOTO_EMPTY);
        refused(
                "program.jpg",
                "MZ\u0090 this program cannot be run".getBytes(StandardCharsets.ISO_8859_1),
                ProblemKind.PHOTO_NO_PICTURE);
        refused("drawing.png", "<svg xmlns='x'/>".getBytes(StandardCharsets.US_ASCII), ProblemKind.PHOTO_IS_DRAWING);
        Path bomb = folder.resolve("bomb.png");
        MadePictures.largePng(bomb, 90_000, 90_000, false);
        Sentences.only(logbook.photos().look(bomb), ProblemKind.PHOTO_TOO_MANY_PIXELS);
        Path large = Files.write(folder.resolve("large.jpg"), bytes);
        try (var file = new java.io.RandomAccessFile(large.toFile(), "rw")) {
            file.setLength((64L << 20) + 1);
        }
        Sentences.only(logbook.photos().look(large), ProblemKind.PHOTO_TOO_LARGE);
        Sentences.only(logbook.photos().look(folder), ProblemKind.NO_SUCH_FILE);
    }

    private void refused(String name, byte[] content, ProblemKind kind) throws IOException {
        Outcome<PhotoFile> looked = logbook.photos().look(Files.write(folder.resolve(name), content));
        assertThat(looked.didWork()).isFalse();
        Sentences.only(looked, kind);
    }

    @Test
    void what_is_kept_without_being_drawn_says_so() throws IOException {
        byte[] heic = Arrays.copyOf("\0\0\0\u0018ftypheic".getBytes(StandardCharsets.ISO_8859_1), 400);
        known("phone.jpg", heic, ProblemKind.PHOTO_HEIC);
        byte[] webp = Arrays.copyOf("RIFF\0\1\0\0WEBPVP8 ".getBytes(StandardCharsets.ISO_8859_1), 400);
        known("found.webp", webp, ProblemKind.PHOTO_WITHOUT_PICTURE);
        known("half.jpg", Arrays.copyOf(bytes, bytes.length / 2), ProblemKind.PHOTO_BREAKS_OFF);
        known("moves.gif", MadePictures.moving(3, 1), ProblemKind.PHOTO_MOVES);
        Entry<Photo> photo = kept(folder.resolve("phone.jpg"));
        assertThat(lies(photo)).hasBinaryContent(heic);
        Sentences.only(logbook.photos().drawn(photo.fact(), 100), ProblemKind.PHOTO_NOT_DRAWN);
    }

    private void known(String name, byte[] content, ProblemKind kind) throws IOException {
        Outcome<PhotoFile> looked = logbook.photos().look(Files.write(folder.resolve(name), content));
        assertThat(looked.didWork()).as(name).isTrue();
        Sentences.only(looked, kind);
    }
}
