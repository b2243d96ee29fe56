package witnessmark.trace.result;

/**
 * Heat cycles of one trace for both ways the engine can have been left before it, so that traces brought in out of order
 * can be put together.
 *
 * @param ifArmed cycles if the engine had been cold since its last one
 * @param ifNot cycles if not
 * @param armedAfterArmed whether a next one can begin at the end, if the engine had been cold
 * @param armedAfterNot the same if not
 */
public record HeatCycles(int ifArmed, int ifNot, boolean armedAfterArmed, boolean armedAfterNot) {
    /** One trace after the other. */
    public HeatCycles then(HeatCycles next) {
        return new HeatCycles(
                ifArmed + next.cycles(armedAfterArmed),
                ifNot + next.cycles(armedAfterNot),
                next.armed(armedAfterArmed),
                next.armed(armedAfterNot));
    }

    public int cycles(boolean armed) {
        return armed ? ifArmed : ifNot;
    }

    public boolean armed(boolean before) {
        return before ? armedAfterArmed : armedAfterNot;
    }
}
