package witnessmark.launch.stripsheet;

import java.util.function.Function;
import witnessmark.logbook.port.Paper;
import witnessmark.logbook.strip.StripSheetFacts;
import witnessmark.report.Pdf;
import witnessmark.report.StripSheetPdf;
import witnessmark.wording.Measures;
import witnessmark.wording.Texts;

/** Words the report of a strip and lays it out on pages. */
public final class StripSheetPaper implements Function<StripSheetFacts, Paper> {
    private final StripSheetWords words;
    private final StripSheetPdf pages;

    /** Words it in the language and units of the measures. */
    public StripSheetPaper(Texts texts, Measures measures) {
        this.words = new StripSheetWords(texts, measures);
        this.pages = new StripSheetPdf(texts);
    }

    @Override
    public Paper apply(StripSheetFacts facts) {
        Pdf pdf = pages.of(words.apply(facts));
        return new Paper(pdf.bytes(), pdf.pages());
    }
}
