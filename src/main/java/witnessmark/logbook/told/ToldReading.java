package witnessmark.logbook.told;

import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Entry;
import witnessmark.domain.ToldRunning;
import witnessmark.logbook.run.FieldReading;

/**
 * What the whole form came to.
 *
 * @param fields what each field came to
 * @param told the entry these fields make, not yet written; null while a field that is needed stops
 */
public record ToldReading(
        Map<ToldField, FieldReading> fields, @Nullable Entry<ToldRunning> told) {
    public ToldReading {
        EnumMap<ToldField, FieldReading> copy = new EnumMap<>(ToldField.class);
        copy.putAll(fields);
        fields = Collections.unmodifiableMap(copy);
    }

    /** Whether it cannot be saved as it stands. */
    public boolean stops() {
        return told == null || fields.values().stream().anyMatch(FieldReading::stops);
    }

    /** The fields that stop the form, in order. */
    public List<ToldField> stopped() {
        return fields.entrySet().stream()
                .filter(field -> field.getValue().stops())
                .map(Map.Entry::getKey)
                .toList();
    }
}
