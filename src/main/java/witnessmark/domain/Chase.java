package witnessmark.domain;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import witnessmark.quantity.Moment;

/**
 * A call or a letter about something that is out with others, and what was answered.
 *
 * @param sentOut about what
 * @param at when
 * @param answer what was said; empty when nobody answered
 * @param promised the new day promised, or null when none was
 * @param by who asked
 */
public record Chase(
        Id<SentOut> sentOut,
        Moment at,
        String answer,
        @Nullable LocalDate promised,
        String by) implements Fact {

    @Override
    public Moment happened() {
        return at;
    }
}
