package witnessmark.desktop.shell;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Stream;
import javax.swing.JMenu;
import javax.swing.JMenuBar;
import javax.swing.JMenuItem;
import javax.swing.KeyStroke;
import javax.swing.SwingUtilities;
import javax.swing.UIManager;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import witnessmark.desktop.form.Keys;
import witnessmark.desktop.shell.gallery.Gallery;
import witnessmark.desktop.testing.GoldenText;
import witnessmark.desktop.testing.LayoutRules;
import witnessmark.desktop.testing.Looks;
import witnessmark.desktop.testing.Stage;
import witnessmark.desktop.testing.Ui;
import witnessmark.desktop.testing.UiTest;
import witnessmark.wording.Texts;

@UiTest
class ShellPaneTest {
    private Gallery gallery;
    private ShellPane pane;

    @BeforeEach
    void open() {
        gallery = new Gallery(Looks.light(), Texts.in(Locale.UK));
        pane = gallery.pane;
        Stage.lay(pane, 1366, 744);
    }

    @AfterEach
    void close() {
        gallery.close();
    }

    private Command command(String key) {
        return pane.commands().all().stream()
                .filter(command -> command.key().equals(key))
                .findFirst()
                .orElseThrow();
    }

    private PlaceId shown() {
        return pane.place().orElseThrow().id();
    }

    @Test
    void the_rail_lists_the_places_there_are_under_their_groups() {
        assertThat(rows()).containsExactly("At the track", "Before we go", "Run sheet", "In the workshop", "Engines");
    }

    private List<String> rows() {
        var model = pane.rail().places().getModel();
        return java.util.stream.IntStream.range(0, model.getSize())
                .mapToObj(i -> model.getElementAt(i).title())
                .toList();
    }

    @Test
    void arrows_in_the_rail_step_over_headings_both_ways() {
        var list = pane.rail().places();
        list.setSelectedIndex(2);
        assertThat(shown()).isEqualTo(PlaceId.RUN_SHEET);
        list.setSelectedIndex(3);
        assertThat(shown()).as("over the heading").isEqualTo(PlaceId.ENGINES);
        list.setSelectedIndex(3);
        assertThat(shown()).as("and back").isEqualTo(PlaceId.RUN_SHEET);
        list.setSelectedIndex(1);
        list.setSelectedIndex(0);
        assertThat(shown()).as("nothing above the first place").isEqualTo(PlaceId.BEFORE_WE_GO);
    }

    @Test
    void back_and_forward_go_over_places_and_are_off_where_there_is_nothing() {
        assertThat(command("shell.command.back").isEnabled()).isFalse();
        assertThat(command("shell.command.back").getValue(javax.swing.Action.SHORT_DESCRIPTION))
                .isEqualTo("Nowhere to go back to yet");
        gallery.desk.go(PlaceId.ENGINES);
        command("shell.command.back").perform();
        assertThat(shown()).isEqualTo(PlaceId.BEFORE_WE_GO);
        assertThat(command("shell.command.back").isEnabled()).isFalse();
        command("shell.command.forward").perform();
        assertThat(shown()).isEqualTo(PlaceId.ENGINES);
        assertThat(command("shell.command.forward").isEnabled()).isFalse();
    }

    @Test
    void a_page_is_built_at_its_first_visit_and_kept() {
        gallery.desk.go(PlaceId.ENGINES);
        var first = gallery.list.component();
        gallery.desk.go(PlaceId.RUN_SHEET);
        gallery.desk.go(PlaceId.ENGINES);
        assertThat(first.isVisible()).isTrue();
        assertThat(first.getParent()).isNotNull();
    }

    @Test
    void a_page_visited_only_after_the_theme_was_changed_has_the_new_theme() {
        gallery.list.component(); // made, and in no window yet
        Looks.dark();
        SwingUtilities.updateComponentTreeUI(pane); // as the look does with all that is in a window
        gallery.desk.go(PlaceId.ENGINES);
        Stage.lay(pane, 1366, 744);
        assertThat(new Ui(pane).table("Build as fitted").getBackground())
                .isEqualTo(UIManager.getColor("Table.background"));
    }

