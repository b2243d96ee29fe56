package witnessmark.command;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.DynoSheet;
import witnessmark.domain.Entry;
import witnessmark.domain.RunInStep;
import witnessmark.logbook.dyno.DynoFile;
import witnessmark.logbook.dyno.SeeDyno.EngineDyno;
import witnessmark.study.result.CurvePoint;
import witnessmark.study.result.DynoAnswer;
import witnessmark.study.result.DynoChange;
import witnessmark.study.result.DynoFactor;
import witnessmark.study.result.DynoPull;
import witnessmark.study.result.PullPoint;
import witnessmark.wording.DynoWords;

/** Dyno sheets on a terminal, and as JSON: torque in N·m, power in kW, speeds in rpm, changes as shares. */
final class DynoText {
    private final Tools tools;
    private final DynoWords words;
    private final Function<DynoSheet, @Nullable LocalDate> day;

    /** @param day of the run of a sheet */
    DynoText(Tools tools, Function<DynoSheet, @Nullable LocalDate> day) {
        this.tools = tools;
        this.words = new DynoWords(tools.texts(), tools.measures());
        this.day = day;
    }

    /** @param every whether every sheet is told with what it rests on, not only the newest of each engine */
    void print(Consumer<String> out, List<EngineDyno> engines, boolean every) {
        if (engines.isEmpty()) {
            out.accept(tools.texts().get("command.dyno.none"));
        }
        for (EngineDyno engine : engines) {
            String number = engine.engine().fact().number();
            out.accept(number);
            if (engine.answers().isEmpty()) {
                out.accept("  " + tools.texts().get("command.dyno.nothing", number));
            }
            engine.answers().stream().limit(every ? Long.MAX_VALUE : 1).forEach(answer -> {
                out.accept("  "
                        + tools.texts()
                                .get(
                                        "command.dyno.heading",
                                        words.name(answer.run().fact()),
                                        words.answer(answer, day)));
                basis(out, answer, "      ");
            });
        }
    }

    /** One sheet by itself: its answer, what it rests on, and its curve. */
    void alone(Consumer<String> out, DynoFile.Read read) {
        DynoAnswer answer = read.answer().orElseThrow();
        out.accept(words.alone(answer));
        (read.asksUnknown() ? words.basisUnknown(answer) : words.basis(answer))
                .forEach(line -> out.accept("  " + line));
        for (CurvePoint point : answer.mean()) {
            out.accept("  "
                    + tools.texts()
                            .get(
                                    "command.dyno.point",
                                    words.rpm(point.rpm()),
                                    words.one(point.torque()),
                                    words.one(point.power())));
        }
    }

    private void basis(Consumer<String> out, DynoAnswer answer, String indent) {
        words.basis(answer).forEach(line -> out.accept(indent + line));
    }

    ObjectNode asJson(ObjectNode root, List<EngineDyno> engines) {
        ArrayNode all = root.putArray("engines");
        for (EngineDyno engine : engines) {
            ArrayNode sheets = all.addObject()
                    .put("engine", engine.engine().fact().number())
                    .putArray("sheets");
            engine.answers().forEach(answer -> {
                ObjectNode node = sheets.addObject()
                        .put("run", answer.run().fact().name())
                        .put("start", answer.run().fact().start().text())
                        .put("dyno", answer.sheet().fact().dyno())
                        .put("baseline", answer.sheet().fact().baseline())
                        .put("verdictWritten", answer.sheet().fact().verdict());
                put(node, answer);
            });
        }
        return root;
    }

    void put(ObjectNode node, DynoAnswer answer) {
        put(node.putObject("factor"), answer.factor());
        node.put("figures", answer.sheet().fact().figures().code());
        peak(node, "power", answer.power());
        peak(node, "torque", answer.torque());
        node.put("repeats", answer.repeats());
        put(node.putObject("change"), answer.change());
        ArrayNode mean = node.putArray("mean");
        answer.mean()
                .forEach(point -> mean.addObject()
                        .put("rpm", point.rpm())
                        .put("newtonMetres", point.torque())
                        .put("kilowatts", point.power())
                        .put("pulls", point.pulls()));
        ArrayNode pulls = node.putArray("pulls");
        answer.pulls().forEach(pull -> put(pulls.addObject(), pull));
        ArrayNode steps = node.putArray("runIn");
        answer.steps().forEach(step -> put(steps.addObject(), step.fact()));
    }

    private static void put(ObjectNode node, DynoFactor factor) {
        node.put("correction", factor.correction().code())
                .put("factor", factor.factor())
                .put("byTheDyno", factor.byTheDyno())
                .put("worked", factor.worked())
                .put("dryKilopascals", factor.dry())
                .put("kilopascals", factor.total());
        ArrayNode refused = node.putArray("refused");
        factor.refused().forEach(why -> refused.add(code(why)));
        ArrayNode missing = node.putArray("missing");
        factor.missing().forEach(needed -> missing.add(code(needed)));
    }

    private static void peak(ObjectNode node, String name, @Nullable CurvePoint at) {
        if (at != null) {
            node.putObject(name)
                    .put("rpm", at.rpm())
                    .put("newtonMetres", at.torque())
                    .put("kilowatts", at.power());
        } else {
            node.putNull(name);
        }
    }

    private void put(ObjectNode node, DynoChange change) {
        Entry<DynoSheet> baseline = change.baseline();
        LocalDate then = baseline == null ? null : day.apply(baseline.fact());
        node.put("verdict", code(change.verdict()))
                .put("baselineOf", then == null ? null : then.toString())
                .put("peak", known(change.peak()))
                .put("peakMovedRpm", known(change.peakMoved()))
                .put("worst", known(change.worst()))
                .put("worstRpm", known(change.worstRpm()))
                .put("area", known(change.area()))
                .put("fromRpm", known(change.from()))
                .put("toRpm", known(change.to()))
                .put("noise", known(change.noise()))
                .put("noiseFromPulls", change.noiseFromPulls());
    }

    private static void put(ObjectNode node, DynoPull pull) {
        node.put("pull", pull.number());
        ArrayNode points = node.putArray("points");
        for (PullPoint point : pull.points()) {
            points.addObject()
                    .put("rpm", point.rpm())
                    .put("observedNewtonMetres", known(point.observed()))
                    .put("newtonMetres", known(point.corrected()));
        }
    }

    private static void put(ObjectNode node, RunInStep step) {
        node.put("seconds", step.lasted().millis() / 1e3)
                .put(
                        "rpm",
                        step.speed() == null
                                ? null
                                : Integer.valueOf(step.speed().rpm()))
                .put("loadPermille", step.loadPermille())
                .put("words", step.words());
    }

    private static @Nullable Double known(double figure) {
        return Double.isNaN(figure) ? null : Double.valueOf(figure);
    }

    private static String code(Enum<?> word) {
        return word.name().toLowerCase(Locale.ROOT);
    }
}
