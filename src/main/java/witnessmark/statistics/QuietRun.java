package witnessmark.statistics;

/**
 * How little trouble-free running says after few failures. With r failures while T was run, counted up to the last of them, and
 * failures that come at an even rate nobody knows, the chance of none in a further u is {@code (1 + u/T)^(−r)}: u/r over T/r is
 * then an F variable of 2 and 2r degrees, and its tail is that power exactly.
 *
 * @param running T, up to the last failure, in any unit, above 0
 * @param failures r, 1 or more
 */
public record QuietRun(double running, int failures) {
    /** @throws IllegalArgumentException for no running or no failure */
    public QuietRun {
        if (!(running > 0) || Double.isInfinite(running) || failures < 1) {
            throw new IllegalArgumentException("there is running, and a failure at its end");
        }
    }

    /**
     * The chance of running so far without a failure had nothing changed.
     *
     * @param further u, in the unit of the running, 0 or more
     */
    public double chance(double further) {
        if (!(further >= 0)) {
            throw new IllegalArgumentException("further running is 0 or more");
        }
        return Math.exp(-failures * Math.log1p(further / running));
    }

    /**
     * How far it has to run without a failure before that chance is no more than this.
     *
     * @param chance above 0, at most 1
     */
    public double needed(double chance) {
        if (!(chance > 0 && chance <= 1)) {
            throw new IllegalArgumentException("a chance is above 0 and at most 1");
        }
        return running * Math.expm1(-Math.log(chance) / failures);
    }
}
