package witnessmark.desktop.bench;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Entry;
import witnessmark.domain.FitVerdict;
import witnessmark.domain.MeasureKind;
import witnessmark.fit.result.Answer;
import witnessmark.fit.result.Bound;
import witnessmark.fit.result.Bounds;
import witnessmark.fit.result.Check;
import witnessmark.logbook.measuring.SeeBuildSheet;
import witnessmark.logbook.measuring.SheetPage;
import witnessmark.logbook.sheets.Prefilled;
import witnessmark.quantity.Dimension;
import witnessmark.wording.FitWords;
import witnessmark.wording.MeasureWords;
import witnessmark.wording.Measures;
import witnessmark.wording.RecordWords;
import witnessmark.wording.Texts;

/** Words how the figures of a sheet stand, worst first. */
final class AnswerWords {
    private static final List<FitVerdict> WORST_FIRST = List.of(
            FitVerdict.OUTSIDE, FitVerdict.NOT_MEASURED, FitVerdict.OFF_AIM, FitVerdict.INSIDE, FitVerdict.NO_LIMIT);
    private static final Set<MeasureKind> COMPUTED = EnumSet.of(
            MeasureKind.VALVE_TO_PISTON_INLET,
            MeasureKind.VALVE_TO_PISTON_EXHAUST,
            MeasureKind.CROWN_TO_HEAD,
            MeasureKind.SQUISH_WIRE,
            MeasureKind.RING_OVER_BORE,
            MeasureKind.RING_OVER_CROWN);
    private static final Set<MeasureKind> FASTENERS = EnumSet.of(
            MeasureKind.BOLT_BEFORE, MeasureKind.BOLT_STRETCH, MeasureKind.BOLT_AFTER, MeasureKind.BOLT_GROWTH);

    private final Texts texts;
    private final FitWords fit;
    private final Verdicts verdicts;
    private final RecordWords records;
    private final MeasureWords figures;

    AnswerWords(Texts texts, Measures measures, FitWords fit, Verdicts verdicts) {
        this.texts = texts;
        this.fit = fit;
        this.verdicts = verdicts;
        this.records = new RecordWords(texts);
        this.figures = new MeasureWords(texts, measures);
    }

    List<AnswerLine> lines(SheetPage page) {
        return page.answers().stream()
                .map(answer -> line(page, answer))
                .sorted(Comparator.comparing(AnswerLine::group).thenComparing(line -> rank(page, line.kind())))
                .toList();
    }

    private static int rank(SheetPage page, MeasureKind kind) {
        return WORST_FIRST.indexOf(page.answer(kind).orElseThrow().verdict());
    }

    private AnswerLine line(SheetPage page, Answer answer) {
        List<Check> checks = nearestFirst(answer);
        Check shown = answer.nearest() != null ? answer.nearest() : checks.isEmpty() ? null : checks.get(0);
        List<Check> open = checks.stream().filter(check -> isOpen(page, check)).toList();
        boolean accepted = open.isEmpty()
                && checks.stream()
                        .anyMatch(check ->
                                isOpen(check.verdict()) && page.accepts(check).isPresent());
        boolean adds = shown != null && shown.value() != null && shown.terms().size() > 1;
        return new AnswerLine(
                answer.kind(),
                group(answer, accepted),
                verdicts.stand(answer.verdict(), accepted, fit.answer(answer)),
                checks.size() > 1
                        ? checks.stream()
                                .map(check -> verdicts.stand(page, check))
                                .toList()
                        : List.of(),
                adds ? fit.of(Objects.requireNonNull(shown).place()) : "",
                adds ? fit.column(Objects.requireNonNull(shown)) : List.of(),
                Stream.concat(signedThen(page, checks).stream(), beside(answer, shown).stream())
                        .toList(),
                accepted(page, checks),
                caution(answer.kind()),
                open.isEmpty() ? null : accept(page, open),
                wanted(answer, shown));
    }

    private static boolean isOpen(FitVerdict verdict) {
        return verdict == FitVerdict.OUTSIDE || verdict == FitVerdict.NOT_MEASURED;
    }

    private static boolean isOpen(SheetPage page, Check check) {
        boolean asked = check.verdict() == FitVerdict.OUTSIDE
                || check.verdict() == FitVerdict.NOT_MEASURED && check.bounds().limits();
        return asked && page.accepts(check).isEmpty();
    }

    private static AnswerLine.Group group(Answer answer, boolean accepted) {
        return switch (answer.verdict()) {
            case NOT_MEASURED ->
                accepted
                        ? AnswerLine.Group.ACCEPTED
                        : answer.checks().stream()
                                        .anyMatch(check -> check.bounds().limits())
                                ? AnswerLine.Group.LOOK
                                : AnswerLine.Group.UNASKED;
            case OUTSIDE -> accepted ? AnswerLine.Group.ACCEPTED : AnswerLine.Group.LOOK;
            case OFF_AIM -> AnswerLine.Group.LOOK;
            case INSIDE -> AnswerLine.Group.INSIDE;
            case NO_LIMIT -> AnswerLine.Group.FREE;
        };
    }

