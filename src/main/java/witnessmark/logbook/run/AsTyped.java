package witnessmark.logbook.run;

import java.math.BigDecimal;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.StringJoiner;
import witnessmark.domain.Run;
import witnessmark.quantity.RunningTime;
import witnessmark.quantity.typed.Typed;
import witnessmark.quantity.typed.Unit;

/** What was typed into the fields of a run, kept beside the exact values: field=text, one a line. */
final class AsTyped {
    private static final int MOST_DECIMALS = 6;
    private static final long MINUTE = 60_000;
    private static final long SURELY_MINUTES = 5;

    private AsTyped() {}

    /** The record of what stands in the fields now. */
    static String of(Map<RunField, String> typed) {
        StringJoiner lines = new StringJoiner("\n");
        typed.forEach((field, text) -> {
            if (isKept(field) && !text.isBlank()) {
                lines.add(field.key() + "=" + text.strip());
            }
        });
        return lines.toString();
    }

    /** The same after a correction: what was typed into the other fields stays as it was. */
    static String corrected(Run was, Map<RunField, String> typed, Set<RunField> changed) {
        if (changed.stream().noneMatch(AsTyped::isKept)) {
            return was.asTyped();
        }
        Map<RunField, String> now = in(was);
        for (RunField field : changed) {
            now.put(field, typed.getOrDefault(field, ""));
        }
        return of(now);
    }

    /** What was typed, by field. */
    static Map<RunField, String> in(Run run) {
        Map<RunField, String> texts = new EnumMap<>(RunField.class);
        run.asTyped().lines().forEach(line -> {
            int equals = line.indexOf('=');
            if (equals > 0) {
                RunField.of(line.substring(0, equals)).ifPresent(field -> texts.put(field, line.substring(equals + 1)));
            }
        });
        return texts;
    }

    /**
     * What stands in the field of a written value: what was typed, as long as that still reads as the value; else the
     * value in the field's own unit.
     */
    static <T> String standing(Figure<T> figure, T value, Map<RunField, String> typed) {
        return Optional.ofNullable(typed.get(figure.field()))
                .filter(text -> figure.parse().apply(text) instanceof Typed.Read<T> read
                        && read.value().equals(value))
                .orElseGet(() -> figure.text().apply(value));
    }

    /** A measure in a unit, with as many decimals as it needs. */
    static <Q> String figure(Unit<Q> unit, Q quantity) {
        for (int decimals = 0; decimals < MOST_DECIMALS; decimals++) {
            BigDecimal figure = unit.in(quantity, decimals);
            if (unit.of(figure).equals(quantity)) {
                return figure.toPlainString();
            }
        }
        return unit.in(quantity, MOST_DECIMALS).toPlainString();
    }

    /** A time in minutes; with seconds as {@code 27:42}, and below five minutes in a form that cannot mean hours. */
    static String time(RunningTime time) {
        long minutes = time.millis() / MINUTE;
        BigDecimal seconds = BigDecimal.valueOf(time.millis() % MINUTE, 3).stripTrailingZeros();
        if (seconds.signum() == 0) {
            return Long.toString(minutes);
        }
        String figure = seconds.toPlainString();
        if (minutes >= SURELY_MINUTES && minutes < 1000) {
            return minutes + (seconds.compareTo(BigDecimal.TEN) < 0 ? ":0" : ":") + figure;
        }
        return minutes == 0 ? figure + " s" : minutes + " min " + figure + " s";
    }

    private static boolean isKept(RunField field) {
        return field.measured() && field != RunField.REMARKS;
    }
}
