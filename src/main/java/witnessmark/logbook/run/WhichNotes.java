package witnessmark.logbook.run;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import witnessmark.domain.Engine;
import witnessmark.domain.EngineDesign;
import witnessmark.domain.EngineInCar;
import witnessmark.domain.Entry;
import witnessmark.domain.Event;
import witnessmark.domain.HowKnown;
import witnessmark.domain.Id;
import witnessmark.domain.PlannedRun;
import witnessmark.domain.Run;
import witnessmark.ledger.Limits;
import witnessmark.ledger.result.Life;
import witnessmark.logbook.View;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;
import witnessmark.quantity.Counter;
import witnessmark.quantity.Moment;
import witnessmark.quantity.RunningTime;

/** The lines under car, event, run and driver: where what stands there comes from. */
final class WhichNotes {
    private final View view;
    private final RunsBefore before;
    private final NextRun next;

    WhichNotes(View view, RunsBefore before) {
        this.view = view;
        this.before = before;
        this.next = new NextRun(view.facts());
    }

    void add(Which which, Map<RunField, String> typed, Map<RunField, Object> values, Map<RunField, FieldReading> out) {
        out.putIfAbsent(RunField.CAR, car(which));
        out.put(RunField.EVENT, FieldReading.fine(event(which)));
        out.put(RunField.PLANNED, FieldReading.fine(planned(which)));
        out.put(RunField.DRIVER, FieldReading.fine(driver(which)));
        out.put(RunField.KNOWN, FieldReading.fine(Note.of(known(typed))));
        out.put(RunField.DRIVER_ASKED, FieldReading.fine(Note.of(Note.Kind.NONE)));
        plannedDay(which, out);
        figures(which, values, out);
    }

    /** Nobody is taken to have a trace or a meter until he says so. */
    private static Note.Kind known(Map<RunField, String> typed) {
        return HowKnown.TIMED.code().equals(typed.getOrDefault(RunField.KNOWN, ""))
                ? Note.Kind.UNLESS_CHOSEN
                : Note.Kind.NONE;
    }

    /** A run of the timetable on another day than it was planned for: the timetable's time would be a wrong one. */
    private void plannedDay(Which which, Map<RunField, FieldReading> out) {
        PlannedRun planned = which.planned() == null
                ? null
                : view.facts().of(PlannedRun.class).get(which.planned());
        if (planned != null
                && which.day() != null
                && !planned.day().equals(which.day())
                && isFine(out, RunField.DATE)) {
            Problem asked = Problem.of(ProblemKind.PLANNED_FOR_ANOTHER_DAY, planned.name(), planned.day());
            Note note =
                    out.getOrDefault(RunField.DATE, FieldReading.wrong(asked)).note();
            out.put(RunField.DATE, new FieldReading(note, asked, planned.day().toString()));
        }
    }

    /** Beside a figure that is fine: the limiter, what counts as an over-rev, how long a lap was. */
    void figures(Which which, Map<RunField, Object> values, Map<RunField, FieldReading> out) {
        if (isFine(out, RunField.HIGHEST) && !isEcho(out, RunField.HIGHEST)) {
            limiter(which).ifPresent(note -> out.put(RunField.HIGHEST, FieldReading.fine(note)));
        }
        if (isFine(out, RunField.OVER_REVS) && values.get(RunField.OVER_REVS) instanceof Integer count) {
            design(which)
                    .map(EngineDesign::overRevAbove)
                    .ifPresent(above -> out.put(
                            RunField.OVER_REVS, FieldReading.fine(Note.of(Note.Kind.OVER_REV_ABOVE, count, above))));
        }
        if (isFine(out, RunField.LAPS)
                && values.get(RunField.LAPS) instanceof Integer laps
                && laps > 0
                && values.get(RunField.TRACK) instanceof RunningTime track) {
            Note lap = Note.of(Note.Kind.A_LAP, laps, new RunningTime(track.millis() / laps));
            out.put(RunField.LAPS, FieldReading.fine(lap));
        }
        OverRevs.check(design(which).map(EngineDesign::overRevAbove).orElse(null), values, out);
    }

