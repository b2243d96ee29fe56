package witnessmark.domain;

/**
 * A car's part in a cost that several share.
 *
 * @param line which cost
 * @param car which car
 * @param parts how many parts of the sum of all parts; 1 or more
 */
public record CostShare(Id<CostLine> line, Id<Car> car, int parts) implements Fact {
    public CostShare {
        if (parts < 1) {
            throw new IllegalArgumentException("a share is 1 part or more");
        }
    }
}
