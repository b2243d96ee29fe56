package witnessmark.launch.jobsheet;

import java.util.List;
import java.util.stream.Stream;
import witnessmark.logbook.standing.MarkOn;
import witnessmark.report.JobSheet;
import witnessmark.wording.Measures;
import witnessmark.wording.StandWords;
import witnessmark.wording.Texts;

/** Rows of what calls before the team goes, and of what comes due. */
final class MarkRows {
    private final Texts texts;
    private final StandWords stands;

    MarkRows(Texts texts, Measures measures) {
        this.texts = texts;
        this.stands = new StandWords(texts, measures);
    }

    /** @param heading key of the heading */
    JobSheet.Section section(String heading, List<MarkOn> marks) {
        return new JobSheet.Section(
                texts.get(heading),
                texts.get("jobsheet.stands"),
                texts.get("jobsheet.asked"),
                marks.stream().map(this::row).toList());
    }

    private JobSheet.Row row(MarkOn on) {
        StandWords.Said said = stands.said(on.mark());
        return new JobSheet.Row(
                false,
                new JobSheet.Mark(on.state(), stands.state(on.state())),
                stands.title(on.mark(), on.kind(), on.serial(), on.engine(), on.car()),
                stands.where(on.engine(), on.car()),
                said(said.left(), said.figures()),
                said.dueWords().startsWith(said.due()) ? said(said.dueWords()) : said(said.due(), said.dueWords()));
    }

    private static List<String> said(String... lines) {
        return Stream.of(lines).filter(line -> !line.isEmpty()).toList();
    }
}
