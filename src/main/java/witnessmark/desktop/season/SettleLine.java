package witnessmark.desktop.season;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * Money that is not settled yet.
 *
 * @param record the text form of the cost's identity
 * @param what what is to be done: ask it back, charge it, use it
 * @param cost what the cost was for, with its rate where it was in another currency
 * @param where for which event and car
 * @param by until when, in words; empty where there is no last day
 * @param last the same to sort by, or null
 * @param amount how much in the home currency; nothing, and words that say so, where there is no rate
 */
record SettleLine(
        String record,
        String what,
        String cost,
        String where,
        String by,
        @Nullable LocalDate last,
        Amount amount) {}
