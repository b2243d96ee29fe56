/**
 * Incidents: what broke or stopped a car, what it cost, why, and what would have prevented it. Open {@link
 * witnessmark.desktop.incidents.IncidentsPlace} first, then {@link witnessmark.desktop.incidents.IncidentsModel}.
 */
@NullMarked
package witnessmark.desktop.incidents;

import org.jspecify.annotations.NullMarked;
