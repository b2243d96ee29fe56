package witnessmark.domain;

import org.jspecify.annotations.Nullable;

/**
 * What a build in the paddock says beyond its zones: closed at the track, not measured.
 *
 * @param build the build it is
 * @param wentBack what went back in as it came out; empty when all is new
 * @param tool with what it was tightened, or null when not known
 * @param second the second pair of eyes; empty when there was none
 * @param note anything else
 */
public record TrackRepair(
        Id<Build> build, String wentBack, @Nullable Id<Tool> tool, String second, String note) implements Fact {}
