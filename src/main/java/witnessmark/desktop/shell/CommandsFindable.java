package witnessmark.desktop.shell;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.function.Supplier;
import witnessmark.desktop.form.Keys;
import witnessmark.wording.Texts;

/** Finds commands by their name, their tip or other words for them: "dark", "export", "pistons". Disabled ones are left out. */
final class CommandsFindable implements Findable {
    /** So many letters begin a word that may be meant; fewer are as likely the number of an engine. */
    private static final int LETTERS = 3;

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
                .filter(Command::isEnabled)
                .anyMatch(command ->
                        plain(command.name()).equals(asked) || asked.length() >= LETTERS && begins(command, asked));
    }

    @Override
    public boolean isNamed(String typed) {
        String asked = plain(typed);
        return commands.get().stream()
                .filter(Command::isEnabled)
                .map(command -> plain(command.name()))
                .anyMatch(name -> name.equals(asked) || asked.length() >= LETTERS && name.startsWith(asked));
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
     * The one called just so stands first, then those whose names begin with all that was typed, then those with a word of
     * their name or another word for them that does. Of the first word alone, a name that begins so stands before one that
     * holds it, that before a tip, and that before other words.
     */
    private static int rank(Command command, String asked, String word) {
        String name = plain(command.name());
        if (name.equals(asked)) {
            return 0;
        }
        if (name.startsWith(asked)) {
            return 1;
        }
        if (name.contains(" " + asked)) {
            return 2;
        }
        if (begins(command, asked)) {
            return 3;
        }
        if (name.startsWith(word)) {
            return 4;
        }
        if (name.contains(word)) {
            return 5;
        }
        return command.tip().toLowerCase(Locale.ROOT).contains(word) ? 6 : 7;
    }

    /** Whether a name, or one of the other words people look for, begins so. */
    private static boolean begins(Command command, String typed) {
        return command.name().toLowerCase(Locale.ROOT).startsWith(typed)
                || (" " + command.also().toLowerCase(Locale.ROOT)).contains(" " + typed);
    }

    private static Found found(Command command) {
        var key = command.accelerator();
        return new Found(command.name(), key == null ? "" : Keys.words(key), command::perform);
    }
}
