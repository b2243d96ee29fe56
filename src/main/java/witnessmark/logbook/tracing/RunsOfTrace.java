package witnessmark.logbook.tracing;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Car;
import witnessmark.domain.Entry;
import witnessmark.domain.Facts;
import witnessmark.domain.Id;
import witnessmark.domain.Run;
import witnessmark.domain.Trace;
import witnessmark.quantity.Moment;
import witnessmark.trace.result.Reduction;

/**
 * Of which run a trace may be: by its clock, by the day in its file's name, by the car there or in its first lines, by its length, and those that have
 * no trace yet first. A person decides.
 */
final class RunsOfTrace {
    private static final Pattern DAY = Pattern.compile("(20\\d\\d)[-_.]?([01]\\d)[-_.]?([0-3]\\d)");
    /** What may mark a line as none of figures. */
    private static final Pattern MARK = Pattern.compile("^[^a-z]+");

    private static final Pattern INITIAL = Pattern.compile("([a-z])[a-z]+(\\d*)");
    /** What lines above the headings call the car, in small letters. */
    private static final Set<String> CAR = Set.of("car", "vehicle", "car number", "vehicle number");

    private static final long NEAR_MILLIS = 30 * 60_000L;

    private final Facts facts;
    private final String name;
    private final @Nullable Moment begins;
    private final @Nullable LocalDate day;
    private final long lasted;
    /** The car that stands above the headings, or null. */
    private final @Nullable Id<Car> above;
    /** The one car that the file is of by its name and by what stands above its headings, or null. */
    private final @Nullable Id<Car> car;

    private RunsOfTrace(
            Facts facts,
            String name,
            Map<String, String> said,
            @Nullable LocalDateTime clock,
            long lasted,
            ZoneId zone) {
        this.facts = facts;
        this.name = name.toLowerCase(Locale.ROOT);
        this.begins = clock != null && FiguresOfPart.isSet(clock) ? Moment.of(clock, zone) : null;
        LocalDate named = named(this.name);
        this.day = named != null ? named : begins == null ? null : begins.day();
        this.lasted = lasted;
        List<Id<Car>> cars = facts.of(Car.class)
                .inForce()
                .filter(each -> namesCar(each.fact().name()))
                .map(Entry::id)
                .toList();
        this.above = above(facts, said);
        Id<Car> inName = cars.size() == 1 ? cars.get(0) : null;
        boolean agree = above == null || cars.isEmpty() || cars.contains(above);
        this.car = !agree ? null : above != null ? above : inName;
    }

    /** The car whose name is exactly what a line above the headings says; null when none is. */
    private static @Nullable Id<Car> above(Facts facts, Map<String, String> said) {
        return said.entrySet().stream()
                .filter(line -> CAR.contains(MARK.matcher(line.getKey().toLowerCase(Locale.ROOT))
                        .replaceFirst("")
                        .strip()))
                .flatMap(line -> facts.of(Car.class)
                        .inForce()
                        .filter(car -> car.fact()
                                .name()
                                .equalsIgnoreCase(line.getValue().strip())))
                .map(Entry::id)
                .findFirst()
                .orElse(null);
    }

    private static RunsOfTrace of(Facts facts, BroughtTrace trace, int part, ZoneId zone) {
        LocalDateTime clock = part == 0 ? trace.found().recognised().begins() : null;
        Reduction reduction = trace.parts().get(part);
        return new RunsOfTrace(
                facts, trace.name(), trace.found().recognised().said(), clock, reduction.lasted() / 1_000, zone);
    }

    /** All runs, the likeliest first. */
    static List<LikelyRun> likeliest(Facts facts, BroughtTrace trace, int part, ZoneId zone) {
        return of(facts, trace, part, zone).likeliest();
    }

    /** The run of the day and the car that a file is named after; empty when its name says neither. */
    static Optional<Entry<Run>> named(Facts facts, String file, ZoneId zone) {
        return new RunsOfTrace(facts, file, Map.of(), null, 0, zone)
                .likeliest().stream()
                        .filter(run -> !run.because().isEmpty())
                        .findFirst()
                        .map(LikelyRun::run);
    }

    /** The car a file is of by its name and its first lines; empty when neither says one, or they differ. */
    static Optional<Id<Car>> car(Facts facts, BroughtTrace trace, ZoneId zone) {
        return Optional.ofNullable(of(facts, trace, 0, zone).car);
    }

    /** The day that is in the name of a file. */
    static Optional<LocalDate> day(String file) {
        return Optional.ofNullable(named(file.toLowerCase(Locale.ROOT)));
    }

    private List<LikelyRun> likeliest() {
        return facts.of(Run.class)
                .inForce()
                .map(this::likely)
                .sorted(Comparator.comparingInt((LikelyRun run) -> -run.weight())
                        .thenComparingLong(
                                run -> Math.abs(run.run().fact().running().millis() - lasted))
                        .thenComparing(Comparator.comparing(
                                        (LikelyRun run) -> run.run().fact().start())
                                .reversed()))
                .toList();
    }

    private LikelyRun likely(Entry<Run> entry) {
        Run run = entry.fact();
        Set<LikelyRun.Because> because = EnumSet.noneOf(LikelyRun.Because.class);
        if (begins != null && Math.abs(begins.epochMillis() - run.start().epochMillis()) < NEAR_MILLIS) {
            because.add(LikelyRun.Because.CLOCK);
        }
        if (run.start().day().equals(day)) {
            because.add(LikelyRun.Because.DAY);
        }
        if (run.car() != null
                && (run.car().equals(above)
                        || namesCar(facts.of(Car.class).get(run.car()).name()))) {
            because.add(LikelyRun.Because.CAR);
        }
        if (namesRun(run.name())) {
            because.add(LikelyRun.Because.NAME);
        }
        boolean traced = !facts.of(Trace.class)
                .where(trace -> trace.run().equals(entry.id()))
                .isEmpty();
        return new LikelyRun(entry, because, traced, isOtherCars(run));
    }

    private boolean isOtherCars(Run run) {
        return car != null && run.car() != null && !car.equals(run.car());
    }

    /** The car a file is of where that is another than the run's; empty where it is the same or not said. */
    static Optional<Id<Car>> otherCar(Facts facts, BroughtTrace trace, Run run) {
        RunsOfTrace runs = of(facts, trace, 0, run.start().zone());
        return runs.isOtherCars(run) ? Optional.ofNullable(runs.car) : Optional.empty();
    }

    private boolean namesCar(String car) {
        return isWord(car.toLowerCase(Locale.ROOT));
    }

    /** Race 1 is race1, race_1 or r1 in a file's name, Qualifying q. */
    private boolean namesRun(String run) {
        String plain = run.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]", "");
        if (plain.isEmpty()) {
            return false;
        }
        if (withoutDay().replaceAll("[^a-z0-9]", "").contains(plain)) {
            return true;
        }
        Matcher initial = INITIAL.matcher(plain);
        return initial.matches() && isWord(initial.group(1) + initial.group(2));
    }

    private boolean isWord(String word) {
        return Pattern.compile("(^|[^0-9a-z])" + Pattern.quote(word) + "($|[^0-9a-z])")
                .matcher(withoutDay())
                .find();
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
