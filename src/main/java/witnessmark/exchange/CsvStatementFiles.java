package witnessmark.exchange;

import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import de.siegmar.fastcsv.reader.FieldMismatchStrategy;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import witnessmark.logbook.port.StatementFiles;
import witnessmark.logbook.port.StatementRows;
import witnessmark.outcome.Outcome;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;

/**
 * Reads what banks write: separated by commas, semicolons, tabs or bars, in UTF-8, UTF-16 or the old western code page,
 * with lines above and below the table that are not of it.
 */
public final class CsvStatementFiles implements StatementFiles {
    private static final char[] SEPARATORS = {',', ';', '\t', '|'};
    private static final Charset WESTERN = Charset.forName("windows-1252");
    private static final char BYTE_ORDER_MARK = '\uFEFF';
    private static final int MOST_BYTES = 20 << 20;
    private static final int MOST_ROWS = 200_000;

    @Override
    public Outcome<StatementRows> read(Path file) {
        String name = String.valueOf(file.getFileName());
        try {
            if (!Files.isRegularFile(file)) {
                return no(name, "not a plain file");
            }
            if (Files.size(file) > MOST_BYTES) {
                return no(name, "more than " + (MOST_BYTES >> 20) + " MB");
            }
            String text = text(Files.readAllBytes(file));
            if (text.indexOf('\0') >= 0) {
                return no(name, "not a text");
            }
            return table(name, text);
        } catch (CsvParseException e) {
            return no(name, "quotation marks that do not end");
        } catch (IOException e) {
            return no(name, SystemWords.of(e));
        }
    }

    private static Outcome<StatementRows> no(String name, String why) {
        return Outcome.didNot(Problem.of(ProblemKind.CANNOT_READ_FILE, name, why));
    }

    /** By its byte order mark; else as UTF-8 where that makes sense of every byte, else as the old code page. */
    static String text(byte[] bytes) {
        if (bytes.length >= 2 && (bytes[0] & 0xFF) == 0xFE && (bytes[1] & 0xFF) == 0xFF
                || bytes.length >= 2 && (bytes[0] & 0xFF) == 0xFF && (bytes[1] & 0xFF) == 0xFE) {
            return new String(bytes, StandardCharsets.UTF_16);
        }
        String read;
        try {
            read = StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
        } catch (CharacterCodingException e) {
            read = new String(bytes, WESTERN);
        }
        return !read.isEmpty() && read.charAt(0) == BYTE_ORDER_MARK ? read.substring(1) : read;
    }

    /** The separator under which the most lines fall into the same number of fields, two or more. */
    private static Outcome<StatementRows> table(String name, String text) throws IOException {
        List<CsvRecord> best = List.of();
        int width = 0;
        int most = 0;
        for (char separator : SEPARATORS) {
            List<CsvRecord> records = records(text, separator);
            if (records.size() > MOST_ROWS) {
                return no(name, "more than " + MOST_ROWS + " rows");
            }
            Map<Integer, Integer> widths = new HashMap<>();
            records.forEach(record -> widths.merge(record.getFieldCount(), 1, Integer::sum));
            for (Map.Entry<Integer, Integer> each : widths.entrySet()) {
                boolean more = each.getValue() > most || each.getValue() == most && each.getKey() > width;
                if (each.getKey() >= 2 && more) {
                    most = each.getValue();
                    width = each.getKey();
                    best = records;
                }
            }
        }
        return width < 2 ? no(name, "no table in it") : Outcome.worked(rows(name, best, width));
    }

    @SuppressWarnings("removal") // what stands after a closing quote is read all the same
    private static List<CsvRecord> records(String text, char separator) throws IOException {
        List<CsvRecord> records = new ArrayList<>();
        try (CsvReader<CsvRecord> reader = CsvReader.builder()
                .fieldSeparator(separator)
                .allowExtraCharsAfterClosingQuote(true)
                .extraFieldStrategy(FieldMismatchStrategy.IGNORE)
                .missingFieldStrategy(FieldMismatchStrategy.IGNORE)
                .skipEmptyLines(true)
                .ofCsvRecord(text)) {
            for (CsvRecord record : reader) {
                if (records.size() > MOST_ROWS) {
                    break;
                }
                records.add(record);
            }
        }
        return records;
    }

    private static StatementRows rows(String name, List<CsvRecord> records, int width) {
        List<String> headings = List.of();
        List<StatementRows.Row> rows = new ArrayList<>();
        List<Long> odd = new ArrayList<>();
        for (CsvRecord record : records) {
            List<String> fields = record.getFields().stream().map(String::strip).toList();
            if (fields.size() != width || fields.stream().allMatch(String::isEmpty)) {
                odd.add(record.getStartingLineNumber());
            } else if (headings.isEmpty()) {
                headings = fields;
            } else {
                rows.add(new StatementRows.Row(record.getStartingLineNumber(), fields));
            }
        }
        return new StatementRows(name, headings, rows, odd);
    }
}
