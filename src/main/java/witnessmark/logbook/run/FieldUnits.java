package witnessmark.logbook.run;

import witnessmark.quantity.typed.DayOrder;
import witnessmark.quantity.typed.DistanceUnit;
import witnessmark.quantity.typed.PressureUnit;
import witnessmark.quantity.typed.TemperatureUnit;
import witnessmark.quantity.typed.VolumeUnit;

/**
 * The unit of a bare figure in each kind of field, and which comes first when a date is typed in figures.
 *
 * @param pressure of oil pressure
 * @param temperature of water, oil and air
 * @param volume of oil added
 * @param distance of distance driven
 * @param days day or month first
 */
public record FieldUnits(
        PressureUnit pressure, TemperatureUnit temperature, VolumeUnit volume, DistanceUnit distance, DayOrder days) {
    /** Bar, degrees Celsius, litres and kilometres. */
    public static FieldUnits metric(DayOrder days) {
        return new FieldUnits(
                PressureUnit.BAR, TemperatureUnit.CELSIUS, VolumeUnit.LITRE, DistanceUnit.KILOMETRE, days);
    }
}
