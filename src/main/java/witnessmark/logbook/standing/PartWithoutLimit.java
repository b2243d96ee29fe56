package witnessmark.logbook.standing;

import org.jspecify.annotations.Nullable;
import witnessmark.domain.Id;
import witnessmark.domain.Part;
import witnessmark.domain.PartKind;
import witnessmark.ledger.result.Life;

/**
 * A fitted part or set for which no limit is recorded.
 *
 * @param part which part
 * @param mark its mark
 * @param kind what kind of part
 * @param engine the number of the engine it is in, or null
 * @param car the name of the car it is in, or its engine is in; or null
 * @param ran its running time
 */
public record PartWithoutLimit(
        Id<Part> part,
        String mark,
        PartKind kind,
        @Nullable String engine,
        @Nullable String car,
        Life ran) {}
