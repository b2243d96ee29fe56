package witnessmark.study.result;

import witnessmark.domain.ActionCarried;
import witnessmark.domain.Entry;
import witnessmark.quantity.RunningTime;

/**
 * What an engine or a part that carries an action has run with it.
 *
 * @param carried which, and since when
 * @param ran since then
 * @param atLeast whether some of that running is not known
 */
public record CarriedSince(Entry<ActionCarried> carried, RunningTime ran, boolean atLeast) {}
