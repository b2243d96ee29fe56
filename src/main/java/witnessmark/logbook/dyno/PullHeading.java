package witnessmark.logbook.dyno;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import witnessmark.study.result.PullColumn;

/**
 * The heading of a table of pulls, in any order: {@code rpm; N·m; kW; lambda; oil bar; oil °C; water °C; exhaust 1 °C}. A
 * column it does not know is named and left out.
 *
 * @param columns in their order; null for one that is not taken
 * @param unknown those not taken, as they are called there
 */
record PullHeading(List<@Nullable Column> columns, List<String> unknown) {
    /**
     * One column.
     *
     * @param of what it holds
     * @param unit in what
     * @param cylinder from 1, of an exhaust; 0 otherwise
     */
    record Column(PullColumn of, In unit, int cylinder) {}

    /**
     * In what a column is, turned to what {@link PullColumn} says. NIST SP 811, 2008, appendix B.8: pound-force foot
     * 1.355 818 N·m, horsepower (550 ft·lbf/s) 745.699 9 W, metric 735.498 8 W, psi 6 894.757 Pa; all from exact inches,
     * pounds and seconds.
     */
    enum In {
        OWN("1"),
        POUND_FOOT("1.3558179483314004"),
        WATT("0.001"),
        HORSEPOWER("0.74569987158227022"),
        METRIC_HORSEPOWER("0.73549875"),
        PSI("0.068947572931683609"),
        KILOPASCAL("0.01"),
        FAHRENHEIT("1");

        private final BigDecimal times;

        In(String times) {
            this.times = new BigDecimal(times);
        }

        BigDecimal own(BigDecimal figure) {
            return this == FAHRENHEIT
                    ? figure.subtract(BigDecimal.valueOf(32))
                            .multiply(BigDecimal.valueOf(5))
                            .divide(BigDecimal.valueOf(9), MathContext.DECIMAL64)
                    : figure.multiply(times);
        }
    }

    private static final Pattern PARTED = Pattern.compile("\\s*[\\t;|]\\s*|\\s*,\\s*|\\s{2,}");

    /** Words that name a quantity, and those that are a unit and name it by themselves. */
    private static final Pattern NAME =
            Pattern.compile("engine|speed|revs|torque|power|lambda|λ|oil|water|coolant|exhaust|egt\\d*|afr");

    private static final Pattern SPEED = Pattern.compile("rpm|r/min|1/min|min-1");
    private static final Pattern TORQUE =
            Pattern.compile("n·?m|n\\.m|n\\*m|lbf?[·.\\- ]?ft|ft[·.\\- ]?lbf?|lb-ft|ft-lbs?");
    private static final Pattern POWER = Pattern.compile("kw|w|hp|bhp|ps|cv");
    private static final Pattern NUMBER = Pattern.compile("\\d{1,2}");

    PullHeading {
        columns = java.util.Collections.unmodifiableList(new ArrayList<>(columns));
        unknown = List.copyOf(unknown);
    }

    static PullHeading of(String line) {
        List<@Nullable Column> columns = new ArrayList<>();
        List<String> unknown = new ArrayList<>();
        int exhausts = 0;
        for (String cell : cells(line)) {
            Column column = column(cell, exhausts + 1);
            if (column != null && column.of() == PullColumn.EXHAUST) {
                exhausts++;
            }
            if (column == null && !cell.isEmpty()) {
                unknown.add(cell);
            }
            columns.add(column);
        }
        return new PullHeading(columns, unknown);
    }

    /** Columns where there is no heading: in the order in which sheets have them, power only where it is power. */
    static PullHeading without(int figures, boolean powerThird) {
        List<PullColumn> order = new ArrayList<>(List.of(PullColumn.SPEED, PullColumn.TORQUE));
        if (powerThird) {
            order.add(PullColumn.POWER);
        }
        order.addAll(List.of(PullColumn.LAMBDA, PullColumn.OIL_PRESSURE, PullColumn.OIL, PullColumn.WATER));
        List<@Nullable Column> columns = new ArrayList<>();
        for (int i = 0; i < figures; i++) {
            columns.add(
                    i < order.size()
                            ? new Column(order.get(i), In.OWN, 0)
                            : new Column(PullColumn.EXHAUST, In.OWN, i - order.size() + 1));
        }
        return new PullHeading(columns, List.of());
    }

