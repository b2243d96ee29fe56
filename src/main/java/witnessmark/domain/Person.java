package witnessmark.domain;

/**
 * Somebody who writes, drives or signs. There is no log-in on a local file.
 *
 * @param name as the team calls him or her; unique
 * @param role what he or she does in the team
 */
public record Person(String name, String role) implements Fact {
    @Override
    public String knownAs() {
        return name;
    }
}
