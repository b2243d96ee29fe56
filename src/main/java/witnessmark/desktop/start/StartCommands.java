package witnessmark.desktop.start;

import java.awt.event.KeyEvent;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javax.swing.KeyStroke;
import org.jspecify.annotations.Nullable;
import witnessmark.desktop.bank.BankStatements;
import witnessmark.desktop.form.Keys;
import witnessmark.desktop.keeping.KeepingPages;
import witnessmark.desktop.shell.Command;
import witnessmark.desktop.shell.CommandMenu;
import witnessmark.wording.Texts;

/** What the Logbook menu offers about the logbook as a whole. */
final class StartCommands {
    private final Texts texts;
    private final List<Command> all = new ArrayList<>();

    /** What the commands do. */
    record Work(
            Runnable startOwn,
            Runnable openAnother,
            Runnable who,
            SeasonFolder folder,
            Keeping keeping,
            KeepingPages copies,
            FileOut calendar,
            FileOut jobSheet,
            BankStatements bank,
            FileOut season,
            FileOut seasonSheet,
            Runnable buildSheet,
            Runnable faceSheet,
            Runnable stripSheet,
            Runnable caseSheet,
            Runnable tags,
            @Nullable Runnable walkOn) {}

    StartCommands(StartContext context, Work work) {
        this.texts = context.texts();
        add("beforewego.command.new", 1, Keys.menu(KeyEvent.VK_N), work.startOwn());
        add("beforewego.command.open", 1, Keys.menu(KeyEvent.VK_O), work.openAnother());
        add("beforewego.command.sample", 1, null, context.opening()::openSample);
        walkOn(work.walkOn());
        recent(context);
        add("jobsheet.command.print", 3, Keys.menu(KeyEvent.VK_P), work.jobSheet()::writeOut);
        add("beforewego.command.import", 3, null, work.folder()::bringIn);
        add("beforewego.command.export", 3, null, work.folder()::writeOut);
        add("beforewego.command.calendar", 3, null, work.calendar()::writeOut);
        add("bank.command.take", 3, null, work.bank()::takeIn);
        add("bank.command.match", 3, null, work.bank()::match);
        add("seasonsheet.command.print", 3, null, work.seasonSheet()::writeOut);
        add("buildsheet.command.print", 3, null, work.buildSheet());
        add("facesheet.command.print", 3, null, work.faceSheet());
        add("stripsheet.command.print", 3, null, work.stripSheet());
        add("casesheet.command.print", 3, null, work.caseSheet());
        add("tags.command.print", 3, null, work.tags());
        add("season.command.export", 3, null, work.season()::writeOut);
        add("beforewego.command.backUp", 4, null, work.keeping()::backUp);
        add("beforewego.command.check", 4, null, work.keeping()::check);
        keeping(work.copies());
        all.add(new Command(texts, "beforewego.command.who", CommandMenu.RECORD, 5, null, work.who()));
    }

    List<Command> all() {
        return List.copyOf(all);
    }

    private void walkOn(@Nullable Runnable walk) {
        if (walk == null) {
            add("beforewego.command.walkOn", 1, null, () -> {}).disable(texts.get("beforewego.command.walkOn.own"));
        } else {
            add("beforewego.command.walkOn", 1, null, walk);
        }
    }

    private void keeping(KeepingPages copies) {
        add("keeping.command.second", 4, null, copies::secondPlace);
        add("keeping.command.copy", 4, null, copies::saveCopy);
        add("keeping.command.restore", 4, null, copies::restore);
        add("keeping.command.salvage", 4, null, copies::salvage);
    }

    private void recent(StartContext context) {
        List<Path> recent = new RecentLogbooks(context.settings()).list();
        if (recent.isEmpty()) {
            add("beforewego.command.recent", 2, null, () -> {}).disable(texts.get("beforewego.command.recent.none"));
        }
        for (Path path : recent) {
            Command command = add(
                    "beforewego.command.recent",
                    2,
                    null,
                    () -> context.opening().open(path));
            command.rename(texts.get("beforewego.command.recent.named", LogbookNames.shown(path)));
            command.putValue(javax.swing.Action.SHORT_DESCRIPTION, path.toString());
            command.putValue(javax.swing.Action.MNEMONIC_KEY, null);
        }
    }

    private Command add(String key, int section, @Nullable KeyStroke stroke, Runnable work) {
        Command command = new Command(texts, key, CommandMenu.LOGBOOK, section, stroke, work);
        all.add(command);
        return command;
    }
}
