package witnessmark.desktop.shell;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import witnessmark.wording.Texts;

/** Commands are found by the words people look for, those that bear them in their name first. */
class CommandsFindableTest {
    private static final Texts TEXTS = Texts.in(Locale.UK);
    private static final List<Command> COMMANDS = List.of(
            command("sheets.command.add_position"),
            command("sheets.command.set_limit"),
            command("sheets.command.fit_part"),
            command("sheets.command.add_person"));

    private static Command command(String key) {
        return new Command(TEXTS, key, CommandMenu.RECORD, 0, null, () -> {});
    }

    private static List<String> found(String typed) {
        return new CommandsFindable(TEXTS, () -> COMMANDS)
                .find(typed, 10).stream().map(Found::title).toList();
    }

    @Test
    void a_part_leads_to_the_sheet_that_fits_one() {
        assertThat(found("piston")).contains("Fit a part…", "Add a position…");
        assertThat(found("gearbox")).containsExactly("Fit a part…");
        assertThat(found("rod bolts")).containsExactly("Fit a part…");
    }

    @Test
    void a_name_stands_before_a_tip_and_a_tip_before_other_words() {
        assertThat(found("part")).startsWith("Fit a part…");
        assertThat(found("fit")).startsWith("Fit a part…");
        assertThat(found("position").get(0)).isEqualTo("Add a position…");
        assertThat(found("driver")).containsExactly("Add a person…");
    }

    @Test
    void a_command_called_just_so_is_known_with_its_dots_or_without() {
        CommandsFindable commands = new CommandsFindable(TEXTS, () -> COMMANDS);
        assertThat(commands.isCalled("Fit a part")).isTrue();
        assertThat(commands.isCalled("fit a part...")).isTrue();
        assertThat(commands.isCalled("fi")).as("as likely a record").isFalse();
        assertThat(commands.isCalled("position")).as("in the middle of a name").isFalse();
        assertThat(found("fit a part...")).containsExactly("Fit a part…");
    }

    @Test
    void what_people_type_for_a_job_finds_its_sheet_first_and_before_records() {
        List<Command> sheets = Stream.of(
                        "look",
                        "add_event",
                        "set_limit",
                        "fit_part",
                        "gave_back",
                        "new_stock",
                        "move_stock",
                        "tighten",
                        "accept",
                        "calibrate",
                        "write_notice",
                        "send_out")
                .map(sheet -> command("sheets.command." + sheet))
                .toList();
        CommandsFindable commands = new CommandsFindable(TEXTS, () -> sheets);
        Map.of(
                        "stock", List.of("New batch on the shelf…", "Came, used or counted…"),
                        "draw from stock", List.of("Came, used or counted…"),
                        "use by", List.of("New batch on the shelf…"),
                        "borrow", List.of("Fit a part…", "It went back…"),
                        "accept", List.of("Accept as it is…"),
                        "tighten", List.of("Joint tightened…"))
                .forEach((typed, first) -> {
                    assertThat(commands.isCalled(typed)).as(typed).isTrue();
                    assertThat(first)
                            .as(typed)
                            .contains(commands.find(typed, 10).get(0).title());
                });
    }

    /** Springs that are there stand before the sheet that fits some; the sheet's own name stands before all. */
    @Test
    void by_another_word_for_it_a_command_stands_behind_records_called_so_and_by_its_name_before() {
        CommandsFindable commands = new CommandsFindable(TEXTS, () -> List.of(command("sheets.command.fit_part")));
        assertThat(commands.isCalled("valve springs")).isTrue();
        assertThat(commands.isNamed("valve springs")).isFalse();
        assertThat(commands.isNamed("fit a")).isTrue();
        FoundGroup parts = new FoundGroup("Parts", List.of(new Found("VS-03, valve springs", "in K03", () -> {})), "");
        assertThat(parts.tells("Valve springs")).isTrue();
        assertThat(parts.tells("alve springs")).isFalse();
    }

    @Test
    void what_no_word_says_is_not_found() {
        assertThat(found("piston zebra")).isEmpty();
    }
}
