package witnessmark.abuse;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import witnessmark.domain.Entry;
import witnessmark.domain.Run;
import witnessmark.logbook.port.Drafts.Draft;
import witnessmark.logbook.port.Logbook;
import witnessmark.logbook.port.PhotoFile;
import witnessmark.outcome.Outcome;
import witnessmark.store.Garage;
import witnessmark.store.RandomFacts;
import witnessmark.store.TestLogbooks;

/**
 * A program that keeps a logbook on a watched disk and says, in a file whose name ends in {@code .said}, what it begins
 * and what it was told is saved; the disk's log has that in its order with everything else.
 */
final class DiskProgram implements AutoCloseable {
    private final TestLogbooks logbooks;
    private final FileChannel said;

    private DiskProgram(Path folder) throws IOException {
        this.logbooks = new TestLogbooks(folder);
        this.said =
                FileChannel.open(folder.resolve("program.said"), StandardOpenOption.CREATE, StandardOpenOption.WRITE);
        say("at " + folder);
    }

    /** @param args season or recover, then folders */
    public static void main(String[] args) throws IOException {
        for (String folder : List.of(args).subList(1, args.length)) {
            try (DiskProgram program = new DiskProgram(Path.of(folder))) {
                if (args[0].equals("season")) {
                    program.season();
                } else {
                    program.recover();
                }
            }
        }
    }

    private void season() throws IOException {
        Garage garage = new Garage();
        try (Logbook logbook = logbooks.create()) {
            say("made");
            write(logbook, garage.all());
            Entry<?> fitted = Garage.made(Garage.fitment(garage.r1, garage.e1, garage.rods, 0, 5));
            write(logbook, List.of(fitted, Garage.made(Garage.inCar(garage.e1, garage.car7, 0, -1))));
            write(logbook, new RandomFacts(Numbers.seed()).oneOfEach(logbook.facts())); // as an import does
            runs(logbook, garage, 1, 7);
            photo(logbook, 1);
            backUp(logbook);
            photo(logbook, 2);
            runs(logbook, garage, 20, 23);
        }
        say("closed");
        try (Logbook logbook = logbooks.open()) {
            runs(logbook, garage, 40, 43);
            photo(logbook, 3);
        }
        say("closed");
    }

    private void runs(Logbook logbook, Garage garage, int from, int to) throws IOException {
        for (int hour = from; hour < to; hour++) {
            draft(logbook, "half a run " + hour);
            Entry<Run> run = Garage.made(garage.run("run " + hour, garage.car7, null, hour));
            write(logbook, List.of(run));
            if (hour % 3 == 0) {
                write(logbook, List.of(Garage.struck(run)));
            }
        }
    }

    /** What somebody does after a power cut: opens it, writes on, goes home. */
    private void recover() throws IOException {
        Outcome<Logbook> opened = logbooks.files.open(logbooks.file());
        if (!opened.didWork()) {
            return; // the test has found it open already, or absent
        }
        try (Logbook logbook = opened.orThrow()) {
            Garage garage = new Garage();
            write(logbook, List.of(garage.design, Garage.made(new witnessmark.domain.Car("after the cut", ""))));
        } catch (IllegalStateException refused) {
            say("refused " + refused.getMessage());
        }
    }

    private void write(Logbook logbook, List<? extends Entry<?>> entries) throws IOException {
        String all = entries.stream()
                .map(entry -> entry.id().text() + ":" + entry.rev())
                .collect(Collectors.joining(" "));
        say("begins " + all);
        TestLogbooks.write(logbook, entries).orThrow();
        say("saved " + all);
    }

    /** As the program does: the bytes first, then what is written of them. */
    private void photo(Logbook logbook, int number) throws IOException {
        PhotoFile taken =
                logbook.photos().take(CardPhoto.onCard(number)).orThrow().file();
        write(logbook, List.of(CardPhoto.of(taken)));
    }

    private void draft(Logbook logbook, String text) throws IOException {
        say("drafts " + text);
        logbook.drafts().keep("run", "", new Draft(Map.of("text", text), Instant.EPOCH));
        say("drafted " + text);
    }

    private void backUp(Logbook logbook) throws IOException {
        Path copy = logbook.backUp().orThrow();
        say("backup " + copy);
    }

    private void say(String line) throws IOException {
        said.write(ByteBuffer.wrap((line + "\n").getBytes(StandardCharsets.UTF_8)));
    }

    @Override
    public void close() throws IOException {
        said.close();
    }
}
