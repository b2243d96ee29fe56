package witnessmark.trace;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import java.util.zip.CRC32;
import java.util.zip.DataFormatException;
import java.util.zip.Deflater;
import java.util.zip.GZIPOutputStream;
import java.util.zip.Inflater;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import witnessmark.outcome.Outcome;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;
import witnessmark.quantity.RunningTime;
import witnessmark.trace.packed.Packed;
import witnessmark.trace.packed.PackedProblem;
import witnessmark.trace.packed.UnpackLimits;
import witnessmark.trace.packed.UpToTheCut;
import witnessmark.trace.reduce.Reducer;
import witnessmark.trace.result.DefectKind;
import witnessmark.trace.result.Recognised;
import witnessmark.trace.result.TraceRead;
import witnessmark.trace.result.TraceSettings;
import witnessmark.trace.text.TraceReader;

/**
 * What is packed and ends too early, or does not fit its checksum, is read as far as that goes, and told. What comes out of
 * deflated bytes that are cut is held against zlib asked for it at one go; where the fields of gzip and zip stand is from RFC
 * 1952, 2.3, and PKWARE's APPNOTE, 4.3.7.
 */
class CutShortTest {
    private static final byte[] TEXT = Story.of(1, 20, 30).csv().getBytes(StandardCharsets.UTF_8);
    private static final UnpackLimits USUAL = UnpackLimits.usual();
    private static final int GZIP_HEAD = 10;
    private static final int GZIP_CHECK = 8;
    private static final int ZIP_HEAD = 30;
    /** By so many bytes of a text it is told whether it is packed again. */
    private static final int FIRST = 4;

    /** What came out, and why no more did. */
    private record Came(byte[] text, boolean cut, boolean suspect) {}

    @Test
    void of_a_gzip_cut_anywhere_all_that_can_be_unpacked_is_read_and_the_cut_is_told() throws Exception {
        byte[] whole = Packs.gzip(TEXT);
        for (int length = 2; length < whole.length; length++) {
            byte[] cut = Arrays.copyOf(whole, length);
            byte[] out = inflated(cut, GZIP_HEAD);
            if (out.length > FIRST) {
                Came came = came(cut, null);
                assertThat(came.cut()).as("cut at %d", length).isTrue();
                assertThat(came.text()).as("cut at %d", length).isEqualTo(out);
            } else {
                assertThat(refused(Arrays.copyOf(cut, Math.min(length, 60)), null))
                        .isEqualTo(ProblemKind.PACKED_ENDS_EARLY);
            }
        }
        assertThat(came(whole, null)).usingRecursiveComparison().isEqualTo(new Came(TEXT, false, false));
    }

    @Test
    void of_a_zip_cut_anywhere_all_that_can_be_unpacked_is_read_and_the_cut_is_told() throws Exception {
        String name = "p1.csv";
        byte[] whole = Packs.zip(name, TEXT);
        int list = indexOf(whole, new byte[] {'P', 'K', 1, 2});
        for (int length = ZIP_HEAD + name.length(); length < whole.length; length++) {
            byte[] cut = Arrays.copyOf(whole, length);
            byte[] out = inflated(cut, ZIP_HEAD + name.length());
            if (out.length > FIRST) {
                Came came = came(cut, null);
                assertThat(came.text()).as("cut at %d", length).isEqualTo(out);
                // Where its list has begun there are no more files, and all of the one is there.
                assertThat(came.cut()).as("cut at %d", length).isEqualTo(length < list + ZIP_HEAD);
            }
        }
    }

    @Test
    void a_file_that_is_in_a_zip_as_it_is_is_read_up_to_the_cut() throws IOException {
        byte[] whole = stored("p1.csv", TEXT);
        int begins = indexOf(whole, TEXT);
        for (int length = begins + 10; length < begins + TEXT.length; length += 7) {
            Came came = came(Arrays.copyOf(whole, length), null);
            assertThat(came.cut()).isTrue();
            assertThat(came.text()).isEqualTo(Arrays.copyOf(TEXT, length - begins));
        }
        assertThat(came(whole, null).text()).isEqualTo(TEXT);
    }

