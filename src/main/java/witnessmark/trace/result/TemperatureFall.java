package witnessmark.trace.result;

/**
 * Water temperature that fell while the engine was hot and under load, as it does when the sensor stands in steam.
 *
 * @param at microseconds after the part's first sample
 * @param lasted until it was back, or to the end, microseconds
 * @param from the highest before, °C
 * @param to the lowest of the fall, °C
 */
public record TemperatureFall(long at, long lasted, double from, double to) {}
