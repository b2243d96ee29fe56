package witnessmark.logbook.sheets;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.Optional;
import witnessmark.quantity.Moment;
import witnessmark.quantity.typed.Typed;
import witnessmark.quantity.typed.TypedClock;
import witnessmark.quantity.typed.TypedDate;

/** Reads the moment on a sheet without saying what is wrong: for what is picked by it. */
final class SheetMoments {
    private SheetMoments() {}

    static Optional<Moment> of(SheetTyped typed, SheetField day, SheetField clock, SheetSight sight) {
        Typed<LocalDate> read = TypedDate.read(typed.text(day), sight.today(), sight.days());
        return read.only().map(on -> {
            Optional<LocalTime> time = TypedClock.read(typed.text(clock)).only();
            return time.map(at -> Moment.of(on.atTime(at), sight.view().zone()))
                    .orElse(Moment.endOf(on, sight.view().zone()));
        });
    }
}
