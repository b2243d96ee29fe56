package witnessmark.desktop.beforewego;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Entry;
import witnessmark.domain.Look;
import witnessmark.domain.PlannedRun;
import witnessmark.domain.Run;
import witnessmark.ledger.result.LookAt;
import witnessmark.logbook.standing.NextRun;
import witnessmark.wording.LookWords;
import witnessmark.wording.Measures;
import witnessmark.wording.Texts;

/** Words the next run of each car. */
final class NextRunModel {
    private final Texts texts;
    private final Measures measures;
    private final LookWords words;

    NextRunModel(Texts texts, Measures measures) {
        this.texts = texts;
        this.measures = measures;
        this.words = new LookWords(texts, measures);
    }

    /** @param seen the day looked at */
    List<NextRunLines> lines(List<NextRun> runs, LocalDate seen) {
        return runs.stream().map(run -> lines(run, seen)).toList();
    }

    private NextRunLines lines(NextRun run, LocalDate seen) {
        String title = run.engine() == null
                ? texts.get("beforewego.next.car", run.name())
                : texts.get("beforewego.out.title", run.name(), run.engine());
        return new NextRunLines(
                title,
                texts.get("beforewego.next.open", run(run.planned()), run.open()),
                new Countdown(texts, measures, seen, run.out()),
                run.looks().stream().map(look -> tick(run, look)).toList());
    }

    private NextRunLines.Tick tick(NextRun run, LookAt look) {
        Entry<Run> told = look.reason() == LookAt.Reason.TOLD ? run.last() : null;
        return new NextRunLines.Tick(
                run.car().text(),
                look.what(),
                words.what(look),
                note(look.done()),
                told == null ? "" : told.id().text(),
                record(look.done()));
    }

    private String run(PlannedRun planned) {
        List<String> said = new ArrayList<>(List.of(planned.name()));
        said.add(texts.get("beforewego.out.day", measures.weekday(planned.day()), measures.shortDate(planned.day())));
        if (planned.out() != null) {
            said.add(measures.time(planned.out()));
        }
        return measures.row(said);
    }

    private String note(@Nullable Entry<Look> done) {
        return done == null ? texts.get("beforewego.next.notLooked") : words.done(done.fact());
    }

    private static String record(@Nullable Entry<Look> done) {
        return done == null ? "" : done.id().text();
    }
}
