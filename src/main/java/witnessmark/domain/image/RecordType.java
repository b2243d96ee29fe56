package witnessmark.domain.image;

import java.lang.reflect.Constructor;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.time.DateTimeException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Fact;

/**
 * A kind of fact as a flat record: its table in the logbook file and its file in the season folder.
 *
 * @param <F> the kind of fact
 */
public final class RecordType<F extends Fact> {
    private final String name;
    private final String file;
    private final Class<F> kind;
    private final List<Component> components;
    private final List<Column> columns;
    private final List<String> addedLater;
    private final Constructor<F> constructor;

    RecordType(String name, String file, Class<F> kind) {
        this.name = name;
        this.file = file;
        this.kind = kind;
        RecordComponent[] parts = kind.getRecordComponents();
        this.components = Arrays.stream(parts).map(Component::new).toList();
        this.columns = components.stream().flatMap(c -> c.columns().stream()).toList();
        this.addedLater = components.stream()
                .filter(Component::addedLater)
                .flatMap(c -> c.columns().stream())
                .map(Column::name)
                .toList();
        try {
            this.constructor = kind.getConstructor(
                    Arrays.stream(parts).map(RecordComponent::getType).toArray(Class<?>[]::new));
        } catch (NoSuchMethodException e) {
            throw new IllegalArgumentException("a fact is a public record: " + kind, e);
        }
    }

    /** The table's name. */
    public String name() {
        return name;
    }

    /** The file's name in the season folder. */
    public String file() {
        return file;
    }

    public Class<F> kind() {
        return kind;
    }

    public List<Component> components() {
        return components;
    }

    /** The fact's own columns, in order; those that every record has come besides. */
    public List<Column> columns() {
        return columns;
    }

    /** The names of the columns that its table did not have at first, the oldest first. */
    public List<String> addedLater() {
        return addedLater;
    }

    /** A fact as the values of {@link #columns()}. */
    public List<@Nullable Object> row(Fact fact) {
        @Nullable Object[] row = new Object[columns.size()];
        int at = 0;
        for (Component component : components) {
            component.put(component.value(fact), row, at);
            at += component.columns().size();
        }
        return new ArrayList<>(Arrays.asList(row));
    }

    /**
     * The fact that the values of {@link #columns()} make.
     *
     * @throws IllegalArgumentException if they make no possible fact; the message says why
     */
    public F fact(List<? extends @Nullable Object> row) {
        @Nullable Object[] flat = row.toArray();
        @Nullable Object[] values = new Object[components.size()];
        int at = 0;
        try {
            for (int i = 0; i < values.length; i++) {
                values[i] = components.get(i).get(flat, at);
                at += components.get(i).columns().size();
            }
            return of(values);
        } catch (DateTimeException | ArithmeticException e) { // a zone, day or number that a damaged file holds
            throw new IllegalArgumentException(e.getMessage(), e);
        }
    }

    /**
     * The fact made of these component values, in order.
     *
     * @throws IllegalArgumentException if they make no possible fact; the message says why
     */
    public F of(@Nullable Object... values) {
        try {
            return constructor.newInstance(values);
        } catch (InvocationTargetException e) {
            if (e.getCause() instanceof RuntimeException cause) {
                throw cause;
            }
            throw new IllegalStateException(e);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException("a record cannot be made: " + kind, e);
        }
    }

    @Override
    public String toString() {
        return name;
    }
}
