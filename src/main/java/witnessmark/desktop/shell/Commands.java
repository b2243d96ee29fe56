package witnessmark.desktop.shell;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import javax.swing.JMenu;
import javax.swing.JMenuBar;
import javax.swing.JMenuItem;
import javax.swing.JRadioButtonMenuItem;
import javax.swing.KeyStroke;
import org.jspecify.annotations.Nullable;
import witnessmark.desktop.form.Caption;
import witnessmark.desktop.form.Lettering;
import witnessmark.wording.Texts;

/** Every command of the window, and the menu bar made of them. A menu without a command does not appear. */
public final class Commands {
    private static final int SECTION_OF_MENUS = 3;

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
        menusWithin(texts, null).forEach(bar::add);
        return bar;
    }

    private List<JMenu> menusWithin(Texts texts, @Nullable CommandMenu outer) {
        return Arrays.stream(CommandMenu.values())
                .filter(menu -> menu.within() == outer)
                .map(menu -> menu(texts, menu))
                .filter(menu -> menu.getItemCount() > 0)
                .toList();
    }

    /** Its commands section by section; the menus within it are a section too. */
    private JMenu menu(Texts texts, CommandMenu which) {
        Caption caption = Caption.of(texts.get(which.key()));
        JMenu menu = Lettering.plain(new JMenu(caption.text()));
        if (caption.mnemonic() != 0) {
            menu.setMnemonic(caption.mnemonic());
            menu.setDisplayedMnemonicIndex(caption.letter());
        }
        Map<Integer, List<JMenuItem>> sections = new TreeMap<>();
        for (Command command : all) {
            if (command.menu() == which) {
                sections.computeIfAbsent(command.section(), s -> new ArrayList<>())
                        .add(item(command));
            }
        }
        for (JMenu inner : menusWithin(texts, which)) {
            sections.computeIfAbsent(SECTION_OF_MENUS, s -> new ArrayList<>()).add(inner);
        }
        for (List<JMenuItem> section : sections.values()) {
            if (menu.getItemCount() > 0) {
                menu.addSeparator();
            }
            section.forEach(menu::add);
        }
        return menu;
    }

    private static JMenuItem item(Command command) {
        JMenuItem item = command.isChoice() ? new JRadioButtonMenuItem(command) : new JMenuItem(command);
        return Lettering.plain(item);
    }
}
