package witnessmark.launch.buildsheet;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.MeasureKind;
import witnessmark.domain.PlacedAt;
import witnessmark.domain.Spot;
import witnessmark.report.PdfRows;

/** A printed build sheet as somebody reads it with the paper in hand: figures by their place, columns added up. */
final class Printed {
    private static final Pattern BOXED = Pattern.compile("([\u22120-9.\u2009]+)( proud| down)?");
    private static final Pattern SUMMED = Pattern.compile("(\u2212?[0-9.\u2009]+) (\\S.*)");
    private static final String TOGETHER = "together";
    private static final String RATIO = "(swept + clearance) / clearance";

    private final Map<String, List<BigDecimal>> figures = new LinkedHashMap<>();
    private final List<String> wrong = new ArrayList<>();
    private int columns;

    private Printed() {}

    static Printed of(byte[] pdf) {
        Printed printed = new Printed();
        List<List<String>> measured = new ArrayList<>();
        List<List<String>> stands = new ArrayList<>();
        boolean second = false;
        for (List<List<String>> page : PdfRows.of(pdf).pages()) {
            second |= page.stream().anyMatch(row -> row.contains("How it stands"));
            (second ? stands : measured).addAll(page);
        }
        printed.figures(measured);
        printed.columns(stands);
        return printed;
    }

    /** What stands in boxes: by {@code bore, top, across, 1} the figures there, all but one of them too many. */
    Map<String, List<BigDecimal>> figures() {
        return figures;
    }

    /** Sums that are not those of their lines. */
    List<String> wrong() {
        return wrong;
    }

    /** How many columns were added up. */
    int columns() {
        return columns;
    }

    static String place(MeasureKind kind, @Nullable Spot spot, @Nullable Integer number) {
        return kind.code() + "|" + (spot == null ? "" : spot.code()) + "|" + (number == null ? "" : number);
    }

    private void figures(List<List<String>> rows) {
        List<String> columns = List.of();
        MeasureKind kind = null;
        for (List<String> row : rows) {
            String first = row.get(0).strip();
            if (first.equals("by cylinder") || first.equals("by main bearing")) {
                columns = row.subList(1, row.size()).stream().map(String::strip).toList();
            }
            Optional<MeasureKind> named = Arrays.stream(MeasureKind.values())
                    .filter(each -> first.equals(label(each)) || first.startsWith(label(each) + "   "))
                    .findFirst();
            kind = named.orElse(kind);
            List<BigDecimal> boxed = row.subList(1, row.size()).stream()
                    .flatMap(cell -> boxed(cell.strip()).stream())
                    .toList();
            if (kind == null || boxed.isEmpty() || columns.equals(List.of(first)) || first.startsWith("by ")) {
                continue;
            }
            put(kind, named.isPresent() ? "" : first, columns, boxed);
        }
    }

    private void put(MeasureKind kind, String spot, List<String> columns, List<BigDecimal> boxed) {
        for (int at = 0; at < boxed.size(); at++) {
            String key = kind.placedAt() == PlacedAt.ENGINE
                    ? kind.code() + "|#" + at
                    : kind.code() + "|" + spot + "|" + columns.get(at);
            figures.computeIfAbsent(key, any -> new ArrayList<>()).add(boxed.get(at));
        }
    }

    private static String label(MeasureKind kind) {
        return kind.code().substring(0, 1).toUpperCase(Locale.ROOT)
                + kind.code().substring(1);
    }

    private static Optional<BigDecimal> boxed(String cell) {
        Matcher read = BOXED.matcher(cell);
        if (!read.matches()) {
            return Optional.empty();
        }
        BigDecimal figure = number(read.group(1));
        return Optional.of(" proud".equals(read.group(2)) ? figure.negate() : figure);
    }

    private static BigDecimal number(String shown) {
        return new BigDecimal(shown.replace("\u2009", "").replace('\u2212', '-'));
    }

    private void columns(List<List<String>> rows) {
        List<BigDecimal> lines = new ArrayList<>();
        String of = "";
        for (List<String> row : rows) {
            String first = row.get(0).strip();
            if (first.endsWith(" comes about")) {
                lines.clear();
                of = first;
                continue;
            }
            Matcher figure = SUMMED.matcher(row.get(row.size() - 1).strip());
            if (of.isEmpty() || row.size() < 2 || !figure.matches()) {
                continue;
            }
            BigDecimal printed = number(figure.group(1));
            if (first.equals(TOGETHER) || first.equals(RATIO)) {
                BigDecimal sum = first.equals(RATIO)
                        ? lines.get(0).add(lines.get(1)).divide(lines.get(1), printed.scale(), RoundingMode.HALF_UP)
                        : lines.stream().reduce(BigDecimal.ZERO, BigDecimal::add);
                if (sum.compareTo(printed) != 0) {
                    wrong.add(of + ": printed " + printed + ", added up " + sum);
                }
                columns++;
                of = "";
            } else {
                lines.add(printed);
            }
        }
    }
}
