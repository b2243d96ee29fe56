package witnessmark.logbook.tracing;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Car;
import witnessmark.domain.Entry;
import witnessmark.domain.Facts;
import witnessmark.domain.Run;
import witnessmark.domain.Trace;
import witnessmark.quantity.Moment;
import witnessmark.trace.result.Reduction;

/**
 * Of which run a trace may be: by its clock, by the day and the car in its file's name, by its length, and those that have
 * no trace yet first. A person decides.
 */
final class RunsOfTrace {
    private static final Pattern DAY = Pattern.compile("(20\\d\\d)[-_.]?([01]\\d)[-_.]?([0-3]\\d)");
    private static final long NEAR_MILLIS = 30 * 60_000L;

    private final Facts facts;
    private final String name;
    private final @Nullable Moment begins;
    private final @Nullable LocalDate day;
    private final long lasted;

    private RunsOfTrace(Facts facts, BroughtTrace trace, int part, ZoneId zone) {
        this.facts = facts;
        this.name = trace.name().toLowerCase(Locale.ROOT);
        LocalDateTime clock = trace.found().recognised().begins();
        this.begins = part == 0 && clock != null && FiguresOfPart.isSet(clock) ? Moment.of(clock, zone) : null;
        LocalDate named = named(name);
        this.day = named != null ? named : begins == null ? null : begins.day();
        Reduction reduction = trace.parts().get(part);
        this.lasted = reduction.lasted() / 1_000;
    }

    /** All runs, the likeliest first. */
    static List<Entry<Run>> of(Facts facts, BroughtTrace trace, int part, ZoneId zone) {
        RunsOfTrace runs = new RunsOfTrace(facts, trace, part, zone);
        return facts.of(Run.class)
                .inForce()
                .sorted(Comparator.comparingInt((Entry<Run> run) -> -runs.likely(run))
                        .thenComparingLong(run -> Math.abs(run.fact().running().millis() - runs.lasted))
                        .thenComparing(Comparator.comparing(
                                        (Entry<Run> run) -> run.fact().start())
                                .reversed()))
                .toList();
    }

    /** Whether the likeliest is so by more than its length. */
    static boolean isSure(Facts facts, BroughtTrace trace, int part, ZoneId zone) {
        RunsOfTrace runs = new RunsOfTrace(facts, trace, part, zone);
        int[] best = {0, 0};
        facts.of(Run.class).inForce().forEach(run -> {
            int likely = runs.likely(run);
            if (likely > best[0]) {
                best[1] = best[0];
                best[0] = likely;
            } else if (likely > best[1]) {
                best[1] = likely;
            }
        });
        return best[0] > best[1] && best[0] >= 4;
    }

    private int likely(Entry<Run> entry) {
        Run run = entry.fact();
        int likely = 0;
        if (begins != null && Math.abs(begins.epochMillis() - run.start().epochMillis()) < NEAR_MILLIS) {
            likely += 8;
        }
        if (run.start().day().equals(day)) {
            likely += 4;
        }
        if (run.car() != null && namesCar(facts.of(Car.class).get(run.car()).name())) {
            likely += 2;
        }
        if (namesRun(run.name())) {
            likely += 1;
        }
        return facts.of(Trace.class)
                        .where(trace -> trace.run().equals(entry.id()))
                        .isEmpty()
                ? likely
                : likely - 3;
    }

    private boolean namesCar(String car) {
        return Pattern.compile("(^|[^0-9a-z])" + Pattern.quote(car.toLowerCase(Locale.ROOT)) + "($|[^0-9a-z])")
                .matcher(withoutDay())
                .find();
    }

    /** Race 1 is race1 or race_1 in a file's name. */
    private boolean namesRun(String run) {
        String plain = run.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]", "");
        return !plain.isEmpty() && withoutDay().replaceAll("[^a-z0-9]", "").contains(plain);
    }

    private String withoutDay() {
        return DAY.matcher(name).replaceAll(" ");
    }

    private static @Nullable LocalDate named(String name) {
        Matcher day = DAY.matcher(name);
        if (!day.find()) {
            return null;
        }
        try {
            return LocalDate.of(
                    Integer.parseInt(day.group(1)), Integer.parseInt(day.group(2)), Integer.parseInt(day.group(3)));
        } catch (DateTimeException e) { // digits that are no day
            return null;
        }
    }
}
