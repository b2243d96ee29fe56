package witnessmark.wording;

import witnessmark.quantity.typed.DistanceUnit;
import witnessmark.quantity.typed.LengthUnit;
import witnessmark.quantity.typed.PressureUnit;
import witnessmark.quantity.typed.TemperatureUnit;
import witnessmark.quantity.typed.Unit;
import witnessmark.quantity.typed.VolumeUnit;

/** The units the team reads its figures in, one for each quantity that has several. */
public record Units(
        LengthUnit length,
        PressureUnit pressure,
        TemperatureUnit temperature,
        VolumeUnit volume,
        DistanceUnit distance) {
    public static final Units METRIC = new Units(
            LengthUnit.MILLIMETRE, PressureUnit.BAR, TemperatureUnit.CELSIUS, VolumeUnit.LITRE, DistanceUnit.KILOMETRE);
    public static final Units IMPERIAL = new Units(
            LengthUnit.INCH, PressureUnit.PSI, TemperatureUnit.FAHRENHEIT, VolumeUnit.US_QUART, DistanceUnit.MILE);

    /** The choice as one text, to be kept among the settings: {@code mm bar degc l km}. */
    public String text() {
        return String.join(" ", length.code(), pressure.code(), temperature.code(), volume.code(), distance.code());
    }

    /**
     * Reads back what {@link #text()} wrote.
     *
     * @throws IllegalArgumentException if it is no such text
     */
    public static Units parse(String text) {
        String[] codes = text.split(" ", -1);
        if (codes.length != 5) {
            throw new IllegalArgumentException("'" + text + "' names no five units");
        }
        return new Units(
                named(LengthUnit.values(), codes[0]),
                named(PressureUnit.values(), codes[1]),
                named(TemperatureUnit.values(), codes[2]),
                named(VolumeUnit.values(), codes[3]),
                named(DistanceUnit.values(), codes[4]));
    }

    private static <U extends Unit<?>> U named(U[] units, String code) {
        for (U unit : units) {
            if (unit.code().equals(code)) {
                return unit;
            }
        }
        throw new IllegalArgumentException("no such unit is called '" + code + "'");
    }
}
