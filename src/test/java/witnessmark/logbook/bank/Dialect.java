package witnessmark.logbook.bank;

import java.math.BigDecimal;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import witnessmark.domain.BankLine;

/** One way in which a bank writes its statements; the ways are common practice, no source. */
final class Dialect {
    final char separator;
    final Charset charset;
    final char decimal;
    final boolean thousands;
    final String days;
    final boolean pair;
    final boolean minusBehind;
    final boolean reference;
    final boolean preamble;
    final boolean quoted;

    Dialect(Random random) {
        this.decimal = random.nextBoolean() ? ',' : '.';
        this.separator = pick(random, ';', '\t', '|', decimal == ',' ? ';' : ',');
        this.charset = pick(random, StandardCharsets.UTF_8, StandardCharsets.UTF_16, Charset.forName("windows-1252"));
        this.thousands = random.nextBoolean();
        this.days = pick(random, "uuuu-MM-dd", "dd.MM.uuuu", "d/M/uuuu", "dd MMM uuuu", "uuuuMMdd", "d.M.uu");
        this.pair = random.nextInt(3) == 0;
        this.minusBehind = random.nextInt(4) == 0;
        this.reference = random.nextBoolean();
        this.preamble = random.nextBoolean();
        this.quoted = random.nextBoolean();
    }

    byte[] write(List<BankLine> lines) {
        StringBuilder text = new StringBuilder();
        if (preamble) {
            text.append("Statement of account\r\n\r\nFrom 1 April\r\n");
        }
        List<String> headings = new ArrayList<>(List.of("Booked on", "Who and what for"));
        headings.addAll(pair ? List.of("Money out", "Money in") : List.of("Amount"));
        if (reference) {
            headings.add("Our number");
        }
        row(text, headings);
        for (BankLine line : lines) {
            List<String> fields = new ArrayList<>(
                    List.of(line.day().format(DateTimeFormatter.ofPattern(days, Locale.ENGLISH)), line.text()));
            boolean out = line.amount().minor() < 0;
            String size = size(line.amount().units().abs());
            if (pair) {
                fields.addAll(out ? List.of(size, "") : List.of("", size));
            } else {
                fields.add(!out ? size : minusBehind ? size + "-" : "-" + size);
            }
            if (reference) {
                fields.add(line.reference());
            }
            row(text, fields);
        }
        if (preamble) {
            text.append("Balance at the end\r\n");
        }
        return text.toString().getBytes(charset);
    }

    private String size(BigDecimal units) {
        StringBuilder size = new StringBuilder(units.toPlainString());
        int point = size.indexOf(".");
        size.setCharAt(point, decimal);
        for (int at = point - 3; thousands && at > 0; at -= 3) {
            size.insert(at, decimal == ',' ? '.' : ',');
        }
        return size.toString();
    }

    private void row(StringBuilder text, List<String> fields) {
        for (int i = 0; i < fields.size(); i++) {
            String field = fields.get(i);
            boolean quote = quoted || field.indexOf(separator) >= 0 || field.contains("\"");
            text.append(i == 0 ? "" : separator).append(quote ? '"' + field.replace("\"", "\"\"") + '"' : field);
        }
        text.append("\r\n");
    }

    @Override
    public String toString() {
        return "'%s' %s '%s'%s %s%s%s%s%s"
                .formatted(
                        separator,
                        charset,
                        decimal,
                        thousands ? " thousands" : "",
                        days,
                        pair ? " pair" : "",
                        minusBehind ? " behind" : "",
                        reference ? " number" : "",
                        preamble ? " preamble" : "");
    }

    @SafeVarargs
    private static <T> T pick(Random random, T... from) {
        return from[random.nextInt(from.length)];
    }

    static LocalDate day(Random random) {
        return LocalDate.of(2026, 4, 1).plusDays(random.nextInt(60));
    }
}