    /** Whether speed is there, and torque or what it follows from, each once. */
    boolean tellsTorque() {
        return count(PullColumn.SPEED) == 1
                && count(PullColumn.TORQUE) <= 1
                && count(PullColumn.POWER) <= 1
                && count(PullColumn.TORQUE) + count(PullColumn.POWER) >= 1;
    }

    boolean has(PullColumn of) {
        return count(of) > 0;
    }

    private long count(PullColumn of) {
        return columns.stream()
                .filter(column -> column != null && column.of() == of)
                .count();
    }

    /** By its separators, or word by word: a unit behind a name belongs to it, and by itself it is a column. */
    private static List<String> cells(String line) {
        String plain = line.strip().toLowerCase(Locale.ROOT).replace('[', '(').replace(']', ')');
        if (PARTED.matcher(plain).find()) {
            return List.of(PARTED.split(plain, -1));
        }
        List<String> cells = new ArrayList<>();
        for (String word : plain.split("\\s+")) {
            String bare = word.replaceAll("[()]", "");
            String last = cells.isEmpty() ? "" : cells.get(cells.size() - 1);
            boolean begins = last.isEmpty()
                    || NAME.matcher(bare).matches() && !last.equals("engine")
                    || isUnit(bare) && !waitsFor(last, bare);
            if (begins) {
                cells.add(word);
            } else {
                cells.set(cells.size() - 1, last + " " + word);
            }
        }
        return cells;
    }

    private static boolean isUnit(String word) {
        return SPEED.matcher(word).matches()
                || TORQUE.matcher(word).matches()
                || POWER.matcher(word).matches();
    }

    private static boolean waitsFor(String cell, String unit) {
        return cell.matches("(engine )?(speed|revs)") && SPEED.matcher(unit).matches()
                || cell.equals("torque") && TORQUE.matcher(unit).matches()
                || cell.equals("power") && POWER.matcher(unit).matches();
    }

    private static @Nullable Column column(String cell, int cylinder) {
        String plain = cell.replaceAll("[()\"]", " ").replaceAll("\\s+", " ").strip();
        if (has(plain, "exhaust|egt\\d*")) {
            Matcher number = NUMBER.matcher(plain);
            int own = number.find() ? Integer.parseInt(number.group()) : cylinder;
            return new Column(PullColumn.EXHAUST, heat(plain), Math.max(1, own));
        }
        if (has(plain, "oil")) {
            boolean pressure = has(plain, "bar|psi|kpa|p|press|pressure");
            return pressure
                    ? new Column(
                            PullColumn.OIL_PRESSURE,
                            has(plain, "psi") ? In.PSI : has(plain, "kpa") ? In.KILOPASCAL : In.OWN,
                            0)
                    : new Column(PullColumn.OIL, heat(plain), 0);
        }
        if (has(plain, "water|coolant")) {
            return new Column(PullColumn.WATER, heat(plain), 0);
        }
        if (has(plain, "lambda|λ")) {
            return new Column(PullColumn.LAMBDA, In.OWN, 0);
        }
        if (has(plain, "torque") || TORQUE.matcher(plain).matches()) {
            return new Column(PullColumn.TORQUE, plain.contains("lb") ? In.POUND_FOOT : In.OWN, 0);
        }
        if (has(plain, "power") || POWER.matcher(plain).matches()) {
            return new Column(PullColumn.POWER, power(plain), 0);
        }
        return has(plain, "speed|revs|rpm|r/min|1/min") ? new Column(PullColumn.SPEED, In.OWN, 0) : null;
    }

    private static In heat(String cell) {
        return has(cell, "°f|f|degf|ºf") ? In.FAHRENHEIT : In.OWN;
    }

    private static In power(String cell) {
        if (has(cell, "hp|bhp")) {
            return In.HORSEPOWER;
        }
        return has(cell, "ps|cv") ? In.METRIC_HORSEPOWER : has(cell, "w") ? In.WATT : In.OWN;
    }

    /** Whether one of the words stands there by itself. */
    private static boolean has(String cell, String words) {
        return (" " + cell + " ").matches(".*[ .,:/_-](" + words + ")[ .,:/_-].*");
    }
}
