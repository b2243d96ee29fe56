package witnessmark.desktop.bench;

import java.util.List;
import witnessmark.desktop.form.SeamState;
import witnessmark.desktop.lessons.LessonLineWords;
import witnessmark.domain.Build;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.fit.result.Pull;
import witnessmark.fit.result.SheetCounts;
import witnessmark.ledger.result.MarkState;
import witnessmark.logbook.View;
import witnessmark.logbook.measuring.SeeBuildSheet;
import witnessmark.logbook.measuring.SheetPage;
import witnessmark.wording.BuildWords;
import witnessmark.wording.FitMarks;
import witnessmark.wording.FitWords;
import witnessmark.wording.Measures;
import witnessmark.wording.PullWords;
import witnessmark.wording.RecordWords;
import witnessmark.wording.Texts;

/** Words a build sheet. The same answer always gives the same lines. */
final class BenchWords {
    private final Texts texts;
    private final Measures measures;
    private final FitWords fit;
    private final RecordWords records;
    private final BuildWords builds;
    private final GridWords grids;
    private final AnswerWords answers;
    private final PullWords pulls;
    private final LessonLineWords lessons;

    BenchWords(Texts texts, Measures measures) {
        this.texts = texts;
        this.measures = measures;
        this.fit = new FitWords(texts, measures);
        this.builds = new BuildWords(texts, measures);
        this.records = new RecordWords(texts);
        Verdicts verdicts = new Verdicts(texts, fit);
        this.grids = new GridWords(texts, measures, fit);
        this.pulls = new PullWords(texts, measures);
        this.lessons = new LessonLineWords(texts, measures);
        this.answers = new AnswerWords(texts, measures, fit, verdicts);
    }

    /** A build as it is chosen. */
    BenchLines.Choice choice(View view, Entry<Build> entry) {
        Build build = entry.fact();
        String name = builds.name(view.facts().of(Engine.class).get(build.engine()), build);
        return new BenchLines.Choice(
                entry.id().text(),
                SeeBuildSheet.isOpen(view, build) || build.closed() == null
                        ? texts.get(
                                "bench.build.open",
                                name,
                                measures.date(build.opened().day()))
                        : texts.get(
                                "bench.build.closed",
                                name,
                                measures.date(build.closed().day())));
    }

    /** How it stands as it is written. */
    BenchLines lines(View view, SheetPage page) {
        return lines(view, page, false);
    }

    /** How it would stand with what is typed. */
    BenchLines typed(View view, SheetPage page) {
        return lines(view, page, true);
    }

    private BenchLines lines(View view, SheetPage page, boolean typed) {
        SheetCounts counts = page.counts();
        return new BenchLines(
                page.build().id().text(),
                builds.name(page.engine().fact(), page.build().fact()),
                typed ? texts.get("bench.typed", fit.headline(counts)) : fit.headline(counts),
                state(page, counts),
                texts.get(
                        "bench.under",
                        page.measured(),
                        page.order().size(),
                        builds.signed(
                                page.signed() == null ? null : page.signed().fact(),
                                page.build().fact())),
                typed,
                page.lacking().isEmpty()
                        ? ""
                        : texts.get(
                                "bench.lacking",
                                measures.row(page.lacking().stream()
                                        .map(records::word)
                                        .toList())),
                page.contradictions().stream().map(fit::contradiction).toList(),
                page.strongerLink() == null ? List.of() : List.of(fit.strongerLink(page.strongerLink())),
                grids.steps(page),
                answers.lines(page),
                page.pulls().stream().map(this::joint).toList(),
                page.openLessons().stream()
                        .map(check -> lessons.line(view.facts(), check, !view.readOnly()))
                        .toList());
    }

    private static SeamState state(SheetPage page, SheetCounts counts) {
        if (counts.outside() > 0 || !page.contradictions().isEmpty()) {
            return SeamState.OVER;
        }
        if (counts.missing() > 0 || counts.lessons() > 0) {
            return SeamState.NOT_KNOWN;
        }
        return counts.accepted() > 0
                ? SeamState.RUN_ON
                : counts.acceptedUnmeasured() > 0 ? SeamState.NOT_KNOWN : SeamState.WITHIN;
    }

    private BenchLines.JointLine joint(Pull pull) {
        MarkState mark = FitMarks.of(pull.finding());
        return new BenchLines.JointLine(
                new BenchLines.Stand(
                        mark == null ? null : SeamState.of(mark), pulls.finding(pull.finding()), pulls.sentence(pull)),
                pulls.column(pull),
                pulls.lacks(pull));
    }

    FitWords fit() {
        return fit;
    }
}
