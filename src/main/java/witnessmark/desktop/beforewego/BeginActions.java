package witnessmark.desktop.beforewego;

/**
 * What the page of a new logbook leads to, and where runs are logged. Each shows a form elsewhere.
 *
 * @param addCar shows the form that adds a car
 * @param addEngine shows the form that adds an engine with its hours so far
 * @param logRun goes to the run sheet
 * @param importSeason asks for a season folder to bring in
 */
public record BeginActions(Runnable addCar, Runnable addEngine, Runnable logRun, Runnable importSeason) {}
