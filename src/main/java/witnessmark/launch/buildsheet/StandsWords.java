package witnessmark.launch.buildsheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.FitVerdict;
import witnessmark.domain.MeasurePlace;
import witnessmark.domain.SignedCheck;
import witnessmark.fit.result.Bound;
import witnessmark.fit.result.Bounds;
import witnessmark.fit.result.Check;
import witnessmark.fit.result.Pull;
import witnessmark.logbook.measuring.Finding;
import witnessmark.logbook.measuring.SheetPage;
import witnessmark.logbook.measuring.SinceSigned;
import witnessmark.report.BuildSheet.Answer;
import witnessmark.report.BuildSheet.Group;
import witnessmark.report.BuildSheet.Signed;
import witnessmark.report.BuildSheet.Stands;
import witnessmark.report.BuildSheet.Step;
import witnessmark.report.BuildSheet.Sum;
import witnessmark.wording.BuildWords;
import witnessmark.wording.FitMarks;
import witnessmark.wording.FitWords;
import witnessmark.wording.Measures;
import witnessmark.wording.PullWords;
import witnessmark.wording.RecordWords;
import witnessmark.wording.Texts;

/** Words how the figures of a sheet stand, as the bench does, and what stood when it was signed. */
final class StandsWords {
    private final Texts texts;
    private final FitWords fit;
    private final BuildWords builds;
    private final RecordWords records;
    private final PullWords pulls;

    StandsWords(Texts texts, Measures measures) {
        this.texts = texts;
        this.fit = new FitWords(texts, measures);
        this.builds = new BuildWords(texts, measures);
        this.records = new RecordWords(texts);
        this.pulls = new PullWords(texts, measures);
    }

    Stands of(SheetPage page, @Nullable Step workedOut) {
        List<Finding> all = Finding.all(page);
        List<Group> groups = new ArrayList<>();
        for (Finding.Group group : Finding.Group.values()) {
            List<Answer> of = all.stream()
                    .filter(finding -> finding.group() == group)
                    .map(this::answer)
                    .toList();
            if (!of.isEmpty()) {
                groups.add(new Group(texts.get("bench.group." + group.name().toLowerCase(Locale.ROOT), of.size()), of));
            }
        }
        if (!page.pulls().isEmpty()) {
            groups.add(new Group(
                    texts.get("bench.joints"),
                    page.pulls().stream().map(this::joint).toList()));
        }
        return new Stands(texts.get("bench.answers"), groups, workedOut, page.signed() == null ? null : signed(page));
    }

    private Answer answer(Finding finding) {
        @Nullable Check shown = finding.shown();
        boolean adds = shown != null && shown.addsUp();
        FitVerdict verdict = finding.answer().verdict();
        return new Answer(
                FitMarks.of(verdict, finding.accepted()),
                finding.accepted() ? texts.get("bench.accepted") : fit.verdict(verdict),
                fit.answer(finding.answer()),
                finding.acceptedBy().stream()
                        .map(accepted -> texts.get("fit.accepted", accepted.why(), accepted.by()))
                        .toList(),
                beside(finding, shown),
                adds
                        ? texts.get(
                                "bench.column",
                                fit.of(Objects.requireNonNull(shown).place()))
                        : "",
                adds ? column(Objects.requireNonNull(shown)) : List.of(),
                builds.caution(finding.answer().kind()));
    }

    private Answer joint(Pull pull) {
        return new Answer(
                FitMarks.of(pull.finding()),
                pulls.finding(pull.finding()),
                pulls.sentence(pull),
                List.of(),
                Stream.concat(
                                pulls.lacks(pull).stream(),
                                pulls.column(pull).stream()
                                        .map(line -> texts.get("fit.pair", records.label(line.what()), line.figure())))
                        .toList(),
                "",
                List.of(),
                texts.get("fit.caution.fasteners"));
    }

    private List<Sum> column(Check check) {
        return fit.column(check).stream()
                .map(line -> new Sum(
                        line.basis().isEmpty()
                                ? line.what()
                                : texts.get("bench.column.line", line.what(), line.basis()),
                        line.figure()))
                .toList();
    }

    /** What its row shows, all that is missing, what it rests on, whose its limits are. */
    private List<String> beside(Finding finding, @Nullable Check shown) {
        List<String> lines = new ArrayList<>();
        if (finding.answer().pattern() != null) {
            lines.add(fit.pattern(finding.answer().pattern()));
        }
        lines.add(fit.lacks(finding.answer()));
        if (shown != null) {
            if (shown.missing().isEmpty()) { // what is missing is said above, with that of the other places
                lines.addAll(fit.beside(shown));
            }
            if (shown.verdict() != FitVerdict.OUTSIDE) { // the sentence of what is outside says whose the limit is
                Stream.of(shown.bounds().least(), shown.bounds().most())
                        .filter(Objects::nonNull)
                        .map(bound -> limit(shown, bound))
                        .forEach(lines::add);
            }
        }
        lines.removeIf(String::isEmpty);
        return lines;
    }

    private String limit(Check shown, Bound bound) {
        return texts.get(
                bound.equals(shown.bounds().least()) ? "bench.limit.least" : "bench.limit.most",
                fit.bound(shown.place().kind(), bound));
    }

    private Signed signed(SheetPage page) {
        List<List<String>> rows = SinceSigned.of(page).stream().map(this::row).toList();
        return new Signed(
                texts.get("buildsheet.since"),
                List.of(
                        texts.get("buildsheet.since.figure"),
                        texts.get("buildsheet.since.then"),
                        texts.get("buildsheet.since.now")),
                rows,
                texts.get(page.signedChecks().isEmpty() ? "buildsheet.since.notKept" : "buildsheet.since.same"));
    }

    private List<String> row(SinceSigned each) {
        SignedCheck then = each.then();
        Check now = each.now();
        MeasurePlace place = then == null
                ? Objects.requireNonNull(now).place()
                : new MeasurePlace(then.kind(), then.number(), then.spot());
        return List.of(
                records.label(fit.of(place)),
                then == null
                        ? texts.get("buildsheet.since.notAsked")
                        : stood(place, then.value(), then.verdict(), bounds(then)),
                now == null
                        ? texts.get("buildsheet.since.notAsked")
                        : stood(place, now.value(), now.verdict(), now.bounds()));
    }

    private static Bounds bounds(SignedCheck then) {
        return new Bounds(
                then.atLeast() == null ? null : new Bound(then.atLeast(), null, then.source()),
                then.atMost() == null ? null : new Bound(then.atMost(), null, then.source()),
                null,
                null);
    }

    /** {@code 0.99 mm, outside, not under 1.00 mm}. */
    private String stood(MeasurePlace place, @Nullable Long value, FitVerdict verdict, Bounds bounds) {
        String stood = value == null
                ? fit.verdict(verdict)
                : texts.get("bench.say.stand", fit.figure(place.kind(), value, bounds), fit.verdict(verdict));
        return bounds.limits() ? texts.get("bench.say.stand", stood, fit.bounds(place.kind(), bounds)) : stood;
    }
}
