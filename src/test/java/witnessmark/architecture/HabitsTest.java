package witnessmark.architecture;

import static com.tngtech.archunit.lang.conditions.ArchConditions.accessTargetWhere;
import static com.tngtech.archunit.lang.conditions.ArchConditions.callCodeUnitWhere;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noMethods;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import java.util.Set;
import org.junit.jupiter.api.Disabled;
import org.junit.jupiter.api.Test;

/** Habits of the house that can be seen in compiled classes. */
class HabitsTest {
    @Test
    void no_static_field_can_be_assigned() {
        fields().that()
                .areStatic()
                .should()
                .beFinal()
                .because("state reached from everywhere is changed from anywhere")
                .check(ProgramClasses.main());
    }

    @Test
    void nothing_is_fetched_from_a_static_getInstance() {
        noMethods()
                .should()
                .haveName("getInstance")
                .because("collaborators come by constructor, where they can be seen")
                .check(ProgramClasses.main());
    }

    @Test
    void only_the_command_line_uses_the_standard_streams() {
        noClasses()
                .that()
                .resideOutsideOfPackage(Room.COMMAND.packageName() + "..")
                .should(accessTargetWhere(Calls.standardStreams()))
                .orShould(callCodeUnitWhere(Calls.exactly(Throwable.class, "printStackTrace")))
                .because("a window has no console: failures are shown or logged")
                .check(ProgramClasses.main());
    }

    @Test
    void nothing_connects_anywhere() {
        noClasses()
                .should()
                .dependOnClassesThat(new DescribedPredicate<JavaClass>("reach a network") {
                    @Override
                    public boolean test(JavaClass seen) {
                        boolean address =
                                Set.of("URI", "URL", "URISyntaxException").contains(seen.getSimpleName());
                        return (seen.getPackageName().startsWith("java.net") && !address)
                                || seen.getPackageName().startsWith("javax.net")
                                || seen.getPackageName().startsWith("java.rmi")
                                || seen.getName().equals("java.nio.channels.SocketChannel");
                    }
                })
                .because("the program never connects anywhere")
                .check(ProgramClasses.main());
    }

    @Test
    void a_model_of_the_window_uses_no_widgets() {
        noClasses()
                .that()
                .resideInAPackage(Room.DESKTOP.packageName() + "..")
                .and()
                .resideOutsideOfPackage(Room.DESKTOP.packageName() + ".form..")
                .and()
                .haveSimpleNameEndingWith("Model")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("javax.swing..", "java.awt..", "com.formdev..", "net.miginfocom..")
                .because("what a screen does is tested without a display")
                .check(ProgramClasses.main());
    }

    @Test
    void no_package_is_a_drawer_for_odds_and_ends() {
        Set<String> drawers = Set.of("util", "utils", "common", "misc", "helper", "helpers");
        assertThat(ProgramClasses.main().stream().map(JavaClass::getPackageName).distinct())
                .as("a package is named after what its classes are about")
                .noneMatch(name -> Set.of(name.split("\\.")).stream().anyMatch(drawers::contains));
    }

    @Test
    void no_test_is_switched_off() {
        noClasses().should().beAnnotatedWith(Disabled.class).check(ProgramClasses.tests());
        noMethods().should().beAnnotatedWith(Disabled.class).check(ProgramClasses.tests());
    }

    @Test
    void no_test_sleeps() {
        noClasses()
                .should(callCodeUnitWhere(Calls.to(Thread.class, "sleep")))
                .because("a test waits for what it needs, not for a time")
                .check(ProgramClasses.tests());
    }
}
