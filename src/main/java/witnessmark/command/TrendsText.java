package witnessmark.command;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;
import witnessmark.domain.Grade;
import witnessmark.logbook.trends.EngineTrends;
import witnessmark.study.result.Call;
import witnessmark.study.result.GradeLine;
import witnessmark.study.result.KindTrends;
import witnessmark.study.result.LimitAhead;
import witnessmark.study.result.Neighbours;
import witnessmark.study.result.PlaceTrend;
import witnessmark.study.result.Read;
import witnessmark.study.result.Slope;
import witnessmark.wording.TrendWords;

/** Where readings are going, on a terminal and as JSON: figures in the whole unit of their kind, running in hours. */
final class TrendsText {
    private final Tools tools;
    private final TrendWords words;

    TrendsText(Tools tools) {
        this.tools = tools;
        this.words = new TrendWords(tools.texts(), tools.measures());
    }

    /** @param every whether what asks for nothing is listed too */
    void print(Consumer<String> out, List<EngineTrends> trends, boolean every) {
        for (EngineTrends engine : trends) {
            String number = engine.engine().fact().number();
            out.accept(number);
            if (engine.kinds().isEmpty()) {
                out.accept("  " + tools.texts().get("trends.nothing", number));
            }
            boolean quiet = engine.kinds().stream().allMatch(kind -> kind.call() == Call.NONE);
            if (quiet && !engine.kinds().isEmpty()) {
                out.accept("  " + tools.texts().get("trends.quiet", number));
            }
            engine.kinds().stream()
                    .filter(kind -> every || kind.call() != Call.NONE)
                    .forEach(kind -> print(out, kind, every));
        }
    }

    private void print(Consumer<String> out, KindTrends kind, boolean every) {
        out.accept("  " + tools.texts().get("trends.row", words.kind(kind), words.on(kind)));
        for (PlaceTrend place : kind.places()) {
            if (every || place.call() != Call.NONE) {
                out.accept("    " + words.answer(kind, place));
                words.basis(kind, place).forEach(line -> out.accept("      " + line));
            }
        }
        for (GradeLine grades : kind.grades()) {
            if (every || grades.worseTwice()) {
                out.accept("    " + words.finding(kind, grades));
            }
        }
        String spread = words.spread(kind);
        if (every && spread != null) {
            out.accept("    " + spread);
        }
    }

    ObjectNode asJson(ObjectNode root, List<EngineTrends> trends) {
        ArrayNode engines = root.putArray("engines");
        for (EngineTrends engine : trends) {
            ArrayNode kinds = engines.addObject()
                    .put("engine", engine.engine().fact().number())
                    .putArray("readings");
            engine.kinds().forEach(kind -> put(kinds.addObject(), kind));
        }
        return root;
    }

    private static void put(ObjectNode node, KindTrends kind) {
        node.put("kind", kind.kind().code())
                .put("unit", code(kind.kind().unit()))
                .put("perHourOnTheOil", kind.perHour())
                .put("part", kind.part() == null ? null : kind.part().fact().mark())
                .put("hours", kind.hours())
                .put("hoursAbout", kind.about())
                .put("call", code(kind.call()))
                .put("spread", kind.spread());
        ArrayNode places = node.putArray("places");
        kind.places().forEach(place -> put(places.addObject(), place));
        ArrayNode grades = node.putArray("grades");
        for (GradeLine line : kind.grades()) {
            ObjectNode graded = grades.addObject().put("place", line.place()).put("worseTwice", line.worseTwice());
            ArrayNode given = graded.putArray("readings");
            for (Read read : line.readings()) {
                Grade grade = read.reading().fact().grade();
                given.addObject()
                        .put("at", read.reading().fact().at().text())
                        .put("hours", read.hours())
                        .put("grade", grade == null ? null : grade.code());
            }
        }
    }

    private static void put(ObjectNode node, PlaceTrend place) {
        node.put("place", place.place())
                .put("trend", code(place.trend()))
                .put("call", code(place.call()))
                .put("chance", place.chance())
                .put(
                        "sinceBuild",
                        place.since() == null
                                ? null
                                : Integer.valueOf(place.since().fact().number()))
                .put("baseline", place.baseline().figure());
        put(node.putArray("readings"), place.counted());
        put(node.putArray("before"), place.before());
        put(node.putArray("apart"), place.apart());
        Slope slope = place.slope();
        if (slope != null) {
            node.putObject("slope")
                    .put("perHour", slope.perHour())
                    .put("least", slope.least())
                    .put("most", slope.most());
        }
        Neighbours beside = place.neighbours();
        if (beside != null) {
            node.putObject("neighbours")
                    .put("others", beside.others())
                    .put("middle", beside.middle())
                    .put("off", beside.off())
                    .put("standsOff", beside.standsOff());
        }
        ArrayNode limits = node.putArray("limits");
        for (LimitAhead limit : place.limits()) {
            limits.addObject()
                    .put("limit", limit.limit().fact().name())
                    .put("what", code(limit.what()))
                    .put("figure", limit.figure())
                    .put("passed", limit.passed())
                    .put("runOn", limit.runOn() != null)
                    .put("hoursSoonest", limit.soonest())
                    .put("hoursLikely", limit.likely())
                    .put("hoursLatest", limit.latest());
        }
    }

    private static void put(ArrayNode into, List<Read> reads) {
        for (Read read : reads) {
            into.addObject()
                    .put("at", read.reading().fact().at().text())
                    .put("hours", read.hours())
                    .put("figure", read.figure());
        }
    }

    static String code(Enum<?> word) {
        return word.name().toLowerCase(Locale.ROOT);
    }
}
