package witnessmark.logbook.engines;

import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Coded;
import witnessmark.domain.Entry;
import witnessmark.domain.Fact;
import witnessmark.domain.Facts;
import witnessmark.domain.Id;
import witnessmark.domain.Run;
import witnessmark.domain.Standing;
import witnessmark.domain.history.Amendment;
import witnessmark.domain.image.Component;
import witnessmark.domain.image.EntryImage;
import witnessmark.domain.image.FigureUnits;
import witnessmark.domain.image.RecordType;
import witnessmark.domain.image.RecordTypes;
import witnessmark.logbook.port.Logbook;

/** Sees how an entry came to stand as it does: who changed what, when and why. Reads the file; off the event thread. */
public final class SeeHistory {
    /** What a person typed, beside the values it was read as; those are what changed. */
    private static final String AS_TYPED = "asTyped";

    private final Facts facts;
    private final RecordType<?> type;
    private final Map<String, @Nullable Object> image;

    private SeeHistory(Facts facts, Entry<?> entry) {
        this.facts = facts;
        this.type = RecordTypes.of(entry.fact().getClass());
        this.image = EntryImage.of(entry);
    }

    /** The changes of an entry, the latest first. */
    public static List<Amended> of(Logbook logbook, Entry<?> entry) {
        SeeHistory seen = new SeeHistory(logbook.facts(), entry);
        List<Amended> all = new ArrayList<>();
        for (Amendment amendment : logbook.history(seen.type.name(), entry.id().value())) {
            all.add(0, seen.amended(amendment));
        }
        return List.copyOf(all);
    }

    /** One change; the image goes along with it, as a field may lie in several columns of which one changed. */
    private Amended amended(Amendment amendment) {
        List<Amended.Field> fields = new ArrayList<>();
        if (!amendment.makes()) {
            image.putAll(amendment.before());
            Map<String, @Nullable Object> before = new HashMap<>(image);
            image.putAll(amendment.after());
            for (Component component : type.components()) {
                if (!component.name().equals(AS_TYPED)) {
                    add(fields, component.name(), value(component, before), value(component, image));
                }
            }
            add(fields, EntryImage.STANDING, standing(before), standing(image));
            add(
                    fields,
                    EntryImage.STRUCK_BECAUSE,
                    before.get(EntryImage.STRUCK_BECAUSE),
                    image.get(EntryImage.STRUCK_BECAUSE));
        } else {
            image.putAll(amendment.after());
        }
        return new Amended(
                Instant.ofEpochMilli(amendment.clock().millis()),
                amendment.who(),
                amendment.why(),
                amendment.makes(),
                fields);
    }

    private static void add(List<Amended.Field> fields, String name, @Nullable Object before, @Nullable Object after) {
        if (!Objects.equals(before, after)) {
            fields.add(new Amended.Field(name, before, after));
        }
    }

    private static @Nullable Object standing(Map<String, @Nullable Object> image) {
        Object code = image.get(EntryImage.STANDING);
        return code == null ? null : Coded.of(Standing.class, code.toString());
    }

    /** A value; of a reference the name people know it by, or what kind of entry it is. */
    private @Nullable Object value(Component component, Map<String, @Nullable Object> from) {
        Object value = FigureUnits.withUnit(type, component, each -> each.value(from), facts);
        Class<? extends Fact> kind = component.refersTo();
        if (kind == null || !(value instanceof Id<?> id)) {
            return value;
        }
        Optional<String> name = known(kind, id);
        return name.isPresent() ? name.get() : kind;
    }

    private <F extends Fact> Optional<String> known(Class<F> kind, Id<?> id) {
        return facts.of(kind).find(new Id<F>(id.value())).map(Entry::fact).map(SeeHistory::knownAs);
    }

    private static @Nullable String knownAs(Fact fact) {
        return fact instanceof Run run ? run.name() : fact.knownAs();
    }
}
