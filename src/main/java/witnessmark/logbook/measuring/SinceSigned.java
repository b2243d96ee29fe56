package witnessmark.logbook.measuring;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Entry;
import witnessmark.domain.SignedCheck;
import witnessmark.fit.result.Bound;
import witnessmark.fit.result.Check;

/**
 * A check that stands otherwise than when its sheet was signed.
 *
 * @param then how it stood; null where nothing was checked there
 * @param now how it stands; null where nothing is checked there any more
 */
public record SinceSigned(
        @Nullable SignedCheck then, @Nullable Check now) {
    /** All of a sheet, in the order they were signed, what was not checked then after them; none where nobody signed. */
    public static List<SinceSigned> of(SheetPage page) {
        List<SignedCheck> signed = page.signedChecks().stream().map(Entry::fact).toList();
        List<Check> checks = page.answers().stream()
                .flatMap(answer -> answer.checks().stream())
                .toList();
        List<SinceSigned> differ = new ArrayList<>();
        for (SignedCheck then : signed) {
            Check now = checks.stream()
                    .filter(check -> isOf(then, check))
                    .findFirst()
                    .orElse(null);
            if (now == null || !same(then, now)) {
                differ.add(new SinceSigned(then, now));
            }
        }
        if (!signed.isEmpty()) {
            checks.stream()
                    .filter(check ->
                            check.value() != null || check.bounds().set()) // else nobody asks for it now either
                    .filter(check -> signed.stream().noneMatch(then -> isOf(then, check)))
                    .forEach(check -> differ.add(new SinceSigned(null, check)));
        }
        return differ;
    }

    private static boolean isOf(SignedCheck then, Check now) {
        return now.place().kind() == then.kind()
                && Objects.equals(now.place().number(), then.number())
                && Objects.equals(now.place().spot(), then.spot());
    }

    private static boolean same(SignedCheck then, Check now) {
        return then.verdict() == now.verdict()
                && Objects.equals(then.value(), now.value())
                && Objects.equals(then.atLeast(), value(now.bounds().least()))
                && Objects.equals(then.atMost(), value(now.bounds().most()));
    }

    private static @Nullable Long value(@Nullable Bound bound) {
        return bound == null ? null : bound.value();
    }

    /** Whether it is judged otherwise than it was, whatever the figure. */
    public boolean judgedOtherwise() {
        return then != null && now != null && then.verdict() != now.verdict();
    }
}
