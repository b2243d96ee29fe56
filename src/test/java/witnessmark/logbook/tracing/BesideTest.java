package witnessmark.logbook.tracing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.SplittableRandom;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.locks.LockSupport;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import witnessmark.logbook.Desk;
import witnessmark.logbook.port.Beside;
import witnessmark.logbook.port.LoggerFile;
import witnessmark.logbook.run.MemoryLogbook;
import witnessmark.outcome.ProblemKind;
import witnessmark.sample.FixedToday;
import witnessmark.sample.SampleBooks;
import witnessmark.sample.SampleViews;
import witnessmark.trace.Packs;
import witnessmark.trace.Story;
import witnessmark.trace.result.TraceSettings;

/** What another thread does of the reading comes to what it comes to on one, whichever of the two is slow. */
@Timeout(60)
class BesideTest {
    private static final Desk DESK =
            new Desk(new MemoryLogbook(SampleViews.untraced()), new FixedToday(SampleViews.OPENING), "Team engineer");

    private final ExecutorService other = Executors.newSingleThreadExecutor();

    @AfterEach
    void end() {
        other.shutdownNow();
    }

    @ParameterizedTest(name = "seed {0}, {1}, beside takes {2} µs for a piece")
    @CsvSource({"1,csv,0", "2,csv,3000", "3,gz,0", "4,gz,1000", "5,zip,500"})
    void it_comes_to_the_same(long seed, String packed, int micros) throws Exception {
        SplittableRandom random = new SplittableRandom(seed);
        byte[] bytes = packed(packed, Story.of(seed, 100, 120).csv());
        AtomicInteger pieces = new AtomicInteger();
        Beside slow = piece -> other.execute(() -> {
            LockSupport.parkNanos(micros == 0 ? 0 : random.nextInt(micros) * 1000L);
            pieces.incrementAndGet();
            piece.run();
        });
        BroughtTrace alone = read(bytes, Beside.none());
        BroughtTrace together = read(bytes, slow);
        assertThat(together.content())
                .isEqualTo(HexFormat.of()
                        .formatHex(MessageDigest.getInstance("SHA-256").digest(bytes)));
        assertThat(together.content()).isEqualTo(alone.content());
        assertThat(together.samples()).isEqualTo(alone.samples()).hasSize(64);
        assertThat(together.kept().bytes()).isEqualTo(alone.kept().bytes());
        assertThat(together.outline()).isEqualTo(alone.outline());
        assertThat(together.parts()).isEqualTo(alone.parts());
        assertThat(pieces.get()).as("done beside").isGreaterThan(1);
    }

    @Test
    void what_it_reads_is_known_by_the_bytes_that_were_read() throws IOException {
        byte[] bytes = Story.of(7, 60).csv().getBytes(StandardCharsets.UTF_8);
        byte[] changed = bytes.clone();
        changed[bytes.length - 2] ^= 1;
        AtomicInteger opened = new AtomicInteger();
        LoggerFile file = new HeldFile("stick.csv", bytes) {
            @Override
            public InputStream open() { // another file lies there as soon as it was read
                return new ByteArrayInputStream(opened.incrementAndGet() <= 3 ? bytes : changed);
            }
        };
        BroughtTrace read = read(file, other::execute);
        assertThat(read.content()).isEqualTo(read(bytes, Beside.none()).content());
    }

    @Test
    void what_goes_wrong_beside_is_thrown_to_the_one_who_reads() {
        Relay<byte[]> relay = new Relay<>(other::execute, () -> new byte[1]);
        List<Integer> done = new ArrayList<>();
        relay.give(relay.next(), full -> done.add(1));
        relay.give(relay.next(), full -> {
            throw new UncheckedIOException(new IOException("no space left"));
        });
        relay.give(relay.next(), full -> done.add(2));
        assertThatThrownBy(relay::end).isInstanceOf(UncheckedIOException.class).hasMessageContaining("no space left");
        assertThat(done).as("nothing after it").containsExactly(1);
    }

    @Test
    void a_reader_that_is_stopped_does_not_wait_for_a_thread_that_never_comes() {
        Relay<byte[]> relay = new Relay<>(piece -> {}, () -> new byte[1]);
        Thread.currentThread().interrupt();
        assertThatThrownBy(relay::end).isInstanceOf(UncheckedIOException.class);
    }

    @Test
    void a_reading_that_is_given_up_leaves_nothing_behind_and_another_begins() {
        byte[] bytes = Story.of(9, 100, 120).csv().getBytes(StandardCharsets.UTF_8);
        BringInTrace bringIn = new BringInTrace(DESK, SampleBooks.ids(), other::execute);
        assertThat(bringIn.read(
                                new HeldFile("a.csv", bytes),
                                TraceAnswers.none(),
                                TraceSettings.usual(),
                                true,
                                read -> read < bytes.length / 2)
                        .problems())
                .extracting(problem -> problem.kind())
                .containsExactly(ProblemKind.TRACE_STOPPED);
        assertThat(read(bytes, other::execute).samples())
                .isEqualTo(read(bytes, Beside.none()).samples());
    }

    private static BroughtTrace read(byte[] bytes, Beside beside) {
        return read(new HeldFile("2026-05-03_41_race1.csv", bytes), beside);
    }

    private static BroughtTrace read(LoggerFile file, Beside beside) {
        return new BringInTrace(DESK, SampleBooks.ids(), beside)
                .read(file, TraceAnswers.none(), TraceSettings.usual(), true, read -> true)
                .orThrow();
    }

    private static byte[] packed(String how, String text) {
        return switch (how) {
            case "gz" -> Packs.gzip(text);
            case "zip" -> Packs.zip("run.csv", text);
            default -> text.getBytes(StandardCharsets.UTF_8);
        };
    }
}
