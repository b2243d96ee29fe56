package witnessmark.store;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import witnessmark.logbook.port.Kept;
import witnessmark.outcome.Outcome;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;

/** Bytes kept beside the entries that name them, in pieces, so that no page of the file is held up by a long one. */
final class KeptPieces {
    private static final Logger LOG = LoggerFactory.getLogger(KeptPieces.class);

    /** Bytes of a piece. */
    static final int PIECE = 1 << 18;

    /** What is kept by a name is not what was once written by it. */
    static final class Changed extends Exception {
        private static final long serialVersionUID = 1;

        Changed(String sha256) {
            super("what is kept by " + sha256 + " is not what it was");
        }
    }

    private KeptPieces() {}

    /**
     * Writes them within the transaction of the caller, piece by piece, unless they are there.
     *
     * @throws Changed if they are not what they were said to be; the caller rolls back
     * @throws IOException if they cannot be read from where they lie
     */
    static void put(Database database, Kept kept) throws SQLException, IOException, Changed {
        if (database.number("kept_piece/has", kept.sha256()) == 1) {
            return;
        }
        MessageDigest digest = Sha256.begun();
        try (InputStream in = kept.open()) {
            int left = Kept.MOST;
            int number = 0;
            for (byte[] piece = in.readNBytes(PIECE); piece.length > 0; piece = in.readNBytes(PIECE)) {
                left -= piece.length;
                if (left < 0) {
                    break;
                }
                digest.update(piece);
                database.run("kept_piece/insert", kept.sha256(), number, piece);
                number++;
            }
        }
        if (!Sha256.text(digest).equals(kept.sha256())) {
            throw new Changed(kept.sha256());
        }
    }

    /**
     * @return empty when nothing is kept by that name
     * @throws Changed if what is kept by it is something else
     */
    static Optional<Kept> of(Database database, String sha256) throws SQLException, Changed {
        ByteArrayOutputStream all = new ByteArrayOutputStream();
        database.each(
                "kept_piece/all_of",
                row -> {
                    byte @Nullable [] piece = row.getBytes(1);
                    if (piece != null && all.size() + piece.length <= Kept.MOST) {
                        all.writeBytes(piece);
                    }
                },
                sha256);
        if (all.size() == 0) {
            return Optional.empty();
        }
        Kept kept = Kept.of(all.toByteArray());
        if (!kept.sha256().equals(sha256)) {
            throw new Changed(sha256);
        }
        return Optional.of(kept);
    }

    /** The same from a connection of its own, with why not where it cannot be had. */
    static Outcome<Optional<Kept>> read(Database.Work<Database> open, Path path, String sha256) {
        try (Database reader = open.run()) {
            return Outcome.worked(of(reader, sha256));
        } catch (Changed e) {
            LOG.warn("in {}: {}", path, e.getMessage());
            return Outcome.didNot(Problem.of(ProblemKind.SAMPLES_CHANGED, path));
        } catch (SQLException e) {
            return Outcome.didNot(Faults.reading(path, e));
        }
    }

    /** The names of everything that is kept, from a connection of its own. */
    static Outcome<List<String>> readNames(Database.Work<Database> open, Path path) {
        try (Database reader = open.run()) {
            return Outcome.worked(names(reader));
        } catch (SQLException e) {
            return Outcome.didNot(Faults.reading(path, e));
        }
    }

    /** The names of everything that is kept. */
    static List<String> names(Database database) throws SQLException {
        List<String> names = new ArrayList<>();
        database.each("kept_piece/names", row -> names.add(String.valueOf(row.getString(1))));
        return names;
    }
}
