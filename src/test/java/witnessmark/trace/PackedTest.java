package witnessmark.trace;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import witnessmark.outcome.ProblemKind;
import witnessmark.trace.packed.Packed;
import witnessmark.trace.packed.PackedProblem;
import witnessmark.trace.packed.UnpackLimits;

/** What is packed is unpacked, and what is packed to do harm is given up within bounds. */
class PackedTest {
    private static final byte[] TEXT = Story.of(1, 20, 30).csv().getBytes(StandardCharsets.UTF_8);
    private static final UnpackLimits USUAL = UnpackLimits.usual();

    @Test
    void plain_text_gzip_and_a_zip_of_one_file_are_the_same_text() throws IOException {
        assertThat(opened(TEXT)).isEqualTo(TEXT);
        assertThat(opened(Packs.gzip(TEXT))).isEqualTo(TEXT);
        assertThat(opened(Packs.zip("race 1/trace.csv", TEXT))).isEqualTo(TEXT);
        assertThat(opened(new byte[0])).isEmpty();
        byte[] two =
                joined(Packs.gzip(Arrays.copyOf(TEXT, 500)), Packs.gzip(Arrays.copyOfRange(TEXT, 500, TEXT.length)));
        assertThat(opened(two)).as("gzip in two members").isEqualTo(TEXT);
    }

    @Test
    void of_several_files_one_is_named_and_names_are_never_paths() throws IOException {
        byte[] zip = Packs.zip("../../evil.csv", TEXT, "C:\\other.csv", new byte[] {'1', '\n'});
        assertThat(problem(zip)).isEqualTo(ProblemKind.PACKED_SEVERAL);
        assertThat(Packed.names(new ByteArrayInputStream(zip), USUAL))
                .containsExactly("../../evil.csv", "C:\\other.csv");
        assertThat(Reads.all(Packed.open(new ByteArrayInputStream(zip), "../../evil.csv", USUAL)))
                .isEqualTo(TEXT);
        assertThatThrownBy(() -> Packed.open(new ByteArrayInputStream(zip), "evil.csv", USUAL))
                .isInstanceOfSatisfying(
                        PackedProblem.class,
                        e -> assertThat(e.problem().kind()).isEqualTo(ProblemKind.PACKED_NOT_IN_IT));
    }

    /** Nothing of the first file is unpacked: it may be spoilt, and the question comes all the same. */
    @Test
    void an_archive_of_several_is_asked_about_before_its_first_file_is_read() throws IOException {
        byte[] zip = Packs.zip(
                "race 1/trace.csv", TEXT, "race 1/", new byte[0], "race 2/trace.csv", TEXT, "__MACOSX/x", TEXT);
        byte[] spoilt = zip.clone();
        for (int i = 60; i < 400; i++) {
            spoilt[i] = 0;
        }
        for (byte[] each : List.of(zip, spoilt, joined(zip, new byte[0]))) {
            assertThatThrownBy(() -> Packed.notSeveral(new ByteArrayInputStream(each), USUAL))
                    .isInstanceOfSatisfying(
                            PackedProblem.class,
                            e -> assertThat(e.problem().facts())
                                    .containsExactly(List.of("race 1/trace.csv", "race 2/trace.csv")));
        }
        Packed.notSeveral(new ByteArrayInputStream(Packs.zip("a.csv", TEXT)), USUAL);
        Packed.notSeveral(new ByteArrayInputStream(TEXT), USUAL);
        Packed.notSeveral(new ByteArrayInputStream(Packs.gzip(TEXT)), USUAL);
    }

    /** A list that is cut off, spoilt or lies is left to reading: never a crash, and no other answer than names or nothing. */
    @Test
    void a_spoilt_list_at_the_end_of_an_archive_is_left_to_reading() throws IOException {
        SplittableRandom random = new SplittableRandom(5);
        byte[] zip = Packs.zip("a.csv", TEXT, "b.csv", TEXT);
        for (int i = 0; i < 3000; i++) {
            byte[] spoilt = random.nextBoolean() ? Arrays.copyOf(zip, 4 + random.nextInt(zip.length - 4)) : zip.clone();
            spoilt[4 + random.nextInt(spoilt.length - 4)] ^= (byte) (1 << random.nextInt(8));
            try {
                Packed.notSeveral(new ByteArrayInputStream(spoilt), USUAL);
            } catch (PackedProblem e) {
                assertThat(e.problem().kind()).isEqualTo(ProblemKind.PACKED_SEVERAL);
            }
        }
    }

