package witnessmark.logbook.run;

import java.util.Map;
import java.util.Set;
import witnessmark.domain.Engine;
import witnessmark.domain.Event;
import witnessmark.domain.Facts;
import witnessmark.domain.Id;
import witnessmark.domain.Run;

/** Which run a written one is after a correction: as it is written, but for what the changed fields settle anew. */
final class SettleWhich {
    private final Facts facts;
    private final Run was;
    private final Set<RunField> changed;

    SettleWhich(Facts facts, Run was, Set<RunField> changed) {
        this.facts = facts;
        this.was = was;
        this.changed = changed;
    }

    /**
     * @param read what the fields say by themselves
     * @param out what each field came to; put right where the run stays as it is written
     */
    Which which(Which read, Map<RunField, FieldReading> out) {
        boolean moved = isMoved(read);
        boolean stays = !moved && !changed.contains(RunField.CAR);
        boolean sameRun = !isAny(RunField.CAR, RunField.EVENT, RunField.PLANNED);
        Which which = new Which(
                changed.contains(RunField.CAR) ? read.car() : was.car(),
                stays ? was.engine() : read.engine(),
                changed.contains(RunField.EVENT) ? read.event() : was.event(),
                sameRun ? was.planned() : read.planned(),
                sameRun ? was.kind() : read.kind(),
                changed.contains(RunField.DRIVER) ? read.driver() : was.driver(),
                read.day(),
                moved ? read.start() : was.start(),
                moved ? read.startKnown() : was.startKnown());
        notes(which, moved, out);
        return which;
    }

    /** Whether it went out at another time: by the clock, by the day, or by the clocks of another place. */
    private boolean isMoved(Which read) {
        if (changed.contains(RunField.OUT_AT) || !was.start().day().equals(read.day())) {
            return true;
        }
        return changed.contains(RunField.EVENT)
                && read.event() != null
                && !facts.of(Event.class)
                        .get(read.event())
                        .zone()
                        .equals(was.start().zone());
    }

    private void notes(Which which, boolean moved, Map<RunField, FieldReading> out) {
        Id<Engine> engine = which.engine();
        if (engine != null) {
            String number = facts.of(Engine.class).get(engine).number();
            out.put(RunField.CAR, FieldReading.fine(Note.of(Note.Kind.ENGINE_RAN, number)));
        } else if (which.day() != null) {
            out.putIfAbsent(RunField.CAR, FieldReading.wrong(NoEngine.in(facts, which.car(), which.day())));
        }
        if (!moved) {
            out.put(RunField.OUT_AT, FieldReading.fine(start()));
        }
        for (RunField field : RunField.values()) {
            if (field.chosen() && field != RunField.CAR) {
                out.put(field, FieldReading.fine(Note.of(Note.Kind.NONE)));
            }
        }
    }

    /** How the time it went out is known. */
    private Note start() {
        return switch (was.startKnown()) {
            case TIMETABLE -> Note.of(Note.Kind.TIMETABLE);
            case ESTIMATE -> Note.of(Note.Kind.ESTIMATED, was.start());
            case TYPED, TRACE -> Note.of(Note.Kind.NONE);
        };
    }

    private boolean isAny(RunField... fields) {
        for (RunField field : fields) {
            if (changed.contains(field)) {
                return true;
            }
        }
        return false;
    }
}
