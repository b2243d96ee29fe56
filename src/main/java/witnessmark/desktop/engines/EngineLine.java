package witnessmark.desktop.engines;

import witnessmark.desktop.form.SeamState;

/**
 * One engine as a row shows it.
 *
 * @param id the text form of its identity
 * @param number as stamped
 * @param where the car it is in, or since when it is open
 * @param running its whole running time
 * @param sinceRebuild its running time since the last rebuild
 * @param state the mark
 * @param worst what stands worst, in words
 */
record EngineLine(
        String id, String number, String where, Shown running, Shown sinceRebuild, SeamState state, String worst) {}
