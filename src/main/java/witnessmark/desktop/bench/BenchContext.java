package witnessmark.desktop.bench;

import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import witnessmark.desktop.task.Tasks;
import witnessmark.domain.Engine;
import witnessmark.domain.Id;
import witnessmark.logbook.Desk;
import witnessmark.logbook.port.Ids;
import witnessmark.logbook.sheets.Prefilled;
import witnessmark.wording.Measures;
import witnessmark.wording.Texts;

/**
 * What the measuring bench stands on, put together by the launcher.
 *
 * @param book the open logbook
 * @param ids identities for what is written
 * @param window what can be asked of the window around it
 * @param tasks where work off the event thread goes
 * @param measures figures as shown, in the team's units
 * @param undo takes the last change back and says so
 * @param write opens a sheet on which something of the build in hand is written, and comes back from it
 * @param engineInView the engine somebody looks at elsewhere
 * @param print asks where to write the pages of the sheet in hand
 */
public record BenchContext(
        Desk book,
        Ids ids,
        witnessmark.desktop.shell.Desk window,
        Tasks tasks,
        Texts texts,
        Measures measures,
        Runnable undo,
        Consumer<Prefilled> write,
        Supplier<Optional<Id<Engine>>> engineInView,
        Runnable print) {}