    @Test
    void a_sheet_that_stands_in_another_place_leaves_the_place_it_was_called_from_lit() {
        gallery.desk.go(PlaceId.ENGINES);
        gallery.desk.goAside(PlaceId.BEFORE_WE_GO);
        gallery.desk.title(PlaceId.BEFORE_WE_GO, "Write a cost");
        assertThat(shown()).isEqualTo(PlaceId.BEFORE_WE_GO);
        assertThat(lit()).isEqualTo(PlaceId.ENGINES);
        gallery.desk.goAside(PlaceId.BEFORE_WE_GO);
        assertThat(lit()).as("another sheet over the sheet").isEqualTo(PlaceId.ENGINES);
        gallery.desk.heading(PlaceId.BEFORE_WE_GO, "Wed 8 Jul");
        assertThat(lit()).as("the sheet is gone").isEqualTo(PlaceId.BEFORE_WE_GO);
        gallery.desk.go(PlaceId.ENGINES);
        gallery.desk.title(PlaceId.BEFORE_WE_GO, "Write a cost");
        gallery.desk.go(PlaceId.BEFORE_WE_GO);
        assertThat(lit()).as("gone to by its own key").isEqualTo(PlaceId.BEFORE_WE_GO);
    }

    @Test
    void a_sheet_that_is_left_goes_back_to_the_page_and_record_it_was_called_from_as_they_were() {
        gallery.desk.go(PlaceId.RUN_SHEET);
        gallery.desk.go(PlaceId.ENGINES, "E-07");
        gallery.desk.goAside(PlaceId.BEFORE_WE_GO);
        assertThat(gallery.desk.comeBack(PlaceId.RUN_SHEET))
                .as("that place is not in view")
                .isFalse();
        assertThat(gallery.desk.comeBack(PlaceId.BEFORE_WE_GO)).isTrue();
        assertThat(pane.current()).contains(Visit.to(PlaceId.ENGINES, "E-07"));
        assertThat(command("shell.command.forward").isEnabled())
                .as("the sheet is no page to go to again")
                .isFalse();
        command("shell.command.back").perform();
        assertThat(shown()).isEqualTo(PlaceId.RUN_SHEET);
        assertThat(gallery.desk.comeBack(PlaceId.RUN_SHEET)).as("once").isFalse();
    }

    @Test
    void sheets_called_from_sheets_go_back_one_by_one() {
        gallery.desk.go(PlaceId.ENGINES);
        gallery.desk.goAside(PlaceId.RUN_SHEET);
        gallery.desk.title(PlaceId.RUN_SHEET, "What the trace says");
        gallery.desk.goAside(PlaceId.BEFORE_WE_GO);
        gallery.desk.title(PlaceId.BEFORE_WE_GO, "Write a cost");
        gallery.desk.goAside(PlaceId.BEFORE_WE_GO);
        assertThat(lit()).isEqualTo(PlaceId.ENGINES);
        assertThat(gallery.desk.comeBack(PlaceId.BEFORE_WE_GO)).isTrue();
        assertThat(shown()).isEqualTo(PlaceId.RUN_SHEET);
        assertThat(lit()).isEqualTo(PlaceId.ENGINES);
        assertThat(gallery.desk.comeBack(PlaceId.RUN_SHEET)).isTrue();
        assertThat(shown()).isEqualTo(PlaceId.ENGINES);
    }

    @Test
    void who_went_elsewhere_meanwhile_is_not_taken_back() {
        gallery.desk.go(PlaceId.ENGINES);
        gallery.desk.goAside(PlaceId.BEFORE_WE_GO);
        gallery.desk.go(PlaceId.RUN_SHEET);
        gallery.desk.go(PlaceId.BEFORE_WE_GO);
        assertThat(gallery.desk.comeBack(PlaceId.BEFORE_WE_GO)).isFalse();
        assertThat(shown()).isEqualTo(PlaceId.BEFORE_WE_GO);
    }

    private PlaceId lit() {
        return pane.rail().places().getSelectedValue().place();
    }

    @Test
    void a_page_remembered_that_no_longer_exists_is_not_gone_to() {
        pane.go(new Visit("INCIDENTS", null));
        assertThat(shown()).isEqualTo(PlaceId.BEFORE_WE_GO);
    }

    @Test
    void what_waits_is_told_beside_the_place_and_to_screen_readers() {
        gallery.desk.waiting(PlaceId.ENGINES, 2);
        gallery.desk.draft(PlaceId.ENGINES, true);
        RailRow row = pane.rail().places().getModel().getElementAt(4);
        assertThat(row.noteWords()).isEqualTo("2 waiting, draft");
        gallery.desk.waiting(PlaceId.ENGINES, 0);
        gallery.desk.draft(PlaceId.ENGINES, false);
        assertThat(pane.rail().places().getModel().getElementAt(4).noteWords()).isEmpty();
        assertThat(shown()).as("showing a count goes nowhere").isEqualTo(PlaceId.BEFORE_WE_GO);
    }

