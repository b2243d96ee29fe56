package witnessmark.exchange;

import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Coded;
import witnessmark.domain.Limit;
import witnessmark.domain.LimitAction;
import witnessmark.domain.PartKind;
import witnessmark.logbook.port.EngineClass;
import witnessmark.logbook.port.StartingValue;
import witnessmark.logbook.port.StartingValues;
import witnessmark.quantity.Counter;

/**
 * Reads the starting values the program comes with, one row each: class, part, action and counter by their codes, the
 * two ends with their unit as in a season folder ({@code 60 h}, {@code 12 months}), both empty where there is no figure.
 */
public final class CsvStartingValues implements StartingValues {
    private static final String RESOURCE = "/limits/starting-values.csv";

    private final List<StartingValue> all;

    /**
     * Reads them.
     *
     * @throws IllegalStateException if a row cannot be read: the program was put together wrongly
     */
    public CsvStartingValues() {
        try (InputStream resource = CsvStartingValues.class.getResourceAsStream(RESOURCE)) {
            if (resource == null) {
                throw new IllegalStateException("the program comes without " + RESOURCE);
            }
            all = read(new InputStreamReader(resource, StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Override
    public List<StartingValue> all() {
        return all;
    }

    /**
     * The rows of a table.
     *
     * @throws IllegalStateException naming the line that cannot be read
     */
    static List<StartingValue> read(Reader text) throws IOException {
        try (CsvReader<NamedCsvRecord> rows = CsvReader.builder().ofNamedCsvRecord(text)) {
            return rows.stream().map(CsvStartingValues::row).toList();
        } catch (CsvParseException e) {
            throw new IllegalStateException(RESOURCE + ", " + e.getMessage(), e);
        }
    }

    private static StartingValue row(NamedCsvRecord row) {
        try {
            Counter counter = Counter.find(row.getField("counter")).orElseThrow();
            return new StartingValue(
                    Coded.of(EngineClass.class, row.getField("class")),
                    Coded.of(PartKind.class, row.getField("part")),
                    Coded.of(LimitAction.class, row.getField("action")),
                    counter,
                    figure(row.getField("low"), counter),
                    figure(row.getField("high"), counter),
                    row.getField("note"),
                    row.getField("source"));
        } catch (RuntimeException e) {
            throw new IllegalStateException(RESOURCE + ", line " + row.getStartingLineNumber(), e);
        }
    }

    private static @Nullable Long figure(String text, Counter counter) {
        return text.isEmpty() ? null : new AmountText(Limit.class, counter).read(text);
    }
}
