package witnessmark.wording;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.StringJoiner;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.ChannelKind;
import witnessmark.domain.Run;
import witnessmark.domain.SpeedHistogram;
import witnessmark.domain.Trace;
import witnessmark.domain.TraceMark;
import witnessmark.domain.TraceMarkKind;
import witnessmark.quantity.RunningTime;
import witnessmark.trace.result.ChannelFigures;
import witnessmark.trace.result.DefectKind;
import witnessmark.trace.result.PartWear;
import witnessmark.trace.result.ThermalRanges;

/** A trace of the logbook in words: its marks, its time at each speed, what that wore, and ranges of temperature. */
public final class SeenTraceWords {
    private final Texts texts;
    private final Measures measures;
    private final RecordWords records;
    private final ChannelWords channels;
    private final TraceWords traces;

    public SeenTraceWords(Texts texts, Measures measures) {
        this.texts = texts;
        this.measures = measures;
        this.records = new RecordWords(texts);
        this.channels = new ChannelWords(texts, measures);
        this.traces = new TraceWords(texts, measures);
    }

    /** Which trace it is: {@code K03, Race 1, Sun 3 May 14:05}. */
    public String title(String engine, Run run) {
        return texts.get("tracekept.title", engine, run(run), measures.fullStart(run));
    }

    /** The same where there is little room: {@code K03, Race 1, Sun 3 May, 11:00}. */
    public String shortTitle(String engine, Run run) {
        return texts.get("tracekept.title", engine, run(run), measures.start(run));
    }

    public String run(Run run) {
        return run.name().isEmpty() ? records.word(run.kind()) : run.name();
    }

    /** Minutes and seconds after the first sample. */
    public String at(RunningTime time) {
        return traces.at(time.millis() * 1_000);
    }

    /** The same of microseconds. */
    public String at(long micros) {
        return traces.at(micros);
    }

    /** What a trace comes to: length, running time, highest speed and worst figures, and whether its file was what it should be. */
    public String summary(Trace trace) {
        StringJoiner said = new StringJoiner("; ");
        said.add(texts.get("tracekept.lasted", at(trace.lasted()), measures.running(trace.running())));
        if (trace.highest() != null) {
            said.add(texts.get("tracekept.highest", measures.speed(trace.highest())));
        }
        if (trace.oilPressure() != null) {
            said.add(texts.get("tracekept.oil", measures.pressure(trace.oilPressure())));
        }
        if (trace.waterHighest() != null) {
            said.add(texts.get("tracekept.water", measures.temperature(trace.waterHighest())));
        }
        if (trace.oilHighest() != null) {
            said.add(texts.get("tracekept.oilHeat", measures.temperature(trace.oilHighest())));
        }
        if (trace.defects().contains(DefectKind.CHECKSUM.code())) {
            said.add(texts.get("tracekept.suspect"));
        }
        return said.toString();
    }

    /** What a mark is: {@code mechanical over-rev}. */
    public String kind(TraceMark mark) {
        return records.word(mark.kind());
    }

    /** Its worst figure with its unit; empty when it has none. */
    public String figure(TraceMark mark) {
        Long worst = mark.thousandths();
        ChannelKind kind = channel(mark.kind());
        return worst == null || kind == null ? "" : channels.with(kind, worst / 1e3);
    }

    /** How long it lasted; empty for a single sample. */
    public String lasted(TraceMark mark) {
        RunningTime lasted = mark.lasted();
        return lasted == null ? "" : texts.get("tracekept.seconds", number(lasted.millis() / 1e3, 2));
    }

    /** All of it on one line. */
    public String line(TraceMark mark) {
        StringJoiner line = new StringJoiner(", ");
        for (String part : List.of(
                texts.get("tracekept.mark", at(mark.at()), kind(mark)), figure(mark), lasted(mark), known(mark))) {
            if (!part.isEmpty()) {
                line.add(part);
            }
        }
        return line.toString();
    }

    /** In which channel it is and what else is known of it. */
    public String known(TraceMark mark) {
        return mark.words().isEmpty() ? mark.channel() : mark.words();
    }

