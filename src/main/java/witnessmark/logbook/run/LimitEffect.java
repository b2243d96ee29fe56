package witnessmark.logbook.run;

import org.jspecify.annotations.Nullable;
import witnessmark.domain.PartKind;
import witnessmark.ledger.result.Effect;

/**
 * What the run does to one limit, with the names people know its subject by.
 *
 * @param effect how much is used without the run and with it
 * @param mark the part's mark, or null when the limit is for an engine or a car as a whole
 * @param kind what kind of part it is, or null when the limit is for an engine or a car as a whole
 * @param due the coming run by which it is used up; null when no timetable says so, or when it is over already
 */
public record LimitEffect(
        Effect effect,
        @Nullable String mark,
        @Nullable PartKind kind,
        @Nullable Due due) {}
