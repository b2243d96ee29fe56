package witnessmark.launch.jobsheet;

import java.util.function.Function;
import witnessmark.logbook.jobsheet.JobSheetFacts;
import witnessmark.logbook.port.Paper;
import witnessmark.report.JobSheetPdf;
import witnessmark.report.Pdf;
import witnessmark.wording.Measures;
import witnessmark.wording.Texts;

/** Words a job sheet and lays it out on pages. */
public final class JobSheetPaper implements Function<JobSheetFacts, Paper> {
    private final JobSheetWords words;
    private final JobSheetPdf pages;

    /** Words it in the language and units of the measures. */
    public JobSheetPaper(Texts texts, Measures measures) {
        this.words = new JobSheetWords(texts, measures);
        this.pages = new JobSheetPdf(texts);
    }

    @Override
    public Paper apply(JobSheetFacts facts) {
        Pdf pdf = pages.of(words.apply(facts));
        return new Paper(pdf.bytes(), pdf.pages());
    }
}
