package witnessmark.wording;

import java.util.Locale;
import witnessmark.outcome.Place;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;

/**
 * A problem in words. It has three parts: what happened, what that means for the entries, and what to do. The note
 * line under a field takes the first and last, everything else all three.
 */
public final class Problems {
    private final Texts texts;
    private final FactWords facts;

    /** Words problems in the language and units of the measures. */
    public Problems(Texts texts, Measures measures) {
        this.texts = texts;
        this.facts = new FactWords(texts, measures);
    }

    /** All three parts, after the place it was read from. */
    public String sentence(Problem problem) {
        return texts.get("problems.three_parts", happened(problem), meaning(problem), remedy(problem));
    }

    /** The same where something was typed into a form, which keeps it. */
    public String typed(Problem problem) {
        String meaning = problem.stops() ? texts.get("problems.typed", meaning(problem)) : meaning(problem);
        return texts.get("problems.three_parts", happened(problem), meaning, remedy(problem));
    }

    /** What happened and what to do, for the line under a field. */
    public String note(Problem problem) {
        return texts.get("problems.two_parts", happened(problem), remedy(problem));
    }

    /** What happened, after the place it was read from: {@code engines.csv, line 12 (K05), column design: …}. */
    public String happened(Problem problem) {
        String what = capital(part(problem, "what"));
        Place place = problem.place();
        boolean named = place != null && what.startsWith(place(place) + " ");
        return place == null || named ? what : texts.get("problems.placed", place(place), what);
    }

    /** What it means for what is written or typed. */
    public String meaning(Problem problem) {
        return part(problem, "data");
    }

    /** What to do about it. */
    public String remedy(Problem problem) {
        return part(problem, "do");
    }

    /** A place in a text file: {@code engines.csv, line 12 (K05), column design}. */
    public String place(Place place) {
        String line = Long.toString(place.row());
        String row = place.row() == 0
                ? place.file()
                : place.named().isEmpty()
                        ? texts.get("problems.place.line", place.file(), line)
                        : texts.get("problems.place.named", place.file(), line, place.named());
        String column = place.column();
        return column == null ? row : texts.get("problems.place.column", row, column);
    }

    /** The key of one part: {@code what}, {@code data} or {@code do}. */
    static String key(ProblemKind kind, String part) {
        return "problems." + kind.name().toLowerCase(Locale.ROOT) + "." + part;
    }

    private String part(Problem problem, String part) {
        return texts.get(
                key(problem.kind(), part),
                facts.words(problem.kind(), problem.facts()).toArray());
    }

    /** A sentence begins with a capital, whatever word fills its first blank; the name of a file stays as it is. */
    private String capital(String sentence) {
        int space = sentence.indexOf(' ');
        if (space > 0 && sentence.substring(0, space).indexOf('.') >= 0) {
            return sentence;
        }
        int first = sentence.offsetByCodePoints(0, Math.min(1, sentence.codePointCount(0, sentence.length())));
        return sentence.substring(0, first).toUpperCase(texts.locale()) + sentence.substring(first);
    }
}
