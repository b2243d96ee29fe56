package witnessmark.exchange;

import java.util.UUID;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Fact;
import witnessmark.domain.image.Component;
import witnessmark.domain.image.RecordTypes;
import witnessmark.outcome.ProblemKind;

/** Finds the row that another refers to, and says so when it cannot. */
final class References {
    private References() {}

    /** The id of the row a text means, or null when it means none or several; the problem is noted. */
    static @Nullable UUID resolve(
            NameIndex names,
            Component component,
            Class<? extends Fact> target,
            long line,
            String text,
            Problems problems) {
        NameIndex.Match match = names.find(text);
        if (match.id() != null) {
            return match.id();
        }
        String heading = component.heading();
        if (match.readings().isEmpty()) {
            unknown(component, target, line, text, problems);
        } else {
            problems.at(
                    line,
                    heading,
                    ProblemKind.TWO_READINGS,
                    heading,
                    Limits.shown(text),
                    match.readings().get(0).toString(),
                    match.readings().get(1).toString());
        }
        return null;
    }

    /** Notes that there is no such row, or none that could be taken. */
    static void unknown(Component component, Class<? extends Fact> target, long line, String text, Problems problems) {
        problems.at(
                line,
                component.heading(),
                ProblemKind.REFERENCE_UNKNOWN,
                component.heading(),
                Limits.shown(text),
                RecordTypes.of(target).name());
    }
}
