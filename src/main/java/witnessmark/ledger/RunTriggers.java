package witnessmark.ledger;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Facts;
import witnessmark.domain.Id;
import witnessmark.domain.OverRev;
import witnessmark.domain.Run;
import witnessmark.domain.Trigger;
import witnessmark.quantity.EngineSpeed;
import witnessmark.quantity.RunningTime;
import witnessmark.quantity.Temperature;

/** Which rules a run raises by its figures. */
final class RunTriggers {
    private final Facts facts;
    private final List<Entry<Trigger>> rules;
    private final Map<Id<Run>, List<OverRev>> overRevs = new HashMap<>();

    RunTriggers(Facts facts) {
        this.facts = facts;
        this.rules = facts.of(Trigger.class).where(rule -> rule.kind().figure() != null);
        facts.of(OverRev.class)
                .inForce()
                .forEach(entry -> overRevs.computeIfAbsent(entry.fact().run(), id -> new ArrayList<>())
                        .add(entry.fact()));
    }

    /** Whether no run can raise anything. */
    boolean none() {
        return rules.isEmpty();
    }

    /** The rules a run raises, in the order they were written. */
    List<Entry<Trigger>> raisedBy(Entry<Run> run) {
        List<Entry<Trigger>> raised = List.of();
        for (Entry<Trigger> rule : rules) {
            if (raises(run, rule.fact())) {
                raised = raised.isEmpty() ? new ArrayList<>() : raised; // next to no run raises one
                raised.add(rule);
            }
        }
        return raised;
    }

    /** What a run reached of what a rule watches, in the unit of the rule's kind; null when it was not read. */
    @Nullable
    Long reached(Entry<Run> entry, Trigger rule) {
        Run run = entry.fact();
        return switch (rule.kind()) {
            case SPEED_ABOVE ->
                Stream.concat(
                                Stream.ofNullable(run.highest()),
                                overRevs.getOrDefault(entry.id(), List.of()).stream()
                                        .map(OverRev::peak))
                        .max(EngineSpeed::compareTo)
                        .map(speed -> Long.valueOf(speed.rpm()))
                        .orElse(null);
            case WATER_ABOVE -> millikelvin(run.waterHighest());
            case OIL_ABOVE -> millikelvin(run.oilHighest());
            case OIL_PRESSURE_BELOW ->
                run.oilPressure() == null
                        ? null
                        : Long.valueOf(run.oilPressure().pascals());
            case GRADED, WORSE_TWICE -> null;
        };
    }

    private static @Nullable Long millikelvin(@Nullable Temperature temperature) {
        return temperature == null ? null : Long.valueOf(temperature.millikelvin());
    }

    private boolean raises(Entry<Run> entry, Trigger rule) {
        Run run = entry.fact();
        long figure = Objects.requireNonNull(rule.figure());
        boolean past = switch (rule.kind()) {
            case SPEED_ABOVE -> tooFast(entry, figure, rule.lasting());
            case WATER_ABOVE -> run.waterHighest() != null && run.waterHighest().millikelvin() > figure;
            case OIL_ABOVE -> run.oilHighest() != null && run.oilHighest().millikelvin() > figure;
            case OIL_PRESSURE_BELOW ->
                run.oilPressure() != null && run.oilPressure().pascals() < figure;
            case GRADED, WORSE_TWICE -> false;
        };
        return past && AsOf.stood(rule, run.start().day()) && falls(rule, run.engine());
    }

    /**
     * Whether it turned faster than the figure for long enough. A peak whose duration nobody knows counts; the run's
     * highest speed counts unless an over-rev written down explains it as too short.
     */
    private boolean tooFast(Entry<Run> run, long figure, @Nullable RunningTime lasting) {
        List<OverRev> written = overRevs.getOrDefault(run.id(), List.of());
        if (written.isEmpty()) {
            return run.fact().highest() != null && run.fact().highest().rpm() > figure;
        }
        boolean lasted = written.stream()
                .filter(each -> each.peak().rpm() > figure)
                .anyMatch(each -> lasting == null
                        || each.lasted() == null
                        || each.lasted().compareTo(lasting) >= 0);
        EngineSpeed highest = run.fact().highest();
        boolean unexplained = highest != null
                && highest.rpm() > figure
                && written.stream().noneMatch(each -> each.peak().compareTo(highest) >= 0);
        return lasted || unexplained;
    }

    private boolean falls(Trigger rule, Id<Engine> engine) {
        return rule.design() == null
                || facts.of(Engine.class)
                        .find(engine)
                        .filter(entry -> entry.fact().design().equals(rule.design()))
                        .isPresent();
    }
}
