package witnessmark.desktop.shell;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import javax.swing.JMenu;
import javax.swing.JMenuBar;
import javax.swing.JMenuItem;
import javax.swing.JRadioButtonMenuItem;
import javax.swing.KeyStroke;
import witnessmark.desktop.form.Caption;
import witnessmark.desktop.form.Lettering;
import witnessmark.wording.Texts;

/** Every command of the window, and the menu bar made of them. A menu without a command does not appear. */
public final class Commands {
    private final List<Command> all;

    /** @throws IllegalArgumentException if two commands have the same key on the keyboard */
    public Commands(List<Command> all) {
        this.all = List.copyOf(all);
        Map<KeyStroke, String> taken = new HashMap<>();
        for (Command command : all) {
            KeyStroke stroke = command.accelerator();
            String other = stroke == null ? null : taken.put(stroke, command.key());
            if (other != null) {
                throw new IllegalArgumentException(command.key() + " and " + other + " share the key " + stroke);
            }
        }
    }

    public List<Command> all() {
        return all;
    }

    public JMenuBar menuBar(Texts texts) {
        JMenuBar bar = new JMenuBar();
        bar.getAccessibleContext().setAccessibleName(texts.get("shell.menuBar"));
        for (CommandMenu menu : CommandMenu.values()) {
            List<Command> in = all.stream().filter(c -> c.menu() == menu).toList();
            if (!in.isEmpty()) {
                bar.add(menu(texts, menu, in));
            }
        }
        return bar;
    }

    private static JMenu menu(Texts texts, CommandMenu which, List<Command> commands) {
        Caption caption = Caption.of(texts.get(which.key()));
        JMenu menu = new JMenu(caption.text());
        if (caption.mnemonic() != 0) {
            menu.setMnemonic(caption.mnemonic());
            menu.setDisplayedMnemonicIndex(caption.letter());
        }
        Map<Integer, List<Command>> sections = new TreeMap<>();
        for (Command command : commands) {
            sections.computeIfAbsent(command.section(), s -> new ArrayList<>()).add(command);
        }
        for (List<Command> section : sections.values()) {
            if (menu.getItemCount() > 0) {
                menu.addSeparator();
            }
            section.forEach(command -> menu.add(item(command)));
        }
        return menu;
    }

    private static JMenuItem item(Command command) {
        JMenuItem item = command.isChoice() ? new JRadioButtonMenuItem(command) : new JMenuItem(command);
        return Lettering.plain(item);
    }
}
