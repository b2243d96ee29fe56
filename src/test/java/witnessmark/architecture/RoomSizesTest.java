package witnessmark.architecture;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** How many classes each room has, pinned: a rule about a mistyped package would hold in silence. */
class RoomSizesTest {
    private static final Path PINNED =
            SourceTree.root().resolve("src/test/resources/architecture/class-counts.properties");

    @Test
    void each_room_has_the_pinned_number_of_classes() throws IOException {
        List<String> counted = counted();
        if (Boolean.getBoolean("pin.update")) {
            Files.write(PINNED, counted);
        }
        assertThat(Files.readAllLines(PINNED))
                .as(
                        "top-level classes by room as pinned in %s; when the change is meant, run"
                                + " mvn -q test -Dtest=RoomSizesTest -Dpin.update=true and commit the file",
                        PINNED.getFileName())
                .containsExactlyElementsOf(counted);
    }

    private static List<String> counted() {
        TreeMap<Room, Long> counts = new TreeMap<>();
        ProgramClasses.topLevel()
                .map(JavaClass::getPackageName)
                .flatMap(name -> Room.of(name).stream())
                .forEach(room -> counts.merge(room, 1L, Long::sum));
        return Stream.of(Room.values())
                .filter(counts::containsKey)
                .map(room -> room.label() + "=" + counts.get(room))
                .toList();
    }
}
