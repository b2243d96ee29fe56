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
    /** Speeds at which curves are put side by side, and the last of them, rpm. */
    private static final int ROUND = 500;

    private static final int MOST = 25_000;

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

    /**
     * Two sheets at one speed.
     *
     * @param rpm revolutions a minute
     * @param now torque of the one, N·m
     * @param then torque of the other, N·m
     */
    public record Beside(double rpm, double now, double then) {
        /** How much more the one has, a share of the other. */
        public double change() {
            return now / then - 1;
        }
    }

    /** Two curves at each round speed that both reach; empty where one has none. */
    public static List<Beside> beside(DynoAnswer now, DynoAnswer then) {
        List<Beside> rows = new ArrayList<>();
        for (int rpm = ROUND; rpm <= MOST; rpm += ROUND) {
            double one = DynoSheets.torque(now, rpm);
            double other = DynoSheets.torque(then, rpm);
            if (!Double.isNaN(one) && !Double.isNaN(other)) {
                rows.add(new Beside(rpm, one, other));
            }
        }
        return rows;
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
