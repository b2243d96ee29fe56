package witnessmark.exchange;

import java.util.UUID;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Fact;
import witnessmark.domain.image.Component;
import witnessmark.domain.image.RecordTypes;
import witnessmark.outcome.ProblemKind;

/** Finds the row that another refers to, and says so when it cannot. */
final class References {
    private References() {}

    /**
     * The id of the row a text means, or null when it means none or several; the problem is noted.
     *
     * @param waits told the file to be mended first when the text may mean what is left out of it; that is no problem
     */
    static @Nullable UUID resolve(
            NameIndex names,
            Component component,
            Class<? extends Fact> target,
            long line,
            String text,
            Reading reading,
            Consumer<String> waits) {
        NameIndex.Match match = names.find(text);
        if (match.id() != null) {
            return match.id();
        }
        String heading = component.heading();
        if (match.readings().isEmpty()) {
            missing(component, target, line, text, reading, waits);
        } else {
            reading.problems()
                    .at(
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

    /** There is no such row, or none that could be taken. */
    static void missing(
            Component component,
            Class<? extends Fact> target,
            long line,
            String text,
            Reading reading,
            Consumer<String> waits) {
        String cause = reading.leftOut().causeOf(target, text);
        if (cause != null) {
            waits.accept(cause);
        } else {
            unknown(component, target, line, text, reading.problems());
        }
    }

    /** Notes that there is no such row. */
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
