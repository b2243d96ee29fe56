package witnessmark.exchange;

import java.util.HashMap;
import java.util.Map;
import java.util.UUID;
import witnessmark.domain.Entry;
import witnessmark.domain.Fact;
import witnessmark.domain.Facts;

/** How rows are referred to in a folder: by name where there is one that means this row only, else by id. */
final class ReferenceTexts {
    private final Facts facts;
    private final Map<Class<? extends Fact>, Map<UUID, String>> texts = new HashMap<>();

    ReferenceTexts(Facts facts) {
        this.facts = facts;
    }

    /** The text that means this row among all rows of its kind, struck-out ones too. */
    String of(Class<? extends Fact> kind, UUID id) {
        Map<UUID, String> ofKind = texts.get(kind);
        if (ofKind == null) {
            ofKind = names(kind);
            texts.put(kind, ofKind);
        }
        return ofKind.getOrDefault(id, id.toString());
    }

    private <F extends Fact> Map<UUID, String> names(Class<F> kind) {
        Map<UUID, String> names = new HashMap<>();
        Map<String, Integer> uses = new HashMap<>();
        for (Entry<F> entry : facts.of(kind).all()) {
            String name = WholeName.of(entry.fact(), facts);
            if (name != null && !WholeName.isId(name)) {
                names.put(entry.id().value(), name);
                uses.merge(name, 1, Integer::sum);
            }
        }
        names.values().removeIf(name -> uses.getOrDefault(name, 0) > 1);
        return names;
    }
}
