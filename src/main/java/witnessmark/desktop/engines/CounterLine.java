package witnessmark.desktop.engines;

import org.jspecify.annotations.Nullable;

/**
 * The life of an engine or part by one counter as a row shows it.
 *
 * @param id the counter's code
 * @param counter its name
 * @param whole the whole life
 * @param sinceRebuild an engine's life since the last rebuild; null for a part
 * @param basis what the whole life is made of
 */
record CounterLine(
        String id, String counter, Shown whole, @Nullable Shown sinceRebuild, String basis) {}
