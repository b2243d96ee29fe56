package witnessmark.desktop.traces;

import java.awt.event.KeyEvent;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import witnessmark.desktop.form.Keys;
import witnessmark.desktop.shell.Command;
import witnessmark.desktop.shell.CommandMenu;
import witnessmark.domain.Id;
import witnessmark.domain.Run;
import witnessmark.wording.Texts;

/** What the menus offer of traces. */
public final class TraceCommands {
    private TraceCommands() {}

    /** @param inView the written run somebody looks at */
    public static List<Command> of(Texts texts, TracePage page, Supplier<Optional<Id<Run>>> inView) {
        return List.of(new Command(
                texts,
                "traces.command",
                CommandMenu.RECORD,
                2,
                Keys.menu(KeyEvent.VK_T),
                () -> inView.get().ifPresentOrElse(page::openFor, page::open)));
    }
}
