package witnessmark.logbook.run;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Engine;
import witnessmark.domain.Event;
import witnessmark.domain.Facts;
import witnessmark.domain.Id;
import witnessmark.domain.Run;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;
import witnessmark.quantity.RunningTime;

/**
 * Holds a lap of a run on the track, by its running time, against laps on the same circuit, or else against those of the
 * same engine. Asks, and never stops. Where no laps are counted nothing is said: sessions differ too much in length.
 */
final class UsualPace {
    /** Of fewer laps the way out and in is most (common practice, no source). */
    private static final int LEAST_LAPS = 3;
    /** Traffic, weather and warming up make a lap this much longer or shorter (common practice, no source). */
    private static final long SPREAD = 15_000;

    private final RunsBefore before;
    private final Which which;

    UsualPace(RunsBefore before, Which which) {
        this.before = before;
        this.which = which;
    }

    /** What earlier runs come to, and whose they are: a circuit's or an engine's. */
    private record Usual(UsualBand band, int runs, String whose) {}

    /** Asks about the running time where nothing else is wrong with it. */
    void check(RunningTime running, Map<RunField, Object> values, Map<RunField, FieldReading> out) {
        FieldReading now = out.get(RunField.RUNNING);
        if (now != null
                && now.problem() == null
                && which.car() != null
                && values.get(RunField.LAPS) instanceof Integer laps
                && laps >= LEAST_LAPS) {
            onCircuit().or(this::ofEngine).ifPresent(usual -> check(running, laps, usual, now, out));
        }
    }

    private static void check(
            RunningTime running, int laps, Usual usual, FieldReading now, Map<RunField, FieldReading> out) {
        UsualBand band = usual.band();
        long each = running.millis() / laps;
        if (band.holds(each)) {
            return;
        }
        RunningTime low = seconds(band.low());
        RunningTime high = seconds(band.high());
        Problem asked = Problem.of(
                ProblemKind.PACE_UNUSUAL, running, laps, seconds(each), low, high, usual.runs(), usual.whose());
        out.put(RunField.RUNNING, new FieldReading(now.note(), asked, null));
        FieldReading counted = out.get(RunField.LAPS);
        if (counted != null && counted.problem() == null) {
            out.put(RunField.LAPS, FieldReading.fine(Note.of(Note.Kind.USUAL_PACE, low, high)));
        }
    }

    /** Runs at the event, and at every other on its circuit. */
    private Optional<Usual> onCircuit() {
        Id<Event> id = which.event();
        if (id == null) {
            return Optional.empty();
        }
        Facts facts = before.facts();
        Event event = facts.of(Event.class).get(id);
        String circuit = event.circuit();
        return usual(
                circuit.isEmpty() ? event.name() : circuit,
                run -> run.event() != null
                        && (run.event().equals(id)
                                || (!circuit.isEmpty()
                                        && circuit.equals(facts.of(Event.class)
                                                .get(run.event())
                                                .circuit()))));
    }

    private Optional<Usual> ofEngine() {
        Id<Engine> engine = which.engine();
        return engine == null
                ? Optional.empty()
                : usual(
                        before.facts().of(Engine.class).get(engine).number(),
                        run -> run.engine().equals(engine));
    }

    private Optional<Usual> usual(String whose, Predicate<Run> asked) {
        List<Long> laps = before.readings(run -> run.car() != null && asked.test(run), UsualPace::lapOf);
        return UsualBand.of(laps, SPREAD).map(band -> new Usual(band, laps.size(), whose));
    }

    private static @Nullable Long lapOf(Run run) {
        Integer laps = run.laps();
        return laps == null || laps < LEAST_LAPS ? null : run.running().millis() / laps;
    }

    private static RunningTime seconds(long millis) {
        return new RunningTime(Math.round(millis / 1000.0) * 1000);
    }
}
