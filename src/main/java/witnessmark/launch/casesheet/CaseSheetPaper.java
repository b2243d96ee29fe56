package witnessmark.launch.casesheet;

import java.util.function.Function;
import witnessmark.logbook.port.Paper;
import witnessmark.logbook.sharing.CaseSheetFacts;
import witnessmark.report.CaseSheetPdf;
import witnessmark.report.Pdf;
import witnessmark.wording.Measures;
import witnessmark.wording.Texts;

/** Words an incident without names and money and lays it out on pages. */
public final class CaseSheetPaper implements Function<CaseSheetFacts, Paper> {
    private final CaseSheetWords words;
    private final CaseSheetPdf pages;

    /** Words it in the language and units of the measures. */
    public CaseSheetPaper(Texts texts, Measures measures) {
        this.words = new CaseSheetWords(texts, measures);
        this.pages = new CaseSheetPdf(texts);
    }

    @Override
    public Paper apply(CaseSheetFacts facts) {
        Pdf pdf = pages.of(words.apply(facts));
        return new Paper(pdf.bytes(), pdf.pages());
    }
}
