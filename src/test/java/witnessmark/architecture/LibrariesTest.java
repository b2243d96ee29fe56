package witnessmark.architecture;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import java.util.stream.Stream;
import net.miginfocom.swing.MigLayout;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Each library stops at the walls of the rooms that need it, so that it can be replaced there. */
class LibrariesTest {
    private enum Library {
        SWING("only the window has widgets", "javax.swing", Room.DESKTOP),
        AWT(
                "only what is drawn knows fonts and colours, and the store carries small pictures of photos",
                "java.awt",
                Room.PICTURE,
                Room.STORE,
                Room.DESKTOP,
                Room.CHART,
                Room.REPORT,
                Room.LAUNCH),
        FLATLAF("the look belongs to the window", "com.formdev", Room.DESKTOP),
        MIGLAYOUT("the layout belongs to the window", "net.miginfocom", Room.DESKTOP),
        JDBC("only the store knows how a logbook is kept", "java.sql", Room.STORE),
        JDBC_EXTENSIONS("only the store knows how a logbook is kept", "javax.sql", Room.STORE),
        SQLITE("only the store knows how a logbook is kept", "org.sqlite", Room.STORE),
        FLYWAY("only the store changes a logbook's shape", "org.flywaydb", Room.STORE),
        JFREECHART("a chart is described in our words and drawn in one place", "org.jfree", Room.CHART),
        PDF("only a report is a PDF", "com.lowagie", Room.REPORT),
        PICOCLI("only the command line has arguments", "picocli", Room.COMMAND),
        FASTCSV("text tables are read at the edge", "de.siegmar", Room.TRACE, Room.EXCHANGE),
        FAST_DOUBLE_PARSER("numbers of traces are read where their text is", "ch.randelshofer", Room.TRACE),
        ICALENDAR("a calendar is a form of the outside", "biweekly", Room.EXCHANGE),
        JACKSON("JSON is a form of the outside", "com.fasterxml.jackson", Room.STORE, Room.EXCHANGE, Room.COMMAND),
        UUID_GENERATOR(
                "an id is made when something is written, never while computing",
                "com.fasterxml.uuid",
                Room.LOGBOOK,
                Room.STORE,
                Room.EXCHANGE,
                Room.LAUNCH),
        HIPPARCHUS("numerical methods live where formulas do", "org.hipparchus", Room.STATISTICS, Room.MECHANICS),
        SOLVER("only the plan is solved", "com.google.ortools", Room.PLAN);

        private final String why;
        private final String packages;
        private final Room[] rooms;

        Library(String why, String packages, Room... rooms) {
            this.why = why;
            this.packages = packages;
            this.rooms = rooms;
        }
    }

    @ParameterizedTest
    @EnumSource
    void a_library_is_used_only_in_its_rooms(Library library) {
        noClasses()
                .that()
                .resideOutsideOfPackages(Stream.of(library.rooms)
                        .map(room -> room.packageName() + "..")
                        .toArray(String[]::new))
                .should()
                .dependOnClassesThat()
                .resideInAPackage(library.packages + "..")
                .because(library.why)
                .check(ProgramClasses.main());
    }

    @Test
    void forms_are_laid_out_by_the_layout_of_the_house() {
        noClasses()
                .that()
                .resideOutsideOfPackage("witnessmark.desktop.form..")
                .should()
                .dependOnClassesThat()
                .belongToAnyOf(MigLayout.class)
                .because("it takes three times as long with each level of panels; FormLayout does not")
                .check(ProgramClasses.main());
    }
}
