package witnessmark.logbook.tracing;

import java.util.ArrayList;
import java.util.List;
import java.util.StringJoiner;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.ChannelKind;
import witnessmark.domain.Id;
import witnessmark.domain.Trace;
import witnessmark.domain.TraceMark;
import witnessmark.domain.TraceMarkKind;
import witnessmark.quantity.RunningTime;
import witnessmark.trace.result.Defects;
import witnessmark.trace.result.Excursion;
import witnessmark.trace.result.PressureDip;
import witnessmark.trace.result.Reduction;
import witnessmark.trace.result.TemperatureFall;
import witnessmark.trace.result.TraceForm;

/** What was found in a part of a trace, to be written down with its place. */
final class MarksOfPart {
    /** Of each kind of defect so many are written down; all are counted. */
    static final int MOST = 20;

    private final Id<Trace> trace;
    private final TraceForm form;
    private final List<TraceMark> marks = new ArrayList<>();

    private MarksOfPart(Id<Trace> trace, TraceForm form) {
        this.trace = trace;
        this.form = form;
    }

    static List<TraceMark> of(Id<Trace> trace, TraceForm form, Reduction part, int number, @Nullable Defects defects) {
        MarksOfPart all = new MarksOfPart(trace, form);
        if (part.overRevs() != null) {
            part.overRevs().forEach(all::overRev);
        }
        if (part.dips() != null) {
            part.dips().stream().limit(MOST).forEach(all::dip);
        }
        part.falls().stream().limit(MOST).forEach(all::fall);
        if (defects != null) {
            all.defects(defects, number);
        }
        return all.marks;
    }

    private void overRev(Excursion found) {
        TraceMarkKind kind = switch (found.how()) {
            case LIMITER -> TraceMarkKind.LIMITER;
            case MECHANICAL -> TraceMarkKind.MECHANICAL;
            case NOT_KNOWN -> TraceMarkKind.OVER_REV;
        };
        StringJoiner words = new StringJoiner(", ");
        if (found.gear() != null) {
            words.add("gear " + found.gear());
        }
        if (found.throttle() != null) {
            words.add("throttle " + Math.round(found.throttle()) + " %");
        }
        put(kind, found.at(), found.lasted(), heading(ChannelKind.ENGINE_SPEED), found.peak(), words.toString());
    }

    private void dip(PressureDip found) {
        String sideways = found.lateral() == null ? "" : Math.round(found.lateral() * 10) / 10.0 + " g";
        put(
                TraceMarkKind.OIL_DIP,
                found.at(),
                found.lasted(),
                heading(ChannelKind.OIL_PRESSURE),
                found.lowest(),
                sideways);
    }

    private void fall(TemperatureFall found) {
        put(
                TraceMarkKind.IMPLAUSIBLE_FALL,
                found.at(),
                found.lasted(),
                heading(ChannelKind.WATER_TEMPERATURE),
                found.to(),
                "");
    }

    private void defects(Defects defects, int number) {
        for (TraceMarkKind kind : TraceMarkKind.values()) {
            defects.located().stream()
                    .filter(defect -> defect.part() == number && defect.kind().mark() == kind)
                    .limit(MOST)
                    .forEach(defect ->
                            put(kind, defect.from(), defect.until() - defect.from(), defect.channel(), null, ""));
        }
    }

    private String heading(ChannelKind kind) {
        int column = form.column(kind);
        return column < 0 ? "" : form.columns().get(column).heading();
    }

    private void put(TraceMarkKind kind, long at, long lasted, String channel, @Nullable Double figure, String words) {
        marks.add(new TraceMark(
                trace,
                kind,
                new RunningTime(at / 1_000),
                lasted <= 0 ? null : new RunningTime(lasted / 1_000),
                channel,
                figure == null ? null : Math.round(figure * 1_000),
                words));
    }
}
