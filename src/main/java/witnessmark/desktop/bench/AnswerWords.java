package witnessmark.desktop.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.FitVerdict;
import witnessmark.domain.MeasureKind;
import witnessmark.domain.SignedCheck;
import witnessmark.fit.result.Answer;
import witnessmark.fit.result.Bound;
import witnessmark.fit.result.Bounds;
import witnessmark.fit.result.Check;
import witnessmark.logbook.measuring.Finding;
import witnessmark.logbook.measuring.SeeBuildSheet;
import witnessmark.logbook.measuring.SheetPage;
import witnessmark.logbook.measuring.SinceSigned;
import witnessmark.logbook.sheets.Prefilled;
import witnessmark.quantity.Dimension;
import witnessmark.wording.BuildWords;
import witnessmark.wording.FitWords;
import witnessmark.wording.MeasureWords;
import witnessmark.wording.Measures;
import witnessmark.wording.RecordWords;
import witnessmark.wording.Texts;

/** Words how the figures of a sheet stand, worst first. */
final class AnswerWords {
    private final Texts texts;
    private final FitWords fit;
    private final BuildWords builds;
    private final Verdicts verdicts;
    private final RecordWords records;
    private final MeasureWords figures;

    AnswerWords(Texts texts, Measures measures, FitWords fit, Verdicts verdicts) {
        this.texts = texts;
        this.fit = fit;
        this.builds = new BuildWords(texts, measures);
        this.verdicts = verdicts;
        this.records = new RecordWords(texts);
        this.figures = new MeasureWords(texts, measures);
    }

    List<AnswerLine> lines(SheetPage page) {
        List<SinceSigned> since = SinceSigned.of(page);
        return Finding.all(page).stream()
                .map(finding -> line(page, finding, since))
                .toList();
    }

    private AnswerLine line(SheetPage page, Finding finding, List<SinceSigned> since) {
        Answer answer = finding.answer();
        Check shown = finding.shown();
        boolean adds = shown != null && shown.addsUp();
        return new AnswerLine(
                answer.kind(),
                finding.group(),
                verdicts.stand(answer.verdict(), finding.accepted(), fit.answer(answer)),
                finding.checks().size() > 1
                        ? finding.checks().stream()
                                .map(check -> verdicts.stand(page, check))
                                .toList()
                        : List.of(),
                adds ? fit.of(Objects.requireNonNull(shown).place()) : "",
                adds ? fit.column(Objects.requireNonNull(shown)) : List.of(),
                Stream.concat(signedThen(since, answer.kind()).stream(), beside(answer, shown).stream())
                        .toList(),
                finding.acceptedBy().stream()
                        .map(accepted -> texts.get("fit.accepted", accepted.why(), accepted.by()))
                        .toList(),
                builds.caution(answer.kind()),
                finding.open().isEmpty() ? null : accept(page, finding.open()),
                wanted(answer, shown));
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
    private List<String> signedThen(List<SinceSigned> since, MeasureKind kind) {
        return since.stream()
                .filter(SinceSigned::judgedOtherwise)
                .filter(each -> Objects.requireNonNull(each.then()).kind() == kind)
                .map(each -> signedThen(Objects.requireNonNull(each.then()), Objects.requireNonNull(each.now())))
                .toList();
    }

    private String signedThen(SignedCheck then, Check now) {
        return texts.get(
                "bench.signed.then",
                records.label(fit.where(now.place())),
                then.value() == null
                        ? fit.verdict(then.verdict())
                        : texts.get(
                                "bench.say.stand", fit.figure(then.kind(), then.value()), fit.verdict(then.verdict())),
                fit.verdict(now.verdict()));
    }

    private String value(Check check) {
        return check.value() == null
                ? fit.verdict(check.verdict())
                : fit.figure(check.place().kind(), check.value());
    }
}
