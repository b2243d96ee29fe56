package witnessmark.exchange;

import java.util.Locale;
import java.util.UUID;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Entry;
import witnessmark.domain.Fact;
import witnessmark.domain.Facts;
import witnessmark.domain.Id;
import witnessmark.domain.image.Component;
import witnessmark.domain.image.RecordTypes;

/** The name by which one row refers to another: {@code K03}, {@code K03/2}, {@code Orrow 18-16/head}. */
final class WholeName {
    private static final Pattern ID =
            Pattern.compile("[0-9a-fA-F]{8}-[0-9a-fA-F]{4}-[0-9a-fA-F]{4}-[0-9a-fA-F]{4}-[0-9a-fA-F]{12}");
    private static final Pattern SPACES_AND_DASHES = Pattern.compile("[\\s\\-]");

    private WholeName() {}

    /**
     * The name of a fact after the names of those it is known within.
     *
     * @param all where those are found
     * @return null when it has none: nobody refers to it by name
     */
    static @Nullable String of(Fact fact, Facts all) {
        String own = fact.knownAs();
        if (own == null || own.isBlank()) {
            return null;
        }
        Id<?> within = fact.knownWithin();
        if (within == null) {
            return own;
        }
        Fact parent = parent(fact, within, all);
        String before = parent == null ? null : of(parent, all);
        return before == null ? null : before + "/" + own;
    }

    /** Whether a text is written as an id is, and so is never taken for a name first. */
    static boolean isId(String text) {
        return text.length() == 36 && ID.matcher(text).matches();
    }

    /** A name without what people write one way or another: spaces, dashes, letter case. */
    static String plain(String name) {
        return SPACES_AND_DASHES.matcher(name).replaceAll("").toLowerCase(Locale.ROOT);
    }

    private static @Nullable Fact parent(Fact fact, Id<?> within, Facts all) {
        for (Component component : RecordTypes.of(fact.getClass()).components()) {
            Class<? extends Fact> kind = component.refersTo();
            if (kind != null && within.equals(component.value(fact))) {
                return find(all, kind, within.value());
            }
        }
        return null;
    }

    private static <F extends Fact> @Nullable Fact find(Facts all, Class<F> kind, UUID id) {
        return all.of(kind).find(new Id<>(id)).map(Entry::fact).orElse(null);
    }
}
