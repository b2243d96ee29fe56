package witnessmark.logbook.sheets;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Car;
import witnessmark.domain.Engine;
import witnessmark.domain.Id;
import witnessmark.domain.LimitRank;
import witnessmark.domain.Part;
import witnessmark.domain.Reading;
import witnessmark.ledger.result.LimitUse;
import witnessmark.ledger.result.Mark;
import witnessmark.ledger.result.MarkReason;
import witnessmark.ledger.result.MarkState;
import witnessmark.ledger.result.PrintedDate;
import witnessmark.ledger.result.ReadingUse;
import witnessmark.quantity.Counter;

/**
 * Limits that stand past or near now, as they can be picked to be signed past. Those of the rule book and dates printed
 * on a part are never passed: they cannot be picked, and whoever comes with one is told why not.
 */
final class PassableLimits {
    private static final Set<MarkState> ASKED = EnumSet.of(MarkState.OVER, MarkState.RUN_ON, MarkState.DUE);

    private final SheetSight sight;
    private final Map<String, Mark> passable = new LinkedHashMap<>();
    private final Map<String, Mark> never = new LinkedHashMap<>();

    PassableLimits(SheetSight sight) {
        this.sight = sight;
        for (Mark mark : sight.standing().marks()) {
            if (isNever(mark)) {
                never.put(key(mark), mark);
            } else if (ASKED.contains(mark.state()) && passes(mark.reason())) {
                passable.put(key(mark), mark);
            }
        }
    }

    List<Choice> choices() {
        List<Choice> choices = new ArrayList<>();
        passable.forEach((key, mark) -> choices.add(Choice.of(key, line(mark))));
        return choices;
    }

    Optional<Mark> passable(String key) {
        return Optional.ofNullable(passable.get(key));
    }

    /** What somebody asks to pass that is never passed, due or not. */
    Optional<Mark> never(String key) {
        return Optional.ofNullable(never.get(key));
    }

    /** How many that are past or near are never passed. */
    int neverPassed() {
        return (int) neverAsked().count();
    }

    /** What those fall on, by name, each once. */
    String neverNamed() {
        return neverAsked().map(this::name).distinct().collect(Collectors.joining(", "));
    }

    private Stream<Mark> neverAsked() {
        return never.values().stream().filter(mark -> ASKED.contains(mark.state()) && passes(mark.reason()));
    }

    /** All that are never passed, due or not, each with what says so. */
    Map<Choice, SheetNote> neverOffered() {
        Map<Choice, SheetNote> all = new LinkedHashMap<>();
        never.forEach((key, mark) -> {
            if (mark.reason() instanceof PrintedDate date) {
                all.put(Choice.of(key, name(mark)), SheetNote.of("printed_date_not_run_on", name(mark), date.useBy()));
            } else {
                all.put(
                        Choice.of(key, SheetNote.of("limit_on", limit(mark), name(mark))),
                        SheetNote.of("rule_book_not_run_on", limit(mark), name(mark), source(mark)));
            }
        });
        return all;
    }

    /** Whose limit it is. */
    static LimitRank rank(Mark mark) {
        return mark.reason()
                .fold(
                        by -> LimitRank.OWN,
                        use -> use.limit().fact().rank(),
                        use -> use.limit().fact().rank(),
                        date -> LimitRank.MAKER,
                        build -> LimitRank.OWN,
                        doubt -> LimitRank.OWN);
    }

    /** What the limit is called. */
    static String limit(Mark mark) {
        return mark.reason()
                .fold(
                        by -> "",
                        use -> use.limit().fact().name(),
                        use -> use.limit().fact().name(),
                        date -> "",
                        build -> "",
                        doubt -> "");
    }

    private static String source(Mark mark) {
        return mark.reason()
                .fold(
                        by -> "",
                        use -> use.limit().fact().source(),
                        use -> use.limit().fact().source(),
                        date -> "",
                        build -> "",
                        doubt -> "");
    }

    /** What it falls on, by its name. */
    String name(Mark mark) {
        Id<Part> part = mark.part();
        Id<Engine> engine = mark.engine();
        return part != null
                ? sight.name(Part.class, part)
                : engine != null
                        ? sight.name(Engine.class, engine)
                        : sight.name(Car.class, Objects.requireNonNull(mark.car()));
    }

    /**
     * The new figure as a run-on keeps it: months of age from the day it is counted from, in days.
     *
     * @param months whole months
     */
    long days(LimitUse use, int months) {
        Id<Part> part = use.part();
        LocalDate made =
                part == null ? null : sight.facts().of(Part.class).get(part).madeOn();
        LocalDate from = use.since() != null
                ? use.since().day()
                : made != null ? made : sight.view().day();
        return ChronoUnit.DAYS.between(from, from.plusMonths(months));
    }

    /** What the part or engine ran in its life, by which a run-on past a limit of readings ends. */
    long running(Mark mark) {
        var ledger = sight.view().ledger();
        Id<Part> part = mark.part();
        return (part != null
                        ? ledger.life(part, Counter.RUNNING)
                        : ledger.engineLife(Objects.requireNonNull(mark.engine()), Counter.RUNNING))
                .highest();
    }

    private SheetNote line(Mark mark) {
        if (mark.reason() instanceof LimitUse use) {
            Counter counter = use.used().counter();
            if (mark.state() == MarkState.RUN_ON && use.runOn() != null) {
                return SheetNote.of(
                        "limit_run_on",
                        limit(mark),
                        name(mark),
                        new SheetAmount(counter, use.used().highest()),
                        new SheetAmount(counter, use.amount()),
                        new SheetAmount(counter, use.runOn().fact().upTo()));
            }
            return SheetNote.of(
                    mark.state() == MarkState.DUE ? "limit_due" : "limit_over",
                    limit(mark),
                    name(mark),
                    new SheetAmount(counter, use.used().highest()),
                    new SheetAmount(counter, use.amount()));
        }
        ReadingUse use = (ReadingUse) mark.reason();
        Reading worst = Objects.requireNonNull(use.worst()).fact();
        Object read = worst.grade() != null
                ? worst.grade()
                : new ReadingFigure(worst.kind(), Objects.requireNonNull(worst.value()));
        return worst.place().isEmpty()
                ? SheetNote.of("limit_read", limit(mark), name(mark), read)
                : SheetNote.of("limit_read_at", limit(mark), name(mark), worst.place(), read);
    }

    /** A limit that counts, a reading that breaks its limit, a printed date; not a hold, nor a reading that is old. */
    private static boolean passes(MarkReason reason) {
        return reason.fold(
                by -> false,
                use -> true,
                use -> use.broken() != ReadingUse.Broken.NONE,
                date -> true,
                build -> false,
                doubt -> false);
    }

    private static boolean isNever(Mark mark) {
        return rank(mark) == LimitRank.RULE_BOOK || mark.reason() instanceof PrintedDate;
    }

    private static String key(Mark mark) {
        String limit = mark.reason()
                .fold(
                        by -> "",
                        use -> use.limit().id().text(),
                        use -> use.limit().id().text(),
                        date -> "date",
                        build -> build.build().id().text(),
                        doubt -> doubt.calibration().id().text());
        return limit + "|"
                + text(mark.part() != null ? mark.part() : mark.engine() != null ? mark.engine() : mark.car());
    }

    private static String text(@Nullable Id<?> id) {
        return id == null ? "" : id.text();
    }
}
