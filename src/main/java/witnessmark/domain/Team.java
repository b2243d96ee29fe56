package witnessmark.domain;

import java.time.ZoneId;
import witnessmark.quantity.EngineSpeed;

/**
 * The team whose logbook this is; there is one.
 *
 * @param name the name on the board
 * @param zone the zone whose days the team counts in
 * @param currency home currency, ISO 4217
 * @param runningAbove the engine runs above this speed
 * @param loadedAbove the engine is loaded above this speed
 * @param highSpeedAbove time above this speed is counted as high-speed time
 */
public record Team(
        String name,
        ZoneId zone,
        String currency,
        EngineSpeed runningAbove,
        EngineSpeed loadedAbove,
        EngineSpeed highSpeedAbove)
        implements Fact {
    @Override
    public String knownAs() {
        return name;
    }
}
