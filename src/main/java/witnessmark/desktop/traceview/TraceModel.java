package witnessmark.desktop.traceview;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import witnessmark.chart.ChartTable;
import witnessmark.chart.DrawnTraceRows;
import witnessmark.chart.Sampled;
import witnessmark.chart.TraceRows;
import witnessmark.desktop.form.SeamState;
import witnessmark.domain.ChannelKind;
import witnessmark.domain.SpeedHistogram;
import witnessmark.domain.Trace;
import witnessmark.domain.TraceMark;
import witnessmark.domain.TraceMarkKind;
import witnessmark.logbook.tracing.KeptTrace;
import witnessmark.logbook.tracing.SeenTrace;
import witnessmark.quantity.RunningTime;
import witnessmark.trace.result.TraceForm;
import witnessmark.wording.ChannelWords;
import witnessmark.wording.Measures;
import witnessmark.wording.SeenTraceWords;
import witnessmark.wording.Texts;

/** Words a trace and describes its chart and its lists. The same trace always gives the same. */
final class TraceModel {
    /** Rows of the table that stands for the chart. */
    private static final int TABLE_ROWS = 60;

    private final Texts texts;
    private final Measures measures;
    private final SeenTraceWords words;
    private final ChannelWords channels;
    private final TraceRowsOf rows;

    TraceModel(Texts texts, Measures measures) {
        this.texts = texts;
        this.measures = measures;
        this.words = new SeenTraceWords(texts, measures);
        this.channels = new ChannelWords(texts, measures);
        this.rows = new TraceRowsOf(channels, words, texts);
    }

    SeenTraceWords words() {
        return words;
    }

    /** Which trace it is: {@code K03, Race 1, Sun 3 May 2026, 11:00}. */
    String title(SeenTrace seen) {
        return words.title(seen.engine().fact().number(), seen.run().fact());
    }

    String shortTitle(SeenTrace seen) {
        return words.shortTitle(seen.engine().fact().number(), seen.run().fact());
    }

    /** Where to look first: where the worst mark is worst, or the middle of the trace; seconds. */
    double first(Shown shown, TraceRows chart) {
        TraceMark worst = worst(shown.seen());
        return worst == null
                ? shown.lasted() / 2e6
                : chart.worst(mark(shown.seen().form(), worst).mark());
    }

    /** What it shows, as a sentence: what the engine did worst, the highest over-rev first. */
    String finding(SeenTrace seen) {
        TraceMark worst = worst(seen);
        String run = words.run(seen.run().fact());
        if (worst == null) {
            return texts.get("traceview.finding.none", run);
        }
        String figure = words.figure(worst);
        String lasted = words.lasted(worst);
        return texts.get("traceview.finding", run, words.kind(worst), words.at(worst.at()), figure, lasted);
    }

    private static @Nullable TraceMark worst(SeenTrace seen) {
        TraceMark worst = null;
        for (TraceMark mark : seen.marks()) {
            boolean engine = isOfEngine(mark.kind());
            if (engine
                    && (worst == null || rank(mark) < rank(worst) || rank(mark) == rank(worst) && beats(mark, worst))) {
                worst = mark;
            }
        }
        return worst;
    }

    private static int rank(TraceMark mark) {
        return switch (mark.kind()) {
            case MECHANICAL -> 0;
            case OVER_REV -> 1;
            case LIMITER -> 2;
            case OIL_DIP -> 3;
            default -> 4;
        };
    }

    private static boolean beats(TraceMark mark, TraceMark other) {
        long one = mark.thousandths() == null ? 0 : mark.thousandths();
        long two = other.thousandths() == null ? 0 : other.thousandths();
        return mark.kind() == TraceMarkKind.OIL_DIP || mark.kind() == TraceMarkKind.IMPLAUSIBLE_FALL
                ? one < two
                : one > two;
    }

    static boolean isOfEngine(TraceMarkKind kind) {
        return switch (kind) {
            case LIMITER, MECHANICAL, OVER_REV, OIL_DIP, IMPLAUSIBLE_FALL -> true;
            default -> false;
        };
    }

