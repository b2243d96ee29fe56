package witnessmark.desktop.season;

/**
 * What was planned and what was spent for one car at one event.
 *
 * @param event which event, or that it is for none
 * @param day its first day to sort by; empty for none
 * @param car which car, or that it is for none
 * @param planned in the budget
 * @param spent so far
 * @param left planned less spent
 * @param behind what it opens to: what was spent, or what was planned while nothing is
 * @param over whether more was spent than planned, where something was planned
 */
record BudgetLine(
        String event, String day, String car, Amount planned, Amount spent, Amount left, Behind behind, boolean over) {}
