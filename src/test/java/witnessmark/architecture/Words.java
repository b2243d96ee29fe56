package witnessmark.architecture;

import java.util.List;
import java.util.Locale;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** A list of words kept as a test resource, found in text as whole words, letter case aside. */
final class Words {
    private final Pattern pattern;

    private Words(Pattern pattern) {
        this.pattern = pattern;
    }

    /** Reads a list: one word or phrase a line, lines from # on are comments. */
    static Words listed(String file) {
        String any = SourceTree.text(SourceTree.root().resolve("src/test/resources/architecture/" + file))
                .lines()
                .filter(line -> !line.isBlank() && !line.startsWith("#"))
                .map(Pattern::quote)
                .collect(Collectors.joining("|"));
        return new Words(Pattern.compile("\\b(" + any + ")\\b", Pattern.CASE_INSENSITIVE));
    }

    List<String> in(String text) {
        return pattern.matcher(text)
                .results()
                .map(MatchResult::group)
                .map(word -> word.toLowerCase(Locale.ROOT))
                .distinct()
                .toList();
    }
}
