package witnessmark.domain.image;

import java.lang.invoke.MethodHandle;
import java.lang.invoke.MethodHandles;
import java.lang.reflect.AnnotatedType;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.AddedLater;
import witnessmark.domain.Fact;
import witnessmark.domain.Id;

/** One component of a fact: its columns in the file, its heading in the season folder. */
public final class Component {
    private final String name;
    private final String heading;
    private final boolean nullable;
    private final boolean addedLater;
    private final ValueForm form;
    private final MethodHandle accessor;
    private final List<Column> columns;
    private final @Nullable Class<? extends Fact> refersTo;

    Component(RecordComponent component) {
        this.name = component.getName();
        this.nullable = nullable(component.getAnnotatedType());
        this.addedLater = component.isAnnotationPresent(AddedLater.class);
        this.form = ValueForms.of(component.getGenericType());
        try {
            this.accessor = MethodHandles.publicLookup().unreflect(component.getAccessor());
        } catch (IllegalAccessException e) {
            throw new IllegalArgumentException("a fact is a public record: " + component, e);
        }
        this.refersTo = reference(component);
        String snake = name.replaceAll("([A-Z])", "_$1").toLowerCase(Locale.ROOT);
        this.heading = snake + form.headingSuffix();
        List<Column> made = new ArrayList<>();
        for (int i = 0; i < form.suffixes().size(); i++) {
            made.add(new Column(snake + form.suffixes().get(i), form.storages().get(i), nullable));
        }
        this.columns = List.copyOf(made);
    }

    /** As the record spells it. */
    public String name() {
        return name;
    }

    public boolean nullable() {
        return nullable;
    }

    /** Whether season folders were written before its record had it. */
    public boolean addedLater() {
        return addedLater;
    }

    /** The type of its value. */
    public Class<?> type() {
        return accessor.type().returnType();
    }

    /** Its columns in the logbook file. */
    public List<Column> columns() {
        return columns;
    }

    /** Its heading in the season folder, unit last; a reference is named after what it refers to. */
    public String heading() {
        return heading;
    }

    /** The form expected of its text, for the sentence when it cannot be read. */
    public String form() {
        return form.form();
    }

    /** The kind of fact this refers to, or null when it is no reference. */
    public @Nullable Class<? extends Fact> refersTo() {
        return refersTo;
    }

    /** The value of this component in a fact. */
    public @Nullable Object value(Fact fact) {
        try {
            return accessor.invoke(fact);
        } catch (Throwable e) {
            throw new IllegalStateException("an accessor of a record failed: " + name, e);
        }
    }

    /**
     * The value of this component in an {@linkplain EntryImage image}; null where it is empty.
     *
     * @throws IllegalArgumentException if the image shows no possible value
     */
    public @Nullable Object value(Map<String, ? extends @Nullable Object> image) {
        @Nullable
        Object[] part = columns.stream().map(column -> image.get(column.name())).toArray();
        return part[0] == null ? null : form.join().apply(part);
    }

    /** A value as text; empty for null. */
    public String text(@Nullable Object value) {
        return value == null ? "" : form.text().apply(value);
    }

    /**
     * Reads text back. Empty text is null where the component may be null.
     *
     * @throws RuntimeException (IllegalArgumentException or DateTimeException) if it cannot be read
     */
    public @Nullable Object parse(String text) {
        return text.isEmpty() && nullable ? null : form.parse().apply(text);
    }

    void put(@Nullable Object value, @Nullable Object[] row, int at) {
        if (value != null) {
            Object[] split = form.split().apply(value);
            System.arraycopy(split, 0, row, at, split.length);
        }
    }

    @Nullable
    Object get(@Nullable Object[] row, int at) {
        if (row[at] == null) {
            if (!nullable) {
                throw new IllegalArgumentException(columns.get(0).name() + " must not be empty");
            }
            return null;
        }
        @Nullable Object[] part = new Object[columns.size()];
        System.arraycopy(row, at, part, 0, part.length);
        return form.join().apply(part);
    }

    private static boolean nullable(AnnotatedType type) {
        return type.isAnnotationPresent(Nullable.class);
    }

    private static @Nullable Class<? extends Fact> reference(RecordComponent component) {
        if (component.getGenericType() instanceof ParameterizedType generic && generic.getRawType() == Id.class) {
            return ((Class<?>) generic.getActualTypeArguments()[0]).asSubclass(Fact.class);
        }
        return null;
    }
}
