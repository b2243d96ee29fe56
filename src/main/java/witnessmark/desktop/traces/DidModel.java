package witnessmark.desktop.traces;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import witnessmark.chart.Axis;
import witnessmark.chart.Chart;
import witnessmark.chart.ChartTable;
import witnessmark.chart.Dot;
import witnessmark.chart.Line;
import witnessmark.domain.ChannelKind;
import witnessmark.logbook.tracing.BroughtTrace;
import witnessmark.quantity.Distance;
import witnessmark.quantity.EngineSpeed;
import witnessmark.quantity.Pressure;
import witnessmark.quantity.RunningTime;
import witnessmark.quantity.Temperature;
import witnessmark.trace.result.DefectKind;
import witnessmark.trace.result.Defects;
import witnessmark.trace.result.Excursion;
import witnessmark.trace.result.Extremes;
import witnessmark.trace.result.OilTrend;
import witnessmark.trace.result.Outline;
import witnessmark.trace.result.PressureDip;
import witnessmark.trace.result.Reduction;
import witnessmark.trace.result.SpeedFound;
import witnessmark.trace.result.TemperatureFall;
import witnessmark.trace.result.TraceSetting;
import witnessmark.wording.Measures;
import witnessmark.wording.Texts;
import witnessmark.wording.TraceWords;

/** What the engine did by a part of a trace: its figures, what stands out with its time, and engine speed as a chart. */
final class DidModel {
    private static final double MINUTE = 60e6;
    private static final int SHOWN = 12;
    private static final double ABOVE = 1.1;

    private final Texts texts;
    private final Measures measures;
    private final TraceWords words;

    DidModel(Texts texts, Measures measures) {
        this.texts = texts;
        this.measures = measures;
        this.words = new TraceWords(texts, measures);
    }

    /** A figure with its name and, where there is more to say, a line under it. */
    record Figure(String name, String value, String more) {}

    /**
     * Something that stands out.
     *
     * @param at microseconds after the first sample; -1 for what is of no single place
     */
    record Event(long at, String when, String what, String figures) {}

    /** The figures, the most wanted first; what is not logged says so. */
    List<Figure> figures(Reduction did) {
        List<Figure> all = new ArrayList<>();
        SpeedFound speed = did.speed();
        if (speed == null) {
            all.add(figure("running", notLogged(), ""));
        } else {
            Double highest = speed.extremes().highest();
            all.add(figure(
                    "running", running(speed.running()), texts.get("traces.covered", number(did.coverage() * 100, 1))));
            all.add(figure("loaded", running(speed.loaded()), speed.high() == null ? "" : high(speed.high())));
            all.add(figure(
                    "highest",
                    highest == null ? notLogged() : measures.speed(new EngineSpeed((int) Math.round(highest))),
                    highest == null ? "" : at(speed.extremes().highestAt())));
        }
        all.add(figure(
                "over_revs",
                did.overRevs() == null
                        ? texts.get(speed == null ? "traces.not_logged" : "traces.no_limit")
                        : measures.number(did.overRevCount()),
                did.overRevs() == null ? "" : kinds(did.overRevs())));
        all.add(warmest(ChannelKind.WATER_TEMPERATURE, "water", did));
        all.add(warmest(ChannelKind.OIL_TEMPERATURE, "oil_temperature", did));
        all.add(oil(did));
        all.add(figure(
                "distance",
                did.metres() == null ? notLogged() : measures.distance(new Distance(Math.round(did.metres()))),
                did.laps() == null ? "" : texts.get("traces.laps", did.laps())));
        all.add(figure(
                "heat_cycles",
                did.heat() == null ? notLogged() : measures.number(did.heat().ifArmed()),
                did.heat() == null || did.heat().ifArmed() == did.heat().ifNot()
                        ? ""
                        : texts.get("traces.if_warm", did.heat().ifNot())));
        if (!did.pulls().isEmpty() && did.metres() == null) { // on the dyno
            all.add(figure("pulls", measures.number(did.pulls().size()), ""));
        }
        return all;
    }

    private Figure warmest(ChannelKind kind, String key, Reduction did) {
        Extremes extremes = did.extremes().get(kind);
        Double highest = extremes == null ? null : extremes.highest();
        if (extremes == null || highest == null) {
            return figure(key, notLogged(), "");
        }
        Long beyond = extremes.beyond();
        return figure(
                key,
                measures.temperature(Temperature.ofCelsius(rounded(highest, 1))),
                beyond != null && beyond > 0 ? texts.get("traces.beyond", seconds(beyond)) : at(extremes.highestAt()));
    }

