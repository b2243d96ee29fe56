package witnessmark.domain;

import java.util.Arrays;
import java.util.Locale;

/** The sides of a place that are looked at apart: of shells the upper and the lower, of valves and what is on them inlet and exhaust. */
public enum PlaceSide {
    WHOLE(""),
    UPPER("upper"),
    LOWER("lower"),
    INLET("inlet"),
    EXHAUST("exhaust");

    private final String word;

    PlaceSide(String word) {
        this.word = word;
    }

    /** As it begins the spot of a finding; empty for the whole. */
    public String word() {
        return word;
    }

    /** The side a spot begins with; the whole where it begins with none. */
    public static PlaceSide of(String spot) {
        return Arrays.stream(values())
                .filter(side -> side != WHOLE && side.begins(spot))
                .findFirst()
                .orElse(WHOLE);
    }

    private boolean begins(String spot) {
        return spot.toLowerCase(Locale.ROOT).startsWith(word)
                && (spot.length() == word.length() || !Character.isLetterOrDigit(spot.charAt(word.length())));
    }

    /** A spot without this side, where it begins with it. */
    public String beyond(String spot) {
        return begins(spot) ? spot.substring(word.length()).strip() : spot;
    }

    /** A spot on this side. */
    public String spot(String beyond) {
        return (word + " " + beyond.strip()).strip();
    }
}
