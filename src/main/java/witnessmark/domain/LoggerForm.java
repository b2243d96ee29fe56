package witnessmark.domain;

/**
 * How files of a logger are read, so that the next one is read alike.
 *
 * @param name what it is called; unique
 * @param headings what such files have in common: their delimiter and headings
 * @param form how it is read: its signs, its time and its channels
 */
public record LoggerForm(String name, String headings, String form) implements Fact {
    @Override
    public String knownAs() {
        return name;
    }
}
