package witnessmark.launch.buildsheet;

import java.util.function.Function;
import witnessmark.logbook.measuring.BuildSheetFacts;
import witnessmark.logbook.port.Paper;
import witnessmark.report.BuildSheetPdf;
import witnessmark.report.Pdf;
import witnessmark.wording.Measures;
import witnessmark.wording.Texts;

/** Words a build sheet and lays it out on pages. */
public final class BuildSheetPaper implements Function<BuildSheetFacts, Paper> {
    private final BuildSheetWords words;
    private final BuildSheetPdf pages;

    /** Words it in the language and units of the measures. */
    public BuildSheetPaper(Texts texts, Measures measures) {
        this.words = new BuildSheetWords(texts, measures);
        this.pages = new BuildSheetPdf(texts);
    }

    @Override
    public Paper apply(BuildSheetFacts facts) {
        Pdf pdf = pages.of(words.apply(facts));
        return new Paper(pdf.bytes(), pdf.pages());
    }
}
