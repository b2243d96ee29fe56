package witnessmark.logbook.engines;

import org.jspecify.annotations.Nullable;
import witnessmark.domain.Engine;
import witnessmark.domain.Fitment;
import witnessmark.domain.Id;
import witnessmark.ledger.result.Stay;

/**
 * A time a part was fitted.
 *
 * @param stay from when to when
 * @param place the number of the engine, or the name of the car
 * @param position the name of the position
 */
public record FittedTime(Stay stay, String place, String position) {
    public Fitment fitment() {
        return stay.fitment().fact();
    }

    /** Which engine, or null when it was fitted to a car. */
    public @Nullable Id<Engine> engine() {
        return fitment().engine();
    }

    /** Whether it was still there on the day looked at. */
    public boolean lasts() {
        return stay.to() == null;
    }
}
