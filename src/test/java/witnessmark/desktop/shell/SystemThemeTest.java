package witnessmark.desktop.shell;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SystemThemeTest {
    private static Optional<String> fails(List<String> line) {
        return Optional.empty();
    }

    /** 1 dark, 2 light, 0 no preference: freedesktop portal, org.freedesktop.appearance color-scheme. */
    @ParameterizedTest(name = "{0}: dark {1}")
    @CsvSource(
            delimiter = '|',
            value = {
                "   variant       uint32 1|true",
                "   variant       uint32 2|false",
                "variant uint32 0|false",
                "uint32 10|false"
            })
    void the_portal_is_believed(String printed, boolean dark) {
        assertThat(new SystemTheme(line -> Optional.of(printed)).linux()).isEqualTo(dark);
    }

    @ParameterizedTest(name = "{0}: dark {1}")
    @CsvSource(
            delimiter = '|',
            value = {"prefer-dark|true", "default|false", "prefer-light|false"})
    void without_a_portal_the_desktop_setting_is_asked(String printed, boolean dark) {
        SystemTheme theme = new SystemTheme(
                line -> line.get(0).equals("gsettings") ? Optional.of("'" + printed + "'\n") : Optional.empty());
        assertThat(theme.linux()).isEqualTo(dark);
    }

    /** common practice, no source: 0x0 in AppsUseLightTheme means dark. */
    @ParameterizedTest(name = "{0}: dark {1}")
    @CsvSource({"0x0, true", "0x1, false"})
    void the_registry_is_believed(String value, boolean dark) {
        String printed = "\r\n    AppsUseLightTheme    REG_DWORD    " + value + "\r\n\r\n";
        assertThat(new SystemTheme(line -> Optional.of(printed)).windows()).isEqualTo(dark);
    }

    @Test
    void a_mac_prints_dark_or_fails() {
        assertThat(new SystemTheme(line -> Optional.of("Dark\n")).mac()).isTrue();
        assertThat(new SystemTheme(SystemThemeTest::fails).mac()).isFalse();
    }

    @Test
    void what_cannot_be_found_out_counts_as_light() {
        SystemTheme theme = new SystemTheme(SystemThemeTest::fails);
        assertThat(theme.linux()).isFalse();
        assertThat(theme.windows()).isFalse();
        assertThat(theme.isDark()).isFalse();
    }
}
