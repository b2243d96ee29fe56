package witnessmark.domain;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * What the parts list names for a position: of an engine design, or of one engine where it differs.
 *
 * @param position for which position
 * @param engine for this engine only, or null for all of the design
 * @param design what belongs there
 * @param validFrom from which day
 * @param validTo to which day, or null
 */
public record ListedPart(
        Id<Position> position,
        @Nullable Id<Engine> engine,
        Id<PartDesign> design,
        LocalDate validFrom,
        @Nullable LocalDate validTo)
        implements Fact {
    public ListedPart {
        if (validTo != null && validTo.isBefore(validFrom)) {
            throw new IllegalArgumentException("a list ends after it begins");
        }
    }
}
