package witnessmark.ledger.result;

import org.jspecify.annotations.Nullable;
import witnessmark.domain.Entry;
import witnessmark.domain.PartDesign;
import witnessmark.domain.Position;

/**
 * What the parts list of another build names for a position, and what of that is free. It carries no figure of that
 * build: nothing that was measured or tightened there.
 *
 * @param position where
 * @param design what was in it there
 * @param part what of the same make lies on the shelf, or null when nothing does
 */
public record ProposedPart(
        Entry<Position> position,
        Entry<PartDesign> design,
        @Nullable FreePart part) {}
