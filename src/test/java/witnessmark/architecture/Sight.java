package witnessmark.architecture;

import java.util.LinkedHashMap;
import java.util.Map;

/** What one room sees of others: a room whole, or one sub-package of it. */
final class Sight {
    private static final String WHOLE = "";

    private final Map<Room, String> parts = new LinkedHashMap<>();

    static Sight nothing() {
        return new Sight();
    }

    /** The three value rooms, which every outer room sees. */
    static Sight values() {
        return nothing().whole(Room.QUANTITY, Room.OUTCOME, Room.DOMAIN);
    }

    Sight whole(Room... rooms) {
        for (Room room : rooms) {
            parts.put(room, WHOLE);
        }
        return this;
    }

    /** These rooms, whole, and whatever they see. */
    Sight downFrom(Room... rooms) {
        for (Room room : rooms) {
            room.sight().parts.forEach((seen, part) -> parts.merge(seen, part, Sight::wider));
            whole(room);
        }
        return this;
    }

    /** The records these rooms return, never what works them out. */
    Sight results(Room... rooms) {
        for (Room room : rooms) {
            parts.merge(room, "result", Sight::wider);
        }
        return this;
    }

    /** The interfaces through which the use cases reach outside. */
    Sight portsOfLogbook() {
        parts.merge(Room.LOGBOOK, "port", Sight::wider);
        return this;
    }

    boolean reaches(Room room, String packageName) {
        String part = parts.get(room);
        if (part == null) {
            return false;
        }
        String within = part.equals(WHOLE) ? room.packageName() : room.packageName() + "." + part;
        return packageName.equals(within) || packageName.startsWith(within + ".");
    }

    /** What is seen of a room, in words for a message. */
    String seenOf(Room room) {
        String part = parts.get(room);
        if (part == null) {
            return "nothing of " + room.label();
        }
        return part.equals(WHOLE) ? "all of " + room.label() : "only " + room.label() + "." + part;
    }

    private static String wider(String one, String other) {
        return one.equals(WHOLE) || other.equals(WHOLE) ? WHOLE : one;
    }
}
