package witnessmark.study.result;

/**
 * The mean of the pulls at one speed.
 *
 * @param rpm speed, revolutions a minute
 * @param torque mean corrected torque, N·m
 * @param power mean corrected power, kW
 * @param pulls how many pulls reached that speed
 */
public record CurvePoint(double rpm, double torque, double power, int pulls) {}
