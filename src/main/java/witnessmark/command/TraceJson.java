package witnessmark.command;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.ChannelKind;
import witnessmark.logbook.tracing.ReduceTrace;
import witnessmark.trace.result.Extremes;
import witnessmark.trace.result.Reduction;
import witnessmark.trace.result.SpeedFound;
import witnessmark.wording.TraceWords;

/** What was found in a logger's file, for programs. Times are milliseconds, speeds rpm, pressures bar. */
final class TraceJson {
    private final TraceWords words;

    TraceJson(TraceWords words) {
        this.words = words;
    }

    ObjectNode of(ObjectNode root, ReduceTrace.Found found) {
        root.put("form", found.form().text());
        ArrayNode columns = root.putArray("columns");
        found.form()
                .columns()
                .forEach(column -> columns.addObject()
                        .put("heading", column.heading())
                        .put("kind", column.kind().code())
                        .put("unit", column.unit().code())
                        .put("unitFrom", column.from().code()));
        ArrayNode questions = root.putArray("questions");
        found.open()
                .forEach(question -> questions
                        .addObject()
                        .put("kind", code(question.kind()))
                        .put("sentence", words.question(question)));
        ArrayNode parts = root.putArray("parts");
        found.parts().forEach(part -> part(parts.addObject(), part));
        if (found.defects() != null) {
            ObjectNode counts = root.putObject("defects");
            found.defects().times().forEach((kind, times) -> counts.put(kind.code(), times));
            ArrayNode located = root.putArray("located");
            found.defects()
                    .located()
                    .forEach(defect -> located.addObject()
                            .put("kind", defect.kind().code())
                            .put("channel", defect.channel())
                            .put("part", defect.part())
                            .put("from", defect.from() / 1e3)
                            .put("until", defect.until() / 1e3)
                            .put("samples", defect.samples()));
        }
        return root;
    }

    private static void part(ObjectNode node, Reduction part) {
        node.put("lasted", part.lasted() / 1e3).put("rows", part.rows()).put("coverage", part.coverage());
        ArrayNode logged = node.putArray("logged");
        part.logged().stream().sorted().forEach(kind -> logged.add(kind.code()));
        speed(node, part.speed());
        if (part.overRevs() != null) {
            node.put("overRevCount", part.overRevCount());
            ArrayNode all = node.putArray("overRevs");
            part.overRevs().forEach(one -> {
                ObjectNode each = all.addObject()
                        .put("at", one.at() / 1e3)
                        .put("lasted", one.lasted() / 1e3)
                        .put("samples", one.samples())
                        .put("peak", one.peak())
                        .put("how", code(one.how()));
                put(each, "throttle", one.throttle());
                if (one.gear() != null) {
                    each.put("gear", one.gear());
                }
            });
        }
        oil(node, part);
        ObjectNode extremes = node.putObject("extremes");
        for (ChannelKind kind : ChannelKind.values()) {
            Extremes found = part.extremes().get(kind);
            if (found != null) {
                put(extremes.putObject(kind.code()), found);
            }
        }
        if (part.heat() != null) {
            node.putObject("heatCycles")
                    .put("ifArmed", part.heat().ifArmed())
                    .put("ifNot", part.heat().ifNot())
                    .put("armedAfterArmed", part.heat().armedAfterArmed())
                    .put("armedAfterNot", part.heat().armedAfterNot());
        }
        ArrayNode falls = node.putArray("implausibleFalls");
        part.falls()
                .forEach(fall -> falls.addObject()
                        .put("at", fall.at() / 1e3)
                        .put("lasted", fall.lasted() / 1e3)
                        .put("from", fall.from())
                        .put("to", fall.to()));
        put(node, "metres", part.metres());
        if (part.laps() != null) {
            node.put("laps", part.laps());
        }
        pulls(node, part);
    }

    private static void pulls(ObjectNode node, Reduction part) {
        ArrayNode pulls = node.putArray("pulls");
        part.pulls().forEach(pull -> {
            ObjectNode each = pulls.addObject()
                    .put("at", pull.at() / 1e3)
                    .put("lasted", pull.lasted() / 1e3)
                    .put("from", pull.from())
                    .put("to", pull.to());
            put(each, "torque", pull.torque());
            put(each, "power", pull.power());
        });
    }

    private static void speed(ObjectNode node, @Nullable SpeedFound speed) {
        if (speed == null) {
            return;
        }
        node.put("running", speed.running())
                .put("loaded", speed.loaded())
                .put("covered", speed.covered())
                .put("revolutions", speed.revolutions());
        if (speed.high() != null) {
            node.put("highSpeed", speed.high());
        }
        put(node.putObject("engineSpeed"), speed.extremes());
        ObjectNode bands = node.putObject("speeds");
        for (int i = 0; i < speed.speeds().bands(); i++) {
            if (speed.speeds().millis(i) > 0) {
                bands.put(Integer.toString(i * 250), speed.speeds().millis(i));
            }
        }
    }

    private static void oil(ObjectNode node, Reduction part) {
        if (part.dips() != null) {
            node.put("oilPressureDipCount", part.dipCount());
            ArrayNode dips = node.putArray("oilPressureDips");
            part.dips().forEach(dip -> {
                ObjectNode each = dips.addObject()
                        .put("at", dip.at() / 1e3)
                        .put("lasted", dip.lasted() / 1e3)
                        .put("lowest", dip.lowest())
                        .put("floor", dip.floor())
                        .put("speed", dip.speed());
                put(each, "lateral", dip.lateral());
            });
        }
        put(node, "oilPressureAtSpeed", part.oilAtSpeed());
        put(node, "oilPressureAtRest", part.oilOffset());
        if (part.oilTrend() != null) {
            put(node, "oilPressureDeclinedTo", part.oilTrend().declined());
        }
    }

    private static void put(ObjectNode node, Extremes extremes) {
        put(node, "highest", extremes.highest());
        put(node, "lowest", extremes.lowest());
        if (extremes.highest() != null) {
            node.put("highestAt", extremes.highestAt() / 1e3).put("lowestAt", extremes.lowestAt() / 1e3);
        }
        if (extremes.beyond() != null) {
            node.put("beyond", extremes.beyond() / 1e3);
        }
    }

    private static void put(ObjectNode node, String name, @Nullable Double figure) {
        if (figure != null) {
            node.put(name, figure);
        }
    }

    private static String code(Enum<?> word) {
        return word.name().toLowerCase(Locale.ROOT);
    }
}
