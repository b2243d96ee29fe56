package witnessmark.desktop.shell;

import witnessmark.desktop.task.Tasks;
import witnessmark.logbook.port.Settings;
import witnessmark.wording.Texts;

/**
 * What the window stands on, put together by the launcher.
 *
 * @param desk the same that was handed to the places
 * @param about what the About page tells
 * @param quit ends the program; drafts are kept, so nothing is asked
 */
public record ShellContext(
        Texts texts, Tasks tasks, Settings settings, Look look, Desk desk, AboutFacts about, Runnable quit) {}
