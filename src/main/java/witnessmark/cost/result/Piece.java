package witnessmark.cost.result;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Car;
import witnessmark.domain.CostLine;
import witnessmark.domain.Event;
import witnessmark.domain.Id;
import witnessmark.domain.Incident;
import witnessmark.quantity.Money;

/**
 * A piece of a cost line, counted in one place. The pieces of a line are together what was paid for it less what was got
 * back, to the minor unit.
 *
 * @param line of which cost
 * @param place where it is counted
 * @param day the day it counts for: the line's, or the day something carried on was used or lost
 * @param amount in the home currency
 * @param car whose it is, or null when nobody's in particular
 * @param event for which event, or null
 * @param incident the failure it is owed to, or null
 * @param planned it was due anyway
 * @param allocated a share of something that is spent either way
 */
public record Piece(
        Id<CostLine> line,
        Place place,
        LocalDate day,
        Money amount,
        @Nullable Id<Car> car,
        @Nullable Id<Event> event,
        @Nullable Id<Incident> incident,
        boolean planned,
        boolean allocated) {}
