package witnessmark.wording;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.ChannelKind;
import witnessmark.domain.ChannelUnit;
import witnessmark.domain.SpeedHistogram;
import witnessmark.quantity.EngineSpeed;
import witnessmark.quantity.RunningTime;
import witnessmark.trace.result.ColumnForm;
import witnessmark.trace.result.Defect;
import witnessmark.trace.result.DefectKind;
import witnessmark.trace.result.Defects;
import witnessmark.trace.result.Excursion;
import witnessmark.trace.result.Extremes;
import witnessmark.trace.result.HeatCycles;
import witnessmark.trace.result.OilTrend;
import witnessmark.trace.result.PressureDip;
import witnessmark.trace.result.Question;
import witnessmark.trace.result.Reduction;
import witnessmark.trace.result.SpeedFound;
import witnessmark.trace.result.TimeBase;

/** What was found in a logger's file, in words. */
public final class TraceWords {
    private static final int SHOWN = 8;
    private static final int MOST_DECIMALS = 4;
    private static final List<ChannelKind> USUAL = List.of(
            ChannelKind.ENGINE_SPEED,
            ChannelKind.THROTTLE,
            ChannelKind.CAR_SPEED,
            ChannelKind.OIL_PRESSURE,
            ChannelKind.OIL_TEMPERATURE,
            ChannelKind.WATER_TEMPERATURE);

    private final Texts texts;
    private final Measures measures;

    public TraceWords(Texts texts, Measures measures) {
        this.texts = texts;
        this.measures = measures;
    }

    public String channel(ChannelKind kind) {
        return texts.get("trace.channel." + key(kind));
    }

    public String defect(DefectKind kind) {
        return texts.get("trace.defect." + key(kind));
    }

    /** A question as a sentence that says how it is answered. */
    public String question(Question question) {
        Object[] facts = question.facts().stream().map(this::fact).toArray();
        return texts.get("trace.question." + key(question.kind()), facts);
    }

    private Object fact(Object fact) {
        if (fact instanceof List<?> several) {
            return several.isEmpty()
                    ? texts.get("trace.none_fits")
                    : measures.any(several.stream()
                            .map(each -> String.valueOf(fact(each)))
                            .toList());
        }
        if (fact instanceof ChannelKind kind) {
            return channel(kind);
        }
        if (fact instanceof ChannelUnit unit) {
            return unit.code().isEmpty() ? texts.get("trace.no_unit") : unit.code();
        }
        if (fact instanceof TimeBase.Kind kind) {
            return kind.code();
        }
        if (fact instanceof LocalDate day) {
            return measures.date(day);
        }
        return fact instanceof Double figure ? number(figure, 3) : fact;
    }

    /** How each column with a meaning was understood. */
    public List<String> columns(List<ColumnForm> columns) {
        return columns.stream()
                .filter(column -> column.kind() != ChannelKind.OTHER)
                .map(column -> texts.get(
                        "trace.column" + said(column),
                        column.heading(),
                        channel(column.kind()),
                        column.unit().code()))
                .toList();
    }

    private static String said(ColumnForm column) {
        if (column.unit() == ChannelUnit.COUNT || column.unit() == ChannelUnit.UNSAID) {
            return ".plain";
        }
        return column.stated() ? "" : ".taken";
    }

    /** A pressure with as many decimals as it takes to tell it from another, two at least. */
    public String bar(double figure, double other) {
        int decimals = 2;
        while (decimals < MOST_DECIMALS && number(figure, decimals).equals(number(other, decimals))) {
            decimals++;
        }
        return number(figure, decimals);
    }

    /** What a trace, or a part of it, comes to, a line for each thing. */
    public List<String> lines(Reduction found) {
        List<String> lines = new ArrayList<>();
        SpeedFound speed = found.speed();
        lines.add(texts.get("trace.lasted", running(found.lasted() / 1000), found.rows()));
        if (speed != null) {
            lines.add(texts.get(
                    "trace.ran",
                    running(speed.running()),
                    running(speed.loaded()),
                    number(Math.floor(found.coverage() * 1000) / 10, 1)));
            if (speed.extremes().highest() != null) {
                lines.add(texts.get(
                        "trace.highest",
                        rpm(speed.extremes().highest()),
                        at(speed.extremes().highestAt())));
            }
            lines.add(texts.get("trace.revolutions", measures.number(Math.round(speed.revolutions()))));
        }
        if (found.metres() != null) {
            lines.add(texts.get("trace.distance", number(found.metres() / 1000, 2)));
        }
        if (found.laps() != null) {
            lines.add(texts.get("trace.laps", found.laps()));
        }
        overRevs(found, lines);
        oil(found, lines);
        warmth(found, lines);
        List<String> missing = USUAL.stream()
                .filter(kind -> !found.logs(kind))
                .map(this::channel)
                .toList();
        if (!missing.isEmpty()) {
            lines.add(texts.get("trace.not_logged", measures.all(missing)));
        }
        return lines;
    }

