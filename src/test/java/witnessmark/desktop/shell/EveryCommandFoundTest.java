package witnessmark.desktop.shell;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import witnessmark.wording.Texts;

/** Whoever types what a command is called, in a menu or in the README, finds it first: Enter then does that one. */
class EveryCommandFoundTest {
    private static final Texts TEXTS = Texts.in(Locale.UK);

    /** Menu, perhaps a menu within it, and the command: {@code *Record, Who is writing*}. */
    private static final Pattern WAY_IN_MENUS = Pattern.compile("\\*(?:Logbook|Record|Edit|View|Go|Help), ([^*]+)\\*");

    private static final List<Command> COMMANDS = TEXTS.keys().stream()
            .filter(key -> key.contains(".command.") || key.startsWith("shell.place.") || key.startsWith("runsheet."))
            .filter(key -> TEXTS.has(key + ".tip"))
            .sorted()
            .map(key -> new Command(TEXTS, key, CommandMenu.RECORD, 0, null, () -> {}))
            .toList();

    private static final CommandsFindable FIND = new CommandsFindable(TEXTS, () -> COMMANDS);

    private static String first(String typed) {
        return FIND.find(typed, 10).stream().map(Found::title).findFirst().orElse("nothing");
    }

    static List<String> names() {
        return COMMANDS.stream().map(Command::name).toList();
    }

    @ParameterizedTest
    @MethodSource("names")
    void a_command_typed_by_its_own_name_stands_first(String name) {
        String withoutDots = name.replace("…", "");
        assertThat(first(name)).isEqualTo(name);
        assertThat(first(withoutDots)).isEqualTo(name);
        assertThat(first(withoutDots.toLowerCase(Locale.ROOT))).isEqualTo(name);
        assertThat(FIND.isCalled(withoutDots)).isTrue();
    }

    static List<String> waysOfTheReadme() throws IOException {
        String readme = Files.readString(Path.of(System.getProperty("project.basedir", "."), "README.md"))
                .replaceAll("\\s+", " ");
        return WAY_IN_MENUS
                .matcher(readme)
                .results()
                .map(way -> way.group(1).replaceAll(".*, ", ""))
                .distinct()
                .toList();
    }

    @ParameterizedTest
    @MethodSource("waysOfTheReadme")
    void what_the_readme_leads_to_through_menus_stands_first_too(String named) {
        assertThat(first(named).replace("…", "")).isEqualTo(named);
    }

    @ParameterizedTest
    @ValueSource(strings = {"start our", "Start our logbook", "our logbook", "new logbook"})
    void a_logbook_of_the_teams_own_is_found_by_the_words_of_its_button(String typed) {
        assertThat(first(typed)).isEqualTo("New logbook…");
    }

    @ParameterizedTest
    @ValueSource(strings = {"settled", "to be settled", "ask back", "refund", "refunds"})
    void money_to_be_settled_is_found_by_what_it_is_called_and_by_what_is_done_with_it(String typed) {
        assertThat(first(typed)).isEqualTo("Money still to be settled");
    }

    @ParameterizedTest
    @ValueSource(strings = {"walk on", "walk", "next chapter", "story"})
    void the_story_of_the_sample_is_gone_on_with_by_the_words_of_its_strip(String typed) {
        assertThat(first(typed)).isEqualTo("Walk on in the sample");
    }
}
