package witnessmark.study.result;

import witnessmark.domain.Entry;
import witnessmark.domain.Reading;

/**
 * A reading on its way.
 *
 * @param reading which one
 * @param hours what the engine or part had run by then
 * @param figure in the unit of its kind; of oil that was changed, for each hour on that oil
 */
public record Read(Entry<Reading> reading, double hours, double figure) {}
