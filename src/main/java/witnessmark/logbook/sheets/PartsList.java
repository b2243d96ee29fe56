package witnessmark.logbook.sheets;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.Optional;
import witnessmark.domain.Entry;
import witnessmark.domain.Id;
import witnessmark.domain.ListedPart;
import witnessmark.domain.PartDesign;
import witnessmark.domain.Position;

/** What the parts list names for a position. */
final class PartsList {
    private PartsList() {}

    /** What belongs in a position of a place on a day; what is named for one engine goes before what is for its design. */
    static Optional<Id<PartDesign>> names(SheetSight sight, Places.Place place, Id<Position> position, LocalDate day) {
        return sight
                .facts()
                .of(ListedPart.class)
                .where(listed -> listed.position().equals(position)
                        && (listed.engine() == null || listed.engine().equals(place.engineId()))
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
