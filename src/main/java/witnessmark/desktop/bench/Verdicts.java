package witnessmark.desktop.bench;

import witnessmark.desktop.form.SeamMark;
import witnessmark.desktop.form.SeamState;
import witnessmark.domain.FitVerdict;
import witnessmark.fit.result.Check;
import witnessmark.ledger.result.MarkState;
import witnessmark.logbook.measuring.SheetPage;
import witnessmark.wording.FitMarks;
import witnessmark.wording.FitWords;
import witnessmark.wording.Texts;

/** The marks under which figures stand, with their words. */
final class Verdicts {
    private final Texts texts;
    private final FitWords fit;

    Verdicts(Texts texts, FitWords fit) {
        this.texts = texts;
        this.fit = fit;
    }

    /** How one figure stands, and whether it is accepted as it is. */
    BenchLines.Stand stand(SheetPage page, Check check) {
        return stand(check.verdict(), page.accepts(check).isPresent(), fit.check(check));
    }

    /** The mark before a line. */
    static SeamMark mark(BenchLines.Stand stand) {
        SeamMark mark =
                new SeamMark(stand.state() == null ? SeamState.SCRAP : stand.state(), stand.word(), stand.sentence());
        mark.setToolTipText(null); // it would catch clicks
        if (stand.state() == null) {
            mark.setIcon(null);
        }
        return mark;
    }

    BenchLines.Stand stand(FitVerdict verdict, boolean accepted, String sentence) {
        MarkState mark = FitMarks.of(verdict, accepted);
        SeamState state = mark == null ? null : SeamState.of(mark);
        boolean signed = state == SeamState.RUN_ON || accepted && verdict == FitVerdict.NOT_MEASURED;
        return new BenchLines.Stand(state, signed ? texts.get("bench.accepted") : fit.verdict(verdict), sentence);
    }
}
