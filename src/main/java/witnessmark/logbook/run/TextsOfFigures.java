package witnessmark.logbook.run;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import witnessmark.domain.Car;
import witnessmark.domain.Id;
import witnessmark.quantity.Moment;

/** What stands in the fields of the sheet for figures that somebody else worked out, as it would be typed. */
public final class TextsOfFigures {
    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm", Locale.ENGLISH);

    private final Figures figures;

    public TextsOfFigures(FieldUnits units) {
        this.figures = new Figures(units);
    }

    /**
     * @param values each in the type its field measures; of other fields nothing is said
     * @throws ClassCastException if one is of another type
     */
    public Map<RunField, String> of(Map<RunField, Object> values) {
        Map<RunField, String> texts = new EnumMap<>(RunField.class);
        Stream.concat(Stream.of(figures.running), figures.all().stream()).forEach(figure -> {
            Object value = values.get(figure.field());
            if (value != null) {
                texts.put(figure.field(), text(figure, value));
            }
        });
        return texts;
    }

    @SuppressWarnings("unchecked") // each value is of the type of its field
    private static <T> String text(Figure<T> figure, Object value) {
        return figure.text().apply((T) value);
    }

    /** How a day stands there. */
    public static String of(LocalDate day) {
        return RunDefaults.DAY.format(day);
    }

    /** How the time out stands there. */
    public static String of(Moment start) {
        return CLOCK.format(start.wallClock().toLocalTime());
    }

    /** How a car is picked. */
    public static String of(Id<Car> car) {
        return Keys.car(car);
    }
}
