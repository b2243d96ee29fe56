package witnessmark.desktop.start;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import javax.swing.JRootPane;
import javax.swing.JTable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import witnessmark.desktop.keeping.Elsewhere;
import witnessmark.desktop.shell.Theme;
import witnessmark.desktop.testing.AccessibleWalk;
import witnessmark.desktop.testing.Contrast;
import witnessmark.desktop.testing.LayoutRules;
import witnessmark.desktop.testing.Looks;
import witnessmark.desktop.testing.Pictures;
import witnessmark.desktop.testing.UiTest;
import witnessmark.domain.Entry;
import witnessmark.domain.Person;
import witnessmark.domain.Standing;
import witnessmark.logbook.port.Logbook;
import witnessmark.logbook.port.Written;
import witnessmark.outcome.Outcome;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;
import witnessmark.sample.SampleBooks;
import witnessmark.store.Holder;
import witnessmark.store.SqliteLogbookFiles;
import witnessmark.wording.Texts;

/** Copies of the logbook as they are seen and brought back in the window. */
@UiTest
class KeepingPagesTest {
    @TempDir
    Path folder;

    @ParameterizedTest(name = "{0} {1} at {2}, pseudo-language {3}")
    @CsvSource({
        "restore, LIGHT, 1.0, false",
        "restore, DARK, 1.5, false",
        "restore, LIGHT, 1.0, true",
        "second, LIGHT, 1.0, false",
        "second, DARK, 1.5, false",
        "salvaged, LIGHT, 1.0, false",
        "salvaged, DARK, 1.5, false",
        "aside, LIGHT, 1.0, false",
        "aside, DARK, 1.5, false",
        "found, LIGHT, 1.0, false"
    })
    void pages_keep_the_rules_of_the_window(String page, Theme theme, float zoom, boolean pseudo) throws IOException {
        Texts texts = pseudo ? Texts.pseudo() : Texts.in(Locale.UK);
        try (StartedWindow window = new StartedWindow(folder, Looks.look(theme, zoom), texts)) {
            show(window, page);
            JRootPane root = window.laid(1366, 768);
            String name = "keeping-" + page + "-" + theme + "-" + Math.round(zoom * 100) + (pseudo ? "-pseudo" : "");
            Pictures.write(name.toLowerCase(Locale.ROOT), root);
            assertThat(LayoutRules.broken(root)).isEmpty();
            assertThat(AccessibleWalk.faults(root)).isEmpty();
            assertThat(Contrast.tooLow(root)).isEmpty();
        }
    }

    @Test
    void backups_are_listed_checked_and_one_comes_back_as_a_new_file() throws IOException {
        try (StartedWindow window = new StartedWindow(folder, Looks.light())) {
            write(window, "One");
            window.logbook.logbook().backUp().orThrow();
            write(window, "Two");
            window.logbook.logbook().backUp().orThrow();
            window.perform("restore");
            JTable table = window.ui().table("Copies");
            assertThat(table.getRowCount()).as("that of opening too").isEqualTo(3);
            assertThat(window.said()).contains("3 copies", "as it was written", "Marrowgate Racing");
            Path back = folder.resolve("back");
            window.answer = back;
            window.press("As a new file…");
            assertThat(folder.resolve("back.witness")).exists();
            assertThat(window.pane.getAccessibleContext()).isNotNull();
            window.press("Open it");
            assertThat(window.opened).contains("open back.witness");
        }
    }

    /** On a new laptop nothing is there but the sample: what comes back goes by its own name, among the documents. */
    @Test
    void from_the_sample_the_teams_own_logbook_comes_back_by_its_name() throws IOException {
        try (StartedWindow window = new StartedWindow(folder, Looks.light(), Texts.in(Locale.UK), true)) {
            Path stick = Files.createDirectories(folder.resolve("stick"));
            Path copy;
            try (Logbook ours =
                    files().create(folder.resolve("team 2026.witness")).orThrow()) {
                copy = ours.backUp().orThrow();
            }
            Files.copy(copy, stick.resolve(copy.getFileName()));
            window.perform("restore");
            window.answer = stick;
            window.press("From a stick or folder…");
            window.answer = folder.resolve("back.witness");
            window.press("As a new file…");
            assertThat(window.suggestedLogbook).isEqualTo(folder.resolve("team 2026.witness"));
        }
    }

    @Test
    void how_the_check_of_all_came_out_is_said_in_the_end() throws IOException {
        try (StartedWindow window = new StartedWindow(folder, Looks.light())) {
            write(window, "One");
            Path copy = window.logbook.logbook().backUp().orThrow();
            window.perform("restore");
            assertThat(window.said())
                    .contains("2 copies, the one last saved in first. Checked: as written.")
                    .doesNotContain("being checked");
            window.press("Close");
            tear(copy);
            window.perform("restore");
            JTable table = window.ui().table("Copies");
            assertThat(table.getSelectedRow()).as("the first that is good").isEqualTo(1);
            assertThat(window.said()).contains("2 copies, the one last saved in first. Checked: 1 is not as");
        }
    }

