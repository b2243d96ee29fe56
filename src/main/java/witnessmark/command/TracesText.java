package witnessmark.command;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import witnessmark.domain.SpeedHistogram;
import witnessmark.domain.Trace;
import witnessmark.domain.TraceMark;
import witnessmark.logbook.Desk;
import witnessmark.logbook.tracing.KeptTrace;
import witnessmark.logbook.tracing.SeenTrace;
import witnessmark.outcome.Outcome;
import witnessmark.trace.result.ChannelFigures;
import witnessmark.trace.result.PartWear;
import witnessmark.trace.result.ThermalRanges;
import witnessmark.wording.SeenTraceWords;

/** Traces of the logbook, on a terminal and as JSON: times in seconds, figures in the unit of their channel. */
final class TracesText {
    private final Tools tools;
    private final SeenTraceWords words;

    /** Samples, and the stretch of them that is asked for, microseconds. */
    record Stretch(KeptTrace kept, long from, long until) {}

    /** Where samples and the stretch that is asked for come from. */
    @FunctionalInterface
    interface Samples {
        Outcome<Optional<Stretch>> of(Desk desk, SeenTrace trace);
    }

    /** What a channel did in the stretch. */
    private record Found(KeptTrace.Channel channel, ChannelFigures figures) {}

    TracesText(Tools tools) {
        this.tools = tools;
        this.words = new SeenTraceWords(tools.texts(), tools.measures());
    }

    void print(Consumer<String> out, List<SeenTrace> traces, Samples samples, Desk desk) throws IOException {
        if (traces.isEmpty()) {
            boolean any =
                    desk.view().facts().of(Trace.class).inForce().findAny().isPresent();
            out.accept(tools.texts().get("tracekept.none", any ? 1 : 0));
        }
        for (SeenTrace trace : traces) {
            Trace fact = trace.trace().fact();
            out.accept(words.title(trace.engine().fact().number(), trace.run().fact()) + ": " + fact.name());
            out.accept("  " + words.summary(fact));
            marks(out, trace);
            speeds(out, trace);
            Outcome<Optional<Stretch>> found = samples.of(desk, trace);
            found.problems()
                    .forEach(problem -> out.accept("  " + tools.problems().sentence(problem)));
            Optional<Stretch> stretch = found.didWork() ? found.orThrow() : Optional.empty();
            if (stretch.isPresent()) {
                print(out, trace, stretch.get());
            } else if (found.didWork()) {
                out.accept("  " + words.notKept());
            }
        }
    }

    private void marks(Consumer<String> out, SeenTrace trace) {
        out.accept("  " + tools.texts().get(trace.marks().isEmpty() ? "tracekept.noMarks" : "tracekept.marks"));
        trace.marks().forEach(mark -> out.accept("    " + words.line(mark)));
    }

    private void speeds(Consumer<String> out, SeenTrace trace) {
        SpeedHistogram speeds = trace.speeds();
        if (speeds.total() > 0) {
            out.accept("  " + tools.texts().get("tracekept.speeds"));
        }
        for (int band = 0; band < speeds.bands(); band++) {
            if (speeds.millis(band) > 0) {
                out.accept("    " + words.band(band) + "  " + words.minutes(speeds.millis(band)));
            }
        }
        if (trace.wear().isEmpty()) {
            out.accept("  " + words.noWear(speeds.total() > 0));
            return;
        }
        trace.wear()
                .forEach(wear ->
                        out.accept("  " + words.wear(wear, trace.trace().fact().running())));
        out.accept("  " + words.wearNote());
    }

    private void print(Consumer<String> out, SeenTrace trace, Stretch stretch) throws IOException {
        List<ThermalRanges> ranges = stretch.kept().ranges(trace.settings());
        ranges.forEach(each -> words.ranges(each).forEach(line -> out.accept("  " + line)));
        if (!ranges.isEmpty()) {
            out.accept("  " + words.rangesNote());
        }
        out.accept("  " + tools.texts().get("tracekept.stretch", words.at(stretch.from()), words.at(stretch.until())));
        for (Found found : found(stretch)) {
            out.accept("    " + words.between(found.channel().form().kind(), found.figures()));
        }
    }