    /** Worst first, and of those alike the one with the least room. */
    private static List<Check> nearestFirst(Answer answer) {
        return answer.checks().stream()
                .sorted(Comparator.comparing((Check check) -> WORST_FIRST.indexOf(check.verdict()))
                        .thenComparing(AnswerWords::room, Comparator.nullsLast(Comparator.naturalOrder())))
                .toList();
    }

    private static @Nullable Long room(Check check) {
        return check.value() == null ? null : check.bounds().room(check.value());
    }

    private List<String> beside(Answer answer, @Nullable Check shown) {
        List<String> lines = new ArrayList<>();
        if (answer.pattern() != null) {
            lines.add(fit.pattern(answer.pattern()));
        }
        if (shown == null) {
            return lines;
        }
        lines.addAll(fit.beside(shown));
        if (shown.verdict() != FitVerdict.OUTSIDE) { // the sentence of what is outside says whose the limit is
            Stream.of(shown.bounds().least(), shown.bounds().most())
                    .filter(Objects::nonNull)
                    .map(bound -> limit(answer.kind(), shown, bound))
                    .forEach(lines::add);
        }
        return lines;
    }

    private String limit(MeasureKind kind, Check shown, Bound bound) {
        return texts.get(
                bound.equals(shown.bounds().least()) ? "bench.limit.least" : "bench.limit.most",
                fit.bound(kind, bound));
    }

    private List<String> accepted(SheetPage page, List<Check> checks) {
        return checks.stream()
                .filter(check -> isOpen(check.verdict()))
                .flatMap(check -> page.accepts(check).stream())
                .distinct()
                .map(entry -> texts.get(
                        "fit.accepted", entry.fact().why(), entry.fact().by()))
                .toList();
    }

    private String caution(MeasureKind kind) {
        return COMPUTED.contains(kind)
                ? texts.get("fit.caution.computed")
                : FASTENERS.contains(kind) ? texts.get("fit.caution.fasteners") : "";
    }

    private Prefilled accept(SheetPage page, List<Check> open) {
        Check first = open.get(0);
        boolean one =
                open.stream().map(check -> check.place().number()).distinct().count() == 1;
        String what = texts.get(
                one || first.value() == null ? "bench.accept.what" : "bench.accept.worst",
                fit.of(first.place()),
                value(first));
        return Prefilled.accepting(
                page.build(), first.place().kind(), one ? first.place().number() : null, what);
    }

    private AnswerLine.@Nullable Wanted wanted(Answer answer, @Nullable Check shown) {
        if (!SeeBuildSheet.hasWays(answer.kind()) || shown == null || shown.value() == null) {
            return null;
        }
        Bounds bounds = shown.bounds();
        Dimension dimension = answer.kind().dimension();
        Stream<@Nullable Long> usual = answer.kind() == MeasureKind.COMPRESSION_RATIO
                ? Stream.of(value(bounds.most()), bounds.aimMost(), bounds.aimLeast())
                : Stream.of(value(bounds.least()), bounds.aimLeast(), value(bounds.most()));
        String text = usual.filter(Objects::nonNull)
                .findFirst()
                .map(parts -> figures.bare(dimension, parts))
                .orElse("");
        return new AnswerLine.Wanted(figures.sign(dimension), text);
    }

    private static @Nullable Long value(@Nullable Bound bound) {
        return bound == null ? null : bound.value();
    }

    /** Where a signed sheet judged otherwise: what stood then. */
    private List<String> signedThen(SheetPage page, List<Check> checks) {
        return page.signedChecks().stream()
                .map(Entry::fact)
                .flatMap(then -> checks.stream()
                        .filter(now -> now.place().kind() == then.kind()
                                && Objects.equals(now.place().number(), then.number())
                                && Objects.equals(now.place().spot(), then.spot())
                                && now.verdict() != then.verdict())
                        .map(now -> texts.get(
                                "bench.signed.then",
                                records.label(fit.where(now.place())),
                                then.value() == null
                                        ? fit.verdict(then.verdict())
                                        : texts.get(
                                                "bench.say.stand",
                                                fit.figure(then.kind(), then.value()),
                                                fit.verdict(then.verdict())),
                                fit.verdict(now.verdict()))))
                .toList();
    }

    private String value(Check check) {
        return check.value() == null
                ? fit.verdict(check.verdict())
                : fit.figure(check.place().kind(), check.value());
    }
}