    @ParameterizedTest
    @ValueSource(ints = {8, 7, 6, 5, 4, 3, 2, 1})
    void a_gzip_that_does_not_fit_its_checksum_or_its_length_is_read_whole_and_suspect(int fromEnd) throws IOException {
        byte[] spoilt = Packs.gzip(TEXT);
        spoilt[spoilt.length - fromEnd] ^= 4;
        Came came = came(spoilt, null);
        assertThat(came.text()).isEqualTo(TEXT);
        assertThat(came.suspect()).isTrue();
        assertThat(came.cut()).isFalse();
    }

    @Test
    void a_file_in_a_zip_that_does_not_fit_its_checksum_is_read_whole_and_suspect() throws IOException {
        byte[] after = Packs.zip("p1.csv", TEXT); // its checksum stands after it
        after[indexOf(after, new byte[] {'P', 'K', 7, 8}) + 5] ^= 1;
        byte[] before = known("p1.csv", TEXT);
        before[15] ^= 1;
        for (byte[] spoilt : List.of(after, before)) {
            Came came = came(spoilt, null);
            assertThat(came.text()).isEqualTo(TEXT);
            assertThat(came.suspect()).isTrue();
        }
    }

    /** A wrong checksum with text behind it that nobody read is no matter of the end. */
    @Test
    void what_does_not_fit_its_checksum_in_the_midst_is_refused() throws IOException {
        byte[] first = Packs.gzip(Arrays.copyOf(TEXT, 5000));
        byte[] second = Packs.gzip(Arrays.copyOfRange(TEXT, 5000, TEXT.length));
        byte[] wrongFirst = first.clone();
        wrongFirst[first.length - GZIP_CHECK] ^= 1;
        assertThat(refused(joined(wrongFirst, second), null)).isEqualTo(ProblemKind.PACKED_DAMAGED);
        second[second.length - GZIP_CHECK] ^= 1;
        assertThat(came(joined(first, second), null).suspect()).isTrue();

        byte[] zip = Packs.zip("a.csv", TEXT, "b.csv", TEXT);
        zip[indexOf(zip, new byte[] {'P', 'K', 7, 8}) + 5] ^= 1;
        assertThat(refused(zip, null)).isEqualTo(ProblemKind.PACKED_DAMAGED);
        assertThat(came(zip, "a.csv").suspect()).as("the one that was named").isTrue();
        assertThat(refused(zip, "b.csv")).as("not read past it").isEqualTo(ProblemKind.PACKED_DAMAGED);
        byte[] midst = Packs.gzip(TEXT);
        Arrays.fill(midst, midst.length / 2, midst.length / 2 + 40, (byte) 0xFF);
        assertThat(refused(midst, null)).isEqualTo(ProblemKind.PACKED_DAMAGED);
    }

    /** As strict as of whole archives: what is known to be one of several is asked about. */
    @Test
    void of_several_files_one_is_named_also_where_the_archive_is_cut() throws IOException {
        byte[] zip = Packs.zip("a.csv", TEXT, "b.csv", TEXT, "c.csv", TEXT);
        int second = indexOf(zip, "b.csv".getBytes(StandardCharsets.UTF_8));
        int third = indexOf(zip, "c.csv".getBytes(StandardCharsets.UTF_8));
        for (int length : new int[] {second + 5, second + 200, third - ZIP_HEAD, third + 1, third + 300}) {
            byte[] cut = Arrays.copyOf(zip, length);
            assertThatThrownBy(() -> came(cut, null)).isInstanceOfSatisfying(PackedProblem.class, e -> {
                assertThat(e.problem().kind()).isEqualTo(ProblemKind.PACKED_SEVERAL);
                assertThat((List<?>) e.problem().facts().get(0)).asString().contains("a.csv");
            });
            assertThat(came(cut, "a.csv")).usingRecursiveComparison().isEqualTo(new Came(TEXT, false, false));
        }
        assertThat(refused(Arrays.copyOf(zip, second + 2), null))
                .as("within the name of the second")
                .isEqualTo(ProblemKind.PACKED_SEVERAL);
        assertThat(came(Arrays.copyOf(zip, second - 10), null).cut())
                .as("nobody knows of a second")
                .isTrue();
        assertThat(came(Arrays.copyOf(zip, second + 200), "b.csv").cut()).isTrue();
        assertThat(refused(Arrays.copyOf(zip, second + 200), "c.csv")).isEqualTo(ProblemKind.PACKED_ENDS_EARLY);
    }

