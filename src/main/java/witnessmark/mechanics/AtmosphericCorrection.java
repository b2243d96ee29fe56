package witnessmark.mechanics;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * Power of a spark-ignition engine turned to the air of a reference day: measured power times {@link #usable()}. What the
 * code was not made for is refused with every reason, never cut off at the edge of a range. Figures of different codes, or
 * of different benches, are not to be compared.
 *
 * @param code whose rules
 * @param vapour pressure of water vapour, kPa
 * @param dry pressure of the air without it, kPa
 * @param factor as the code's formula has it, also where it must not be used
 * @param refused why not; empty when it may be used
 */
public record AtmosphericCorrection(Code code, double vapour, double dry, double factor, List<Refusal> refused) {
    /** Power test codes. Kelvin are degrees Celsius and 273, as they print it. */
    public enum Code {
        /**
         * Net power, {@code 1.180·(99/ps)·√(T/298) − 0.18} with ps dry (SAE J1349, June 1990). Ranges of air from memory:
         * 15 to 35 °C, 90 to 105 kPa dry; no more than 7 % either way.
         */
        SAE_J1349(15, 35, 90, 105),
        /**
         * {@code (99/ps)^1.2·(T/298)^0.6} with ps dry, between 0.93 and 1.07 (ISO 1585, UNECE R85 annex 5). Ranges of air
         * from memory: 288 to 308 K, 80 to 110 kPa dry.
         */
        ISO_1585(15, 35, 80, 110),
        /**
         * {@code (101.3/p)·√(T/293)} with p as the barometer reads it, vapour included (DIN 70020-6, withdrawn). It prints no
         * range that we know of; the trade compares nothing beyond 7 % either way.
         */
        DIN_70020(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY, 0, Double.POSITIVE_INFINITY);

        private final double coldest;
        private final double warmest;
        private final double thinnest;
        private final double densest;

        Code(double coldest, double warmest, double thinnest, double densest) {
            this.coldest = coldest;
            this.warmest = warmest;
            this.thinnest = thinnest;
            this.densest = densest;
        }

        /** The coldest air it allows, °C; minus infinity where it says nothing. */
        public double coldest() {
            return coldest;
        }

        /** The warmest air it allows, °C; infinity where it says nothing. */
        public double warmest() {
            return warmest;
        }

        /** The least dry pressure it allows, kPa. */
        public double thinnest() {
            return thinnest;
        }

        /** The most dry pressure it allows, kPa; infinity where it says nothing. */
        public double densest() {
            return densest;
        }

        private double factor(double barometer, double dry, double kelvin) {
            return switch (this) {
                case SAE_J1349 -> 1.180 * (99 / dry) * Math.sqrt(kelvin / 298) - 0.18;
                case ISO_1585 -> Math.pow(99 / dry, 1.2) * Math.pow(kelvin / 298, 0.6);
                case DIN_70020 -> 101.3 / barometer * Math.sqrt(kelvin / 293);
            };
        }
    }

    /** Why a factor must not be used. */
    public enum Refusal {
        /** Colder than {@link Code#coldest}. */
        TOO_COLD,
        /** Warmer than {@link Code#warmest}. */
        TOO_WARM,
        /** Dry pressure under {@link Code#thinnest}. */
        TOO_THIN,
        /** Dry pressure over {@link Code#densest}. */
        TOO_DENSE,
        /** The factor is below {@link #LEAST}. */
        FACTOR_BELOW,
        /** The factor is above {@link #MOST}. */
        FACTOR_ABOVE
    }

    /** The least factor that is still a correction. */
    public static final double LEAST = 0.93;

    /** The greatest. */
    public static final double MOST = 1.07;

    private static final double ZERO_CELSIUS = 273;

    public AtmosphericCorrection {
        refused = List.copyOf(refused);
    }

    /**
     * @param barometer pressure of the air as it is, not reduced to the sea, kPa
     * @param celsius of the air the engine draws
     * @param humidity relative, 0 to 1
     * @throws IllegalArgumentException for what cannot be air: no pressure, a humidity beyond its ends, a temperature at
     *     which no vapour pressure is known
     */
    public static AtmosphericCorrection of(Code code, double barometer, double celsius, double humidity) {
        if (!(humidity >= 0 && humidity <= 1)) {
            throw new IllegalArgumentException("humidity is from 0 to 1, not " + humidity);
        }
        double vapour = humidity * WaterVapour.saturation(celsius);
        if (!(barometer > vapour) || barometer == Double.POSITIVE_INFINITY) {
            throw new IllegalArgumentException("no air has a pressure of " + barometer);
        }
        double dry = barometer - vapour;
        double factor = code.factor(barometer, dry, celsius + ZERO_CELSIUS);
        return new AtmosphericCorrection(code, vapour, dry, factor, refusals(code, celsius, dry, factor));
    }

    /** What to multiply measured power with; empty when it must not be used. */
    public OptionalDouble usable() {
        return refused.isEmpty() ? OptionalDouble.of(factor) : OptionalDouble.empty();
    }

    private static List<Refusal> refusals(Code code, double celsius, double dry, double factor) {
        List<Refusal> refused = new ArrayList<>();
        if (celsius < code.coldest) {
            refused.add(Refusal.TOO_COLD);
        } else if (celsius > code.warmest) {
            refused.add(Refusal.TOO_WARM);
        }
        if (dry < code.thinnest) {
            refused.add(Refusal.TOO_THIN);
        } else if (dry > code.densest) {
            refused.add(Refusal.TOO_DENSE);
        }
        if (factor < LEAST) {
            refused.add(Refusal.FACTOR_BELOW);
        } else if (factor > MOST) {
            refused.add(Refusal.FACTOR_ABOVE);
        }
        return refused;
    }
}
