package witnessmark.architecture;

import static com.tngtech.archunit.lang.conditions.ArchConditions.callCodeUnitWhere;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaCall;
import com.tngtech.archunit.lang.syntax.elements.GivenClassesConjunction;
import java.security.SecureRandom;
import java.text.DecimalFormat;
import java.text.NumberFormat;
import java.time.Clock;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Date;
import java.util.Locale;
import java.util.Random;
import java.util.SplittableRandom;
import java.util.TimeZone;
import java.util.UUID;
import java.util.concurrent.ThreadLocalRandom;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** From quantity to plan the same arguments give the same answer, on any machine and any day. */
class PurityTest {
    private static final String WHY = "the same arguments give the same answer, on any machine and any day";

    static Stream<DescribedPredicate<JavaCall<?>>> impure_calls() {
        return Stream.of(
                DescribedPredicate.describe(
                        "java.time's now",
                        call -> call.getTargetOwner().getPackageName().startsWith("java.time")
                                && call.getName().equals("now")),
                Calls.to(Clock.class, "system", "systemUTC", "systemDefaultZone", "tickSeconds", "tickMinutes"),
                Calls.to(System.class, "currentTimeMillis", "nanoTime", "getProperty", "getenv", "getLogger"),
                Calls.exactly(Date.class, "<init>"),
                Calls.to(ZoneId.class, "systemDefault"),
                Calls.to(TimeZone.class, "getDefault"),
                Calls.to(Locale.class, "getDefault"),
                Calls.exactly(String.class, "format", String.class, Object[].class),
                Calls.exactly(String.class, "formatted", Object[].class),
                Calls.exactly(String.class, "toLowerCase"),
                Calls.exactly(String.class, "toUpperCase"),
                Calls.exactly(NumberFormat.class, "getInstance"),
                Calls.exactly(DecimalFormat.class, "<init>", String.class),
                Calls.exactly(DateTimeFormatter.class, "ofPattern", String.class),
                Calls.to(Math.class, "random"),
                Calls.exactly(Random.class, "<init>"),
                Calls.exactly(SplittableRandom.class, "<init>"),
                Calls.to(SecureRandom.class, "<init>"),
                Calls.to(ThreadLocalRandom.class, "current"),
                Calls.to(UUID.class, "randomUUID"));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("impure_calls")
    void no_computing_room_calls(DescribedPredicate<JavaCall<?>> impure) {
        pureRooms().should(callCodeUnitWhere(impure)).because(WHY).check(ProgramClasses.main());
    }

    @Test
    void no_computing_room_touches_files() {
        pureRooms()
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("java.nio.file..", "java.nio.channels..", "java.net..")
                .because(WHY)
                .check(ProgramClasses.main());
    }

    @Test
    void no_computing_room_reads_streams_but_trace_what_it_is_handed() {
        noClasses()
                .that()
                .resideInAnyPackage(packages(Room.pure().stream().filter(room -> room != Room.TRACE)))
                .should()
                .dependOnClassesThat()
                .resideInAPackage("java.io..")
                .because(WHY)
                .check(ProgramClasses.main());
        noClasses()
                .that()
                .resideInAPackage(Room.TRACE.packageName() + "..")
                .should()
                .dependOnClassesThat()
                .haveNameMatching("java\\.io\\.(File|RandomAccessFile|Console|PrintStream).*")
                .because("a trace is reduced from bytes, wherever they come from: the caller opens and closes them")
                .check(ProgramClasses.main());
    }

    @Test
    void no_computing_room_logs() {
        pureRooms()
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("org.slf4j..", "java.util.logging..")
                .because("what a computation has to say is part of its result")
                .check(ProgramClasses.main());
    }

    private static GivenClassesConjunction pureRooms() {
        return noClasses().that().resideInAnyPackage(packages(Room.pure().stream()));
    }

    private static String[] packages(Stream<Room> rooms) {
        return rooms.map(room -> room.packageName() + "..").toArray(String[]::new);
    }
}
