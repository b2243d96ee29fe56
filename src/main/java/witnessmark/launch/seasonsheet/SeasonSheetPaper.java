package witnessmark.launch.seasonsheet;

import java.util.function.Function;
import witnessmark.logbook.money.SeasonSheetFacts;
import witnessmark.logbook.port.Paper;
import witnessmark.report.Pdf;
import witnessmark.report.SeasonSheetPdf;
import witnessmark.wording.Measures;
import witnessmark.wording.Texts;

/** Words a season and lays it out on pages. */
public final class SeasonSheetPaper implements Function<SeasonSheetFacts, Paper> {
    private final SeasonSheetWords words;
    private final SeasonSheetPdf pages;

    /** Words it in the language and units of the measures. */
    public SeasonSheetPaper(Texts texts, Measures measures) {
        this.words = new SeasonSheetWords(texts, measures);
        this.pages = new SeasonSheetPdf(texts);
    }

    @Override
    public Paper apply(SeasonSheetFacts facts) {
        Pdf pdf = pages.of(words.apply(facts));
        return new Paper(pdf.bytes(), pdf.pages());
    }
}
