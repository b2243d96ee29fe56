package witnessmark.ledger.result;

import witnessmark.domain.Car;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Part;
import witnessmark.domain.PartKind;
import witnessmark.domain.Reading;

/**
 * A cooler or lines of a car through which metal went, in it still and neither renewed nor cleaned since.
 *
 * @param part which part
 * @param kind of which kind
 * @param car in which car
 * @param engine which engine shed it
 * @param filter what its filter showed, the last time
 */
public record DebrisIn(Entry<Part> part, PartKind kind, Entry<Car> car, Entry<Engine> engine, Entry<Reading> filter) {}
