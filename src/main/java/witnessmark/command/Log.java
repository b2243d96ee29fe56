package witnessmark.command;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import witnessmark.domain.Car;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Run;
import witnessmark.logbook.Desk;
import witnessmark.logbook.port.Written;
import witnessmark.logbook.run.FieldUnits;
import witnessmark.logbook.run.RunField;
import witnessmark.logbook.run.RunReading;
import witnessmark.logbook.run.RunSheet;
import witnessmark.outcome.Outcome;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;
import witnessmark.quantity.typed.DayOrder;
import witnessmark.wording.Measures;

/** Logs a run through the run sheet. */
@Command(name = "log", mixinStandardHelpOptions = true)
final class Log implements Callable<Integer> {
    private static final FieldUnits UNITS = FieldUnits.metric(DayOrder.DAY_FIRST);

    @Mixin
    private Open open = new Open();

    @Option(names = "--car", required = true, paramLabel = "CAR", descriptionKey = "command.log.car")
    @SuppressWarnings("NullAway.Init") // a required option
    private String car;

    @Option(names = "--date", paramLabel = "DAY", descriptionKey = "command.log.date")
    private String date = "today";

    @Option(names = "--out", paramLabel = "TIME", descriptionKey = "command.log.out")
    private @Nullable String out;

    @Option(names = "--run", paramLabel = "NAME", descriptionKey = "command.log.run")
    private @Nullable String run;

    @Option(names = "--running", required = true, paramLabel = "TIME", descriptionKey = "command.log.running")
    @SuppressWarnings("NullAway.Init") // a required option
    private String running;

    @Option(names = "--field", paramLabel = "FIELD=TEXT", descriptionKey = "command.log.field")
    private Map<String, String> others = Map.of();

    @Option(names = "--yes", descriptionKey = "command.log.yes")
    private boolean yes;

    @Option(names = "--json", descriptionKey = "command.json")
    private boolean json;

    private final Tools tools;

    Log(Tools tools) {
        this.tools = tools;
    }

    @Override
    public Integer call() {
        return open.toWrite(new Answer(tools, "log", json), this::work);
    }

    private int work(Desk desk, Answer answer) {
        Optional<Entry<Car>> found = desk.view().facts().of(Car.class).named(car);
        if (found.isEmpty()) {
            return answer.didNot(
                    List.of(Problem.of(ProblemKind.NOT_FOUND, tools.texts().get("command.log.car.word"), car)));
        }
        RunSheet sheet = new RunSheet(desk, tools.ids(), UNITS);
        Map<RunField, String> typed = new EnumMap<>(sheet.fresh(found.get().id()));
        typed.put(RunField.DATE, date);
        typed.putAll(sheet.follows(RunField.DATE, typed));
        if (run != null) {
            Optional<String> picked = sheet.plannedNamed(typed, run);
            if (picked.isEmpty()) {
                return answer.didNot(
                        List.of(Problem.of(ProblemKind.NOT_FOUND, tools.texts().get("command.log.run.word"), run)));
            }
            follow(sheet, typed, picked.get());
        }
        if (out != null) {
            typed.put(RunField.OUT_AT, out);
            if (run == null) {
                follow(sheet, typed, sheet.plannedAt(typed));
            }
        }
        typed.put(RunField.RUNNING, running);
        for (Map.Entry<String, String> other : others.entrySet()) {
            Optional<RunField> field = RunField.of(other.getKey());
            if (field.isEmpty()) {
                return answer.didNot(List.of(Problem.of(
                        ProblemKind.NOT_FOUND, tools.texts().get("command.log.field.word"), other.getKey())));
            }
            typed.put(field.get(), other.getValue());
        }
        return save(desk, answer, sheet, typed);
    }

    /** Another run picked: what follows from it, but for the day and the time that were given. */
    private void follow(RunSheet sheet, Map<RunField, String> typed, String planned) {
        typed.put(RunField.PLANNED, planned);
        typed.putAll(sheet.follows(RunField.PLANNED, typed));
        typed.put(RunField.DATE, date);
        if (out != null) {
            typed.put(RunField.OUT_AT, out);
        }
    }

    private int save(Desk desk, Answer answer, RunSheet sheet, Map<RunField, String> typed) {
        RunReading reading = sheet.read(typed);
        List<Problem> queries = queries(reading);
        if (!reading.stops() && !queries.isEmpty() && !yes) {
            answer.problems(queries);
            return answer.refuse(tools.texts().get("command.log.queried"), Exit.DID_NOT);
        }
        Outcome<Written> saved = sheet.save(typed, tools.texts().get("command.why.log", car));
        if (!saved.didWork()) {
            return answer.didNot(saved.problems());
        }
        String id = saved.orThrow().amendments().get(0).record().toString();
        if (json) {
            answer.print(answer.node().put("run", id).put("queried", queries.size()));
        } else {
            answer.line(done(desk, Objects.requireNonNull(reading.run()).fact()));
        }
        return Exit.WORKED;
    }

    /** What was written, so that a slip is seen: the day, the time and the run besides what was typed. */
    private String done(Desk desk, Run written) {
        Measures measures = tools.measures();
        return tools.texts()
                .get(
                        "command.log.done",
                        car,
                        desk.view()
                                .facts()
                                .of(Engine.class)
                                .get(written.engine())
                                .number(),
                        measures.start(written),
                        written.name(),
                        measures.running(written.running()));
    }

    private static List<Problem> queries(RunReading reading) {
        java.util.List<Problem> queries = new java.util.ArrayList<>(reading.problems());
        reading.fields().values().forEach(field -> {
            if (field.problem() != null) {
                queries.add(field.problem());
            }
        });
        return queries;
    }
}
