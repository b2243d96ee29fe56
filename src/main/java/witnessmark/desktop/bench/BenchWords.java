package witnessmark.desktop.bench;

import java.util.List;
import witnessmark.desktop.form.SeamState;
import witnessmark.domain.Build;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.FitVerdict;
import witnessmark.fit.result.Pull;
import witnessmark.logbook.View;
import witnessmark.logbook.measuring.SeeBuildSheet;
import witnessmark.logbook.measuring.SheetPage;
import witnessmark.wording.BuildWords;
import witnessmark.wording.FitWords;
import witnessmark.wording.Measures;
import witnessmark.wording.PullWords;
import witnessmark.wording.Texts;

/** Words a build sheet. The same answer always gives the same lines. */
final class BenchWords {
    private final Texts texts;
    private final Measures measures;
    private final FitWords fit;
    private final BuildWords builds;
    private final GridWords grids;
    private final AnswerWords answers;
    private final PullWords pulls;

    BenchWords(Texts texts, Measures measures) {
        this.texts = texts;
        this.measures = measures;
        this.fit = new FitWords(texts, measures);
        this.builds = new BuildWords(texts, measures);
        Verdicts verdicts = new Verdicts(texts, fit);
        this.grids = new GridWords(texts, measures, fit);
        this.pulls = new PullWords(texts, measures);
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

    BenchLines lines(SheetPage page) {
        int outside = page.leftOpen(FitVerdict.OUTSIDE);
        int missing = page.leftOpen(FitVerdict.NOT_MEASURED);
        int accepted = page.acceptedFigures();
        return new BenchLines(
                page.build().id().text(),
                builds.name(page.engine().fact(), page.build().fact()),
                fit.headline(outside, missing, accepted),
                outside > 0 || !page.contradictions().isEmpty()
                        ? SeamState.OVER
                        : missing > 0 ? SeamState.NOT_KNOWN : accepted > 0 ? SeamState.RUN_ON : SeamState.WITHIN,
                builds.signed(
                        page.signed() == null ? null : page.signed().fact(),
                        page.build().fact()),
                page.contradictions().stream().map(fit::contradiction).toList(),
                page.strongerLink() == null ? List.of() : List.of(fit.strongerLink(page.strongerLink())),
                grids.steps(page),
                answers.lines(page),
                page.pulls().stream().map(this::joint).toList());
    }

    private BenchLines.JointLine joint(Pull pull) {
        SeamState state = switch (pull.finding()) {
            case OPENS, PAST_PROOF -> SeamState.OVER;
            case MAY_OPEN, MAY_PASS_PROOF -> SeamState.DUE;
            case NOTHING_AGAINST -> SeamState.WITHIN;
            case NOT_KNOWN -> SeamState.NOT_KNOWN;
            case NOTHING_TO_HOLD_AGAINST -> null;
        };
        return new BenchLines.JointLine(
                new BenchLines.Stand(state, pulls.finding(pull.finding()), pulls.sentence(pull)),
                pulls.column(pull),
                pulls.lacks(pull));
    }

    FitWords fit() {
        return fit;
    }
}
