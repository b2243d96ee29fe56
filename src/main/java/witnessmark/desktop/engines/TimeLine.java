package witnessmark.desktop.engines;

import org.jspecify.annotations.Nullable;
import witnessmark.quantity.Moment;

/**
 * One time a part was fitted as a row shows it.
 *
 * @param id the text form of the fitment's identity
 * @param engine the text form of the engine's identity, or null when it was fitted to a car
 * @param place "K05", "car 41"
 * @param position its name
 * @param since when it was fitted, already formatted
 * @param from the same
 * @param until when it came off, already formatted; that it is still there
 * @param to the same, or null while it is there
 * @param ran what it ran there, already formatted
 * @param amount the same in milliseconds
 * @param why why it came off and how it looked; empty when not written down
 */
record TimeLine(
        String id,
        @Nullable String engine,
        String place,
        String position,
        String since,
        Moment from,
        String until,
        @Nullable Moment to,
        String ran,
        long amount,
        String why) {}
