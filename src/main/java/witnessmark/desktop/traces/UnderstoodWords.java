package witnessmark.desktop.traces;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import witnessmark.domain.ChannelKind;
import witnessmark.domain.ChannelUnit;
import witnessmark.logbook.tracing.BroughtTrace;
import witnessmark.quantity.RunningTime;
import witnessmark.trace.result.ColumnForm;
import witnessmark.trace.result.Outline;
import witnessmark.trace.result.Question;
import witnessmark.trace.result.TimeBase;
import witnessmark.trace.result.TraceForm;
import witnessmark.wording.Measures;
import witnessmark.wording.Texts;
import witnessmark.wording.TraceWords;

/** How a file was understood, in words. */
final class UnderstoodWords {
    private static final int KILO = 1000;
    private static final int FIRST = 4;

    private final Texts texts;
    private final Measures measures;
    private final TraceWords words;

    UnderstoodWords(Texts texts, Measures measures) {
        this.texts = texts;
        this.measures = measures;
        this.words = new TraceWords(texts, measures);
    }

    /**
     * A column of the file.
     *
     * @param index which one, from 0
     * @param inUnit the unit itself: of a channel or of time
     * @param first its cells in the first rows, as the file has them
     * @param taken whether nobody said its unit
     * @param time whether it says when, so that nothing can be changed of it here
     */
    record ColumnLine(
            int index,
            ColumnForm form,
            String heading,
            String kind,
            String unit,
            Object inUnit,
            String least,
            String most,
            String first,
            boolean taken,
            boolean time,
            boolean used) {}

    /** Bytes as people say them: {@code 12.4 MB}. */
    String size(long bytes) {
        double kilo = bytes / (double) KILO;
        return bytes < KILO
                ? texts.get("traces.size.bytes", bytes)
                : kilo < KILO
                        ? texts.get("traces.size.kilo", number(kilo, 0))
                        : texts.get("traces.size.mega", number(kilo / KILO, 1));
    }

    /** Name, size, rows, length, and that it was read as its like before. */
    String file(BroughtTrace trace) {
        List<String> said = new ArrayList<>();
        said.add(size(trace.size()));
        var read = trace.found().read();
        if (read != null) {
            said.add(texts.get("traces.rows", read.rows()));
            long lasted = read.lasted().stream().mapToLong(Long::longValue).sum();
            said.add(measures.running(new RunningTime(lasted / KILO)));
        }
        if (trace.found().asBefore()) {
            said.add(texts.get("traces.as_before"));
        }
        return String.join(texts.get("traces.between"), said);
    }

    /** Encoding, delimiter, decimal mark, time. */
    String form(TraceForm form) {
        return texts.get(
                "traces.form",
                form.coding().code(),
                texts.get("traces.delimiter." + delimiter(form.delimiter())),
                texts.get(form.decimal() == ',' ? "traces.decimal.comma" : "traces.decimal.point"),
                time(form));
    }

    private static String delimiter(char mark) {
        return switch (mark) {
            case ',' -> "comma";
            case ';' -> "semicolon";
            case '\t' -> "tab";
            case ' ' -> "space";
            case '|' -> "bar";
            case 0 -> "none";
            default -> "other";
        };
    }

    private String time(TraceForm form) {
        TimeBase time = form.time();
        if (!time.known()) {
            return texts.get("traces.time.unknown");
        }
        return time.column() < 0
                ? texts.get("traces.time.rate", number(time.rate(), 3))
                : texts.get(
                        "traces.time.column", form.columns().get(time.column()).heading(), unit(time.kind()));
    }

    String unit(TimeBase.Kind kind) {
        return texts.get("traces.time." + kind.name().toLowerCase(java.util.Locale.ROOT));
    }

    /** One line for each column. */
    List<ColumnLine> columns(BroughtTrace trace) {
        TraceForm form = trace.found().form();
        List<Outline.Range> ranges = trace.outline().columns();
        List<ColumnLine> lines = new ArrayList<>();
        for (int i = 0; i < form.columns().size(); i++) {
            ColumnForm column = form.columns().get(i);
            boolean time = form.isTime(i);
            Outline.Range range =
                    i < ranges.size() && !time ? ranges.get(i) : new Outline.Range(Double.NaN, Double.NaN);
            String own = column.kind().oftenMany() ? "" : sign(column.kind().unit());
            lines.add(new ColumnLine(
                    i,
                    column,
                    column.heading(),
                    time ? texts.get("traces.column.time") : words.channel(column.kind()),
                    time ? unit(form.time().kind()) : unit(column),
                    time ? form.time().kind() : column.unit(),
                    figure(range.least(), own),
                    figure(range.most(), own),
                    first(trace.found().recognised().rows(), i),
                    !time && isTaken(column),
                    time,
                    time || column.kind() != ChannelKind.OTHER));
        }
        return lines;
    }

    /** The first cells of a column, as the file has them. */
    private static String first(List<List<String>> rows, int column) {
        return rows.stream()
                .filter(row -> column < row.size())
                .limit(FIRST)
                .map(row -> row.get(column).strip())
                .collect(java.util.stream.Collectors.joining("   "));
    }

    private static boolean isTaken(ColumnForm column) {
        return !column.stated() && column.unit() != ChannelUnit.COUNT && column.unit() != ChannelUnit.UNSAID;
    }

    private String unit(ColumnForm column) {
        String sign = sign(column.unit());
        return isTaken(column) ? texts.get("traces.taken", sign) : sign;
    }

    /** A unit as it is written. */
    String sign(ChannelUnit unit) {
        return unit.code().isEmpty() || unit == ChannelUnit.COUNT ? "" : unit.code();
    }

    private String figure(double figure, String sign) {
        if (Double.isNaN(figure)) {
            return "";
        }
        double size = Math.abs(figure);
        String shown = number(figure, size >= KILO ? 0 : size >= 100 ? 1 : 2);
        return sign.isEmpty() ? shown : texts.get("traces.figure", shown, sign);
    }

    private String number(double figure, int decimals) {
        BigDecimal rounded = BigDecimal.valueOf(figure)
                .setScale(decimals, RoundingMode.HALF_UP)
                .stripTrailingZeros();
        return measures.number(rounded.scale() < 0 ? rounded.setScale(0) : rounded, Math.max(0, rounded.scale()));
    }

    /** A question, as a sentence that asks. */
    String question(Question question) {
        return words.question(question);
    }

    /** One of the answers to a question. */
    String choice(Question.Kind kind, Object choice) {
        if (choice instanceof TimeBase.Kind unit) {
            return unit(unit);
        }
        if (choice instanceof ChannelUnit unit) {
            return unit.code();
        }
        if (choice instanceof Boolean dayFirst) {
            return texts.get(dayFirst ? "traces.order.day" : "traces.order.month");
        }
        if (choice instanceof Character mark) {
            return texts.get(mark == ',' ? "traces.decimal.comma" : "traces.decimal.point");
        }
        return choice instanceof Double rate ? texts.get("traces.time.rate", number(rate, 3)) : String.valueOf(choice);
    }

    /** The unit of a channel or of time, as it is picked. */
    String unitOf(Object unit) {
        return unit instanceof TimeBase.Kind time ? unit(time) : ((ChannelUnit) unit).code();
    }

    /** A figure as it is typed. */
    String plain(double figure) {
        return number(figure, 3);
    }

    String channel(ChannelKind kind) {
        return words.channel(kind);
    }
}
