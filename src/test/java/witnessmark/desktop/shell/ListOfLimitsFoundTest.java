package witnessmark.desktop.shell;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import witnessmark.wording.Texts;

/** What people may type into Find when they look for the list of limits. */
class ListOfLimitsFoundTest {
    private final Texts texts = Texts.in(Locale.UK);

    @ParameterizedTest
    @ValueSource(strings = {"limits", "starting values", "list of limits", "class of engine"})
    void it_is_found_by_its_words(String typed) {
        CommandsFindable found = new CommandsFindable(
                texts,
                () -> List.of("set_limit", "set_reading_limit", "list_limits", "set_trigger").stream()
                        .map(key -> new Command(
                                texts, "sheets.command." + key, CommandMenu.RECORD_LIMITS, 2, null, () -> {}))
                        .toList());
        assertThat(found.find(typed, 10)).extracting(Found::title).contains("List of limits…");
    }
}
