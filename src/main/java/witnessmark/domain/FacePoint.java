package witnessmark.domain;

import witnessmark.quantity.Length;

/**
 * A reading of a grid over a face.
 *
 * @param look of which look
 * @param x from the front end
 * @param y from the inlet edge
 * @param depth below the plane it was read from; below 0 where the face stands proud
 */
public record FacePoint(Id<FaceLook> look, Length x, Length y, Length depth) implements Fact {}
