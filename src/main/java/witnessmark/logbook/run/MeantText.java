package witnessmark.logbook.run;

import witnessmark.quantity.Distance;
import witnessmark.quantity.EngineSpeed;
import witnessmark.quantity.Pressure;
import witnessmark.quantity.RunningTime;
import witnessmark.quantity.Temperature;
import witnessmark.quantity.Volume;

/** A measure as somebody would type it, unit included, so that it reads back whatever unit the field has. */
final class MeantText {
    private MeantText() {}

    static String of(Object measure) {
        if (measure instanceof Pressure pressure) {
            return pressure.text() + " bar";
        }
        if (measure instanceof Temperature temperature) {
            return temperature.text() + " °C";
        }
        if (measure instanceof Volume volume) {
            return volume.text() + " L";
        }
        if (measure instanceof Distance distance) {
            return distance.text() + " km";
        }
        if (measure instanceof EngineSpeed speed) {
            return speed.text();
        }
        if (measure instanceof RunningTime time) {
            return time.minutes(2).stripTrailingZeros().toPlainString() + " min";
        }
        return measure.toString();
    }
}
