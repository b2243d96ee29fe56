package witnessmark.desktop.start;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import witnessmark.desktop.testing.MemorySettings;

class RecentLogbooksTest {
    private final MemorySettings settings = new MemorySettings();
    private final RecentLogbooks recent = new RecentLogbooks(settings);

    @Test
    void nothing_was_opened_at_first() {
        assertThat(recent.list()).isEmpty();
    }

    @Test
    void the_latest_stands_first_and_once() {
        open("/a.witness", "/b.witness", "/a.witness");
        assertThat(recent.list()).containsExactly(path("/a.witness"), path("/b.witness"));
    }

    @Test
    void the_oldest_is_forgotten_and_the_rest_outlast_a_start() {
        open("/1", "/2", "/3", "/4", "/5", "/6");
        assertThat(new RecentLogbooks(settings).list())
                .containsExactly(path("/6"), path("/5"), path("/4"), path("/3"), path("/2"));
    }

    @Test
    void what_is_no_path_is_passed_over() {
        settings.put("logbooks.recent", "a\0b\n\n/c.witness");
        assertThat(recent.list()).containsExactly(Path.of("/c.witness"));
    }

    private void open(String... paths) {
        for (String path : paths) {
            recent.opened(Path.of(path));
        }
    }

    private static Path path(String text) {
        return Path.of(text).toAbsolutePath();
    }
}
