package witnessmark.logbook.sheets;

import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Zone;
import witnessmark.outcome.ProblemKind;

/** Reads which zones of an engine were opened. */
final class ZonesTyped {
    /** Typed for all zones. */
    private static final String FULL = "full";

    private ZonesTyped() {}

    /** The zones named, with commas between; each may be cut short where it stays clear. */
    static Set<Zone> read(ReadSheet in, SheetField field) {
        String text = in.needed(field);
        Set<Zone> zones = EnumSet.noneOf(Zone.class);
        in.note(field, SheetNote.of("zones_form"));
        for (String word : text.split("\\s*(,|\\band\\b)\\s*")) {
            if (word.equalsIgnoreCase(FULL)) {
                zones.addAll(EnumSet.allOf(Zone.class));
            } else if (!word.isBlank()) {
                @Nullable Zone zone = zone(word);
                if (zone == null) {
                    in.wrong(field, ProblemKind.CANNOT_READ, field, word, "head, front");
                    return Set.of();
                }
                zones.add(zone);
            }
        }
        if (!zones.isEmpty()) {
            in.note(field, new SheetNote("line", List.copyOf(zones), true));
        } else if (!text.isEmpty()) {
            in.wrong(field, ProblemKind.CANNOT_READ, field, text, "head, front");
        }
        return zones;
    }

    private static @Nullable Zone zone(String word) {
        String plain = word.strip().toLowerCase(Locale.ROOT);
        Zone found = null;
        for (Zone zone : Zone.values()) {
            if (zone.code().startsWith(plain)) {
                found = found == null ? zone : null;
            }
        }
        return found;
    }
}
