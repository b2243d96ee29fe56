package witnessmark.ledger;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Facts;
import witnessmark.domain.Id;
import witnessmark.domain.ListedPart;
import witnessmark.domain.PartDesign;
import witnessmark.domain.Position;

/** What the parts list names for a position. */
public final class PartsList {
    private PartsList() {}

    /**
     * What belongs in a position on a day; what is named for one engine goes before what is for its design.
     *
     * @param engine the engine, or null where the position is a car's
     */
    public static Optional<Id<PartDesign>> names(
            Facts facts, @Nullable Id<Engine> engine, Id<Position> position, LocalDate day) {
        return facts
                .of(ListedPart.class)
                .where(listed -> listed.position().equals(position)
                        && (listed.engine() == null || listed.engine().equals(engine))
                        && stands(listed, day))
                .stream()
                .map(Entry::fact)
                .max(Comparator.comparing((ListedPart listed) -> listed.engine() != null)
                        .thenComparing(ListedPart::validFrom))
                .map(ListedPart::design);
    }

    private static boolean stands(ListedPart listed, LocalDate day) {
        return !day.isBefore(listed.validFrom()) && (listed.validTo() == null || !day.isAfter(listed.validTo()));
    }
}