    @Test
    void archives_in_archives_are_not_opened() throws IOException {
        assertThat(problem(Packs.zip("a.zip", Packs.zip("b.csv", TEXT)))).isEqualTo(ProblemKind.PACKED_WITHIN);
        assertThat(problem(Packs.gzip(Packs.gzip(TEXT)))).isEqualTo(ProblemKind.PACKED_WITHIN);
        assertThat(problem(Packs.gzip(Packs.zip("b.csv", TEXT)))).isEqualTo(ProblemKind.PACKED_WITHIN);
        assertThat(problem(Packs.zip())).isEqualTo(ProblemKind.PACKED_EMPTY);
    }

    @Test
    void what_unpacks_too_far_is_given_up_whatever_it_claims() throws IOException {
        // Forty petabytes would follow: a gzip stream of zeros, handed out for as long as somebody reads.
        assertThat(problem(Packs.gzip(new byte[40 << 20]))).isEqualTo(ProblemKind.PACKED_TOO_DENSE);
        assertThat(problem(Packs.zip("a.csv", new byte[40 << 20]))).isEqualTo(ProblemKind.PACKED_TOO_DENSE);
        assertThat(problem(Packs.zip("a.csv", TEXT, "b.csv", new byte[40 << 20])))
                .isEqualTo(ProblemKind.PACKED_TOO_DENSE);
        UnpackLimits small = new UnpackLimits(10_000, 250, 1 << 20, 1000);
        assertThatThrownBy(() -> Packed.open(new ByteArrayInputStream(Packs.gzip(TEXT)), null, small)
                        .readAllBytes())
                .isInstanceOfSatisfying(
                        PackedProblem.class,
                        e -> assertThat(e.problem().kind()).isEqualTo(ProblemKind.PACKED_TOO_LARGE));
        Object[] many = new Object[2400];
        for (int i = 0; i < many.length; i += 2) {
            many[i] = i + ".csv";
            many[i + 1] = new byte[] {'1'};
        }
        assertThat(problem(Packs.zip(many))).isEqualTo(ProblemKind.PACKED_TOO_MANY);
    }

    @Test
    void damaged_archives_are_told() throws IOException {
        SplittableRandom random = new SplittableRandom(3);
        byte[] gzip = Packs.gzip(TEXT);
        byte[] zip = Packs.zip("a.csv", TEXT);
        int told = 0;
        for (int i = 0; i < 3000; i++) {
            byte[] whole = i % 2 == 0 ? gzip : zip;
            byte[] spoilt = random.nextBoolean() ? Arrays.copyOf(whole, random.nextInt(whole.length)) : whole.clone();
            spoilt[random.nextInt(Math.max(1, spoilt.length / 2))] ^=
                    spoilt.length == 0 ? 0 : (byte) (1 << random.nextInt(8));
            try {
                opened(spoilt);
            } catch (PackedProblem e) {
                told++;
            }
        }
        assertThat(told).isGreaterThan(1500);
        assertThat(problem(Arrays.copyOf(gzip, gzip.length / 2))).isEqualTo(ProblemKind.PACKED_ENDS_EARLY);
    }

    private static byte[] opened(byte[] bytes) throws IOException {
        try (InputStream in = Packed.open(new ByteArrayInputStream(bytes), null, USUAL)) {
            return in.readAllBytes();
        }
    }

    private static ProblemKind problem(byte[] bytes) throws IOException {
        try {
            byte[] read = opened(bytes);
            throw new AssertionError("read " + read.length + " bytes");
        } catch (PackedProblem e) {
            return e.problem().kind();
        }
    }

    private static byte[] joined(byte[] one, byte[] other) {
        byte[] both = Arrays.copyOf(one, one.length + other.length);
        System.arraycopy(other, 0, both, one.length, other.length);
        return both;
    }
}
