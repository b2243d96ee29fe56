package witnessmark.desktop.bank;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import witnessmark.desktop.form.SheetTools;
import witnessmark.desktop.shell.Aside;
import witnessmark.desktop.shell.Desk;
import witnessmark.logbook.port.Ids;
import witnessmark.logbook.port.StatementFiles;
import witnessmark.outcome.Problem;
import witnessmark.wording.Measures;

/**
 * What the pages of statements stand on.
 *
 * @param tools texts, background work and settings
 * @param window what a place can ask of the window
 * @param logbook the logbook in hand
 * @param files reads statements
 * @param ids gives new identities
 * @param choose asks for a statement
 * @param show puts a page in the window
 * @param dismiss takes it away again
 * @param undo takes the last change back and says so
 * @param refused says why something did not work
 */
public record BankContext(
        SheetTools tools,
        Measures measures,
        Desk window,
        witnessmark.logbook.Desk logbook,
        StatementFiles files,
        Ids ids,
        Supplier<Optional<Path>> choose,
        Consumer<Aside> show,
        Runnable dismiss,
        Runnable undo,
        Consumer<List<Problem>> refused) {}
