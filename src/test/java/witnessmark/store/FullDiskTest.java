package witnessmark.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A disk that fills up in the middle of work: each entry is saved or kept aside, and nothing is half saved. */
class FullDiskTest {
    private static final String NO_SPACE = "did not\tDISK_FULL\tCouldn't save to ";

    @TempDir
    private Path folder;

    @ParameterizedTest(name = "with {0} KiB left")
    @ValueSource(ints = {0, 60})
    void what_is_said_to_be_saved_is_and_what_is_not_is_kept_aside(int left) throws Exception {
        Path disk = Files.createDirectories(folder.resolve("disk"));
        Path file = disk.resolve("team.witness");
        Path data = folder.resolve("data");
        try (Child child = Child.start(data, "laptop", Bounds.ownDisks())) {
            assertThat(child.ask("shell mount -t tmpfs -o size=4m tmpfs " + disk))
                    .isEqualTo("status 0");
            assertThat(child.ask("create " + file)).isEqualTo("worked");
            assertThat(child.ask("car before")).isEqualTo("worked");
            child.ask("shell head -c " + left + "K /dev/zero > " + disk.resolve("room"));
            child.ask("shell cat /dev/zero > " + disk.resolve("fill")); // until there is no space
            child.ask("shell rm " + disk.resolve("room"));

            List<String> saved = new ArrayList<>(List.of("before"));
            List<String> refused = new ArrayList<>();
            for (int i = 0; i < 60 && refused.size() < 3; i++) {
                String answer = child.ask("car " + i + " " + "x".repeat(2_000));
                if (answer.equals("worked")) {
                    saved.add(i + " " + "x".repeat(2_000));
                } else {
                    assertThat(answer)
                            .isEqualTo(NO_SPACE + file + ": the disk is full. Nothing is half saved."
                                    + " Free some space, then save again.");
                    refused.add(i + " " + "x".repeat(2_000));
                }
            }
            assertThat(refused).hasSize(3);
            assertThat(cars(child)).containsExactlyInAnyOrderElementsOf(saved);
            assertThat(child.ask("keep " + "half a run ".repeat(9_000))).isEqualTo("IN_FALLBACK_FILE");
            assertThat(child.ask("draft")).isEqualTo("half a run ".repeat(9_000));
            assertThat(child.ask("verify")).isEqualTo("worked");
            assertThat(child.ask("backup")).as("the backups lie elsewhere").isEqualTo("worked");
            assertThat(keptAside(data)).containsExactlyElementsOf(refused);

            assertThat(child.ask("close")).isEqualTo("worked");
            assertThat(child.ask("open " + file)).as("on the full disk").startsWith("except\t");
            assertThat(cars(child)).containsExactlyInAnyOrderElementsOf(saved);
            assertThat(child.ask("close")).isEqualTo("worked");

            assertThat(child.ask("shell rm " + disk.resolve("fill"))).isEqualTo("status 0");
            assertThat(child.ask("open " + file))
                    .isEqualTo(
                            "except\tENTRIES_KEPT_ASIDE\tAn earlier saving did not reach this logbook: 3 entries could not be"
                                    + " written, as when a disk is full or gone. Nothing of that counts anywhere yet; what was"
                                    + " to be saved is kept as text in " + data.resolve("emergency-journal.jsonl")
                                    + ". Look at what it was (Show what, in the window) and enter it, or put it aside.");
            assertThat(cars(child)).containsExactlyInAnyOrderElementsOf(saved);
            for (String again : refused) {
                assertThat(child.ask("car " + again)).isEqualTo("worked");
            }
            assertThat(child.ask("verify")).isEqualTo("worked");
            assertThat(child.ask("close")).isEqualTo("worked");
            assertThat(child.ask("open " + file))
                    .as("nothing is missing any more")
                    .isEqualTo("worked");
        }
    }

    @Test
    void with_no_space_for_anything_at_all_the_sentence_is_the_same() throws Exception {
        Path disk = Files.createDirectories(folder.resolve("disk"));
        Path file = disk.resolve("team.witness");
        Files.createDirectories(folder.resolve("errors"));
        try (Child child = Child.start(folder.resolve("errors"), "laptop", Bounds.ownDisks())) {
            assertThat(child.ask("shell mount -t tmpfs -o size=4m tmpfs " + disk))
                    .isEqualTo("status 0");
            assertThat(child.ask("shell mkdir " + folder.resolve("errors/on-disk") + " && mkdir " + disk.resolve("data")
                            + " && mount --bind " + disk.resolve("data") + " " + folder.resolve("errors/on-disk")))
                    .isEqualTo("status 0");
            assertThat(child.ask("home " + folder.resolve("errors/on-disk"))).isEqualTo("worked");
            assertThat(child.ask("create " + file)).isEqualTo("worked");
            assertThat(child.ask("car before")).isEqualTo("worked");
            child.ask("shell cat /dev/zero > " + disk.resolve("fill"));
            String answer = "worked";
            for (int i = 0; i < 60 && answer.equals("worked"); i++) {
                answer = child.ask("car " + i + " " + "x".repeat(2_000));
            }
            assertThat(answer).startsWith(NO_SPACE);
            assertThat(child.ask("keep half a run " + "x".repeat(90_000))).isEqualTo("NOT_KEPT");
            assertThat(child.ask("backup")).startsWith("did not\tDISK_FULL\t");
            assertThat(child.ask("shell find " + disk + " -name '*.witness.new' | grep ."))
                    .isEqualTo("status 1");
            assertThat(child.ask("verify")).isEqualTo("worked");
            child.ask("shell rm " + disk.resolve("fill"));
            assertThat(child.ask("car after")).isEqualTo("worked");
            assertThat(child.ask("verify")).isEqualTo("worked");
        }
    }

    private static Set<String> cars(Child child) throws IOException {
        return Set.of(child.ask("cars").split(","));
    }

    private static List<String> keptAside(Path data) throws IOException {
        return EmergencyJournal.in(data, System::currentTimeMillis).read().stream()
                .map(kept -> String.valueOf(kept.image().get("name")))
                .collect(Collectors.toList());
    }
}