    /** What the trace is and comes to; with what is laid over it and how far that is shifted. */
    String note(Shown shown, long shift) {
        Trace trace = shown.seen().trace().fact();
        String note = texts.get("traceview.note", words.summary(trace), trace.name());
        return shown.over()
                .map(over -> texts.get("traceview.note.over", note, shortTitle(over.seen()), shiftWords(shift)))
                .orElse(note);
    }

    /** {@code 1.2 s later}. */
    String shiftWords(long shift) {
        String seconds = channels.tick(Math.abs(shift) / 1e6);
        return texts.get(
                shift == 0 ? "traceview.shift.none" : shift > 0 ? "traceview.shift.later" : "traceview.shift.earlier",
                seconds);
    }

    /**
     * The chart.
     *
     * @param shift by how much what is laid over it is drawn later, microseconds
     */
    TraceRows chart(Shown shown, long shift) {
        List<MarkLine> marks = marks(shown.seen());
        String description = texts.get(
                "traceview.description",
                shown.waves().size(),
                words.at(shown.lasted()),
                marks.size(),
                finding(shown.seen()));
        return rows.of(
                shown,
                shift,
                finding(shown.seen()),
                note(shown, shift),
                marks.stream().map(MarkLine::mark).toList(),
                description);
    }

    /** What a channel is called. */
    String channel(KeptTrace.Channel channel) {
        return rows.name(channel);
    }

    /** Its marks, in the order of time. */
    List<MarkLine> marks(SeenTrace seen) {
        return seen.marks().stream().map(mark -> mark(seen.form(), mark)).toList();
    }

    private MarkLine mark(TraceForm form, TraceMark mark) {
        boolean engine = isOfEngine(mark.kind());
        double seconds = mark.at().millis() / 1e3;
        RunningTime lasted = mark.lasted();
        String figure = words.figure(mark);
        return new MarkLine(
                words.at(mark.at()),
                seconds,
                engine ? SeamState.OVER : SeamState.NOT_KNOWN,
                words.kind(mark),
                figure,
                words.lasted(mark),
                words.known(mark),
                new TraceRows.Mark(
                        seconds,
                        lasted == null ? 0 : lasted.millis() / 1e3,
                        row(form, mark),
                        figure.isEmpty() ? words.kind(mark) : figure,
                        engine));
    }

    /** The row of the channel it is in; empty for all of them. */
    private static String row(TraceForm form, TraceMark mark) {
        int column = mark.channel().isEmpty() ? -1 : form.named(mark.channel());
        if (column < 0) {
            return "";
        }
        ChannelKind kind = form.columns().get(column).kind();
        return kind.oftenMany() ? mark.channel() : kind.code();
    }

    /** Time at each speed, the run laid over it beside it. */
    List<BandLine> bands(Shown shown) {
        SpeedHistogram own = shown.seen().speeds();
        SpeedHistogram other = shown.over().map(over -> over.seen().speeds()).orElse(null);
        int count = Math.max(own.bands(), other == null ? 0 : other.bands());
        long most = 1;
        for (int i = 0; i < count; i++) {
            most = Math.max(most, Math.max(own.millis(i), other == null ? 0 : other.millis(i)));
        }
        List<BandLine> lines = new ArrayList<>();
        for (int i = count - 1; i >= 0; i--) {
            Long over = other == null ? null : other.millis(i);
            if (own.millis(i) > 0 || over != null && over > 0) {
                lines.add(new BandLine(
                        i,
                        words.bareBand(i),
                        own.millis(i),
                        words.minutes(own.millis(i)),
                        own.millis(i) / (double) most,
                        over,
                        over == null ? "" : words.minutes(over),
                        over == null ? 0 : over / (double) most));
            }
        }
        return lines;
    }

    /** What wore by speed: a sentence for each kind of part, or why there is none. */
    List<String> wear(Shown shown) {
        SeenTrace seen = shown.seen();
        if (seen.wear().isEmpty()) {
            return List.of(words.noWear(seen.speeds().total() > 0));
        }
        return Stream.concat(
                        seen.wear().stream()
                                .map(wear ->
                                        words.wear(wear, seen.trace().fact().running())),
                        Stream.of(words.wearNote()))
                .toList();
    }