    @Test
    void in_its_place_is_handed_to_the_window_with_the_newest_copy_in_hand() {
        try (StartedWindow window = new StartedWindow(folder, Looks.light())) {
            write(window, "One");
            Path copy = window.logbook.logbook().backUp().orThrow();
            window.perform("restore");
            window.press("In its place");
            assertThat(window.opened)
                    .contains("restore " + copy.getFileName() + " as "
                            + window.logbook.logbook().path().getFileName());
        }
    }

    /** An older file came in the place of the logbook, and was copied when it was opened. */
    @Test
    void the_copy_in_hand_is_the_one_last_saved_in_and_not_the_one_made_last() throws IOException {
        try (StartedWindow window = new StartedWindow(folder, Looks.light())) {
            write(window, "One");
            Path before = window.logbook.logbook().backUp().orThrow();
            write(window, "Two");
            Path last = window.logbook.logbook().backUp().orThrow();
            String name = String.valueOf(before.getFileName());
            Files.copy(before, before.resolveSibling(name.replaceFirst("-\\d{8}T", "-20991231T")));
            window.perform("restore");
            window.press("In its place");
            assertThat(window.opened).anyMatch(opened -> opened.startsWith("restore " + last.getFileName() + " as "));
        }
    }

    @Test
    void a_copy_that_is_not_good_is_told_so_and_does_not_come_back() throws IOException {
        try (StartedWindow window = new StartedWindow(folder, Looks.light())) {
            write(window, "One");
            Path copy = window.logbook.logbook().backUp().orThrow();
            tear(copy);
            window.perform("restore");
            assertThat(window.said()).containsPattern("thing.? not as written");
            window.ui().table("Copies").setRowSelectionInterval(0, 0);
            window.answer = folder.resolve("back.witness");
            window.press("As a new file…");
            assertThat(folder.resolve("back.witness")).doesNotExist();
            assertThat(window.said()).contains("is not as it was written");
        }
    }

    @Test
    void with_no_copy_at_all_it_says_where_to_look_and_looks_there() throws IOException {
        try (StartedWindow window = new StartedWindow(folder, Looks.light())) {
            Files.move(folder.resolve("data").resolve("backups"), folder.resolve("lost"));
            window.perform("restore");
            assertThat(window.said()).contains("No copy is kept");
            Path stick = Files.createDirectories(folder.resolve("stick"));
            window.answer = stick;
            window.press("From a stick or folder…");
            assertThat(window.said()).contains("No logbook and no copy of one lies in " + stick);
            try (Logbook made = files().create(stick.resolve("theirs.witness")).orThrow()) {
                assertThat(made.verify()).isEmpty();
            }
            window.press("From a stick or folder…");
            assertThat(window.said()).contains("theirs", "1 copy lies in");
        }
    }

    @Test
    void the_second_place_is_asked_for_once_and_written_to_without_being_asked_again() throws IOException {
        try (StartedWindow window = new StartedWindow(folder, Looks.light());
                Elsewhere elsewhere = window.start.copies().watchElsewhere(() -> true)) {
            window.settle();
            assertThat(window.said()).contains("Only on this laptop").doesNotContain("A second place, such as");
            write(window, "One");
            elsewhere.tick();
            window.settle();
            assertThat(window.said()).contains("A second place, such as");
            window.press("Not now");
            write(window, "Two");
            elsewhere.tick();
            window.settle();
            assertThat(window.said()).as("asked once").doesNotContain("A second place, such as");

            Path stick = Files.createDirectories(folder.resolve("stick"));
            window.answer = stick;
            window.perform("second");
            window.press("Choose a place…");
            assertThat(copies(stick)).hasSize(1);
            assertThat(window.said()).contains("Second copy", "same disk");
            write(window, "Three");
            elsewhere.tick();
            window.settle();
            assertThat(copies(stick)).hasSize(2);

            Path out = Files.move(stick, folder.resolve("out"));
            write(window, "Four");
            elsewhere.tick();
            window.settle();
            assertThat(window.said()).contains("Only on this laptop since");
            assertThat(copies(out)).hasSize(2);
            Files.move(out, stick);
            elsewhere.tick();
            window.settle();
            assertThat(copies(stick)).hasSize(2); // of one half hour only the two newest stay
            assertThat(window.said()).contains("Second copy").doesNotContain("Only on this laptop");

            window.perform("second");
            window.press("Stop copying there");
            assertThat(window.said()).contains("Only on this laptop");
            assertThat(copies(stick)).as("what lies there stays").hasSize(2);
        }
    }

    @Test
    void a_damaged_logbook_is_salvaged_and_the_new_one_opened() throws IOException {
        try (StartedWindow window = new StartedWindow(folder, Looks.light())) {
            show(window, "salvaged");
            assertThat(window.said()).contains("records are in", "their history says that they are salvaged");
            window.press("Open the new logbook");
            assertThat(window.opened).contains("open new.witness");
        }
    }

    @Test
    void a_logbook_whose_file_is_gone_is_saved_under_another_name_and_opened_there() throws IOException {
        try (StartedWindow window = new StartedWindow(folder, Looks.light())) {
            write(window, "One");
            Files.delete(window.logbook.logbook().path());
            window.answer = folder.resolve("kept.witness");
            window.perform("copy");
            assertThat(folder.resolve("kept.witness")).exists();
            assertThat(window.opened).contains("open kept.witness");
        }
    }

