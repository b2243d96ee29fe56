package witnessmark.domain;

import org.jspecify.annotations.Nullable;

/**
 * One engine, whatever is in it today.
 *
 * @param number as stamped; unique
 * @param design what it is built to
 * @param owner whose it is when not the team's, or null
 * @param note anything else
 */
public record Engine(
        String number, Id<EngineDesign> design, @Nullable String owner, String note) implements Fact {
    @Override
    public String knownAs() {
        return number;
    }
}