    /** As a copy that is broken off can leave it: of its full size, and blank from there on. */
    @Test
    void a_file_whose_end_was_never_written_is_one_that_is_cut_there() throws Exception {
        SplittableRandom random = new SplittableRandom(8);
        byte[] gzip = Packs.gzip(TEXT);
        byte[] zip = Packs.zip("p1.csv", TEXT);
        for (int i = 0; i < 400; i++) {
            byte[] blank = (i % 2 == 0 ? gzip : zip).clone();
            byte with = (byte) (i % 4 < 2 ? 0 : 0xFF);
            int at = 400 + random.nextInt(blank.length - 520);
            Arrays.fill(blank, at, blank.length, with);
            int written = at;
            while (blank[written - 1] == with) {
                written--;
            }
            UpToTheCut in =
                    new UpToTheCut(Packed.open(Reads.inPieces(blank, () -> 1 + random.nextInt(700)), null, USUAL));
            byte[] text = in.readAllBytes();
            assertThat(text)
                    .as("%d of %d, with %d", at, blank.length, with)
                    .isEqualTo(inflated(Arrays.copyOf(blank, written), i % 2 == 0 ? GZIP_HEAD : ZIP_HEAD + 6));
            assertThat(in.isCut()).isTrue();
        }
        assertThat(came(joined(gzip, new byte[900]), null))
                .as("filled up after its end")
                .usingRecursiveComparison()
                .isEqualTo(new Came(TEXT, false, false));
        byte[] same = "6000;50\n".repeat(900_000).getBytes(StandardCharsets.UTF_8); // packs to little but zeros
        assertThat(came(Packs.gzip(same), null).text()).isEqualTo(same);
        assertThat(came(stored("p.bin", joined(new byte[40_000], TEXT)), null).text())
                .isEqualTo(joined(new byte[40_000], TEXT));
    }

    @Test
    void whatever_is_spoilt_it_is_refused_or_told_or_the_text_is_right() throws IOException {
        SplittableRandom random = new SplittableRandom(31);
        List<byte[]> whole =
                List.of(Packs.gzip(TEXT), Packs.zip("a.csv", TEXT), known("a.csv", TEXT), stored("a.csv", TEXT));
        int[] told = new int[4];
        for (int i = 0; i < 6000; i++) {
            byte[] spoilt = whole.get(i % whole.size()).clone();
            for (int flips = random.nextInt(3); flips >= 0; flips--) {
                spoilt[FIRST + random.nextInt(spoilt.length - FIRST)] ^= (byte) (1 << random.nextInt(8));
            }
            int cut = random.nextInt(3) == 0 ? FIRST + random.nextInt(spoilt.length - FIRST) : spoilt.length;
            try {
                Came came = came(Arrays.copyOf(spoilt, cut), null);
                told[came.cut() ? 1 : came.suspect() ? 2 : 3]++;
                if (!came.cut() && !came.suspect()) {
                    assertThat(came.text()).as("%d", i).isEqualTo(TEXT);
                }
            } catch (PackedProblem e) {
                told[0]++;
            }
        }
        assertThat(Arrays.stream(told).min().orElseThrow())
                .as("refused, cut, suspect, whole")
                .isGreaterThan(5);
    }

