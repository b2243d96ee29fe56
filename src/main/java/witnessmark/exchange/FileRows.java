package witnessmark.exchange;

import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import de.siegmar.fastcsv.reader.CsvRecordHandler;
import de.siegmar.fastcsv.reader.FieldMismatchStrategy;
import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Fact;
import witnessmark.domain.image.RecordType;
import witnessmark.outcome.ProblemKind;

/**
 * Reads the rows of one file, one after the other. Bad ones are noted and left out; a file that cannot be followed to
 * its end is left out as a whole.
 */
final class FileRows<F extends Fact> {
    /** The parser tells faults apart only in its message. */
    private static final Pattern QUOTES = Pattern.compile("quote");

    private static final Pattern LINE = Pattern.compile("line (\\d{1,15})");

    /** The line {@code sep=,} that a spreadsheet writes above the headings. */
    private static final List<String> SEPARATOR_NOTE = List.of("sep=", "");

    private final RecordType<F> type;
    private final Path file;
    private final @Nullable Integer stated;
    private final Reading reading;
    private final Problems problems;

    private final List<Row> rows = new ArrayList<>();
    private int found;
    private long lastLine = 1;
    private String lastField = "";

    /**
     * Prepares to read.
     *
     * @param stated how many rows the folder says the file has, or null when it does not say: it is made by hand
     */
    FileRows(RecordType<F> type, Path file, @Nullable Integer stated, Reading reading) {
        this.type = type;
        this.file = file;
        this.stated = stated;
        this.reading = reading;
        this.problems = reading.problems();
    }

    /** The rows that could be read; none when the file is left out. */
    List<Row> read() {
        if (readsToItsEnd()) {
            return rows;
        }
        reading.leftOut().table(type.kind());
        return List.of();
    }

    /** How many rows were met, or are stated where the file ends before them. */
    int met() {
        return stated == null ? found : Math.max(found, stated);
    }

    private boolean readsToItsEnd() {
        try {
            TextLook look = look();
            return look != null && parse(look.returns()) && isWhole(look);
        } catch (CsvParseException e) {
            torn(String.valueOf(e.getMessage()));
        } catch (UncheckedIOException | IOException e) {
            problems.at(lastLine, null, ProblemKind.CANNOT_READ_FILE, type.file(), SystemWords.of(e));
        }
        return false;
    }

    private void torn(String said) {
        if (QUOTES.matcher(said).find()) {
            problems.at(line(said), null, ProblemKind.QUOTES_ASTRAY, type.file());
        } else {
            problems.at(
                    line(said),
                    null,
                    ProblemKind.CANNOT_READ_FILE,
                    type.file(),
                    "the row there is longer than any row of a table");
        }
    }

    private @Nullable TextLook look() throws IOException {
        if (!Files.isRegularFile(file)) {
            problems.inFile(ProblemKind.CANNOT_READ_FILE, type.file(), "not a plain file");
            return null;
        }
        TextLook look = TextLook.at(file, reading.bytesLeft());
        if (look.bytes() > reading.bytesLeft()) {
            problems.inFile(
                    ProblemKind.CANNOT_READ_FILE,
                    type.file(),
                    "more than " + (Limits.BYTES >> 20) + " MB in the folder");
            return null;
        }
        reading.tookBytes(look.bytes());
        if (!look.utf8()) {
            problems.at(look.badLine(), null, ProblemKind.WRONG_ENCODING, type.file(), "UTF-8");
            return null;
        }
        return look;
    }

    /**
     * Whether the file was read to its end.
     *
     * @param returns whether another system's line ends were put into it, and so into its texts
     */
    private boolean parse(boolean returns) throws IOException {
        CsvRecordHandler handler = CsvRecordHandler.of(limits ->
                limits.maxFields(Limits.COLUMNS).maxFieldSize(Limits.FIELD).maxRecordSize(Limits.FIELD));
        try (Reader text = TextLook.open(file);
                CsvReader<CsvRecord> records = CsvReader.builder()
                        .extraFieldStrategy(FieldMismatchStrategy.IGNORE)
                        .missingFieldStrategy(FieldMismatchStrategy.IGNORE)
                        .allowUnclosedQuote(false)
                        .build(handler, text)) {
            Iterator<CsvRecord> all = records.iterator();
            Heading heading = heading(all);
            if (heading == null) {
                all.forEachRemaining(record -> found++);
                return false;
            }
            RowReader<F> reader = new RowReader<>(type, heading, reading);
            while (all.hasNext() && !problems.full()) {
                CsvRecord record = all.next();
                if (!record.getFields().stream().allMatch(String::isEmpty) && !take(record, reader, returns)) {
                    return false;
                }
            }
        }
        return true;
    }

    private @Nullable Heading heading(Iterator<CsvRecord> all) {
        if (all.hasNext()) {
            CsvRecord first = all.next();
            if (SEPARATOR_NOTE.equals(first.getFields()) && all.hasNext()) {
                first = all.next();
            }
            return Heading.read(type, stated == null, first.getStartingLineNumber(), first.getFields(), problems);
        }
        if (stated != null && stated > 0) {
            problems.inFile(ProblemKind.FILE_CUT_SHORT, 0, stated);
            return null;
        }
        return Heading.read(type, stated == null, 1, List.of(), problems);
    }

    private boolean take(CsvRecord record, RowReader<F> reader, boolean returns) {
        lastLine = record.getStartingLineNumber();
        if (!reading.takeRow()) {
            problems.at(
                    lastLine,
                    null,
                    ProblemKind.CANNOT_READ_FILE,
                    type.file(),
                    "more than " + Limits.ROWS + " rows in the folder");
            return false;
        }
        found++;
        lastField = record.getField(record.getFieldCount() - 1);
        List<String> fields = record.getFields();
        if (returns) {
            fields = fields.stream().map(field -> field.replace("\r\n", "\n")).toList();
        }
        Row row = reader.read(lastLine, fields);
        if (row != null) {
            rows.add(row);
        }
        return true;
    }

    /**
     * A file that was written whole has all its rows and ends its last line. One that was cut off inside its last field
     * would read well, but the field is not what was written.
     */
    private boolean isWhole(TextLook look) {
        if (stated == null) {
            return true;
        }
        boolean cutInside = found > 0 && !look.newlineAtEnd() && !lastField.isEmpty();
        int whole = cutInside ? found - 1 : found;
        if (cutInside || whole < stated) {
            problems.at(cutInside ? lastLine : 0, null, ProblemKind.FILE_CUT_SHORT, whole, stated);
            return false;
        }
        return true;
    }

    /** The parser names the line only in its message. */
    private long line(String said) {
        Matcher named = LINE.matcher(said);
        return named.find() ? Long.parseLong(named.group(1)) : lastLine;
    }
}
