package witnessmark.picture;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.Random;
import java.util.zip.CRC32;
import javax.imageio.ImageIO;
import javax.imageio.ImageReader;
import javax.imageio.plugins.tiff.ExifParentTIFFTagSet;
import javax.imageio.plugins.tiff.TIFFDirectory;
import javax.imageio.plugins.tiff.TIFFField;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Pictures are known by their bytes, drawn upright in bounded memory, and nothing made to do harm does any. */
class PicturesTest {
    @TempDir
    private Path folder;

    private Path file(String name, byte[] bytes) throws IOException {
        return Files.write(folder.resolve(name), bytes);
    }

    @ParameterizedTest
    @CsvSource({"jpg,JPEG", "png,PNG", "gif,GIF", "bmp,BMP"})
    void a_picture_is_known_by_its_bytes_whatever_it_is_called(String format, Media media) throws IOException {
        Picture picture = Pictures.look(file("report.exe", MadePictures.bytes(format, 90, 60, 1)));

        assertThat(picture.media()).isEqualTo(media);
        assertThat(picture.width()).isEqualTo(90);
        assertThat(picture.height()).isEqualTo(60);
        assertThat(picture.whole()).isTrue();
        assertThat(picture.located()).isFalse();
        assertThat(picture.isDrawn()).isTrue();
    }

    @Test
    void what_is_no_picture_is_known_too() {
        assertThat(Media.of("MZ\u0090\0 a program called photo.jpg".getBytes(StandardCharsets.ISO_8859_1)))
                .isEqualTo(Media.OTHER);
        assertThat(Media.of("BM is how this letter begins, dear friend".getBytes(StandardCharsets.US_ASCII)))
                .isEqualTo(Media.OTHER);
        assertThat(Media.of("<?xml version='1.0'?><svg onload='x()'/>".getBytes(StandardCharsets.US_ASCII)))
                .isEqualTo(Media.SVG);
        assertThat(Media.of("\0\0\0\u0018ftypheic".getBytes(StandardCharsets.ISO_8859_1)))
                .isEqualTo(Media.HEIC);
        assertThat(Media.of("RIFF\1\1\1\1WEBPVP8 ".getBytes(StandardCharsets.ISO_8859_1)))
                .isEqualTo(Media.WEBP);
        assertThat(Media.of(new byte[0])).isEqualTo(Media.OTHER);
    }

    /** The oracle is the TIFF reader of the Java platform, which reads Exif by the same standard. */
    @Test
    void exif_says_what_the_reader_of_the_platform_says() throws IOException {
        byte[] made = MadePictures.exif(6);
        Exif exif = Exif.of(made);

        TIFFDirectory first = directory(made);
        assertThat(first.getTIFFField(274).getAsInt(0)).isEqualTo(exif.turn()).isEqualTo(6);
        assertThat(exif.taken()).isEqualTo(LocalDateTime.of(2026, 5, 3, 16, 7, 9));
        assertThat(first.containsTIFFField(ExifParentTIFFTagSet.TAG_EXIF_IFD_POINTER))
                .isTrue();
        assertThat(exif.offset()).isEqualTo(ZoneOffset.ofHours(2));
        assertThat(exif.located()).isTrue();
        assertThat(first.containsTIFFField(ExifParentTIFFTagSet.TAG_GPS_INFO_IFD_POINTER))
                .isTrue();
    }

    @Test
    void what_is_written_beside_a_shared_picture_is_its_turn_and_its_moment_alone() throws IOException {
        byte[] bare = Exif.of(MadePictures.exif(8)).bare();
        TIFFDirectory first = directory(bare);

        assertThat(Arrays.stream(first.getTIFFFields()).map(TIFFField::getTagNumber))
                .containsExactly(274, ExifParentTIFFTagSet.TAG_EXIF_IFD_POINTER);
        assertThat(Exif.of(bare)).isEqualTo(new Exif(8, LocalDateTime.of(2026, 5, 3, 16, 7, 9), null, false));
        assertThat(Exif.of(Exif.NOTHING.bare())).isEqualTo(Exif.NOTHING);
    }

    private static TIFFDirectory directory(byte[] tiff) throws IOException {
        ImageReader reader = ImageIO.getImageReadersByFormatName("tiff").next();
        reader.setInput(ImageIO.createImageInputStream(new ByteArrayInputStream(tiff)));
        return TIFFDirectory.createFromMetadata(reader.getImageMetadata(0));
    }

    /** Where the red corner is by Exif 2.32, table 6: row 0 and column 0 as stored are which sides of the scene. */
    @ParameterizedTest
    @CsvSource({"1,0,0", "2,1,0", "3,1,1", "4,0,1", "5,0,0", "6,1,0", "7,1,1", "8,0,1"})
    void a_photo_stands_upright(int turn, int right, int below) throws IOException {
        Path file = file("turned.jpg", MadePictures.photographed(160, 80, turn, 2));
        BufferedImage drawn = Pictures.draw(file, 160).orElseThrow();

        assertThat(drawn.getWidth()).isEqualTo(turn < 5 ? 160 : 80);
        assertThat(drawn.getHeight()).isEqualTo(turn < 5 ? 80 : 160);
        int rgb = drawn.getRGB(right == 0 ? 8 : drawn.getWidth() - 9, below == 0 ? 8 : drawn.getHeight() - 9);
        assertThat(rgb >> 16 & 0xFF).as("red").isGreaterThan(200);
        assertThat(rgb & 0xFF).as("blue").isLessThan(60);
    }