    @Test
    void limits_hold_before_the_cut() throws IOException {
        byte[] dense = Packs.gzip(new byte[40 << 20]);
        assertThat(refused(Arrays.copyOf(dense, dense.length - 20), null)).isEqualTo(ProblemKind.PACKED_TOO_DENSE);
        byte[] zip = Packs.zip("a.csv", new byte[40 << 20]);
        assertThat(refused(Arrays.copyOf(zip, zip.length - 200), null)).isEqualTo(ProblemKind.PACKED_TOO_DENSE);
        byte[] second = Packs.zip("a.csv", TEXT, "b.csv", new byte[40 << 20]);
        assertThat(refused(Arrays.copyOf(second, second.length - 400), null)).isEqualTo(ProblemKind.PACKED_TOO_DENSE);
        byte[] gzip = Packs.gzip(TEXT);
        UnpackLimits small = new UnpackLimits(10_000, 250, 1 << 20, 1000);
        assertThatThrownBy(() -> new UpToTheCut(Packed.open(
                                new ByteArrayInputStream(Arrays.copyOf(gzip, gzip.length - 9)), null, small))
                        .readAllBytes())
                .isInstanceOfSatisfying(
                        PackedProblem.class,
                        e -> assertThat(e.problem().kind()).isEqualTo(ProblemKind.PACKED_TOO_LARGE));
        byte[] within = Packs.gzip(Packs.gzip(TEXT));
        assertThat(refused(Arrays.copyOf(within, within.length / 2), null)).isEqualTo(ProblemKind.PACKED_WITHIN);
    }

    // As a trace

    /** Packed without being made smaller, so that it is known at which of its bytes the text is cut. */
    @ParameterizedTest
    @ValueSource(strings = {"UTF-8", "UTF-16LE"})
    void a_trace_cut_at_any_byte_is_its_whole_rows_and_says_where_it_ended(String charset) throws IOException {
        String csv = "Time [s],Engine Speed [rpm]\n";
        StringBuilder rows = new StringBuilder(csv);
        for (int i = 0; i < 60; i++) {
            rows.append(i / 10)
                    .append('.')
                    .append(i % 10)
                    .append(',')
                    .append(6000 + 13 * i)
                    .append('\n');
        }
        byte[] text = ((charset.equals("UTF-8") ? "" : "\ufeff") + rows).getBytes(charset);
        byte[] packed = plain(text);
        int begins = indexOf(packed, Arrays.copyOf(text, 40));
        Recognised recognised = Reads.recognise(text).orThrow();
        for (int length = begins + text.length / 2; length < begins + text.length; length++) {
            byte[] cut = Arrays.copyOf(packed, length);
            String read = new String(text, 0, length - begins, charset);
            int whole = (int) read.chars().filter(c -> c == '\n').count() - 1;
            Outcome<TraceRead> came = TraceReader.read(
                    Packed.open(new ByteArrayInputStream(cut), null, USUAL),
                    recognised.form(),
                    new Reducer(TraceSettings.usual()),
                    Watch.none());
            assertThat(came.orThrow().rows()).as(read).isEqualTo(whole);
            assertThat(came.orThrow().defects().times())
                    .as(read)
                    .containsOnly(java.util.Map.entry(DefectKind.CUT_OFF, 1L));
            assertThat(came.orThrow().defects().of(DefectKind.CUT_OFF).get(0).from())
                    .as(read)
                    .isEqualTo((whole - 1) * 100_000L);
            assertThat(came.problems())
                    .containsExactly(
                            Problem.of(ProblemKind.TRACE_CUT_SHORT, (long) whole, new RunningTime((whole - 1) * 100L)));
        }
    }

    @Test
    void a_plain_text_cut_short_says_the_same() {
        String csv = Story.of(1, 20, 30).csv();
        Outcome<TraceRead> came = read(csv.substring(0, csv.length() - 12).getBytes(StandardCharsets.UTF_8));
        assertThat(came.problems()).extracting(Problem::kind).containsExactly(ProblemKind.TRACE_CUT_SHORT);
        assertThat(read(csv.getBytes(StandardCharsets.UTF_8)).problems()).isEmpty();
    }

    @Test
    void a_trace_that_does_not_fit_its_checksum_is_read_whole_and_told() throws IOException {
        byte[] spoilt = Packs.gzip(TEXT);
        spoilt[spoilt.length - GZIP_CHECK] ^= 1;
        Outcome<TraceRead> came = read(spoilt);
        assertThat(came.problems()).containsExactly(Problem.of(ProblemKind.TRACE_SUSPECT));
        assertThat(came.orThrow().defects().times(DefectKind.CHECKSUM)).isEqualTo(1);
        assertThat(came.orThrow().rows()).isEqualTo(read(TEXT).orThrow().rows());
        assertThat(came.orThrow().defects().text()).contains("wrong checksum=1");
    }

