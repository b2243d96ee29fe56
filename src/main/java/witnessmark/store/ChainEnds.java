package witnessmark.store;

import java.nio.file.Path;
import java.sql.SQLException;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import witnessmark.domain.history.Amendment;
import witnessmark.logbook.port.LogbookCopies.Lacks;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;
import witnessmark.quantity.Moment;

/**
 * Where the chains of changes in a logbook ended at some moment: by them a file can be told to have lost what it had.
 *
 * @param ends by device
 * @param lastMillis when the last change was written, milliseconds since 1970; 0 when there was none
 */
record ChainEnds(Map<String, End> ends, long lastMillis) {
    private static final String PARTED = "\t";

    ChainEnds {
        ends = Map.copyOf(ends);
    }

    /**
     * The end of one device's chain.
     *
     * @param number of its last change
     * @param hash of that change, which rests on all before it
     */
    record End(long number, String hash) {}

    /**
     * Changes that were in a file and are not.
     *
     * @param many how many, or more
     * @param heldMillis when the last change was written that the file has of those chains; when it was made for none
     * @param lastMillis when the last one was written that was known
     */
    record Missing(long many, long heldMillis, long lastMillis) {
        /** The same for people. */
        Problem told(Path path) {
            return Problem.of(ProblemKind.CHANGES_MISSING, many, path, moment(lastMillis), moment(heldMillis));
        }

        Lacks lacks() {
            return new Lacks(many, moment(lastMillis));
        }

        String text() {
            return many + PARTED + heldMillis + PARTED + lastMillis;
        }

        static Missing read(String text) {
            String[] parts = text.split(PARTED, 3);
            if (parts.length < 3) {
                throw new IllegalArgumentException("what is missing has a number and two times");
            }
            return new Missing(Long.parseLong(parts[0]), Long.parseLong(parts[1]), Long.parseLong(parts[2]));
        }

        private static Moment moment(long millis) {
            return Moment.of(Instant.ofEpochMilli(millis), ZoneId.systemDefault());
        }
    }

    static ChainEnds of(Database database) throws SQLException {
        Map<String, End> ends = new TreeMap<>();
        database.each(
                "amendment/heads",
                head -> ends.put(Database.text(head, 1), new End(head.getLong(2), Database.text(head, 3))));
        return new ChainEnds(ends, database.number("amendment/last_clock"));
    }

    /** The same after a change was written. */
    ChainEnds after(List<Amendment> written) {
        if (written.isEmpty()) {
            return this;
        }
        Amendment last = written.get(written.size() - 1);
        Map<String, End> next = new TreeMap<>(ends);
        next.put(last.device(), new End(last.number(), last.hash()));
        return new ChainEnds(next, last.clock().millis());
    }

    /** Whether nothing was written in a file that has all of these since they were its ends. */
    boolean areThoseOf(Database database) throws SQLException {
        String last = database.text("amendment/last_hash");
        return last.isEmpty()
                ? ends.isEmpty()
                : ends.values().stream().anyMatch(end -> end.hash().equals(last));
    }

    /** What a file lacks that had these ends; empty when it has all, whatever was written in it since. */
    Optional<Missing> missingIn(Database database) throws SQLException {
        long many = 0;
        long[] held = {0, 0};
        database.each("logbook/all", made -> held[1] = made.getLong(2));
        for (Map.Entry<String, End> end : ends.entrySet()) {
            String device = end.getKey();
            long number = end.getValue().number();
            if (database.number(
                            "amendment/exists", device, number, end.getValue().hash())
                    == 1) {
                continue;
            }
            held[0] = 0;
            database.each(
                    "amendment/of_device_at",
                    row -> {
                        held[0] = row.getLong(1);
                        held[1] = Math.max(held[1], row.getLong(2));
                    },
                    device,
                    number);
            many += Math.max(1, number - held[0]); // one of that number is another's: the two went apart before it
        }
        return many == 0 ? Optional.empty() : Optional.of(new Missing(many, held[1], lastMillis));
    }

    String text() {
        StringBuilder text = new StringBuilder(Long.toString(lastMillis)).append('\n');
        new TreeMap<>(ends)
                .forEach((device, end) -> text.append(end.number())
                        .append(PARTED)
                        .append(end.hash())
                        .append(PARTED)
                        .append(device)
                        .append('\n'));
        return text.toString();
    }

    /**
     * Reads such a text.
     *
     * @throws IllegalArgumentException if it is none
     */
    static ChainEnds read(String text) {
        List<String> lines = text.lines().toList();
        if (lines.isEmpty()) {
            throw new IllegalArgumentException("the ends of chains begin with a time");
        }
        Map<String, End> ends = new TreeMap<>();
        for (String line : lines.subList(1, lines.size())) {
            String[] parts = line.split(PARTED, 3);
            if (parts.length < 3) {
                throw new IllegalArgumentException("the end of a chain has a number, a hash and a device");
            }
            ends.put(parts[2], new End(Long.parseLong(parts[0]), parts[1]));
        }
        return new ChainEnds(ends, Long.parseLong(lines.get(0)));
    }
}
