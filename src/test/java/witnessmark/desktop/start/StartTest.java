package witnessmark.desktop.start;

import static org.assertj.core.api.Assertions.assertThat;

import com.formdev.flatlaf.FlatClientProperties;
import java.awt.event.KeyEvent;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.swing.JComponent;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import witnessmark.desktop.form.Keys;
import witnessmark.desktop.form.Styles;
import witnessmark.desktop.testing.Looks;
import witnessmark.desktop.testing.Ui;
import witnessmark.desktop.testing.UiTest;
import witnessmark.domain.Engine;
import witnessmark.domain.Facts;
import witnessmark.domain.Run;
import witnessmark.domain.Team;
import witnessmark.exchange.CsvSeasonFolders;

/** Beginning a logbook, and folders in and out, on real files. */
@UiTest
class StartTest {
    @TempDir
    Path folder;

    private StartedWindow window;

    @BeforeEach
    void open() {
        window = new StartedWindow(folder, Looks.light());
    }

    @AfterEach
    void close() {
        window.close();
    }

    @Test
    void three_answers_and_ctrl_enter_make_a_logbook_with_the_team_in_it() {
        window.perform("new");
        Ui ui = window.ui();
        ui.field("Team").setText("Harrow Lane");
        assertThat(ui.field("Where to keep the file").getText()).endsWith("Harrow-Lane.witness");
        Ui.press((JComponent) window.start.place().component().getComponent(0), Keys.menu(KeyEvent.VK_ENTER));
        window.settle();
        assertThat(window.opened).containsExactly("take Harrow-Lane.witness");
        Facts made = window.taken.facts();
        assertThat(made.of(Team.class).all())
                .singleElement()
                .satisfies(team -> assertThat(team.fact().name()).isEqualTo("Harrow Lane"));
        assertThat(window.settings.get(StartLogbookModel.UNITS)).isPresent();
    }

    @Test
    void a_missing_team_is_asked_for_under_its_field_and_nothing_typed_is_lost() {
        window.perform("new");
        Ui ui = window.ui();
        ui.field("Where to keep the file").setText("elsewhere");
        ui.button("Start logbook").doClick();
        window.settle();
        assertThat(window.opened).isEmpty();
        assertThat(window.said()).contains("Write the name of the team.");
        assertThat(ui.field("Where to keep the file").getText()).isEqualTo("elsewhere");
    }

    @Test
    void a_file_that_is_there_already_is_left_alone_and_said_so_under_the_field() throws IOException {
        Path taken = folder.resolve("taken.witness");
        Files.writeString(taken, "something else");
        window.perform("new");
        Ui ui = window.ui();
        ui.field("Team").setText("Harrow Lane");
        window.answer = taken;
        ui.button("Choose…").doClick();
        ui.button("Start logbook").doClick();
        window.settle();
        assertThat(window.opened).isEmpty();
        assertThat(window.said()).contains("taken.witness");
        assertThat(Files.readString(taken)).isEqualTo("something else");
    }

    @Test
    void escape_brings_the_first_place_back() {
        window.perform("new");
        Ui.press((JComponent) window.start.place().component().getComponent(0), Keys.plain(KeyEvent.VK_ESCAPE));
        window.settle();
        assertThat(window.said()).contains("Must be done before we go").doesNotContain("Three answers");
    }

    @Test
    void a_form_has_its_own_title_and_the_place_gets_its_own_back() {
        window.perform("new");
        assertThat(window.said()).contains("label Start our logbook\n").doesNotContain("label Before we go\n");
        Ui.press((JComponent) window.start.place().component().getComponent(0), Keys.plain(KeyEvent.VK_ESCAPE));
        window.settle();
        assertThat(window.said()).contains("label Before we go\n").doesNotContain("label Start our logbook\n");
    }

    @Test
    void a_logbook_chosen_to_be_opened_is_handed_on() {
        window.answer = folder.resolve("other.witness");
        window.perform("open");
        assertThat(window.opened).containsExactly("open other.witness");
    }

    @Test
    void what_was_exported_is_read_back_as_nothing_new() {
        window.answer = folder.resolve("out");
        window.perform("export");
        assertThat(window.said()).contains("rows written to " + folder.resolve("out"));
        window.perform("import");
        assertThat(window.said()).contains("Nothing in it is new");
    }

    @Test
    void an_export_into_a_folder_with_files_makes_a_folder_of_its_own() throws IOException {
        Path used = Files.createDirectories(folder.resolve("used"));
        Files.writeString(used.resolve("mine.txt"), "mine");
        window.answer = used;
        window.perform("export");
        assertThat(used.resolve("sample-season-2026-07-08").resolve("runs.csv")).exists();
        assertThat(used.resolve("mine.txt")).hasContent("mine");
    }

    @Test
    void bad_rows_are_shown_with_their_places_and_nothing_is_written_before_the_good_ones_are_asked_for()
            throws IOException {
        window.answer = spoiled();
        long before = window.logbook.logbook().facts().of(Run.class).size();
        window.perform("import");
        assertThat(window.said())
                .contains(
                        "1 new row: 1 run.",
                        "1 problem keeps rows out",
                        "runs.csv, line 4 (",
                        "), column engine",
                        "X06");
        assertThat(window.logbook.logbook().facts().of(Run.class).size()).isEqualTo((int) before);
        window.press("Take the good rows");
        assertThat(window.logbook.logbook().facts().of(Run.class).size()).isEqualTo((int) before + 1);
        assertThat(window.said()).contains("1 row taken from spoiled.", "Must be done before we go");
        assertThat(window.logbook.logbook().history())
                .last()
                .satisfies(amendment ->
                        assertThat(amendment.who()).isEqualTo(window.logbook.who() + ", from season folder spoiled"));
        window.press("Undo");
        assertThat(window.opened).containsExactly("undo");
        assertThat(window.logbook.undoable())
                .hasValueSatisfying(done -> assertThat(done.why()).isEqualTo("bringing in spoiled"));
    }