    private static @Nullable ChannelKind channel(TraceMarkKind kind) {
        return switch (kind) {
            case LIMITER, MECHANICAL, OVER_REV -> ChannelKind.ENGINE_SPEED;
            case OIL_DIP -> ChannelKind.OIL_PRESSURE;
            case IMPLAUSIBLE_FALL -> ChannelKind.WATER_TEMPERATURE;
            default -> null;
        };
    }

    /** A band of speed: {@code 7 250–7 500 rpm}. */
    public String band(int band) {
        return texts.get(
                "tracekept.band",
                measures.number((long) band * SpeedHistogram.WIDTH),
                measures.number((band + 1L) * SpeedHistogram.WIDTH));
    }

    /** The same without its unit. */
    public String bareBand(int band) {
        return texts.get(
                "tracekept.band.bare",
                measures.number((long) band * SpeedHistogram.WIDTH),
                measures.number((band + 1L) * SpeedHistogram.WIDTH));
    }

    /** Minutes with two decimals. */
    public String minutes(long millis) {
        return measures.number(new RunningTime(millis).minutes(2), 2);
    }

    /** What its speeds wore a kind of part, with the plain time beside it. */
    public String wear(PartWear wear, RunningTime running) {
        return texts.get(
                "tracekept.wear",
                records.label(records.word(wear.kind())),
                measures.running(running),
                measures.running(new RunningTime(wear.millis())),
                measures.speed(wear.reference()),
                measures.running(new RunningTime(wear.least())),
                measures.running(new RunningTime(wear.most())),
                number(wear.exponent(), 2),
                wear.source());
    }

    /** Why nothing is said of wear. */
    public String noWear(boolean speedLogged) {
        return texts.get(speedLogged ? "tracekept.wear.nobody" : "tracekept.wear.noSpeed");
    }

    /** That wear feeds nothing. */
    public String wearNote() {
        return texts.get("tracekept.wear.note");
    }

    /** What a temperature did: its largest range and how many there were, a line for each band. */
    public List<String> ranges(ThermalRanges ranges) {
        List<String> lines = new ArrayList<>();
        String name = records.label(channels.name(ranges.kind()));
        if (ranges.bands().isEmpty()) {
            lines.add(texts.get("tracekept.ranges.none", name, kelvin(ranges.least())));
            return lines;
        }
        lines.add(texts.get("tracekept.ranges.largest", name, kelvin(ranges.largest())));
        ranges.bands().forEach(band -> lines.add(texts.get("tracekept.ranges.band", range(band), count(band))));
        return lines;
    }

    /** {@code 20–30 °C}. */
    public String range(ThermalRanges.Band band) {
        return texts.get(
                "tracekept.ranges.of", difference(band.from()), kelvin(band.from() + (double) ThermalRanges.WIDTH));
    }

    /** How many, halves among them. */
    public String count(ThermalRanges.Band band) {
        return number(band.count(), 1);
    }

    /** That ranges feed no counter. */
    public String rangesNote() {
        return texts.get("tracekept.ranges.note");
    }

    /** A difference of temperatures with its unit. */
    private String kelvin(double difference) {
        return difference(difference) + " " + channels.unit(ChannelKind.WATER_TEMPERATURE);
    }

    private String difference(double difference) {
        double none = channels.shown(ChannelKind.WATER_TEMPERATURE, 0);
        return number(channels.shown(ChannelKind.WATER_TEMPERATURE, difference) - none, 0);
    }

    /** What a channel did between two times. */
    public String between(ChannelKind kind, ChannelFigures figures) {
        return texts.get(
                "tracekept.between",
                records.label(channels.name(kind)),
                channels.figure(kind, figures.least()),
                at(figures.leastAt()),
                channels.figure(kind, figures.most()),
                at(figures.mostAt()),
                channels.with(kind, figures.mean()));
    }

    /** That no samples are kept, and what that means. */
    public String notKept() {
        return texts.get("tracekept.notKept");
    }

    private String number(double figure, int most) {
        BigDecimal exact =
                BigDecimal.valueOf(figure).setScale(most, RoundingMode.HALF_UP).stripTrailingZeros();
        return measures.number(exact, Math.max(0, exact.scale()));
    }
}
