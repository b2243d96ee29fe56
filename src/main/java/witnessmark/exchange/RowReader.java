package witnessmark.exchange;

import java.time.ZoneId;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Entry;
import witnessmark.domain.Event;
import witnessmark.domain.Fact;
import witnessmark.domain.Id;
import witnessmark.domain.Standing;
import witnessmark.domain.Team;
import witnessmark.domain.image.Component;
import witnessmark.domain.image.FigureUnits;
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
    private final String[] headings;
    private final int[] places;
    private final int standing;
    private final int struckBecause;
    private final Heading heading;
    private final Reading reading;

    RowReader(RecordType<F> type, Heading heading, Reading reading) {
        this.type = type;
        this.components = type.components();
        this.types = components.stream().map(Component::type).toArray(Class<?>[]::new);
        this.headings = components.stream().map(Component::heading).toArray(String[]::new);
        this.places = Arrays.stream(headings).mapToInt(heading::place).toArray();
        this.standing = heading.place(Heading.STANDING);
        this.struckBecause = heading.place(Heading.STRUCK_BECAUSE);
        this.heading = heading;
        this.reading = reading;
    }

    /** A row while it is read. */
    private record Fields<F extends Fact>(
            long line, List<String> texts, @Nullable Entry<F> known, Map<Integer, String> own, Set<String> causes) {
        @Nullable
        String at(int place) {
            return place < 0 ? null : texts.get(place);
        }

        /** What the logbook has where the file has no such column. */
        @Nullable
        Object kept(Component component) {
            return known == null ? null : component.value(known.fact());
        }
    }

    /** The row, or null when not every field could be read. */
    @Nullable
    Row read(long line, List<String> texts) {
        int before = reading.problems().count();
        reading.problems().row(line, named(texts));
        if (texts.size() != heading.width()) {
            reading.problems().at(line, null, ProblemKind.ROW_LENGTH, texts.size(), heading.width());
            reading.leftOut().row(type.kind(), names(texts), type.file());
            return null;
        }
        UUID given = id(line, texts);
        Entry<F> known = given == null
                ? null
                : reading.known().of(type.kind()).find(new Id<>(given)).orElse(null);
        Fields<F> fields = new Fields<>(line, texts, known, new HashMap<>(), new LinkedHashSet<>());
        @Nullable Object[] values = values(fields);
        Standing standing = standing(fields);
        String because = fields.at(struckBecause);
        if (because == null && known != null) {
            because = known.struckBecause();
        }
        if (isLeftOut(fields, before)) {
            return null;
        }
        return new Row(
                line,
                label(fields),
                given == null ? reading.newId() : given,
                given != null,
                values,
                fields.own(),
                standing,
                because == null || because.isEmpty() ? null : because);
    }

    /** Whether a row has a fault of its own or waits for what is left out; both are noted. */
    private boolean isLeftOut(Fields<F> fields, int before) {
        if (fields.causes().isEmpty() && !reading.problems().countedSince(before)) {
            return false;
        }
        String cause = type.file();
        if (!fields.causes().isEmpty()) {
            cause = fields.causes().iterator().next();
            reading.problems().forgiveUnknown(before);
            if (!reading.problems().countedSince(before)) {
                reading.leftOut().waits(type.file(), cause);
            }
        }
        reading.leftOut().row(type.kind(), names(fields.texts()), cause);
        return true;
    }

    /** By what people find a row whatever its line: its name, and its id. */
    private String named(List<String> texts) {
        return Stream.concat(Sameness.NAME_HEADINGS.stream(), Stream.of(Heading.ID))
                .map(heading::place)
                .filter(place -> place >= 0 && place < texts.size())
                .map(place -> texts.get(place).strip())
                .filter(text -> !text.isEmpty())
                .map(Limits::shown)
                .collect(Collectors.joining(", "));
    }

    /** What other rows may call a row that is left out. */
    private List<String> names(List<String> texts) {
        return Stream.concat(Stream.of(Heading.ID), Sameness.NAME_HEADINGS.stream())
                .map(heading::place)
                .filter(place -> place >= 0 && place < texts.size())
                .map(texts::get)
                .toList();
    }

    private @Nullable Object[] values(Fields<F> fields) {
        @Nullable Object[] values = new Object[components.size()];
        for (int i = 0; i < values.length; i++) {
            if (types[i] != Moment.class && !FigureUnits.has(type.kind(), components.get(i))) {
                values[i] = value(i, fields);
            }
        }
        // a moment may need the zone of the event that the row names, so moments come last
        ZoneId wallClock = wallClock(values);
        for (int i = 0; i < values.length; i++) {
            if (types[i] == Moment.class) {
                values[i] = moment(i, fields, wallClock);
            }
        }
        amounts(fields, values);
        return values;
    }

    /** An amount is read once it is known what the row counts in; while that is not, the row is left out for it. */
    private void amounts(Fields<F> fields, @Nullable Object[] values) {
        for (int i = 0; i < values.length; i++) {
            if (FigureUnits.has(type.kind(), components.get(i))) {
                values[i] = amount(i, fields, values);
            }
        }
    }

    private @Nullable Object amount(int i, Fields<F> fields, @Nullable Object[] values) {
        Component component = components.get(i);
        String text = fields.at(places[i]);
        if (text == null) {
            return fields.kept(component);
        }
        FigureText written = FigureTexts.of(type, component, each -> values[components.indexOf(each)], reading.soFar());
        if (written == null || text.isBlank() && component.nullable()) {
            return null;
        }
        return figure(i, fields.line(), text.strip(), written.form(), stripped -> {
            long figure = written.read(stripped);
            boolean small = types[i] == Integer.class || types[i] == int.class;
            return small ? (Object) Math.toIntExact(figure) : (Object) figure;
        });
    }

    private @Nullable UUID id(long line, List<String> texts) {
        int place = heading.place(Heading.ID);
        String text = place < 0 ? "" : texts.get(place);
        if (text.isBlank()) {
            return null;
        }
        if (!WholeName.isId(text.strip())) {
            reading.problems().at(line, Heading.ID, ProblemKind.ID_UNREADABLE, Limits.shown(text));
            return null;
        }
        return UUID.fromString(text.strip());
    }

    private @Nullable Object value(int i, Fields<F> fields) {
        Component component = components.get(i);
        Class<? extends Fact> target = component.refersTo();
        String text = fields.at(places[i]);
        if (target != null) {
            return reference(i, target, fields, text);
        }
        if (text == null) {
            return fields.kept(component);
        }
        return types[i] == String.class
                ? component.parse(text)
                : figure(i, fields.line(), text.strip(), component::parse);
    }

    private @Nullable Object reference(int i, Class<? extends Fact> target, Fields<F> fields, @Nullable String text) {
        Component component = components.get(i);
        Object kept = text == null ? fields.kept(component) : null;
        if (target == type.kind() && (kept != null || (text != null && !text.isBlank()))) {
            fields.own().put(i, text == null ? component.text(kept) : text);
            return new Id<F>(Row.LATER);
        }
        if (text == null) {
            return kept;
        }
        if (text.isBlank()) {
            if (!component.nullable()) {
                unreadable(fields.line(), headings[i], text, component.form());
            }
            return null;
        }
        UUID id = References.resolve(
                reading.names(target), component, target, fields.line(), text, reading, fields.causes()::add);
        return id == null ? null : new Id<>(id);
    }

    private @Nullable Object moment(int i, Fields<F> fields, @Nullable ZoneId wallClock) {
        Component component = components.get(i);
        String text = fields.at(places[i]);
        if (text == null) {
            return fields.kept(component);
        }
        if (MomentText.lacksZone(text.strip(), reading.teamZone(), wallClock)) {
            String cause = reading.leftOut().causeOf(Team.class, "");
            if (cause != null) {
                fields.causes().add(cause);
                return null;
            }
        }
        return text.isBlank() && component.nullable()
                ? null
                : figure(
                        i,
                        fields.line(),
                        text.strip(),
                        stripped -> MomentText.read(stripped, reading.teamZone(), wallClock));
    }

    private @Nullable Object figure(int i, long line, String text, Function<String, @Nullable Object> parse) {
        return figure(i, line, text, components.get(i).form(), parse);
    }

    private @Nullable Object figure(
            int i, long line, String text, String form, Function<String, @Nullable Object> parse) {
        if (text.length() > Limits.FIGURE) {
            unreadable(line, headings[i], text, form);
            return null;
        }
        try {
            return parse.apply(text);
        } catch (RuntimeException cannotRead) { // which one a form throws is left open
            unreadable(line, headings[i], text, form);
            return null;
        }
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

    private Standing standing(Fields<F> fields) {
        String text = fields.at(standing);
        if (text == null) {
            return fields.known() == null ? Standing.IN_FORCE : fields.known().standing();
        }
        if (text.isBlank()) {
            return Standing.IN_FORCE;
        }
        for (Standing word : Standing.values()) {
            if (word.code().equals(text.strip())) {
                return word;
            }
        }
        unreadable(fields.line(), Heading.STANDING, text, STANDINGS);
        return Standing.IN_FORCE;
    }

    /** A row is called by its first text, else by whatever stands first in it. */
    private String label(Fields<F> fields) {
        for (int i = 0; i < types.length; i++) {
            String text = fields.at(places[i]);
            if (types[i] == String.class && text != null && !text.isBlank()) {
                return Limits.shown(text);
            }
        }
        return Limits.shown(fields.texts().stream()
                .filter(text -> !text.isBlank())
                .findFirst()
                .orElse(""));
    }

    private void unreadable(long line, String column, String text, String form) {
        reading.problems().at(line, column, ProblemKind.VALUE_UNREADABLE, column, Limits.shown(text), form);
    }
}
