package witnessmark.fit.result.face;

import org.jspecify.annotations.Nullable;
import witnessmark.quantity.Length;

/**
 * How flat a face is by the readings of a grid.
 *
 * @param points how many readings
 * @param leastSquares peak to valley about the plane of least squares; null with too few readings, or all on a line
 * @param minimumZone between the nearest two parallel planes that hold all readings; null likewise
 * @param finest step of what was measured with: neither figure is finer
 */
public record Flat(
        int points, @Nullable Length leastSquares, @Nullable Length minimumZone, Length finest) {}
