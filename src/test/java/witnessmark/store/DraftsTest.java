package witnessmark.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Instant;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import witnessmark.logbook.port.Drafts.Begun;
import witnessmark.logbook.port.Drafts.Draft;
import witnessmark.logbook.port.Logbook;
import witnessmark.store.DraftFiles.Place;

/** What was begun and not saved is found again, wherever it had to be kept. */
class DraftsTest {
    private static final Instant NOON = Instant.parse("2026-07-05T12:00:00Z");

    @TempDir
    private Path folder;

    private static Draft draft(String text, int minutesLater) {
        return new Draft(Map.of("text", text), NOON.plusSeconds(60L * minutesLater));
    }

    @Test
    void everything_begun_is_told_the_latest_first_until_it_is_let_go() {
        TestLogbooks logbooks = new TestLogbooks(folder);
        try (Logbook logbook = logbooks.create()) {
            assertThat(logbook.drafts().begun()).isEmpty();
            logbook.drafts().keep("sheet", "new", draft("first", 0));
            logbook.drafts().keep("run", "new", draft("second", 1));
            logbook.drafts().keep("sheet", "new", draft("first again", 2));
        }
        try (Logbook again = logbooks.open()) {
            assertThat(again.drafts().begun())
                    .containsExactly(
                            new Begun("sheet", "new", NOON.plusSeconds(120)),
                            new Begun("run", "new", NOON.plusSeconds(60)));
            again.drafts().discard("sheet", "new");
            assertThat(again.drafts().begun()).extracting(Begun::form).containsExactly("run");
        }
    }

    @Test
    void a_draft_kept_in_a_file_in_need_is_told_like_the_others_and_once() {
        DraftFiles files = new DraftFiles(folder.resolve("drafts"), folder.resolve("our.witness"), new Canonical());
        assertThat(files.begun()).isEmpty();
        assertThat(files.keep(Place.WRITER, "sheet", "new", draft("in need", 5)))
                .isTrue();
        KeptDrafts drafts = new KeptDrafts(
                new KeptDrafts.Access() {
                    @Override
                    public <T> T with(KeptDrafts.Use<T> use, boolean toWrite) throws java.sql.SQLException {
                        throw new java.sql.SQLException("lost");
                    }
                },
                files,
                false);

        assertThat(drafts.begun()).containsExactly(new Begun("sheet", "new", NOON.plusSeconds(300)));
        drafts.discard("sheet", "new");
        assertThat(drafts.begun()).isEmpty();
    }

    @Test
    void a_draft_says_in_which_other_file_of_the_logbook_it_was_typed() {
        Path drafts = folder.resolve("drafts");
        DraftFiles copy = new DraftFiles(drafts, folder.resolve("our older.witness"), new Canonical());
        DraftFiles ours = new DraftFiles(drafts, folder.resolve("our.witness"), new Canonical());
        copy.keep(Place.READER, "run", "new", draft("typed in the copy", 0));

        assertThat(copy.find(Place.READER, "run", "new").orElseThrow().typedIn())
                .isNull();
        assertThat(ours.find(Place.READER, "run", "new"))
                .hasValue(new Draft(Map.of("text", "typed in the copy"), NOON, "our older.witness"));
        ours.keep(Place.READER, "run", "new", draft("typed on", 1));
        assertThat(ours.find(Place.READER, "run", "new").orElseThrow().typedIn())
                .isNull();
    }

    /** Two windows on one file: the one that can only read keeps what is typed there apart, and neither takes the other's away. */
    @Test
    void what_is_typed_where_it_can_only_be_read_is_not_lost_to_the_draft_of_who_can_write() {
        TestLogbooks logbooks = new TestLogbooks(folder);
        logbooks.create().close();
        try (Logbook writer = logbooks.open();
                Logbook reader = logbooks.files.open(logbooks.file()).orThrow()) {
            assertThat(reader.readOnly()).isPresent();
            writer.drafts().keep("run", "new", draft("41 minutes", 0));
            reader.drafts().keep("run", "new", draft("43 minutes", 5));
            writer.drafts().keep("run", "new", draft("41 minutes", 1));
        }
        try (Logbook again = logbooks.open()) {
            assertThat(again.drafts().find("run", "new").orElseThrow().fields()).containsEntry("text", "43 minutes");
            again.drafts().keep("run", "new", draft("43 minutes, 12 laps", 6));
            again.drafts().discard("run", "new"); // it was saved
            assertThat(again.drafts().find("run", "new").orElseThrow().fields())
                    .as("the other comes up then")
                    .containsEntry("text", "41 minutes");
            again.drafts().discard("run", "new");
            assertThat(again.drafts().find("run", "new")).isEmpty();
        }
    }
}