    @Test
    void bad_rows_leave_taking_the_good_ones_as_the_main_button() throws IOException {
        window.answer = spoiled();
        window.perform("import");
        assertThat(isMain("Take the good rows")).isTrue();
        assertThat(isMain("Read again")).isFalse();
    }

    @Test
    void a_missing_table_makes_reading_again_the_main_button_and_a_mended_folder_is_read_whole() throws IOException {
        Path spoiled = spoiled();
        Path aside = folder.resolve("told-running.csv");
        Files.move(spoiled.resolve("told-running.csv"), aside);
        window.answer = spoiled;
        window.perform("import");
        assertThat(window.said()).contains("Nothing of told-running.csv could be read.");
        assertThat(isMain("Read again")).isTrue();
        assertThat(isMain("Take the good rows")).isFalse();
        Files.move(aside, spoiled.resolve("told-running.csv"));
        window.press("Read again");
        assertThat(window.said()).doesNotContain("told-running.csv");
        assertThat(isMain("Take the good rows")).isTrue();
    }

    private boolean isMain(String button) {
        return Styles.MAIN.equals(window.ui().button(button).getClientProperty(FlatClientProperties.STYLE_CLASS));
    }

    @Test
    void leaving_a_reading_writes_nothing() throws IOException {
        window.answer = spoiled();
        long revision = window.logbook.logbook().facts().revision();
        window.perform("import");
        window.press("Leave it");
        assertThat(window.logbook.logbook().facts().revision()).isEqualTo(revision);
        assertThat(window.said()).contains("Must be done before we go");
    }

    @Test
    void a_folder_that_is_no_season_is_refused_in_a_sentence() throws IOException {
        window.answer = Files.createDirectories(folder.resolve("holiday"));
        window.perform("import");
        assertThat(window.said()).contains("is not a season folder");
    }

    @Test
    void a_backup_says_where_it_is_and_a_check_says_what_it_found() {
        window.perform("backUp");
        assertThat(window.said()).contains("Backed up to ", "the copy opens.");
        window.perform("check");
        assertThat(window.said()).contains("Checked: every record is as it was written.");
    }

    @Test
    void an_older_folder_changes_nothing_until_its_values_are_asked_for_and_undo_is_offered() {
        Path older = folder.resolve("older");
        new CsvSeasonFolders().write(window.logbook.logbook().facts(), older).orThrow();
        Facts before = window.logbook.logbook().facts();
        window.noteEngines("crack-tested");
        Facts corrected = window.logbook.logbook().facts();
        int engines = before.of(Engine.class).size();

        window.answer = older;
        window.perform("import");

        assertThat(window.said())
                .contains(
                        "Nothing in it is new.",
                        engines + " rows have other values in the folder than in the logbook",
                        "'crack-tested' in the logbook")
                .doesNotContain("Take all", "Take what is new");
        assertThat(window.logbook.logbook().facts()).isSameAs(corrected);
        window.press("Take the folder's values…");
        assertThat(window.said()).contains(engines + " new or changed rows: " + engines + " engines.");
        assertThat(window.logbook.logbook().facts()).isSameAs(corrected);
        window.press("Keep the logbook's values");
        assertThat(window.said()).contains("the logbook keeps its own");
        window.press("Take the folder's values…");
        window.press("Take all");
        assertThat(notes(window.logbook.logbook().facts())).isEqualTo(notes(before));
        window.press("Undo");
        window.logbook.undo().orThrow();
        assertThat(notes(window.logbook.logbook().facts())).isEqualTo(notes(corrected));
    }

    private static List<String> notes(Facts facts) {
        return facts.of(Engine.class)
                .inForce()
                .map(entry -> entry.fact().note())
                .toList();
    }

    /** The sample's season folder with a run added, and one run's engine misspelt. */
    private Path spoiled() throws IOException {
        Path spoiled = folder.resolve("spoiled");
        new CsvSeasonFolders().write(window.logbook.logbook().facts(), spoiled).orThrow();
        Path runs = spoiled.resolve("runs.csv");
        List<String> lines = new ArrayList<>(Files.readAllLines(runs));
        lines.set(3, withoutId(lines.get(3)).replaceFirst(",K06,", ",X06,"));
        String added = lines.stream()
                .filter(line -> line.contains(",K05,,,,dyno,"))
                .findFirst()
                .orElseThrow();
        lines.add(withoutId(added).replaceFirst("2026-02-18T10:00:00Z", "2026-02-18T15:00:00Z"));
        Files.write(runs, lines);
        Path index = spoiled.resolve("season.json");
        String counted = Files.readString(index);
        Matcher rows = Pattern.compile("(\"runs.csv\"\\s*:\\s*)(\\d+)").matcher(counted);
        assertThat(rows.find()).isTrue();
        int oneMore = Integer.parseInt(rows.group(2)) + 1;
        Files.writeString(index, rows.replaceFirst("$1" + oneMore));
        return spoiled;
    }

    private static String withoutId(String line) {
        return line.substring(line.indexOf(','));
    }
}
