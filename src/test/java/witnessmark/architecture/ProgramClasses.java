package witnessmark.architecture;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import java.nio.file.Path;
import java.util.stream.Stream;

/** The compiled program, and apart from it the compiled tests, read once. */
final class ProgramClasses {
    private static final JavaClasses MAIN = read("classes");
    private static final JavaClasses TESTS = read("test-classes");

    private ProgramClasses() {}

    static JavaClasses main() {
        return MAIN;
    }

    static JavaClasses tests() {
        return TESTS;
    }

    /** Classes of the program that have a file of their own, package fronts aside. */
    static Stream<JavaClass> topLevel() {
        return MAIN.stream()
                .filter(JavaClass::isTopLevelClass)
                .filter(javaClass -> !javaClass.getSimpleName().equals("package-info"));
    }

    private static JavaClasses read(String folder) {
        return new ClassFileImporter().importPath(Path.of(SourceTree.property("project.build.directory"), folder));
    }
}
