package witnessmark.launch.facesheet;

import java.util.function.Function;
import witnessmark.logbook.faces.FaceSheetFacts;
import witnessmark.logbook.port.Paper;
import witnessmark.report.FaceSheetPdf;
import witnessmark.report.Pdf;
import witnessmark.wording.Measures;
import witnessmark.wording.Texts;

/** Words a face and lays it out on pages. */
public final class FaceSheetPaper implements Function<FaceSheetFacts, Paper> {
    private final FaceSheetWords words;
    private final FaceSheetPdf pages;

    /** Words it in the language and units of the measures. */
    public FaceSheetPaper(Texts texts, Measures measures) {
        this.words = new FaceSheetWords(texts, measures);
        this.pages = new FaceSheetPdf(texts);
    }

    @Override
    public Paper apply(FaceSheetFacts facts) {
        Pdf pdf = pages.of(words.apply(facts));
        return new Paper(pdf.bytes(), pdf.pages());
    }
}