    private static boolean isFine(Map<RunField, FieldReading> out, RunField field) {
        FieldReading reading = out.get(field);
        return reading != null && reading.problem() == null;
    }

    private static boolean isEcho(Map<RunField, FieldReading> out, RunField field) {
        FieldReading reading = out.get(field);
        return reading != null && reading.note().kind() == Note.Kind.UNDERSTOOD;
    }

    private FieldReading car(Which which) {
        Id<Engine> engine = which.engine();
        if (engine == null && which.day() == null) {
            return FieldReading.fine(Note.of(Note.Kind.NONE)); // which engine hangs on the day
        }
        if (engine == null) {
            return FieldReading.wrong(NoEngine.in(view.facts(), which.car(), which.day()));
        }
        String number = view.facts().of(Engine.class).get(engine).number();
        Life since = view.ledger().sinceRebuild(engine, Limits.REBUILD, Counter.RUNNING);
        boolean rebuilt = view.ledger().lastClosed(engine, Limits.REBUILD).isPresent();
        Note.Kind kind = rebuilt ? Note.Kind.ENGINE_SINCE : Note.Kind.ENGINE_RUN;
        return FieldReading.fine(inCar(which)
                .map(in -> Note.of(kind, number, in.from().day(), since))
                .orElse(Note.of(Note.Kind.ENGINE_ON_DYNO, number, since)));
    }

    private Optional<EngineInCar> inCar(Which which) {
        LocalDate day = which.day();
        Moment at = which.start() != null ? which.start() : day == null ? null : Moment.endOf(day, view.zone());
        return which.car() == null || at == null ? Optional.empty() : before.engineIn(which.car(), at);
    }

    private Note event(Which which) {
        if (which.event() != null) {
            return Note.of(Note.Kind.FROM_CALENDAR);
        }
        Optional<Entry<Event>> coming = which.day() == null ? Optional.empty() : next.eventAfter(which.day());
        return coming.map(event -> Note.of(
                        Note.Kind.NEXT_EVENT, event.fact().name(), event.fact().firstDay()))
                .orElse(Note.of(Note.Kind.NONE));
    }

    private Note planned(Which which) {
        if (which.event() == null) {
            return Note.of(Note.Kind.NONE);
        }
        var timetable = next.timetable(which.event());
        if (timetable.isEmpty()) {
            return Note.of(Note.Kind.NO_TIMETABLE);
        }
        if (which.planned() == null) {
            List<Entry<PlannedRun>> left = next.left(which.event(), which.car());
            return Note.of(
                    left.isEmpty()
                            ? Note.Kind.TIMETABLE_DONE
                            : left.stream().noneMatch(run -> run.fact().day().equals(which.day()))
                                    ? Note.Kind.DAY_DONE
                                    : Note.Kind.NONE);
        }
        return Note.of(
                timetable.get(0).id().equals(which.planned())
                        ? Note.Kind.FIRST_IN_TIMETABLE
                        : Note.Kind.NEXT_IN_TIMETABLE);
    }

    private Note driver(Which which) {
        Optional<Entry<Run>> last =
                before.last(run -> which.car() != null && which.car().equals(run.car()));
        boolean same = last.isPresent()
                && which.driver() != null
                && which.driver().equals(last.get().fact().driver());
        return Note.of(same ? Note.Kind.SAME_AS_LAST_RUN : Note.Kind.NONE);
    }

    private Optional<Note> limiter(Which which) {
        return design(which).map(EngineDesign::redLine).map(limiter -> Note.of(Note.Kind.LIMITER, limiter));
    }

    private Optional<EngineDesign> design(Which which) {
        return Optional.ofNullable(which.engine())
                .map(engine -> view.facts()
                        .of(EngineDesign.class)
                        .get(view.facts().of(Engine.class).get(engine).design()));
    }
}
