package witnessmark.logbook.building;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import witnessmark.domain.Id;
import witnessmark.domain.Position;

/**
 * One field of the page of a build.
 *
 * @param row of the build as a whole, of a position, or of a group of fasteners
 * @param name which field there
 */
public record BuildField(String row, Name name) {
    /** The row of what is said of the build as a whole. */
    public static final String BUILD = "";

    private static final String POSITION = "position ";
    private static final String JOINT = "joint ";
    private static final String BETWEEN = ": ";

    /** What can be typed or picked. */
    public enum Name {
        /** The zones opened, by their codes with commas between. */
        ZONES,
        OPENED,
        OPENED_TIME,
        /** What the build is for. */
        NOTE,
        /** The day of what is done: parts out and in, groups tightened. */
        WHEN,
        WHEN_TIME,
        CLOSED,
        CLOSED_TIME,
        SIGNED,
        SECOND,
        WORDS,
        /** Where what comes out goes: the code of a {@link Goes}, empty while it stays in. */
        OUT,
        WHY,
        CONDITION,
        /** The member of a set that is meant, by the text of its identity. */
        MEMBER,
        /** To whom it goes, and what is asked of them. */
        SENT_TO,
        ASKED,
        /** What goes in: what {@link BuildDraft#part} gives for it, empty for nothing. */
        IN,
        /** The mark of an item of a batch. */
        MARK,
        /** Why something else than the parts list names is fitted. */
        ACCEPTED,
        FASTENERS,
        WHICH,
        STAGE,
        METHOD,
        VALUE,
        LUBRICANT,
        TOOL,
        TIGHTENED_BY,
        LOOKED_ON;

        String code() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    public static BuildField of(Name name) {
        return new BuildField(BUILD, name);
    }

    public static BuildField of(Id<Position> position, Name name) {
        return new BuildField(row(position), name);
    }

    /** @param number of the group of fasteners on the page, from 1 */
    public static BuildField ofJoint(int number, Name name) {
        return new BuildField(JOINT + number, name);
    }

    public static String row(Id<Position> position) {
        return POSITION + position.text();
    }

    /** The position a row is of. */
    public static Optional<Id<Position>> position(String row) {
        return row.startsWith(POSITION) ? Optional.of(Id.parse(row.substring(POSITION.length()))) : Optional.empty();
    }

    /** The number of the group of fasteners a row is of. */
    public static Optional<Integer> joint(String row) {
        return row.startsWith(JOINT) ? Optional.of(Integer.valueOf(row.substring(JOINT.length()))) : Optional.empty();
    }

    /** How it is named in a draft. */
    public String key() {
        return row + BETWEEN + name.code();
    }

    /** What {@link #key} named; empty for anything else. */
    public static Optional<BuildField> parse(String key) {
        int at = key.lastIndexOf(BETWEEN);
        return at < 0
                ? Optional.empty()
                : Arrays.stream(Name.values())
                        .filter(name -> name.code().equals(key.substring(at + BETWEEN.length())))
                        .findFirst()
                        .map(name -> new BuildField(key.substring(0, at), name));
    }
}
