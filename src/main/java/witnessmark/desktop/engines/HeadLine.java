package witnessmark.desktop.engines;

/**
 * One head as a row shows it.
 *
 * @param id the text form of its identity
 * @param mark as marked
 * @param where the engine it is on, or came off
 * @param running its whole running time
 * @param sinceSkim its running time since the last skim
 * @param skimmed when it was skimmed last, or that no skim is written down
 */
record HeadLine(String id, String mark, String where, Shown running, Shown sinceSkim, String skimmed) {}
