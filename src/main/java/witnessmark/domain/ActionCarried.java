package witnessmark.domain;

import org.jspecify.annotations.Nullable;
import witnessmark.quantity.Moment;

/**
 * An engine, or a part, that carries what an action changed. Its running from then on counts towards proof.
 *
 * @param action which action
 * @param engine in which engine
 * @param part with which part, or null for the engine as it is built; a part takes its running along
 * @param from since when
 * @param by who says so
 */
public record ActionCarried(
        Id<CaseAction> action, Id<Engine> engine, @Nullable Id<Part> part, Moment from, String by) implements Fact {
    @Override
    public Moment happened() {
        return from;
    }
}
