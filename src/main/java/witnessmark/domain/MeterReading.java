package witnessmark.domain;

import witnessmark.quantity.Moment;
import witnessmark.quantity.RunningTime;

/**
 * What an hour meter showed.
 *
 * @param meter which hour meter
 * @param at when
 * @param shows what it showed
 * @param by who read it
 * @param note anything else
 */
public record MeterReading(Id<Part> meter, Moment at, RunningTime shows, String by, String note) implements Fact {

    @Override
    public Moment happened() {
        return at;
    }
}
