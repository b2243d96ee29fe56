package witnessmark.logbook.sheets;

import witnessmark.quantity.typed.DayOrder;
import witnessmark.quantity.typed.DistanceUnit;
import witnessmark.quantity.typed.LengthUnit;
import witnessmark.quantity.typed.PressureUnit;
import witnessmark.quantity.typed.TemperatureUnit;

/**
 * The unit of a bare figure on a sheet, the one its field shows, and which comes first when a date is typed in figures.
 *
 * @param days day or month first
 */
public record SheetUnits(
        LengthUnit length, PressureUnit pressure, TemperatureUnit temperature, DistanceUnit distance, DayOrder days) {
    /** Millimetres, bar, degrees Celsius and kilometres. */
    public static SheetUnits metric(DayOrder days) {
        return new SheetUnits(
                LengthUnit.MILLIMETRE, PressureUnit.BAR, TemperatureUnit.CELSIUS, DistanceUnit.KILOMETRE, days);
    }
}