    @Test
    void a_shared_jpeg_says_no_place_and_is_the_same_picture_to_the_last_bit() throws IOException {
        byte[] made = MadePictures.photographed(320, 200, 6, 3);
        Path file = file("from-phone.jpg", made);
        assertThat(Pictures.look(file).located()).isTrue();

        byte[] bare = Pictures.bare(file).orElseThrow();
        Path shared = file("shared.jpg", bare);
        Picture now = Pictures.look(shared);
        assertThat(now.located()).isFalse();
        assertThat(now.turn()).isEqualTo(6);
        assertThat(new String(bare, StandardCharsets.ISO_8859_1))
                .doesNotContain("GPS", "barn", "second picture", "+02:00");
        BufferedImage before = ImageIO.read(new ByteArrayInputStream(made));
        BufferedImage after = ImageIO.read(new ByteArrayInputStream(bare));
        assertThat(after.getRGB(0, 0, 320, 200, null, 0, 320)).isEqualTo(before.getRGB(0, 0, 320, 200, null, 0, 320));
        assertThat(Pictures.bare(shared).orElseThrow())
                .as("once more changes nothing")
                .isEqualTo(bare);
    }

    /** The oracle of a chunk's check is the CRC-32 of the platform (PNG, third edition, 5.5). */
    @Test
    void a_shared_png_says_no_place_and_stays_upright() throws IOException {
        byte[] made = MadePictures.photographedPng(160, 80, 6, 3);
        Path file = file("from-phone.png", made);
        assertThat(Pictures.look(file).located()).isTrue();

        byte[] bare = Pictures.bare(file).orElseThrow();
        Path shared = file("shared.png", bare);
        Picture now = Pictures.look(shared);
        assertThat(now.located()).isFalse();
        assertThat(now.turn()).isEqualTo(6);
        assertThat(now.taken()).isEqualTo(LocalDateTime.of(2026, 5, 3, 16, 7, 9));
        assertThat(new String(bare, StandardCharsets.ISO_8859_1)).doesNotContain("barn", "+02:00");
        ByteBuffer chunks = ByteBuffer.wrap(bare, 8, bare.length - 8);
        while (chunks.hasRemaining()) {
            int length = chunks.getInt();
            CRC32 check = new CRC32();
            check.update(bare, chunks.position(), length + 4);
            chunks.position(chunks.position() + length + 4);
            assertThat(chunks.getInt()).isEqualTo((int) check.getValue());
        }
        assertThat(Pictures.draw(shared, 160).orElseThrow().getHeight()).isEqualTo(160);
        assertThat(Pictures.bare(shared).orElseThrow())
                .as("once more changes nothing")
                .isEqualTo(bare);
    }

    @Test
    void a_photo_of_two_hundred_megapixels_becomes_a_small_picture_in_little_memory() throws IOException {
        Path file = folder.resolve("large.png");
        MadePictures.largePng(file, 20_000, 10_000, true);
        var threads = (com.sun.management.ThreadMXBean) ManagementFactory.getThreadMXBean();
        long before = threads.getThreadAllocatedBytes(Thread.currentThread().getId());

        BufferedImage small = Pictures.draw(file, 320).orElseThrow();

        long used = threads.getThreadAllocatedBytes(Thread.currentThread().getId()) - before;
        assertThat(small.getWidth()).isEqualTo(320);
        assertThat(small.getHeight()).isEqualTo(160);
        assertThat(used).as("bytes, all together; the picture has 200 million").isLessThan(32L << 20);
    }

    @Test
    void a_picture_that_claims_to_be_larger_than_any_is_not_drawn() throws IOException {
        Path file = folder.resolve("bomb.png");
        MadePictures.largePng(file, 60_000, 60_000, false);
        assertThat(Pictures.look(file).isTooLarge()).isTrue();
        assertThat(Pictures.draw(file, 320)).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"jpg", "png", "gif", "bmp"})
    void what_breaks_off_is_known_and_shows_what_there_is(String format) throws IOException {
        byte[] whole = MadePictures.bytes(format, 400, 300, 4);
        Path file = file("half", Arrays.copyOf(whole, whole.length / 2));

        assertThat(Pictures.look(file).whole()).isFalse();
        assertThat(Pictures.draw(file, 200)).isPresent();
    }

    @Test
    void of_pictures_that_follow_each_other_the_first_is_drawn() throws IOException {
        Path file = file("moves.gif", MadePictures.moving(7, 5));
        assertThat(Pictures.look(file).frames()).isEqualTo(7);
        assertThat(Pictures.draw(file, 64)).isPresent();
    }

    /** Bytes changed at random and files cut short: an answer or none, never anything thrown. */
    @ParameterizedTest
    @ValueSource(longs = {101, 102, 103})
    void spoilt_files_do_no_harm(long seed) throws IOException {
        Random random = new Random(seed);
        for (int i = 0; i < 120; i++) {
            byte[] bytes = random.nextInt(5) == 0
                    ? MadePictures.photographed(64, 48, 1 + random.nextInt(8), i)
                    : MadePictures.bytes(new String[] {"jpg", "png", "gif", "bmp"}[random.nextInt(4)], 64, 48, i);
            for (int changes = random.nextInt(20); changes >= 0; changes--) {
                bytes[random.nextInt(random.nextInt(bytes.length) + 1)] = (byte) random.nextInt();
            }
            Path file = file("spoilt", Arrays.copyOf(bytes, bytes.length - random.nextInt(bytes.length / 2)));
            assertThat(Pictures.look(file)).as("seed %d, file %d", seed, i).isNotNull();
            Pictures.draw(file, 32)
                    .ifPresent(drawn -> assertThat(Math.max(drawn.getWidth(), drawn.getHeight()))
                            .isLessThanOrEqualTo(32));
            Pictures.bare(file);
        }
    }
}
