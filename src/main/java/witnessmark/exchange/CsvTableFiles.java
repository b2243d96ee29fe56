package witnessmark.exchange;

import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import java.io.IOException;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import witnessmark.logbook.port.TableFiles;
import witnessmark.outcome.Outcome;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;

/**
 * Tables as CSV, RFC 4180, in UTF-8. Words that a spreadsheet would take for a formula have an apostrophe before them, the
 * sign by which spreadsheets tell text; figures stay figures.
 */
public final class CsvTableFiles implements TableFiles {
    /** With one of these a spreadsheet begins to reckon. */
    private static final String RECKONS = "=+-@\t\r\n\uFF1D\uFF0B\uFF0D\uFF20";

    private final WholeFile files;

    public CsvTableFiles() {
        this(new RealDisk());
    }

    CsvTableFiles(Disk disk) {
        this.files = new WholeFile(disk);
    }

    /** At the place there is the table as it was, or the whole new one. A file that is no such table stays. */
    @Override
    public Outcome<Integer> write(List<String> headings, List<List<Cell>> rows, Path file) {
        try {
            if (Files.exists(file) && !isOne(headings, file)) {
                return Outcome.didNot(Problem.of(ProblemKind.FILE_EXISTS, file.toString()));
            }
            files.write(text(headings, rows).getBytes(StandardCharsets.UTF_8), file);
            return Outcome.worked(rows.size());
        } catch (IOException e) {
            return Outcome.didNot(WriteFailure.problem(file, e));
        }
    }

    private static boolean isOne(List<String> headings, Path file) throws IOException {
        if (!Files.isRegularFile(file)) {
            return false;
        }
        byte[] begins = (String.join(",", headings) + "\r\n").getBytes(StandardCharsets.UTF_8);
        try (var in = Files.newInputStream(file)) {
            return java.util.Arrays.equals(in.readNBytes(begins.length), begins);
        }
    }

    private static String text(List<String> headings, List<List<Cell>> rows) throws IOException {
        StringWriter text = new StringWriter();
        try (CsvWriter csv =
                CsvWriter.builder().lineDelimiter(LineDelimiter.CRLF).build(text)) {
            csv.writeRecord(headings);
            rows.forEach(
                    row -> csv.writeRecord(row.stream().map(CsvTableFiles::cell).toList()));
        }
        return text.toString();
    }

    private static String cell(Cell cell) {
        String text = cell.text();
        boolean reckons = !cell.figure() && !text.isEmpty() && RECKONS.indexOf(text.charAt(0)) >= 0;
        return reckons ? "'" + text : text;
    }
}
