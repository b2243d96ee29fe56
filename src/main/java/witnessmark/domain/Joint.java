package witnessmark.domain;

import org.jspecify.annotations.Nullable;
import witnessmark.quantity.Moment;

/**
 * One group of fasteners tightened, by one stage.
 *
 * @param engine on which engine
 * @param build in which build, or null
 * @param fasteners what was tightened
 * @param which which of them: main caps 2 and 3, head studs
 * @param stage which stage, as the method has it; empty when there is one
 * @param method how
 * @param value to what, with its unit, as typed
 * @param lubricant on what; empty when not said
 * @param tool with what, or null when not known
 * @param at when
 * @param cycle whether they were slack before, so that this counts a torque cycle
 * @param by by whom
 * @param second the second pair of eyes; empty when there was none
 */
public record Joint(
        Id<Engine> engine,
        @Nullable Id<Build> build,
        PartKind fasteners,
        String which,
        String stage,
        JointMethod method,
        String value,
        String lubricant,
        @Nullable Id<Tool> tool,
        Moment at,
        boolean cycle,
        String by,
        String second)
        implements Fact {

    @Override
    public Moment happened() {
        return at;
    }
}
