package witnessmark.desktop.shell;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
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
        assertThat(commands.isCalled("fit a")).isFalse();
        assertThat(found("fit a part...")).containsExactly("Fit a part…");
    }

    @Test
    void what_no_word_says_is_not_found() {
        assertThat(found("piston zebra")).isEmpty();
    }
}
