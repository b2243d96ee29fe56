package witnessmark.logbook.faces;

import org.jspecify.annotations.Nullable;
import witnessmark.domain.FaceLook;
import witnessmark.domain.Id;
import witnessmark.domain.Part;

/**
 * A face as it is seen.
 *
 * @param part whose
 * @param look at which look, or null where there is none
 * @param over the look laid over it, or null for none
 */
public record FaceInSight(
        Id<Part> part,
        @Nullable Id<FaceLook> look,
        @Nullable Id<FaceLook> over) {
    /** As it comes up: its foremost look, held against what lies behind it. */
    public static FaceInSight of(FacePage page) {
        LookLine look = page.foremost().orElse(null);
        LookLine behind = look == null ? null : page.behind(look).orElse(null);
        return new FaceInSight(
                page.part().id(),
                look == null ? null : look.look().id(),
                behind == null ? null : behind.look().id());
    }
}
