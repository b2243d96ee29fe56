package witnessmark.architecture;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.AccessTarget.CodeUnitCallTarget;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaCall;
import java.util.List;
import java.util.stream.Stream;

/** Predicates on calls, each with the words it is reported in. */
final class Calls {
    private Calls() {}

    /** Calls of any overload of these methods. */
    static DescribedPredicate<JavaCall<?>> to(Class<?> owner, String... names) {
        return DescribedPredicate.describe(
                "%s.%s".formatted(owner.getSimpleName(), String.join("/", names)),
                call -> call.getTargetOwner().isAssignableTo(owner)
                        && Stream.of(names).anyMatch(call.getName()::equals));
    }

    /** Calls of the overload with exactly these parameters. */
    static DescribedPredicate<JavaCall<?>> exactly(Class<?> owner, String name, Class<?>... parameters) {
        List<String> wanted = Stream.of(parameters).map(Class::getName).toList();
        return DescribedPredicate.describe(
                "%s.%s".formatted(owner.getSimpleName(), name),
                call -> call.getTargetOwner().isEquivalentTo(owner)
                        && call.getName().equals(name)
                        && parameterNames(call.getTarget()).equals(wanted));
    }

    /** Reading of the standard streams. */
    static DescribedPredicate<JavaAccess<?>> standardStreams() {
        return DescribedPredicate.describe(
                "the standard streams",
                access -> access.getTargetOwner().isEquivalentTo(System.class)
                        && List.of("in", "out", "err").contains(access.getName()));
    }

    private static List<String> parameterNames(CodeUnitCallTarget target) {
        return target.getRawParameterTypes().stream()
                .map(type -> type.getName())
                .toList();
    }
}
