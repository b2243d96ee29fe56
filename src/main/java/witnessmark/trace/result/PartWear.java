package witnessmark.trace.result;

import witnessmark.domain.PartKind;
import witnessmark.quantity.EngineSpeed;

/**
 * What the speeds of a trace wore a kind of part, as time at one of them. It says nothing without the plain time.
 *
 * @param kind of which parts
 * @param reference the speed at which time counts once
 * @param exponent as the team wrote it
 * @param source where the team has it from
 * @param millis the equivalent time at the reference speed, milliseconds
 * @param least if all of each band had been at its lower edge
 * @param most if all of each band had been at its upper edge
 */
public record PartWear(
        PartKind kind, EngineSpeed reference, double exponent, String source, long millis, long least, long most) {}
