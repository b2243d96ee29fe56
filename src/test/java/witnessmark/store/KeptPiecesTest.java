package witnessmark.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.Statement;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import witnessmark.domain.Entry;
import witnessmark.domain.Person;
import witnessmark.domain.Standing;
import witnessmark.logbook.port.Change;
import witnessmark.logbook.port.Kept;
import witnessmark.logbook.port.Logbook;
import witnessmark.logbook.port.Written;
import witnessmark.outcome.Outcome;
import witnessmark.outcome.ProblemKind;

/** Bytes kept beside the entries that name them. */
class KeptPiecesTest {
    @TempDir
    Path folder;

    @ParameterizedTest(name = "{0} bytes")
    @ValueSource(ints = {1, 1_000, KeptPieces.PIECE - 1, KeptPieces.PIECE, KeptPieces.PIECE + 1, 3 * KeptPieces.PIECE})
    void come_back_as_they_were_and_are_known_by_what_they_are(int size) throws Exception {
        byte[] bytes = bytes(size, 7);
        TestLogbooks logbooks = new TestLogbooks(folder);
        Kept kept = Kept.of(bytes);
        assertThat(kept.sha256())
                .isEqualTo(HexFormat.of()
                        .formatHex(MessageDigest.getInstance("SHA-256").digest(bytes)));
        try (Logbook logbook = logbooks.create()) {
            logbook.write(new Change("Ada", "kept", List.of(person("Ada")), List.of(kept)))
                    .orThrow();
            logbook.write(new Change("Ada", "again", List.of(person("Bo")), List.of(kept)))
                    .orThrow();
        }
        try (Logbook logbook = logbooks.open()) {
            assertThat(logbook.kept(kept.sha256()).orThrow().orElseThrow().bytes())
                    .isEqualTo(bytes);
            assertThat(logbook.kept("0".repeat(64)).orThrow()).isEqualTo(Optional.empty());
            assertThat(logbook.verify()).isEmpty();
        }
    }

    @Test
    void are_not_there_when_the_entries_that_name_them_are_refused() {
        TestLogbooks logbooks = new TestLogbooks(folder);
        Kept kept = Kept.of(bytes(10, 3));
        try (Logbook logbook = logbooks.create()) {
            Entry<Person> ada = person("Ada");
            Entry<Person> stale = new Entry<>(ada.id(), ada.fact(), Standing.IN_FORCE, null, 5);
            assertThat(logbook.write(new Change("Ada", "kept", List.of(stale), List.of(kept)))
                            .didWork())
                    .isFalse();
            assertThat(logbook.kept(kept.sha256()).orThrow()).isEqualTo(Optional.empty());
        }
    }

    /** A file of a season folder may be changed, cut or taken away between being looked at and being written. */
    @ParameterizedTest
    @ValueSource(strings = {"other", "shorter", "gone"})
    void what_lies_elsewhere_goes_in_only_if_it_still_is_what_it_was_said_to_be(String meanwhile) {
        byte[] bytes = bytes(KeptPieces.PIECE + 77, 9);
        Kept said = Kept.at(Kept.of(bytes).sha256(), bytes.length, () -> switch (meanwhile) {
            case "other" -> new ByteArrayInputStream(bytes(bytes.length, 10));
            case "shorter" -> new ByteArrayInputStream(bytes, 0, KeptPieces.PIECE);
            default -> throw new NoSuchFileException("kept");
        });
        try (Logbook logbook = new TestLogbooks(folder).create()) {
            Outcome<Written> written = logbook.write(new Change("Ada", "kept", List.of(person("Ada")), List.of(said)));
            assertThat(written.problems())
                    .extracting(problem -> problem.kind())
                    .containsExactly(ProblemKind.CANNOT_READ_FILE);
            assertThat(logbook.facts().of(Person.class).size()).isZero();
            assertThat(logbook.kept(said.sha256()).orThrow()).isEqualTo(Optional.empty());
            assertThat(logbook.keptNames().orThrow()).isEmpty();
            assertThat(logbook.verify()).isEmpty();

            logbook.write(new Change("Ada", "again", List.of(person("Ada")), List.of(Kept.of(bytes))))
                    .orThrow();
            assertThat(logbook.keptNames().orThrow()).containsExactly(said.sha256());
        }
    }

    @Test
    void bytes_that_were_missing_go_in_without_an_entry() {
        Kept kept = Kept.of(bytes(500, 2));
        TestLogbooks logbooks = new TestLogbooks(folder);
        try (Logbook logbook = logbooks.create()) {
            Written written = logbook.write(new Change("Ada", "kept", List.of(), List.of(kept)))
                    .orThrow();
            assertThat(written.amendments()).isEmpty();
        }
        try (Logbook logbook = logbooks.open()) {
            assertThat(logbook.keptNames().orThrow()).containsExactly(kept.sha256());
            assertThat(logbook.verify()).isEmpty();
        }
    }

    @Test
    void a_byte_changed_from_outside_is_seen() throws Exception {
        TestLogbooks logbooks = new TestLogbooks(folder);
        Kept kept = Kept.of(bytes(1_000, 5));
        try (Logbook logbook = logbooks.create()) {
            logbook.write(new Change("Ada", "kept", List.of(person("Ada")), List.of(kept)))
                    .orThrow();
        }
        try (Connection other = DriverManager.getConnection("jdbc:sqlite:" + logbooks.file());
                Statement statement = other.createStatement()) {
            String trigger = "";
            try (var rows =
                    statement.executeQuery("SELECT sql FROM sqlite_schema WHERE name = 'kept_piece_no_update'")) {
                trigger = rows.getString(1);
            }
            statement.execute("DROP TRIGGER kept_piece_no_update");
            statement.execute("UPDATE kept_piece SET bytes = zeroblob(1000)");
            statement.execute(trigger);
        }
        try (Logbook logbook = logbooks.open()) {
            assertThat(logbook.kept(kept.sha256()).problems())
                    .extracting(problem -> problem.kind())
                    .containsExactly(ProblemKind.SAMPLES_CHANGED);
            assertThat(logbook.verify())
                    .extracting(problem -> problem.kind())
                    .containsExactly(ProblemKind.SAMPLES_CHANGED);
        }
    }

    @Test
    void nothing_and_too_much_are_not_kept() {
        assertThatThrownBy(() -> Kept.of(new byte[0])).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Kept.of(new byte[Kept.MOST + 1])).isInstanceOf(IllegalArgumentException.class);
    }

    private static byte[] bytes(int size, long seed) {
        byte[] bytes = new byte[size];
        new Random(seed).nextBytes(bytes);
        return bytes;
    }

    private static Entry<Person> person(String name) {
        return Garage.made(new Person(name, "engines"));
    }
}
