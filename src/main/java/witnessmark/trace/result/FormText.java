package witnessmark.trace.result;

import java.util.ArrayList;
import java.util.List;
import witnessmark.domain.ChannelKind;
import witnessmark.domain.ChannelUnit;
import witnessmark.domain.Coded;

/**
 * A {@link TraceForm} as text of one line: {@code 1;UTF-8;comma;point;none;;3;s,0,-1,d,0.0;Time/other//taken;…}. The first
 * figure is the version of this text.
 */
final class FormText {
    private static final String VERSION = "1";
    private static final int PARTS = 8;

    private FormText() {}

    static String of(TraceForm form) {
        TimeBase time = form.time();
        List<String> parts = new ArrayList<>(List.of(
                VERSION,
                form.coding().code(),
                sign(form.delimiter()),
                sign(form.decimal()),
                sign(form.thousands()),
                escaped(form.comment()),
                Integer.toString(form.before()),
                String.join(
                        ",",
                        time.kind().code(),
                        Integer.toString(time.column()),
                        Integer.toString(time.dateColumn()),
                        time.dayFirst() ? "d" : "m",
                        Double.toString(time.rate()))));
        form.columns()
                .forEach(column -> parts.add(String.join(
                        "/",
                        escaped(column.heading()),
                        column.kind().code(),
                        escaped(column.unit().code()),
                        column.from().code())));
        return String.join(";", parts);
    }

    static TraceForm parse(String text) {
        String[] parts = text.split(";", -1);
        if (parts.length <= PARTS || !parts[0].equals(VERSION)) {
            throw new IllegalArgumentException("no form of a trace: " + text);
        }
        String[] time = cut(parts[7], ",", 5);
        List<ColumnForm> columns = new ArrayList<>();
        for (int i = PARTS; i < parts.length; i++) {
            String[] column = cut(parts[i], "/", 4);
            columns.add(new ColumnForm(
                    plain(column[0]),
                    Coded.of(ChannelKind.class, column[1]),
                    Coded.of(ChannelUnit.class, plain(column[2])),
                    Coded.of(ColumnForm.From.class, column[3])));
        }
        return new TraceForm(
                Coded.of(TextCoding.class, parts[1]),
                mark(parts[2]),
                mark(parts[3]),
                mark(parts[4]),
                plain(parts[5]),
                Integer.parseInt(parts[6]),
                new TimeBase(
                        Coded.of(TimeBase.Kind.class, time[0]),
                        Integer.parseInt(time[1]),
                        Integer.parseInt(time[2]),
                        time[3].equals("d"),
                        Double.parseDouble(time[4])),
                columns);
    }

    private static String[] cut(String text, String at, int count) {
        String[] cut = text.split(at, -1);
        if (cut.length != count) {
            throw new IllegalArgumentException("not " + count + " parts: " + text);
        }
        return cut;
    }

    /** A single character by its name or itself. */
    static String sign(char mark) {
        return switch (mark) {
            case 0 -> "none";
            case ',' -> "comma";
            case ';' -> "semicolon";
            case '\t' -> "tab";
            case ' ' -> "space";
            case '.' -> "point";
            default -> escaped(Character.toString(mark));
        };
    }

    private static char mark(String name) {
        return switch (name) {
            case "none" -> 0;
            case "comma" -> ',';
            case "semicolon" -> ';';
            case "tab" -> '\t';
            case "space" -> ' ';
            case "point" -> '.';
            default -> plain(name).charAt(0);
        };
    }

    /** With the characters that part this text, and those that cannot be seen, as {@code %XXXX}. */
    static String escaped(String text) {
        StringBuilder escaped = new StringBuilder();
        for (char c : text.toCharArray()) {
            if (c < ' ' || "%;/|,".indexOf(c) >= 0) {
                escaped.append('%');
                for (int shift = 12; shift >= 0; shift -= 4) {
                    escaped.append(Character.forDigit(c >> shift & 15, 16));
                }
            } else {
                escaped.append(c);
            }
        }
        return escaped.toString();
    }

    private static String plain(String escaped) {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < escaped.length(); i++) {
            if (escaped.charAt(i) == '%' && i + 4 < escaped.length()) {
                text.append((char) Integer.parseInt(escaped.substring(i + 1, i + 5), 16));
                i += 4;
            } else {
                text.append(escaped.charAt(i));
            }
        }
        return text.toString();
    }
}