    List<RangeLine> ranges(Shown shown) {
        List<RangeLine> lines = new ArrayList<>();
        shown.ranges().forEach(ranges -> {
            String name = channels.name(ranges.kind());
            ranges.bands()
                    .forEach(band -> lines.add(new RangeLine(name, words.range(band), band.from(), words.count(band))));
        });
        return lines;
    }

    List<FigureLine> figures(List<ReadTrace.Did> found) {
        return found.stream()
                .map(did -> {
                    ChannelKind kind = did.channel().form().kind();
                    String name = rows.name(did.channel());
                    String unit = channels.unit(kind);
                    return new FigureLine(
                            unit.isEmpty() ? name : texts.get("traceview.comma", name, unit),
                            channels.figure(kind, did.figures().least()),
                            channels.figure(kind, did.figures().most()),
                            channels.figure(kind, did.figures().mean()));
                })
                .toList();
    }

    /** What each row says at a time. */
    String readout(TraceRows chart, double seconds) {
        List<String> said = new ArrayList<>();
        for (TraceRows.Row row : chart.rows()) {
            for (Sampled curve : row.curves()) {
                String value = DrawnTraceRows.value(row, curve, seconds);
                said.add(texts.get("traceview.readout.row", row.name(), value, row.unit())
                        .strip());
            }
        }
        return texts.get("traceview.readout", words.at(Math.round(seconds * 1e6)), measures.row(said));
    }

    /** Where the cross-hair stands, with the marks that are there. */
    String here(Shown shown, double seconds) {
        List<String> said = new ArrayList<>(List.of(words.at(Math.round(seconds * 1e6))));
        for (TraceMark mark : shown.seen().marks()) {
            RunningTime lasted = mark.lasted();
            double from = mark.at().millis() / 1e3;
            double until = from + (lasted == null ? 0.1 : lasted.millis() / 1e3);
            if (from <= seconds && seconds <= until) {
                said.add(words.kind(mark));
                if (!words.known(mark).isEmpty()) {
                    said.add(words.known(mark));
                }
            }
        }
        return measures.row(said);
    }

    /** The chart as rows: least and most of each channel in pieces of what is seen. */
    ChartTable table(TraceRows chart, double from, double to) {
        List<String> headings = new ArrayList<>(List.of(texts.get("traceview.table.from")));
        chart.rows().forEach(row -> {
            String name = row.unit().isEmpty() ? row.name() : texts.get("traceview.comma", row.name(), row.unit());
            for (int i = 0; i < row.curves().size(); i++) {
                headings.add(i == 0 ? name : texts.get("traceview.table.over", name));
            }
        });
        List<List<String>> cells = new ArrayList<>();
        List<double[][]> all = chart.rows().stream()
                .flatMap(row -> row.curves().stream())
                .map(curve -> {
                    double[][] piece = new double[2][TABLE_ROWS];
                    curve.envelope(from, to, piece[0], piece[1]);
                    return piece;
                })
                .toList();
        List<TraceRows.Row> of = chart.rows().stream()
                .flatMap(row -> row.curves().stream().map(curve -> row))
                .toList();
        for (int i = 0; i < TABLE_ROWS; i++) {
            List<String> line = new ArrayList<>();
            line.add(words.at(Math.round((from + (to - from) * i / TABLE_ROWS) * 1e6)));
            for (int c = 0; c < all.size(); c++) {
                line.add(spread(of.get(c), all.get(c)[0][i], all.get(c)[1][i]));
            }
            cells.add(line);
        }
        return new ChartTable(headings, cells);
    }

    private static String spread(TraceRows.Row row, double least, double most) {
        if (Double.isNaN(least)) {
            return "";
        }
        String low = row.figure().apply(least);
        String high = row.figure().apply(most);
        return Objects.equals(low, high) ? low : low + "\u2013" + high;
    }
}
