package witnessmark.fit.result;

import org.jspecify.annotations.Nullable;

/**
 * What the bolts of a rod hold at one speed.
 *
 * @param rpm revolutions a minute
 * @param rod newtons that pull at the big end of the heaviest
 * @param bolt newtons of it on one bolt; null where nobody wrote down how many a rod has
 * @param margin pull of a bolt, at the low end of how well it is known, over its load; null where it is not known
 */
public record RodLoad(
        double rpm,
        double rod,
        @Nullable Double bolt,
        @Nullable Double margin) {}
