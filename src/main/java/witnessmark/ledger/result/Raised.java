package witnessmark.ledger.result;

import org.jspecify.annotations.Nullable;
import witnessmark.domain.Clearance;
import witnessmark.domain.Entry;

/**
 * Something that held an engine or a part, and holds it still unless it was signed clear.
 *
 * @param by what held it
 * @param clearance how it was cleared, or null while it holds
 */
public record Raised(HeldBy by, @Nullable Entry<Clearance> clearance) {}