    @Test
    void of_a_damaged_logbook_it_is_shown_what_is_hit_and_nothing_is_written() throws IOException {
        try (StartedWindow window = new StartedWindow(folder, Looks.light())) {
            Path damaged = Files.copy(window.logbook.logbook().backUp().orThrow(), folder.resolve("damaged.witness"));
            tear(damaged);
            byte[] before = Files.readAllBytes(damaged);
            window.start.copies().showHit(damaged);
            window.settle();
            assertThat(window.said()).contains("What is hit", "records can be read as they were written");
            assertThat(Files.readAllBytes(damaged)).isEqualTo(before);
        }
    }

    /** A photo picked by mistake was never a logbook: there is no backup of it. */
    @ParameterizedTest(name = "{0}: a backup offered {1}")
    @CsvSource({"photo.jpg, false", "our.witness, true"})
    void a_backup_is_offered_for_what_may_have_been_a_logbook(String name, boolean offered) throws IOException {
        try (StartedWindow window = new StartedWindow(folder, Looks.light())) {
            Path file = Files.writeString(folder.resolve(name), "no logbook, whatever else it is");
            Problem problem = files().open(file).problems().get(0);
            assertThat(problem.kind()).isEqualTo(ProblemKind.NOT_A_LOGBOOK);
            window.warnings().notOpened(problem);
            assertThat(window.said()).contains("stays open below");
            assertThat(window.said().contains("Restore a backup…")).isEqualTo(offered);
        }
    }

    @Test
    void what_could_not_be_saved_is_shown_and_entered_with_one_button() throws IOException {
        try (StartedWindow window = new StartedWindow(folder, Looks.light())) {
            show(window, "aside");
            assertThat(window.said()).contains("1 entry waits", "emergency-journal.jsonl");
            window.press("Enter them");
            assertThat(window.logbook.view().facts().of(Person.class).named("Late"))
                    .isPresent();
            assertThat(window.said()).contains("1 entry is in the logbook now").doesNotContain("1 entry waits");
        }
    }

    @Test
    void what_could_not_be_saved_is_put_aside_with_another() throws IOException {
        try (StartedWindow window = new StartedWindow(folder, Looks.light())) {
            show(window, "aside");
            window.press("Put them aside");
            assertThat(window.logbook.view().facts().of(Person.class).named("Late"))
                    .isEmpty();
            window.start.copies().keptAside();
            window.settle();
            assertThat(window.said()).contains("Nothing waits any more");
        }
    }

    private void show(StartedWindow window, String page) throws IOException {
        switch (page) {
            case "restore" -> {
                write(window, "One");
                window.logbook.logbook().backUp().orThrow();
                write(window, "Two");
                window.logbook.logbook().backUp().orThrow();
                window.perform("restore");
            }
            case "second" -> {
                window.answer = Files.createDirectories(folder.resolve("stick"));
                window.perform("second");
                window.press(window.texts.get("keeping.elsewhere.choose").replace("&", ""));
            }
            case "aside" -> {
                Path book = window.logbook.logbook().path();
                Path out = Files.move(book, folder.resolve("out"));
                assertThat(tried(window, "Late").didWork()).isFalse();
                Files.move(out, book);
                window.start.copies().keptAside();
            }
            case "found" ->
                window.start.showFound(List.of(
                        Problem.of(ProblemKind.RECORD_NOT_AS_WRITTEN, "run", "Race 1, K05, 2026-05-03 14:00"),
                        Problem.of(ProblemKind.CHAIN_BROKEN, 7, "test-device")));
            default -> {
                Path damaged =
                        Files.copy(window.logbook.logbook().backUp().orThrow(), folder.resolve("damaged.witness"));
                tear(damaged);
                window.answer = folder.resolve("new.witness");
                window.start.copies().salvage(damaged);
            }
        }
        window.settle();
    }

    private static void tear(Path file) throws IOException {
        try (RandomAccessFile open = new RandomAccessFile(file.toFile(), "rw")) {
            for (int page = 40; page < 60; page += 4) {
                open.seek(page * 4_096L);
                open.write(new byte[4_096]);
            }
        }
    }

    private static void write(StartedWindow window, String name) {
        tried(window, name).orThrow();
    }

    private static Outcome<Written> tried(StartedWindow window, String name) {
        return window.logbook.write(
                "adding",
                List.of(new Entry<>(
                        SampleBooks.ids().<Person>next(), new Person(name, ""), Standing.IN_FORCE, null, 1)));
    }

    private SqliteLogbookFiles files() {
        return new SqliteLogbookFiles(
                folder.resolve("their-data"), System::currentTimeMillis, () -> "theirs", new Holder("h", "p"));
    }

    private static List<Path> copies(Path stick) throws IOException {
        try (Stream<Path> all = Files.walk(stick)) {
            return all.filter(path -> path.toString().endsWith(".witness")).toList();
        }
    }
}
