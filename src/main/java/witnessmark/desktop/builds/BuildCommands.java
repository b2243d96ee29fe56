package witnessmark.desktop.builds;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import witnessmark.desktop.shell.Command;
import witnessmark.desktop.shell.CommandMenu;
import witnessmark.domain.Engine;
import witnessmark.domain.Id;
import witnessmark.wording.Texts;

/** What the menus offer of builds. */
public final class BuildCommands {
    private BuildCommands() {}

    /** @param inView the engine somebody looks at */
    public static List<Command> of(Texts texts, BuildAside page, Supplier<Optional<Id<Engine>>> inView) {
        return List.of(
                new Command(
                        texts,
                        "builds.command.page",
                        CommandMenu.RECORD_WORK,
                        2,
                        null,
                        () -> page.openFor(inView.get())),
                new Command(
                        texts,
                        "builds.command.open",
                        CommandMenu.RECORD_WORK,
                        2,
                        null,
                        () -> page.openAnewFor(inView.get())));
    }
}
