package witnessmark.desktop.shell;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.function.Supplier;
import witnessmark.desktop.form.Keys;
import witnessmark.wording.Texts;

/** Finds commands by their name, their tip or other words for them: "dark", "export", "pistons". Disabled ones are left out. */
final class CommandsFindable implements Findable {
    private final Texts texts;
    private final Supplier<List<Command>> commands;

    CommandsFindable(Texts texts, Supplier<List<Command>> commands) {
        this.texts = texts;
        this.commands = commands;
    }

    @Override
    public String group() {
        return texts.get("shell.find.commands");
    }

    @Override
    public String all(int count) {
        return texts.get("shell.find.commands.all", count);
    }

    @Override
    public List<Found> find(String typed, int most) {
        String asked = plain(typed);
        String[] words = asked.split("\\s+");
        return commands.get().stream()
                .filter(Command::isEnabled)
                .filter(command -> matches(command, words))
                .sorted(Comparator.comparingInt(command -> rank(command, asked, words[0])))
                .limit(most)
                .map(CommandsFindable::found)
                .toList();
    }

    @Override
    public boolean isCalled(String typed) {
        String asked = plain(typed);
        return commands.get().stream()
                .anyMatch(
                        command -> command.isEnabled() && plain(command.name()).equals(asked));
    }

    /** Without the dots of a name that asks for more. */
    private static String plain(String name) {
        return name.toLowerCase(Locale.ROOT)
                .replaceAll("(\\u2026|\\.\\.\\.)$", "")
                .strip();
    }

    private static boolean matches(Command command, String[] words) {
        String all = (command.name() + " " + command.tip() + " " + command.also()).toLowerCase(Locale.ROOT);
        for (String word : words) {
            if (!all.contains(word)) {
                return false;
            }
        }
        return true;
    }

    /**
     * The one called just so stands first, then those whose names or other words begin with all that was typed. Of the
     * first word, a name that begins so stands before one that holds it, that before a tip, and that before other words.
     */
    private static int rank(Command command, String asked, String word) {
        String name = plain(command.name());
        if (name.equals(asked)) {
            return 0;
        }
        if (name.startsWith(asked) || command.also().toLowerCase(Locale.ROOT).startsWith(asked)) {
            return 1;
        }
        if (name.startsWith(word)) {
            return 2;
        }
        if (name.contains(word)) {
            return 3;
        }
        return command.tip().toLowerCase(Locale.ROOT).contains(word) ? 4 : 5;
    }

    private static Found found(Command command) {
        var key = command.accelerator();
        return new Found(command.name(), key == null ? "" : Keys.words(key), command::perform);
    }
}
