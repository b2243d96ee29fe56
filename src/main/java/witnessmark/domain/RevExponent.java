package witnessmark.domain;

import witnessmark.quantity.EngineSpeed;

/**
 * How speed wears a kind of part: time at speed n counts (n / reference)^exponent times.
 *
 * @param design in engines of this design
 * @param partKind parts of this kind
 * @param reference the speed at which time counts once, above 0
 * @param hundredths the exponent in hundredths, above 0
 * @param source where it is from
 */
public record RevExponent(
        Id<EngineDesign> design, PartKind partKind, EngineSpeed reference, int hundredths, String source)
        implements Fact {
    public RevExponent {
        if (reference.rpm() <= 0 || hundredths <= 0) {
            throw new IllegalArgumentException("a reference speed and an exponent are above 0");
        }
    }
}
