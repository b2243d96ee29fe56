package witnessmark.desktop.form;

import witnessmark.desktop.task.Tasks;
import witnessmark.logbook.port.Settings;
import witnessmark.wording.Texts;

/**
 * What a list needs to be filtered and to remember how people like it.
 *
 * @param tasks whose timers put filtering off until typing pauses
 * @param settings where columns, sort and filter are remembered
 */
public record SheetTools(Texts texts, Tasks tasks, Settings settings) {}
