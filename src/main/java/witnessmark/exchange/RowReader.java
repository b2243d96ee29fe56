package witnessmark.exchange;

import java.time.ZoneId;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Entry;
import witnessmark.domain.Event;
import witnessmark.domain.Fact;
import witnessmark.domain.Id;
import witnessmark.domain.Standing;
import witnessmark.domain.image.Component;
import witnessmark.domain.image.RecordType;
import witnessmark.outcome.ProblemKind;
import witnessmark.quantity.Moment;

/**
 * Reads the fields of one row of a file. Every field that cannot be read is a problem of its own. A column that the
 * file does not have says nothing: a row that is in the logbook keeps there what it has.
 */
final class RowReader<F extends Fact> {
    private static final String STANDINGS = String.join(
            ", ", Arrays.stream(Standing.values()).map(Standing::code).toList());

    private final RecordType<F> type;
    private final List<Component> components;
    private final Class<?>[] types;
    private final Heading heading;
    private final Reading reading;

    RowReader(RecordType<F> type, Heading heading, Reading reading) {
        this.type = type;
        this.components = type.components();
        this.types = Arrays.stream(type.kind().getRecordComponents())
                .map(component -> component.getType())
                .toArray(Class<?>[]::new);
        this.heading = heading;
        this.reading = reading;
    }

    /** The row, or null when not every field could be read. */
    @Nullable
    Row read(long line, List<String> fields) {
        int before = reading.problems().count();
        if (fields.size() != heading.width()) {
            reading.problems().at(line, null, ProblemKind.ROW_LENGTH, fields.size(), heading.width());
            return null;
        }
        UUID given = id(line, fields);
        Entry<F> known = given == null
                ? null
                : reading.known().of(type.kind()).find(new Id<>(given)).orElse(null);
        @Nullable Object[] values = new Object[components.size()];
        Map<Integer, String> own = new HashMap<>();
        // a moment may need the zone of the event that the row names, so moments come last
        for (int i = 0; i < values.length; i++) {
            if (types[i] != Moment.class) {
                values[i] = value(i, line, fields, known, own);
            }
        }
        ZoneId wallClock = wallClock(values);
        for (int i = 0; i < values.length; i++) {
            if (types[i] == Moment.class) {
                values[i] = moment(components.get(i), line, fields, known, wallClock);
            }
        }
        Standing standing = standing(line, fields, known);
        String because = heading.field(fields, Heading.STRUCK_BECAUSE);
        if (because == null) {
            because = known == null ? null : known.struckBecause();
        }
        return reading.problems().countedSince(before)
                ? null
                : new Row(
                        line,
                        label(fields),
                        given == null ? reading.newId() : given,
                        given != null,
                        values,
                        own,
                        standing,
                        because == null || because.isEmpty() ? null : because);
    }

    /** A row is called by its first text, else by whatever stands first in it. */
    private String label(List<String> fields) {
        for (int i = 0; i < types.length; i++) {
            String text = heading.field(fields, components.get(i).heading());
            if (types[i] == String.class && text != null && !text.isBlank()) {
                return Limits.shown(text);
            }
        }
        return Limits.shown(
                fields.stream().filter(text -> !text.isBlank()).findFirst().orElse(""));
    }

    private @Nullable UUID id(long line, List<String> fields) {
        String text = heading.field(fields, Heading.ID);
        if (text == null || text.isBlank()) {
            return null;
        }
        if (!WholeName.isId(text.strip())) {
            unreadable(line, Heading.ID, text, "01976c2e-0000-7000-8000-000000000000");
            return null;
        }
        return UUID.fromString(text.strip());
    }

    private @Nullable Object value(
            int i, long line, List<String> fields, @Nullable Entry<F> known, Map<Integer, String> own) {
        Component component = components.get(i);
        Class<? extends Fact> target = component.refersTo();
        String text = heading.field(fields, component.heading());
        if (text == null) {
            Object kept = known == null ? null : component.value(known.fact());
            if (target == type.kind() && kept != null) {
                own.put(i, component.text(kept));
                return new Id<F>(Row.LATER);
            }
            return kept;
        }
        if (target == null) {
            return cell(component, line, types[i] == String.class ? text : text.strip());
        }
        if (text.isBlank()) {
            if (!component.nullable()) {
                unreadable(line, component.heading(), text, component.form());
            }
            return null;
        }
        if (target == type.kind()) {
            own.put(i, text);
            return new Id<F>(Row.LATER);
        }
        return reference(component, target, line, text);
    }

    private @Nullable Object reference(Component component, Class<? extends Fact> target, long line, String text) {
        UUID id = References.resolve(reading.names(target), component, target, line, text, reading.problems());
        return id == null ? null : new Id<>(id);
    }

    private @Nullable Object cell(Component component, long line, String text) {
        if (text.length() <= Limits.FIGURE || component.form().equals("text")) {
            try {
                return component.parse(text);
            } catch (RuntimeException e) {
                // what a form throws for a text it cannot read is left open
                unreadable(line, component.heading(), text, component.form());
                return null;
            }
        }
        unreadable(line, component.heading(), text, component.form());
        return null;
    }

    private @Nullable Object moment(
            Component component, long line, List<String> fields, @Nullable Entry<F> known, @Nullable ZoneId wallClock) {
        String text = heading.field(fields, component.heading());
        if (text == null) {
            return known == null ? null : component.value(known.fact());
        }
        String stripped = text.strip();
        if (stripped.isEmpty() && component.nullable()) {
            return null;
        }
        if (stripped.length() <= Limits.FIGURE) {
            try {
                return MomentText.read(stripped, reading.teamZone(), wallClock);
            } catch (RuntimeException e) {
                // java.time throws more than DateTimeException for years far away
                unreadable(line, component.heading(), text, component.form());
                return null;
            }
        }
        unreadable(line, component.heading(), text, component.form());
        return null;
    }

    /** The zone of the clock on the wall: the row's own, else that of the event it names, else the team's. */
    private @Nullable ZoneId wallClock(@Nullable Object[] values) {
        for (int i = 0; i < values.length; i++) {
            if (values[i] instanceof ZoneId zone) {
                return zone;
            }
            if (components.get(i).refersTo() == Event.class && values[i] instanceof Id<?> id) {
                return reading.zoneOf(new Id<>(id.value()));
            }
        }
        return reading.teamZone();
    }

    private Standing standing(long line, List<String> fields, @Nullable Entry<F> known) {
        String text = heading.field(fields, Heading.STANDING);
        if (text == null) {
            return known == null ? Standing.IN_FORCE : known.standing();
        }
        if (text.isBlank()) {
            return Standing.IN_FORCE;
        }
        for (Standing standing : Standing.values()) {
            if (standing.code().equals(text.strip())) {
                return standing;
            }
        }
        unreadable(line, Heading.STANDING, text, STANDINGS);
        return Standing.IN_FORCE;
    }

    private void unreadable(long line, String column, String text, String form) {
        reading.problems().at(line, column, ProblemKind.VALUE_UNREADABLE, column, Limits.shown(text), form);
    }
}
