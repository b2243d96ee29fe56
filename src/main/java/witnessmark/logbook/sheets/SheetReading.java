package witnessmark.logbook.sheets;

import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import witnessmark.domain.Entry;
import witnessmark.domain.Id;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;

/**
 * What a whole sheet came to.
 *
 * @param asked the fields that are asked for as things stand, in order
 * @param fields what each of them came to
 * @param entries what the sheet would write, each after those it refers to; empty while something stops it
 * @param blame the field beside which a problem of an entry is shown
 * @param blameByKind the field beside which problems of a kind are shown, whichever entry they are about
 */
public record SheetReading(
        Set<SheetField> asked,
        Map<SheetField, FieldResult> fields,
        List<Entry<?>> entries,
        Map<Id<?>, SheetField> blame,
        Map<ProblemKind, SheetField> blameByKind) {
    public SheetReading {
        asked = Collections.unmodifiableSet(new java.util.LinkedHashSet<>(asked));
        fields = Collections.unmodifiableMap(new LinkedHashMap<>(fields));
        entries = List.copyOf(entries);
        blame = Map.copyOf(new HashMap<>(blame));
        blameByKind = Map.copyOf(blameByKind);
    }

    public FieldResult of(SheetField field) {
        return fields.getOrDefault(field, FieldResult.EMPTY);
    }

    /** Whether some field keeps it from being saved. */
    public boolean stops() {
        return !stopped().isEmpty();
    }

    /** The fields that keep it from being saved, in order. */
    public List<SheetField> stopped() {
        return asked.stream().filter(field -> of(field).stops()).toList();
    }

    /** What is wrong, in the order of the fields. */
    public List<Problem> problems() {
        return asked.stream()
                .map(field -> of(field).problem())
                .filter(java.util.Objects::nonNull)
                .toList();
    }
}
