package witnessmark.logbook.dyno;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.DynoSheet;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Id;
import witnessmark.domain.Run;
import witnessmark.logbook.View;
import witnessmark.study.dyno.DynoSheets;
import witnessmark.study.result.DynoAnswer;

/** Sees what dyno sheets come to, as of the day looked at. Reads only. */
public final class SeeDyno {
    private SeeDyno() {}

    /**
     * The sheets of an engine.
     *
     * @param engine which one
     * @param answers the newest first; at least one
     */
    public record EngineDyno(Entry<Engine> engine, List<DynoAnswer> answers) {
        public EngineDyno {
            answers = List.copyOf(answers);
        }
    }

    /** Of one engine, the newest first. */
    public static List<DynoAnswer> of(View view, Id<Engine> engine) {
        List<DynoAnswer> answers = new ArrayList<>(new DynoSheets(view.facts()).of(engine));
        answers.removeIf(answer -> answer.run().fact().start().day().isAfter(view.day()));
        answers.sort(
                Comparator.comparing((DynoAnswer answer) -> answer.run().fact().start())
                        .reversed());
        return answers;
    }

    /** Of every engine that has one, by number. */
    public static List<EngineDyno> all(View view) {
        return view.facts()
                .of(Engine.class)
                .inForce()
                .sorted(Comparator.comparing(engine -> engine.fact().number()))
                .map(engine -> new EngineDyno(engine, of(view, engine.id())))
                .filter(engine -> !engine.answers().isEmpty())
                .toList();
    }

    /** The day of the run a sheet is of, or null when that is not there any more. */
    public static @Nullable LocalDate day(View view, DynoSheet sheet) {
        return view.facts()
                .of(Run.class)
                .find(sheet.run())
                .map(run -> run.fact().start().day())
                .orElse(null);
    }
}
