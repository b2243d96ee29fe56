package witnessmark.domain;

import witnessmark.quantity.Length;

/**
 * The joint face of engines of a design: head, gasket and block share its frame. A place on it is so far from the front
 * end (x) and so far from the inlet edge (y), on whichever of them one looks. One entry for a design.
 *
 * @param design of engines
 * @param length from the front end to the rear end, above 0
 * @param width from the inlet edge to the exhaust edge, above 0
 * @param frontEnd what the team calls the front end: chain end, belt end …
 * @param exhaust on which side the exhaust is, seen from the front end towards the rear
 * @param source where it is written
 */
public record FaceOutline(
        Id<EngineDesign> design, Length length, Length width, String frontEnd, FrontSide exhaust, String source)
        implements Fact {
    public FaceOutline {
        if (length.nanometres() <= 0 || width.nanometres() <= 0) {
            throw new IllegalArgumentException("a face is above 0 in length and width");
        }
        if (frontEnd.isBlank()) {
            throw new IllegalArgumentException("the front end has a name");
        }
    }
}
