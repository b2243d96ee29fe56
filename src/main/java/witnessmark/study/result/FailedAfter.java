package witnessmark.study.result;

import witnessmark.domain.Entry;
import witnessmark.domain.Incident;
import witnessmark.quantity.RunningTime;

/**
 * A failure and the running before it.
 *
 * @param incident the failure
 * @param ran from when it was last put right, or built, to the failure
 * @param atLeast whether some of that running is not known
 */
public record FailedAfter(Entry<Incident> incident, RunningTime ran, boolean atLeast) {}
