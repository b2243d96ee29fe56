package witnessmark.domain;

import java.time.LocalDate;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import witnessmark.quantity.Moment;

/**
 * Something with others: a part or an engine away for work, or new parts on order.
 *
 * @param part the part that went, or null
 * @param engine the engine that went with all that is in it, or null
 * @param design of what new parts are on order, or null
 * @param count how many are on order, or null
 * @param sentTo whom it is with
 * @param asked what is to be done
 * @param target size, finish or limit asked for; empty when none
 * @param from when it was sent or ordered
 * @param promised the day it was promised for at first, or null
 * @param back when it came back, or null while it is out
 * @param result what came of it
 * @param by who sent it
 * @param note anything else
 */
public record SentOut(
        @Nullable Id<Part> part,
        @Nullable Id<Engine> engine,
        @Nullable Id<PartDesign> design,
        @Nullable Integer count,
        String sentTo,
        String asked,
        String target,
        Moment from,
        @Nullable LocalDate promised,
        @Nullable Moment back,
        String result,
        String by,
        String note)
        implements Fact {
    public SentOut {
        if (Stream.of(part, engine, design).filter(thing -> thing != null).count() != 1) {
            throw new IllegalArgumentException("a part is sent, or an engine, or new parts are ordered");
        }
        if ((design == null) != (count == null) || (count != null && count < 1)) {
            throw new IllegalArgumentException("an order says how many, at least one");
        }
        if (back != null && !from.isBefore(back)) {
            throw new IllegalArgumentException("what was sent comes back later");
        }
    }

    @Override
    public Moment happened() {
        return from;
    }
}
