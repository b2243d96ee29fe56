package witnessmark.domain.image;

import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * How one type of value is kept in columns and written as text.
 *
 * @param suffixes endings of the column names, one for each column
 * @param storages how each column is kept
 * @param split value to column values
 * @param join column values to value
 * @param headingSuffix ending of the heading in the season folder, with the unit
 * @param text value to text
 * @param parse text to value; throws IllegalArgumentException or DateTimeException when it cannot
 * @param form the form expected, for the sentence when a text cannot be read
 */
record ValueForm(
        List<String> suffixes,
        List<Storage> storages,
        Function<Object, Object[]> split,
        Function<@Nullable Object[], Object> join,
        String headingSuffix,
        Function<Object, String> text,
        Function<String, Object> parse,
        String form) {

    static <T> ValueForm whole(
            Class<T> type,
            String suffix,
            Function<T, Long> out,
            Function<Long, T> in,
            String headingSuffix,
            Function<T, String> text,
            Function<String, T> parse,
            String form) {
        return new ValueForm(
                List.of(suffix),
                List.of(Storage.INTEGER),
                value -> new Object[] {out.apply(type.cast(value))},
                columns -> in.apply(((Number) present(columns[0])).longValue()),
                headingSuffix,
                value -> text.apply(type.cast(value)),
                parse::apply,
                form);
    }

    static <T> ValueForm words(
            Class<T> type, String suffix, Function<T, String> out, Function<String, T> in, String form) {
        return new ValueForm(
                List.of(suffix),
                List.of(Storage.TEXT),
                value -> new Object[] {out.apply(type.cast(value))},
                columns -> in.apply((String) present(columns[0])),
                "",
                value -> out.apply(type.cast(value)),
                in::apply,
                form);
    }

    static Object present(@Nullable Object value) {
        if (value == null) {
            throw new IllegalArgumentException("a column that must not be empty is empty");
        }
        return value;
    }
}
