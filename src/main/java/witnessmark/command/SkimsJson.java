package witnessmark.command;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Entry;
import witnessmark.domain.Skim;
import witnessmark.fit.result.face.Comeback;
import witnessmark.fit.result.face.FacePlace;
import witnessmark.fit.result.face.LowZone;
import witnessmark.fit.result.face.Range;
import witnessmark.fit.result.face.SkimEffect;
import witnessmark.fit.result.face.ZoneFinding;
import witnessmark.logbook.faces.FacePage;
import witnessmark.logbook.faces.LookLine;
import witnessmark.logbook.faces.SkimLine;
import witnessmark.quantity.Length;
import witnessmark.quantity.Volume;

/** Skims and low zones as JSON: millimetres, cubic centimetres, hours. What is not known is null. */
final class SkimsJson {
    private static final double CUBIC_CENTIMETRE = 1_000;

    ObjectNode of(ObjectNode root, List<FacePage> pages) {
        ArrayNode parts = root.putArray("parts");
        for (FacePage page : pages) {
            ObjectNode node = parts.addObject()
                    .put("part", page.part().fact().mark())
                    .put("kind", page.kind().code())
                    .put(
                            "engine",
                            page.engine() == null ? null : page.engine().fact().number())
                    .put("thicknessMm", mm(page.thickness()))
                    .put("leastMm", mm(page.limits().least()))
                    .put("leftMm", mm(page.left()))
                    .put("flatLimitMm", mm(page.limits().flat()))
                    .put("hoursSinceSkim", page.since().hours())
                    .put("heatCyclesSinceSkim", page.since().cycles())
                    .put("heatCyclesKnown", page.since().cyclesKnown());
            ArrayNode skims = node.putArray("skims");
            page.skims().forEach(line -> skim(skims.addObject(), line));
            ArrayNode looks = node.putArray("looks");
            page.looks().forEach(look -> look(looks.addObject(), look));
        }
        return root;
    }

    private static void skim(ObjectNode node, SkimLine line) {
        Entry<Skim> skim = line.skim();
        node.put("day", line.work().fact().at().day().toString())
                .put("by", line.work().fact().by())
                .put("removedMm", mm(line.removed()))
                .put("leftThicknessMm", mm(line.work().fact().left()))
                .put("offSinceNewMm", mm(line.off()))
                .put("leftToLeastMm", mm(line.left()))
                .put("lowPlaceOverMm", line.cleanUp().seen() ? mm(line.cleanUp().over()) : null)
                .put("lowPlaceUpToMm", line.cleanUp().seen() ? mm(line.cleanUp().upTo()) : null)
                .put("chamberBeforeCc", skim == null ? null : cc(skim.fact().chamberBefore()))
                .put("chamberAfterCc", skim == null ? null : cc(skim.fact().chamberAfter()))
                .put("retimed", skim == null ? null : skim.fact().retimed().code())
                .put(
                        "hoursSinceSkimBefore",
                        line.since() == null ? null : line.since().hours())
                .put(
                        "heatCyclesSinceSkimBefore",
                        line.since() == null || !line.since().cyclesKnown()
                                ? null
                                : line.since().cycles());
        ArrayNode passes = node.putArray("passes");
        line.passes()
                .forEach(pass -> passes.addObject()
                        .put("mm", mm(pass.depth()))
                        .put("shadow", pass.shadow().code())
                        .put("where", pass.where()));
        if (line.effect() != null) {
            effect(node.putObject("effect"), line.effect());
        }
    }

    private static void effect(ObjectNode node, SkimEffect effect) {
        node.put("ratioBefore", effect.ratioBefore())
                .put("ratioAfter", effect.ratioAfter())
                .put("camDegrees", effect.cam())
                .put("crankDegrees", effect.crank());
        ArrayNode valves = node.putArray("valves");
        effect.valves()
                .forEach(valve -> valves.addObject()
                        .put("kind", valve.kind().code())
                        .put("beforeMm", mm(valve.before()))
                        .put("lostAtLeastMm", mm(valve.lostLeast()))
                        .put("lostAtMostMm", mm(valve.lostMost()))
                        .put("measuredAfterMm", mm(valve.measured())));
        ArrayNode missing = node.putArray("missing");
        effect.missing().forEach(kind -> missing.add(kind.code()));
    }

    private static void look(ObjectNode node, LookLine look) {
        node.put("at", look.look().fact().at().text())
                .put("face", look.look().fact().face().code())
                .put("method", look.look().fact().method().code())
                .put("finestMm", mm(look.look().fact().finest()))
                .put("points", look.points().size())
                .put("leastSquaresMm", mm(look.flat().leastSquares()))
                .put("minimumZoneMm", mm(look.flat().minimumZone()));
        ArrayNode lines = node.putArray("straightedge");
        look.lines()
                .forEach(line -> lines.addObject()
                        .put("line", line.fact().line().code())
                        .put("between", line.fact().number())
                        .put("goesMm", mm(line.fact().goes()))
                        .put("stopsMm", mm(line.fact().stops())));
        ArrayNode marks = node.putArray("marks");
        look.marks()
                .forEach(mark -> marks.addObject()
                        .put("kind", mark.fact().kind().code())
                        .put("xMm", mm(mark.fact().x()))
                        .put("yMm", mm(mark.fact().y()))
                        .put("depthMm", mm(mark.fact().depth()))
                        .put("words", mark.fact().words()));
        ArrayNode zones = node.putArray("zones");
        look.findings().forEach(finding -> zone(zones.addObject(), finding));
    }

    private static void zone(ObjectNode node, ZoneFinding finding) {
        FacePlace place = finding.zone().place();
        LowZone before = finding.before();
        node.put("at", code(place.kind()))
                .put("number", place.number())
                .put("side", code(place.side()))
                .put("depthMm", mm(finding.zone().deepest().depth()))
                .put("state", code(finding.state()))
                .put("beforeMm", before == null ? null : mm(before.deepest().depth()));
        Comeback comeback = finding.comeback();
        if (comeback != null) {
            node.put("hours", comeback.hours()).put("heatCycles", comeback.cycles());
            range(node, "mmPerHour", comeback.perHour());
            range(node, "mmPerHeatCycle", comeback.perCycle());
            range(node, "hoursToLimit", comeback.hoursLeft());
        }
    }

    private static void range(ObjectNode node, String name, @Nullable Range range) {
        if (range == null) {
            node.putNull(name);
            return;
        }
        ObjectNode ends = node.putObject(name).put("low", range.low()).put("likely", range.likely());
        if (Double.isInfinite(range.high())) {
            ends.putNull("high");
        } else {
            ends.put("high", range.high());
        }
    }

    private static String code(Enum<?> word) {
        return word.name().toLowerCase(Locale.ROOT);
    }

    private static @Nullable BigDecimal mm(@Nullable Length length) {
        return length == null ? null : length.inMillimetres();
    }

    private static @Nullable Double cc(@Nullable Volume volume) {
        return volume == null ? null : Double.valueOf(volume.microlitres() / CUBIC_CENTIMETRE);
    }
}
