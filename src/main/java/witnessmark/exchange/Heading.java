package witnessmark.exchange;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.image.Component;
import witnessmark.domain.image.EntryImage;
import witnessmark.domain.image.RecordType;
import witnessmark.outcome.ProblemKind;

/** Which field of a row is which column. Columns may come in any order. */
final class Heading {
    static final String ID = "id";
    static final String STANDING = EntryImage.STANDING;
    static final String STRUCK_BECAUSE = EntryImage.STRUCK_BECAUSE;

    private final Map<String, Integer> places;
    private final int width;

    private Heading(Map<String, Integer> places, int width) {
        this.places = places;
        this.width = width;
    }

    /**
     * Reads a heading row.
     *
     * @param handMade columns that may be empty may then be missing, not only those that were added later
     * @param line where it stands
     * @return null when the columns are not those of this kind; the problems say which
     */
    static @Nullable Heading read(
            RecordType<?> type, boolean handMade, long line, List<String> fields, Problems problems) {
        Map<String, Boolean> wanted = wanted(type, handMade);
        Map<String, Integer> places = new HashMap<>();
        int before = problems.count();
        String separator = fields.size() == 1 ? otherSeparator(fields.get(0)) : null;
        if (separator != null) {
            problems.at(line, null, ProblemKind.OTHER_SEPARATOR, type.file(), separator);
            return null;
        }
        for (int i = 0; i < fields.size(); i++) {
            String heading = fields.get(i).strip();
            if (heading.isEmpty()) {
                problems.at(line, null, ProblemKind.COLUMN_UNNAMED, Integer.toString(i + 1));
            } else if (!wanted.containsKey(heading)) {
                String shown = Limits.shown(heading);
                problems.at(line, shown, ProblemKind.COLUMN_UNKNOWN, shown);
            } else if (places.putIfAbsent(heading, i) != null) {
                problems.at(line, heading, ProblemKind.DUPLICATE, heading);
            }
        }
        wanted.forEach((heading, needed) -> {
            if (needed && !places.containsKey(heading)) {
                problems.at(line, heading, ProblemKind.COLUMN_MISSING, heading);
            }
        });
        return problems.countedSince(before) ? null : new Heading(places, fields.size());
    }

    /** What parts the headings when commas do not. */
    private static @Nullable String otherSeparator(String heading) {
        return heading.indexOf(';') >= 0 ? "semicolons" : heading.indexOf('\t') >= 0 ? "tabs" : null;
    }

    /** The headings of a kind in the order they are written. */
    static List<String> of(RecordType<?> type) {
        List<String> headings = new ArrayList<>();
        headings.add(ID);
        type.components().forEach(component -> headings.add(component.heading()));
        headings.add(STANDING);
        headings.add(STRUCK_BECAUSE);
        return headings;
    }

    /** How many fields a row has. */
    int width() {
        return width;
    }

    /** Where in a row the field under a heading stands, or -1 when there is no such column. */
    int place(String heading) {
        return places.getOrDefault(heading, -1);
    }

    private static Map<String, Boolean> wanted(RecordType<?> type, boolean handMade) {
        Map<String, Boolean> wanted = new LinkedHashMap<>();
        wanted.put(ID, !handMade);
        for (Component component : type.components()) {
            boolean mayBeMissing = component.addedLater() || handMade && component.nullable();
            wanted.put(component.heading(), !mayBeMissing);
        }
        wanted.put(STANDING, !handMade);
        wanted.put(STRUCK_BECAUSE, !handMade);
        return wanted;
    }
}