    private static List<Found> found(Stretch stretch) throws IOException {
        List<Found> all = new ArrayList<>();
        for (KeptTrace.Channel channel : stretch.kept().channels()) {
            if (!channel.form().kind().oftenMany()) {
                stretch.kept()
                        .between(channel, stretch.from(), stretch.until())
                        .ifPresent(figures -> all.add(new Found(channel, figures)));
            }
        }
        return all;
    }

    ObjectNode asJson(ObjectNode root, List<SeenTrace> traces, Samples samples, Desk desk) throws IOException {
        ArrayNode all = root.putArray("traces");
        for (SeenTrace trace : traces) {
            ObjectNode node = all.addObject();
            put(node, trace);
            Outcome<Optional<Stretch>> found = samples.of(desk, trace);
            Optional<Stretch> stretch = found.didWork() ? found.orThrow() : Optional.empty();
            node.put("samplesKept", stretch.isPresent());
            if (stretch.isPresent()) {
                put(node, trace, stretch.get());
            }
        }
        return root;
    }

    private static void put(ObjectNode node, SeenTrace trace) {
        Trace fact = trace.trace().fact();
        node.put("engine", trace.engine().fact().number())
                .put("run", trace.run().fact().name())
                .put("start", trace.run().fact().start().text())
                .put("file", fact.name())
                .put("lasted", fact.lasted().millis() / 1e3)
                .put("running", fact.running().millis() / 1e3)
                .put("settings", fact.settings())
                .put("defects", fact.defects());
        ArrayNode marks = node.putArray("marks");
        trace.marks().forEach(mark -> put(marks.addObject(), mark));
        ObjectNode bands = node.putObject("speeds");
        for (int i = 0; i < trace.speeds().bands(); i++) {
            if (trace.speeds().millis(i) > 0) {
                bands.put(
                        Integer.toString(i * SpeedHistogram.WIDTH),
                        trace.speeds().millis(i) / 1e3);
            }
        }
        ArrayNode wear = node.putArray("wear");
        trace.wear().forEach(each -> put(wear.addObject(), each, fact));
    }

    private static void put(ObjectNode node, TraceMark mark) {
        node.put("kind", mark.kind().code())
                .put("at", mark.at().millis() / 1e3)
                .put("lasted", mark.lasted() == null ? null : mark.lasted().millis() / 1e3)
                .put("channel", mark.channel())
                .put("figure", mark.thousandths() == null ? null : mark.thousandths() / 1e3)
                .put("words", mark.words());
    }

    private static void put(ObjectNode node, PartWear wear, Trace trace) {
        node.put("partKind", wear.kind().code())
                .put("running", trace.running().millis() / 1e3)
                .put("reference", wear.reference().rpm())
                .put("exponent", wear.exponent())
                .put("equivalent", wear.millis() / 1e3)
                .put("least", wear.least() / 1e3)
                .put("most", wear.most() / 1e3)
                .put("source", wear.source());
    }

    private static void put(ObjectNode node, SeenTrace trace, Stretch stretch) throws IOException {
        ArrayNode ranges = node.putArray("thermalRanges");
        for (ThermalRanges each : stretch.kept().ranges(trace.settings())) {
            ObjectNode counts = ranges.addObject()
                    .put("channel", each.kind().code())
                    .put("leftOutBelow", each.least())
                    .put("largest", each.largest())
                    .putObject("counts");
            each.bands().forEach(band -> counts.put(Integer.toString(band.from()), band.count()));
        }
        node.put("from", stretch.from() / 1e6).put("until", stretch.until() / 1e6);
        ArrayNode channels = node.putArray("channels");
        for (Found found : found(stretch)) {
            ChannelFigures figures = found.figures();
            channels.addObject()
                    .put("channel", found.channel().form().kind().code())
                    .put("unit", found.channel().form().kind().unit().code())
                    .put("samples", figures.samples())
                    .put("least", figures.least())
                    .put("leastAt", figures.leastAt() / 1e6)
                    .put("most", figures.most())
                    .put("mostAt", figures.mostAt() / 1e6)
                    .put("mean", figures.mean());
        }
    }
}
