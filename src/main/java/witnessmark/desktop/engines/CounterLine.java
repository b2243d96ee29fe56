package witnessmark.desktop.engines;

/**
 * An engine's life by one counter as a row shows it.
 *
 * @param id the counter's code
 * @param counter its name
 * @param whole the whole life
 * @param sinceRebuild the life since the last rebuild
 * @param basis what the whole life is made of
 */
record CounterLine(String id, String counter, Shown whole, Shown sinceRebuild, String basis) {}
