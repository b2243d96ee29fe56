package witnessmark.domain.image;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Coded;
import witnessmark.domain.Entry;
import witnessmark.domain.Fact;
import witnessmark.domain.Id;
import witnessmark.domain.Standing;

/**
 * An entry as named column values, the form in which amendments keep what changed: the fact's own columns, its
 * standing and why it was struck out. Who made it, its revision and its checksum follow from the amendments.
 */
public final class EntryImage {
    public static final String STANDING = "standing";
    public static final String STRUCK_BECAUSE = "struck_because";

    private EntryImage() {}

    /** The image of an entry; every column is named, empty ones with null. */
    public static Map<String, @Nullable Object> of(Entry<?> entry) {
        RecordType<?> type = RecordTypes.of(entry.fact().getClass());
        Map<String, @Nullable Object> image = new TreeMap<>();
        List<@Nullable Object> row = type.row(entry.fact());
        for (int i = 0; i < row.size(); i++) {
            image.put(type.columns().get(i).name(), row.get(i));
        }
        image.put(STANDING, entry.standing().code());
        image.put(STRUCK_BECAUSE, entry.struckBecause());
        return image;
    }

    /**
     * The entry an image shows.
     *
     * @param rev the revision it is to carry
     * @throws IllegalArgumentException if the image shows no possible fact
     */
    public static <F extends Fact> Entry<F> entry(
            RecordType<F> type, UUID id, Map<String, ? extends @Nullable Object> image, long rev) {
        List<@Nullable Object> row = new ArrayList<>();
        for (Column column : type.columns()) {
            row.add(image.get(column.name()));
        }
        Object standing = image.get(STANDING);
        Object because = image.get(STRUCK_BECAUSE);
        return new Entry<>(
                new Id<>(id),
                type.fact(row),
                standing == null ? Standing.IN_FORCE : Coded.of(Standing.class, standing.toString()),
                because == null ? null : because.toString(),
                rev);
    }
}
