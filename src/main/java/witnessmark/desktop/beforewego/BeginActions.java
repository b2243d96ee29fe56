package witnessmark.desktop.beforewego;

/**
 * What the page of a young logbook leads to, and where runs are logged. Each shows a form elsewhere.
 *
 * @param addCar shows the form that adds a car
 * @param addEngine shows the form that adds an engine with its hours so far
 * @param fitPart shows the form that fits a part
 * @param setLimit shows the form that sets a limit
 * @param listLimits shows the form that sets the limits of all its parts
 * @param addPerson shows the form that adds somebody who writes, drives or signs
 * @param logRun goes to the run sheet
 */
public record BeginActions(
        Runnable addCar,
        Runnable addEngine,
        Runnable fitPart,
        Runnable setLimit,
        Runnable listLimits,
        Runnable addPerson,
        Runnable logRun) {}
