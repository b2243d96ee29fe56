package witnessmark.domain;

/**
 * A car the team runs.
 *
 * @param name the number on its side; unique
 * @param note anything else
 */
public record Car(String name, String note) implements Fact {
    @Override
    public String knownAs() {
        return name;
    }
}
