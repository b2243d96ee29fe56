package witnessmark.logbook.measuring;

import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Concession;
import witnessmark.domain.Entry;
import witnessmark.domain.FitVerdict;
import witnessmark.fit.result.Answer;
import witnessmark.fit.result.Check;

/**
 * How one kind of figure stands on its sheet, for whoever shows it: where it belongs, and which place is told of.
 *
 * @param answer the checks of the kind
 * @param group where it stands in the list
 * @param checks the worst first, and of those alike the one with the least room
 * @param shown the check that is told, or null where there is none
 * @param open checks a limit asks about that are outside or lack a figure, and that nobody accepted
 * @param accepted whether all that would be left open is accepted as it is
 * @param acceptedBy what accepts any of them
 */
public record Finding(
        Answer answer,
        Group group,
        List<Check> checks,
        @Nullable Check shown,
        List<Check> open,
        boolean accepted,
        List<Concession> acceptedBy) {
    private static final List<FitVerdict> WORST_FIRST = List.of(
            FitVerdict.OUTSIDE, FitVerdict.NOT_MEASURED, FitVerdict.OFF_AIM, FitVerdict.INSIDE, FitVerdict.NO_LIMIT);

    public Finding {
        checks = List.copyOf(checks);
        open = List.copyOf(open);
        acceptedBy = List.copyOf(acceptedBy);
    }

    /** The list's parts, in their order. */
    public enum Group {
        LOOK,
        ACCEPTED,
        INSIDE,
        /** Not measured, and no limit asks for it. */
        UNASKED,
        FREE
    }

    /** Of every kind on a sheet, in the order they are shown: by group, in each the worst first. */
    public static List<Finding> all(SheetPage page) {
        return page.answers().stream()
                .map(answer -> of(page, answer))
                .sorted(Comparator.comparing((Finding finding) -> finding.group())
                        .thenComparing(
                                finding -> WORST_FIRST.indexOf(finding.answer().verdict())))
                .toList();
    }

    private static Finding of(SheetPage page, Answer answer) {
        List<Check> checks = answer.checks().stream()
                .sorted(Comparator.comparing((Check check) -> WORST_FIRST.indexOf(check.verdict()))
                        .thenComparing(Finding::room, Comparator.nullsLast(Comparator.naturalOrder())))
                .toList();
        List<Check> asked = answer.open();
        List<Check> open = checks.stream()
                .filter(check -> asked.contains(check) && page.accepts(check).isEmpty())
                .toList();
        List<Check> bare =
                checks.stream().filter(check -> isBare(check.verdict())).toList();
        boolean accepted = open.isEmpty()
                && bare.stream().anyMatch(check -> page.accepts(check).isPresent());
        return new Finding(
                answer,
                group(answer, accepted),
                checks,
                answer.nearest() != null ? answer.nearest() : checks.isEmpty() ? null : checks.get(0),
                open,
                accepted,
                bare.stream()
                        .flatMap(check -> page.accepts(check).stream())
                        .map(Entry::fact)
                        .distinct()
                        .toList());
    }

    private static boolean isBare(FitVerdict verdict) {
        return verdict == FitVerdict.OUTSIDE || verdict == FitVerdict.NOT_MEASURED;
    }

    private static @Nullable Long room(Check check) {
        return check.value() == null ? null : check.bounds().room(check.value());
    }

    private static Group group(Answer answer, boolean accepted) {
        return switch (answer.verdict()) {
            case NOT_MEASURED -> accepted ? Group.ACCEPTED : answer.open().isEmpty() ? Group.UNASKED : Group.LOOK;
            case OUTSIDE -> accepted ? Group.ACCEPTED : Group.LOOK;
            case OFF_AIM -> Group.LOOK;
            case INSIDE -> Group.INSIDE;
            case NO_LIMIT -> Group.FREE;
        };
    }
}