    private void overRevs(Reduction found, List<String> lines) {
        List<Excursion> overRevs = found.overRevs();
        if (overRevs == null) {
            return;
        }
        lines.add(texts.get("trace.over_revs", found.overRevCount()));
        overRevs.stream()
                .limit(SHOWN)
                .forEach(one -> lines.add(texts.get(
                        "trace.over_rev." + key(one.how()),
                        at(one.at()),
                        rpm(one.peak()),
                        seconds(one.lasted()),
                        one.gear() == null
                                ? texts.get("trace.gear.not_logged")
                                : texts.get("trace.gear", one.gear()))));
    }

    private void oil(Reduction found, List<String> lines) {
        if (found.oilAtSpeed() != null) {
            lines.add(texts.get("trace.oil", number(found.oilAtSpeed(), 2)));
        }
        List<PressureDip> dips = found.dips();
        if (dips != null) {
            lines.add(texts.get("trace.dips", found.dipCount()));
            dips.stream()
                    .limit(SHOWN)
                    .forEach(dip -> lines.add(texts.get(
                            "trace.dip",
                            at(dip.at()),
                            bar(dip.lowest(), dip.floor()),
                            rpm(dip.speed()),
                            bar(dip.floor(), dip.lowest()),
                            seconds(dip.lasted()))));
        }
        OilTrend trend = found.oilTrend();
        Double last = trend == null ? null : trend.declined();
        if (trend != null && last != null) {
            lines.add(texts.get("trace.oil.declines", number(trend.first(), 2), number(last, 2)));
        }
        if (found.oilOffset() != null) {
            lines.add(texts.get("trace.oil.offset", number(found.oilOffset(), 2)));
        }
    }

    private void warmth(Reduction found, List<String> lines) {
        for (ChannelKind kind : List.of(ChannelKind.WATER_TEMPERATURE, ChannelKind.OIL_TEMPERATURE)) {
            Extremes extremes = found.extremes().get(kind);
            if (extremes != null && extremes.highest() != null) {
                lines.add(texts.get(
                        "trace.warmth", channel(kind), number(extremes.highest(), 1), at(extremes.highestAt())));
                if (extremes.beyond() != null && extremes.beyond() > 0) {
                    lines.add(texts.get("trace.beyond", channel(kind), seconds(extremes.beyond())));
                }
            }
        }
        HeatCycles heat = found.heat();
        if (heat != null) {
            lines.add(texts.get("trace.heat", heat.ifArmed(), heat.ifNot()));
        }
        found.falls()
                .forEach(fall -> lines.add(
                        texts.get("trace.fall", at(fall.at()), number(fall.from(), 1), number(fall.to(), 1))));
    }

    /** Time at each speed, a line for each band that has some. */
    public List<String> speeds(SpeedHistogram speeds) {
        List<String> lines = new ArrayList<>();
        for (int i = 0; i < speeds.bands(); i++) {
            if (speeds.millis(i) > 0) {
                lines.add(texts.get(
                        "trace.band",
                        i * SpeedHistogram.WIDTH,
                        (i + 1) * SpeedHistogram.WIDTH,
                        number(speeds.millis(i) / 1000.0, 2)));
            }
        }
        return lines;
    }

    /** What is wrong with a trace, a line for each kind. */
    public List<String> defects(Defects defects) {
        List<String> lines = new ArrayList<>();
        defects.times().forEach((kind, times) -> {
            List<Defect> where = defects.of(kind);
            Defect first = where.isEmpty() ? null : where.get(0);
            lines.add(texts.get("trace.defect.line", defect(kind), times, where(first)));
        });
        return lines;
    }

    private String where(@Nullable Defect first) {
        if (first == null || first.kind().mark() == null) {
            return "";
        }
        return first.channel().isEmpty()
                ? texts.get("trace.defect.at", at(first.from()))
                : texts.get("trace.defect.in", first.channel(), at(first.from()));
    }

    /** Minutes and seconds after the first sample: {@code 13:40.5}. */
    public String at(long micros) {
        long tenths = Math.floorDiv(micros, 100_000L);
        long seconds = tenths / 10 % 60;
        return tenths / 600 + (seconds < 10 ? ":0" : ":") + seconds + "." + tenths % 10;
    }

    private String running(long millis) {
        return measures.running(new RunningTime(millis));
    }

    private String rpm(double speed) {
        return measures.speed(new EngineSpeed((int) Math.round(Math.max(speed, 0))));
    }

    private String seconds(long micros) {
        return number(micros / 1e6, 2);
    }

    private String number(double figure, int decimals) {
        return measures.number(
                BigDecimal.valueOf(figure)
                        .setScale(decimals, RoundingMode.HALF_UP)
                        .stripTrailingZeros(),
                decimals);
    }

    private static String key(Enum<?> word) {
        return word.name().toLowerCase(Locale.ROOT);
    }
}