    private Figure oil(Reduction did) {
        Double lowest = did.oilAtSpeed();
        if (lowest == null) {
            return figure("oil_pressure", notLogged(), "");
        }
        OilTrend trend = did.oilTrend();
        Double fell = trend == null ? null : trend.declined();
        return figure(
                "oil_pressure",
                measures.pressure(Pressure.ofBar(rounded(lowest, 2))),
                trend != null && fell != null
                        ? texts.get("traces.fell", number(trend.first(), 1), number(fell, 1))
                        : texts.get("traces.dips", did.dipCount()));
    }

    private String kinds(List<Excursion> found) {
        long shut = found.stream()
                .filter(one -> one.how() == Excursion.How.MECHANICAL)
                .count();
        return shut == 0 ? "" : texts.get("traces.mechanical", shut);
    }

    private String high(long millis) {
        return texts.get("traces.high", running(millis));
    }

    private Figure figure(String key, String value, String more) {
        return new Figure(texts.get("traces.field." + key), value, more);
    }

    private String notLogged() {
        return texts.get("traces.not_logged");
    }

    /** What stands out, in order of time; then what is wrong with the file, a line for each kind. */
    List<Event> events(Reduction did, @Nullable Defects defects) {
        List<Event> all = new ArrayList<>();
        if (did.overRevs() != null) {
            did.overRevs().stream().limit(SHOWN).forEach(one -> all.add(overRev(one)));
        }
        if (did.dips() != null) {
            did.dips().stream().limit(SHOWN).forEach(one -> all.add(dip(one)));
        }
        did.falls().stream().limit(SHOWN).forEach(one -> all.add(fall(one)));
        all.sort(Comparator.comparingLong(Event::at));
        more(did.overRevCount(), "traces.more.over_revs").ifPresent(all::add);
        more(did.dips() == null ? 0 : did.dipCount(), "traces.more.dips").ifPresent(all::add);
        if (did.oilOffset() != null) {
            all.add(new Event(
                    -1, "", texts.get("traces.event.offset"), texts.get("traces.bar", number(did.oilOffset(), 2))));
        }
        if (defects != null) {
            defects.times().forEach((kind, times) -> all.add(defect(kind, times, defects)));
        }
        return all;
    }

    private Optional<Event> more(long count, String key) {
        return count <= SHOWN ? Optional.empty() : Optional.of(new Event(-1, "", texts.get(key, count - SHOWN), ""));
    }

    private Event overRev(Excursion one) {
        List<String> said = new ArrayList<>();
        said.add(texts.get(
                "traces.event.peak",
                measures.speed(new EngineSpeed((int) Math.round(one.peak()))),
                seconds(one.lasted())));
        said.add(one.gear() == null ? texts.get("trace.gear.not_logged") : texts.get("trace.gear", one.gear()));
        said.add(
                one.throttle() == null
                        ? texts.get("traces.throttle.not_logged")
                        : texts.get("traces.throttle", number(one.throttle(), 0)));
        String key = "traces.event.over_rev." + one.how().name().toLowerCase(java.util.Locale.ROOT);
        return new Event(one.at(), words.at(one.at()), texts.get(key), String.join(", ", said));
    }

    private Event dip(PressureDip one) {
        String sideways = one.lateral() == null ? "" : texts.get("traces.sideways", number(one.lateral(), 1));
        return new Event(
                one.at(),
                words.at(one.at()),
                texts.get("traces.event.dip"),
                texts.get(
                                "traces.event.dip.figures",
                                words.bar(one.lowest(), one.floor()),
                                words.bar(one.floor(), one.lowest()),
                                measures.speed(new EngineSpeed((int) Math.round(one.speed()))),
                                seconds(one.lasted()))
                        + sideways);
    }

    private Event fall(TemperatureFall one) {
        return new Event(
                one.at(),
                words.at(one.at()),
                texts.get("traces.event.fall"),
                texts.get("traces.event.fall.figures", number(one.from(), 0), number(one.to(), 0)));
    }

    private Event defect(DefectKind kind, long times, Defects defects) {
        return new Event(-1, "", texts.get("traces.event.defect", words.defect(kind)), figures(kind, times, defects));
    }

    private String figures(DefectKind kind, long times, Defects defects) {
        if (kind == DefectKind.CHECKSUM) {
            return texts.get("traces.defect.checksum");
        }
        if (kind == DefectKind.CUT_OFF) {
            return texts.get(
                    "traces.defect.cut_off", words.at(defects.of(kind).get(0).from()));
        }
        String first = defects.of(kind).stream()
                .findFirst()
                .map(one -> texts.get(
                        one.channel().isEmpty() ? "traces.defect.first" : "traces.defect.first.in",
                        words.at(one.from()),
                        one.channel()))
                .orElse("");
        return texts.get("traces.times", times) + first;
    }

