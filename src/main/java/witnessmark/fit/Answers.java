package witnessmark.fit;

import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.MeasureKind;
import witnessmark.fit.result.Answer;
import witnessmark.fit.result.Check;
import witnessmark.fit.result.Pattern;

/** Puts the worst of several checks first. */
final class Answers {
    private static final Comparator<Check> NEAREST = Comparator.comparing(
            (Check check) -> check.bounds().room(Objects.requireNonNull(check.value())),
            Comparator.nullsLast(Comparator.naturalOrder()));

    private Answers() {}

    static Answer of(MeasureKind kind, List<Check> checks, @Nullable Pattern pattern) {
        Check nearest = checks.stream()
                .filter(check -> check.value() != null)
                .min(NEAREST)
                .orElse(null);
        return new Answer(kind, Answer.worst(checks), nearest, checks, pattern);
    }
}
