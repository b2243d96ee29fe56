package witnessmark.architecture;

import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.Dependency;
import com.tngtech.archunit.core.domain.JavaClass;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The edges between rooms. */
class RoomsTest {
    @Test
    void every_class_lies_in_a_room_on_the_map() {
        assertThat(ProgramClasses.main().stream()
                        .filter(javaClass -> Room.of(javaClass.getPackageName()).isEmpty())
                        .map(JavaClass::getName))
                .as("classes outside the rooms listed in %s", Room.class.getSimpleName())
                .isEmpty();
    }

    @ParameterizedTest
    @EnumSource
    void a_room_sees_only_what_the_map_allows(Room room) {
        List<String> forbidden = ProgramClasses.main().stream()
                .filter(javaClass -> inRoom(room, javaClass))
                .flatMap(javaClass -> javaClass.getDirectDependenciesFromSelf().stream())
                .flatMap(edge -> forbidden(room, edge))
                .distinct()
                .sorted()
                .toList();

        assertThat(forbidden).as("what %s must not see", room.label()).isEmpty();
    }

    @Test
    void rooms_are_free_of_cycles() {
        slices().matching(Room.ROOT + ".(*)..")
                .should()
                .beFreeOfCycles()
                .because("two rooms that need each other are one room")
                .check(ProgramClasses.main());
    }

    @Test
    void rooms_within_the_window_are_free_of_cycles() {
        slices().matching(Room.DESKTOP.packageName() + ".(*)..")
                .should()
                .beFreeOfCycles()
                .because("a subject's screen can then be read, tested and removed alone")
                .check(ProgramClasses.main());
    }

    private static Stream<String> forbidden(Room room, Dependency edge) {
        JavaClass seen = edge.getTargetClass().getBaseComponentType();
        return Room.of(seen.getPackageName())
                .filter(other -> !room.maySee(other, seen.getPackageName()))
                .map(other -> "%s (%s)".formatted(edge.getDescription(), room.whyNot(other)))
                .stream();
    }

    private static boolean inRoom(Room room, JavaClass javaClass) {
        return Room.of(javaClass.getPackageName()).filter(room::equals).isPresent();
    }
}
