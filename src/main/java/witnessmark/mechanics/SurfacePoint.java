package witnessmark.mechanics;

/**
 * A point of a face.
 *
 * @param x along the face
 * @param y across the face
 * @param z height over the datum, small beside the face
 */
public record SurfacePoint(double x, double y, double z) {}