    @Test
    void where_the_cut_left_no_row_it_is_refused_for_the_cut() throws IOException {
        byte[] packed = plain(TEXT);
        int begins = indexOf(packed, Arrays.copyOf(TEXT, 40));
        Outcome<TraceRead> came =
                read(Arrays.copyOf(packed, begins + new String(TEXT, StandardCharsets.UTF_8).indexOf('\n') + 2));
        assertThat(came.didWork()).isFalse();
        assertThat(came.problems()).containsExactly(Problem.of(ProblemKind.PACKED_ENDS_EARLY));
    }

    private static Outcome<TraceRead> read(byte[] bytes) {
        try {
            return TraceReader.read(
                    Packed.open(new ByteArrayInputStream(bytes), null, USUAL),
                    Reads.recognise(TEXT).orThrow().form(),
                    new Reducer(TraceSettings.usual()),
                    Watch.none());
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    private static Came came(byte[] bytes, String entry) throws IOException {
        UpToTheCut in = new UpToTheCut(Packed.open(new ByteArrayInputStream(bytes), entry, USUAL));
        byte[] text = in.readAllBytes();
        assertThat(in.read()).as("ended for good").isNegative();
        assertThat(in.flaw().isPresent()).isEqualTo(in.isCut() || in.isSuspect());
        return new Came(text, in.isCut(), in.isSuspect());
    }

    private static ProblemKind refused(byte[] bytes, String entry) throws IOException {
        try {
            Came came = came(bytes, entry);
            throw new AssertionError("read " + came.text().length + " bytes, " + came.cut() + ", " + came.suspect());
        } catch (PackedProblem e) {
            return e.problem().kind();
        }
    }

    /** All that zlib makes of deflated bytes, however they end. */
    private static byte[] inflated(byte[] bytes, int from) throws DataFormatException {
        if (bytes.length <= from) {
            return new byte[0];
        }
        Inflater inflater = new Inflater(true);
        inflater.setInput(bytes, from, bytes.length - from);
        byte[] all = new byte[TEXT.length + 1];
        int length = 0;
        int some;
        do {
            some = inflater.inflate(all, length, all.length - length);
            length += some;
        } while (some > 0);
        inflater.end();
        return Arrays.copyOf(all, length);
    }

    /** A gzip whose text stands in it as it is. */
    private static byte[] plain(byte[] text) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (GZIPOutputStream gzip = new GZIPOutputStream(out) {
            {
                def.setLevel(Deflater.NO_COMPRESSION);
            }
        }) {
            gzip.write(text);
        }
        return out.toByteArray();
    }

    private static byte[] stored(String name, byte[] text) throws IOException {
        ZipEntry entry = new ZipEntry(name);
        entry.setMethod(ZipEntry.STORED);
        entry.setSize(text.length);
        entry.setCrc(crc(text));
        return zip(entry, text);
    }

    /** A zip in which checksum and sizes stand before the file. */
    private static byte[] known(String name, byte[] text) throws IOException {
        Deflater deflater = new Deflater(Deflater.DEFAULT_COMPRESSION, true);
        deflater.setInput(text);
        deflater.finish();
        ZipEntry entry = new ZipEntry(name);
        entry.setSize(text.length);
        entry.setCompressedSize(deflater.deflate(new byte[text.length]));
        entry.setCrc(crc(text));
        deflater.end();
        return zip(entry, text);
    }

    private static byte[] zip(ZipEntry entry, byte[] text) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(out)) {
            zip.putNextEntry(entry);
            zip.write(text);
            zip.closeEntry();
        }
        return out.toByteArray();
    }

    private static long crc(byte[] text) {
        CRC32 crc = new CRC32();
        crc.update(text);
        return crc.getValue();
    }

    private static int indexOf(byte[] all, byte[] some) {
        for (int i = 0; i + some.length <= all.length; i++) {
            if (Arrays.equals(all, i, i + some.length, some, 0, some.length)) {
                return i;
            }
        }
        throw new AssertionError("not in it");
    }

    private static byte[] joined(byte[] one, byte[] other) {
        byte[] both = Arrays.copyOf(one, one.length + other.length);
        System.arraycopy(other, 0, both, one.length, other.length);
        return both;
    }
}