    /** Engine speed over the part, with what stands out marked; empty when it is not logged. */
    Optional<Chart> chart(BroughtTrace trace, int part) {
        Outline.Speed speed = part < trace.outline().parts().size()
                ? trace.outline().parts().get(part)
                : new Outline.Speed(1, List.of(), List.of());
        Reduction did = trace.parts().get(part);
        if (did.speed() == null || speed.most().stream().allMatch(each -> each.isNaN())) {
            return Optional.empty();
        }
        List<Line> lines = new ArrayList<>();
        lines.add(marked(did));
        lines.add(envelope(speed, top(trace, did)));
        boolean limited = trace.settings().has(TraceSetting.OVER_REV_ABOVE);
        List<Chart.Mark> levels =
                limited ? List.of(new Chart.Mark(trace.settings().get(TraceSetting.OVER_REV_ABOVE), "")) : List.of();
        List<Chart.Mark> uprights = new ArrayList<>();
        if (did.dips() != null) {
            did.dips().stream().limit(SHOWN).forEach(dip -> uprights.add(new Chart.Mark(dip.at() / MINUTE, "")));
        }
        String finding = finding(did);
        return Optional.of(new Chart(
                finding,
                limited
                        ? texts.get(
                                "traces.chart.note.limit",
                                measures.number(Math.round(levels.get(0).at())))
                        : texts.get("traces.chart.note"),
                new Axis.Figures(texts.get("traces.chart.across"), true, at -> number(at, 1)),
                new Axis.Figures(texts.get("traces.chart.up"), true, rpm -> measures.number(Math.round(rpm))),
                lines.stream().filter(line -> !line.dots().isEmpty()).toList(),
                uprights,
                levels,
                List.of(),
                finding,
                new ChartTable(
                        List.of(
                                texts.get("traces.events.at"),
                                texts.get("traces.events.what"),
                                texts.get("traces.events.figures")),
                        events(did, null).stream()
                                .map(event -> List.of(event.when(), event.what(), event.figures()))
                                .toList())));
    }

    private String finding(Reduction did) {
        SpeedFound speed = did.speed();
        Double highest = speed == null ? null : speed.extremes().highest();
        return highest == null
                ? texts.get("traces.chart.nothing")
                : texts.get(
                        "traces.chart.finding",
                        measures.speed(new EngineSpeed((int) Math.round(highest))),
                        did.overRevs() == null ? -1 : did.overRevCount());
    }

    /** Points that are not joined: the over-revs at their peaks. */
    private Line marked(Reduction did) {
        List<Dot> dots = new ArrayList<>();
        if (did.overRevs() != null) {
            for (Excursion one : did.overRevs()) {
                Event event = overRev(one);
                double at = one.at() / MINUTE;
                dots.add(new Dot(
                        at,
                        one.peak(),
                        texts.get("traces.readout", event.when(), event.what(), event.figures()),
                        null));
                dots.add(new Dot(at, null, "", null));
            }
        }
        return new Line("over-revs", "", Line.Path.STRAIGHT, false, dots);
    }

    /** A spike that no engine reaches would press everything else to the ground: it is drawn to the edge only. */
    private static double top(BroughtTrace trace, Reduction did) {
        Double highest = did.speed() == null ? null : did.speed().extremes().highest();
        double limit = trace.settings().has(TraceSetting.OVER_REV_ABOVE)
                ? trace.settings().get(TraceSetting.OVER_REV_ABOVE)
                : 0;
        return ABOVE * Math.max(highest == null ? limit : highest, limit);
    }

    private Line envelope(Outline.Speed speed, double top) {
        List<Dot> dots = new ArrayList<>();
        for (int i = 0; i < speed.most().size(); i++) {
            double at = (i + 0.5) * speed.step() / MINUTE;
            double most = speed.most().get(i);
            double least = speed.least().get(i);
            String when = words.at(Math.round((i + 0.5) * speed.step()));
            if (Double.isNaN(most)) {
                dots.add(new Dot(at, null, "", null));
            } else {
                String read = texts.get(
                        "traces.readout.speed",
                        when,
                        measures.number(Math.round(least)),
                        measures.number(Math.round(most)));
                dots.add(new Dot(at, Math.min(top, i % 2 == 0 ? least : most), read, null));
                dots.add(new Dot(at, Math.min(top, i % 2 == 0 ? most : least), read, null));
            }
        }
        return new Line("speed", "", Line.Path.STRAIGHT, true, dots);
    }

    private String running(long millis) {
        return measures.running(new RunningTime(millis));
    }

    private String at(long micros) {
        return texts.get("traces.at", words.at(micros));
    }

    private String seconds(long micros) {
        return texts.get("traces.seconds", number(micros / 1e6, 2));
    }

    private String number(double figure, int decimals) {
        BigDecimal rounded = rounded(figure, decimals).stripTrailingZeros();
        return measures.number(rounded.scale() < 0 ? rounded.setScale(0) : rounded, Math.max(0, rounded.scale()));
    }

    private static BigDecimal rounded(double figure, int decimals) {
        return BigDecimal.valueOf(figure).setScale(decimals, RoundingMode.HALF_UP);
    }
}
