package witnessmark.launch.jobsheet;

import java.util.ArrayList;
import java.util.List;
import witnessmark.domain.PlannedRun;
import witnessmark.ledger.result.LookAt;
import witnessmark.logbook.standing.NextRun;
import witnessmark.report.JobSheet;
import witnessmark.wording.LookWords;
import witnessmark.wording.Measures;
import witnessmark.wording.Texts;

/** Rows of what is to be looked at before the next run of each car, while an event runs. */
final class LookRows {
    private final Texts texts;
    private final Measures measures;
    private final LookWords words;

    LookRows(Texts texts, Measures measures) {
        this.texts = texts;
        this.measures = measures;
        this.words = new LookWords(texts, measures);
    }

    /** One section for each car. */
    List<JobSheet.Section> sections(List<NextRun> runs) {
        return runs.stream().map(this::section).toList();
    }

    private JobSheet.Section section(NextRun run) {
        String engine =
                run.engine() == null ? texts.get("jobsheet.next.bare") : texts.get("beforewego.engine", run.engine());
        return new JobSheet.Section(
                texts.get("jobsheet.next", run.name()),
                texts.get(
                        "jobsheet.next.run", engine, texts.get("beforewego.next.open", run(run.planned()), run.open())),
                texts.get("jobsheet.looked"),
                run.looks().stream().map(this::row).toList());
    }

    /** One that somebody looked at is ticked, with who it was and what was seen. */
    private JobSheet.Row row(LookAt look) {
        List<String> seen =
                look.done() == null ? List.of() : List.of(words.done(look.done().fact()));
        return new JobSheet.Row(look.done() != null, null, words.what(look), "", List.of(), seen);
    }

    private String run(PlannedRun planned) {
        List<String> said = new ArrayList<>(List.of(planned.name()));
        said.add(texts.get("beforewego.out.day", measures.weekday(planned.day()), measures.shortDate(planned.day())));
        if (planned.out() != null) {
            said.add(measures.time(planned.out()));
        }
        return measures.row(said);
    }
}
