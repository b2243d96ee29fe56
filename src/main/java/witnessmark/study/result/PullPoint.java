package witnessmark.study.result;

/**
 * One speed of one pull.
 *
 * @param rpm speed, revolutions a minute
 * @param observed torque as the brake read it, N·m; NaN where only corrected figures were written down without a factor
 * @param corrected torque turned to the reference day, N·m; NaN where it must not be
 */
public record PullPoint(double rpm, double observed, double corrected) {
    /** Of power in kW, torque in N·m and speed in rpm: P = 2π·n·T/60. */
    private static final double KILOWATTS = 2 * Math.PI / 60_000;

    /** Corrected power, kW, or NaN. */
    public double power() {
        return corrected * rpm * KILOWATTS;
    }

    /** Power as the brake read it, kW, or NaN. */
    public double observedPower() {
        return observed * rpm * KILOWATTS;
    }
}
