package witnessmark.domain;

import witnessmark.quantity.Length;

/**
 * One pass of the cutter.
 *
 * @param skim of which skim
 * @param number 1 for the first
 * @param depth what it took, above 0
 * @param shadow what was seen after it
 * @param where where the shadow stayed, or what else was seen; empty when not said
 */
public record SkimPass(Id<Skim> skim, int number, Length depth, SkimShadow shadow, String where) implements Fact {
    public SkimPass {
        if (number < 1 || depth.nanometres() <= 0) {
            throw new IllegalArgumentException("passes count from 1, and each takes something");
        }
    }
}