    @Test
    void no_two_commands_share_a_key_and_none_is_on_the_key_for_foreign_letters() {
        Set<KeyStroke> seen = new HashSet<>();
        for (Command command : pane.commands().all()) {
            KeyStroke key = command.accelerator();
            if (key != null) {
                assertThat(seen.add(key)).as(command.key()).isTrue();
                int altGr = java.awt.event.InputEvent.CTRL_DOWN_MASK | java.awt.event.InputEvent.ALT_DOWN_MASK;
                assertThat(key.getModifiers() & altGr).as(command.key()).isNotEqualTo(altGr);
            }
        }
    }

    @Test
    void two_commands_on_one_key_are_refused() {
        Texts texts = gallery.texts;
        Command one = new Command(texts, "shell.command.find", CommandMenu.GO, 1, Keys.menu('K'), () -> {});
        Command two = new Command(texts, "shell.command.back", CommandMenu.GO, 1, Keys.menu('K'), () -> {});
        assertThatThrownBy(() -> new Commands(List.of(one, two))).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void every_command_is_in_the_menu_bar_and_no_menu_is_empty() {
        Set<Object> inMenus = new HashSet<>();
        for (JMenu menu : menus()) {
            assertThat(menu.getItemCount()).isPositive();
            inside(menu).filter(item -> !(item instanceof JMenu)).forEach(item -> inMenus.add(item.getAction()));
        }
        assertThat(inMenus)
                .containsExactlyInAnyOrderElementsOf(
                        new HashSet<Object>(pane.commands().all()));
    }

    @Test
    void letters_of_one_menu_are_told_apart() {
        Set<Integer> bar = new HashSet<>();
        for (int i = 0; i < pane.menuBar().getMenuCount(); i++) {
            assertThat(bar.add(pane.menuBar().getMenu(i).getMnemonic())).isTrue();
        }
        for (JMenu menu : menus()) {
            Set<Integer> items = new HashSet<>();
            inside(menu)
                    .filter(item -> item.getMnemonic() != 0)
                    .forEach(item -> assertThat(items.add(item.getMnemonic()))
                            .as(menu.getText() + " " + item.getText())
                            .isTrue());
        }
    }

    @Test
    void a_menu_within_a_menu_has_commands_by_subject() {
        Texts texts = gallery.texts;
        Command inner = new Command(texts, "shell.command.find", CommandMenu.RECORD_PARTS, 1, null, () -> {});
        Command outer = new Command(texts, "shell.command.back", CommandMenu.RECORD, 1, null, () -> {});
        JMenuBar bar = new Commands(List.of(inner, outer)).menuBar(texts);
        assertThat(bar.getMenuCount()).isEqualTo(1);
        JMenu record = bar.getMenu(0);
        assertThat(inside(record).map(JMenuItem::getText)).containsExactly("Back", "Parts");
        assertThat(inside((JMenu) record.getItem(record.getItemCount() - 1)).map(JMenuItem::getText))
                .containsExactly("Find anything");
    }

    /** Every menu of the bar, and those within them. */
    private List<JMenu> menus() {
        JMenuBar bar = pane.menuBar();
        List<JMenu> all = new ArrayList<>();
        for (int i = 0; i < bar.getMenuCount(); i++) {
            all.add(bar.getMenu(i));
            inside(bar.getMenu(i)).filter(JMenu.class::isInstance).forEach(item -> all.add((JMenu) item));
        }
        return all;
    }

    private static Stream<JMenuItem> inside(JMenu menu) {
        return Arrays.stream(menu.getMenuComponents())
                .filter(JMenuItem.class::isInstance)
                .map(JMenuItem.class::cast);
    }

    @Test
    void finding_shows_groups_and_enter_does_what_was_found() {
        FindField find = pane.findField();
        find.setText("engines");
        gallery.tasks.awaitIdle();
        assertThat(find.popup().list().getSelectedValue().text()).isEqualTo("Engines");
        assertThat(find.popup().list().getModel().getElementAt(0).text()).isEqualTo("Commands");
        Ui.press(find, Keys.plain(java.awt.event.KeyEvent.VK_ENTER));
        assertThat(shown()).isEqualTo(PlaceId.ENGINES);
        assertThat(find.getText()).isEmpty();
    }

    @Test
    void the_best_match_stands_first() {
        pane.findField().setText("dark");
        gallery.tasks.awaitIdle();
        assertThat(pane.findField().popup().list().getSelectedValue().text()).isEqualTo("Dark");
    }

    @Test
    void finding_nothing_says_so_and_enter_then_does_nothing() {
        FindField find = pane.findField();
        find.setText("zzzz");
        gallery.tasks.awaitIdle();
        assertThat(find.popup().list().getModel().getElementAt(0).text())
                .isEqualTo("Nothing found for 'zzzz'. Try fewer letters.");
        Ui.press(find, Keys.plain(java.awt.event.KeyEvent.VK_ENTER));
        assertThat(shown()).isEqualTo(PlaceId.BEFORE_WE_GO);
    }

    @Test
    void words_that_look_like_markup_are_shown_as_they_are() {
        gallery.desk.say("<html><b>K03</b>");
        assertThat(GoldenText.of(pane)).contains("<html><b>K03</b>");
    }

    @Test
    void help_follows_the_page_and_fits_at_every_size() {
        command("shell.command.help").perform();
        Stage.lay(pane, 1366, 744);
        assertThat(GoldenText.of(pane)).contains("Whether an engine may run.");
        gallery.desk.go(PlaceId.RUN_SHEET);
        Stage.lay(pane, 1366, 744);
        assertThat(GoldenText.of(pane)).contains("An empty field means not recorded.");
        Stage.lay(pane, 960, 600);
        assertThat(LayoutRules.broken(pane)).isEmpty();
        command("shell.command.help").perform();
        Stage.lay(pane, 960, 600);
        assertThat(GoldenText.of(pane)).doesNotContain("An empty field means not recorded.");
    }

    @Test
    void every_place_has_help() {
        for (PlaceId place : PlaceId.values()) {
            for (String part : List.of("answers", "figures", "cannot", "keys")) {
                assertThat(gallery.texts.has(place.helpKey() + "." + part + ".1"))
                        .as(place + " " + part)
                        .isTrue();
            }
        }
    }

    @Test
    void a_narrow_window_has_a_drop_down_instead_of_the_rail_and_the_status_at_its_foot() {
        Stage.lay(pane, 1099, 700);
        assertThat(pane.rail().isVisible()).isFalse();
        new Ui(pane).choice("Places").setSelectedItem(PlaceId.ENGINES);
        assertThat(shown()).isEqualTo(PlaceId.ENGINES);
        assertThat(GoldenText.of(pane)).contains("Saved 21:58");
        Stage.lay(pane, 1100, 700);
        assertThat(pane.rail().isVisible()).isTrue();
        assertThat(GoldenText.of(pane)).contains("Saved 21:58");
    }

    @Test
    void about_names_cautions_paths_and_licences_without_anything_cut() {
        command("shell.command.about").perform();
        Stage.lay(pane, 1366, 744);
        assertThat(LayoutRules.broken(pane)).isEmpty();
        assertThat(GoldenText.of(pane))
                .contains("Limits come from you.", "/home/team/season.witness", "SIL Open Font License 1.1", "0.1.0");
        command("shell.command.back").perform();
        assertThat(shown()).isEqualTo(PlaceId.BEFORE_WE_GO);
    }

    @Test
    void work_is_named_in_the_status_strip_only_once_it_has_taken_a_second() {
        java.time.Instant[] clock = {java.time.Instant.now()};
        var strip = new witnessmark.desktop.form.StatusStrip("Last done");
        WorkWatch watch = new WorkWatch(gallery.tasks, strip, () -> clock[0]);
        strip.show("Saved 21:58", null);
        var gate = new java.util.concurrent.CountDownLatch(1);
        gallery.tasks.run(
                "Reading the season folder",
                () -> gate.await(5, java.util.concurrent.TimeUnit.SECONDS),
                done -> {},
                failure -> {});
        watch.look();
        assertThat(GoldenText.of(Stage.lay(strip, 170, 100))).doesNotContain("Reading");
        clock[0] = clock[0].plusSeconds(3);
        watch.look();
        assertThat(GoldenText.of(Stage.lay(strip, 170, 100)))
                .isEqualTo("text Reading the season folder\ntext Saved 21:58\n");
        gate.countDown();
        gallery.tasks.awaitIdle();
        watch.look();
        assertThat(GoldenText.of(Stage.lay(strip, 170, 100))).isEqualTo("text Saved 21:58\n");
    }

    @Test
    void a_page_reads_as_it_did() {
        GoldenText.check("shell-gallery-list", goTo(PlaceId.ENGINES));
        GoldenText.check("shell-gallery-sheet", goTo(PlaceId.RUN_SHEET));
    }

    private ShellPane goTo(PlaceId place) {
        gallery.desk.go(place);
        return Stage.lay(pane, 1366, 744);
    }

    @Test
    void the_notice_under_the_menu_bar_stays_until_dismissed() {
        gallery.desk.notice("This is a sample season.", List.of());
        assertThat(pane.notice().sentence()).isEqualTo("This is a sample season.");
        gallery.desk.dismissNotice();
        assertThat(pane.notice().sentence()).isEmpty();
    }

    @Test
    void every_icon_is_found() {
        for (String name : List.of("icons/find.svg", "icons/app.svg")) {
            assertThat(new com.formdev.flatlaf.extras.FlatSVGIcon(name, 16, 16).hasFound())
                    .as(name)
                    .isTrue();
        }
    }
}
