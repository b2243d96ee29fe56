package witnessmark.domain;

import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import witnessmark.quantity.Length;
import witnessmark.quantity.Volume;

/**
 * What a skim found and left. When it was done, on what, what came off and the least thickness left stand in its work.
 * One entry for a work; what is null was not written down.
 *
 * @param work the skim as work
 * @param face which face was cut
 * @param frontExhaust thickness before at that corner
 * @param frontInlet thickness before at that corner
 * @param rearExhaust thickness before at that corner
 * @param rearInlet thickness before at that corner
 * @param flatAfter how flat it was then, 0 or more
 * @param raNanometres finish left, Ra, above 0
 * @param rzNanometres finish left, Rz, above 0
 * @param chamberBefore mean volume of the chambers
 * @param chamberAfter mean volume of the chambers
 * @param retimed whether cams were timed again after it
 */
public record Skim(
        Id<Work> work,
        FaceKind face,
        @Nullable Length frontExhaust,
        @Nullable Length frontInlet,
        @Nullable Length rearExhaust,
        @Nullable Length rearInlet,
        @Nullable Length flatAfter,
        @Nullable Integer raNanometres,
        @Nullable Integer rzNanometres,
        @Nullable Volume chamberBefore,
        @Nullable Volume chamberAfter,
        Retimed retimed)
        implements Fact {
    public Skim {
        if (raNanometres != null && raNanometres < 1 || rzNanometres != null && rzNanometres < 1) {
            throw new IllegalArgumentException("a finish is above 0");
        }
        if (flatAfter != null && flatAfter.nanometres() < 0) {
            throw new IllegalArgumentException("a face is not flatter than flat");
        }
    }

    /** Thickness before at the corners where it was measured. */
    public Stream<Length> before() {
        return Stream.of(frontExhaust, frontInlet, rearExhaust, rearInlet).flatMap(Stream::ofNullable);
    }
}
