package witnessmark.fit.result;

import witnessmark.domain.GasketClass;

/**
 * A head gasket stronger than the one before. A gasket is what lets go first; one that outlasts the parts around it asks
 * for settings that are proven (common practice, no source).
 *
 * @param before what the last build's was made like
 * @param now what this build's is made like
 * @param clean plugs and bores read clean since that build
 * @param worse plugs and bores read worse than clean since that build
 */
public record StrongerLink(GasketClass before, GasketClass now, int clean, int worse) {}
