package witnessmark.exchange;

import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import de.siegmar.fastcsv.writer.QuoteStrategy;
import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Entry;
import witnessmark.domain.Fact;
import witnessmark.domain.Facts;
import witnessmark.domain.Id;
import witnessmark.domain.image.Component;
import witnessmark.domain.image.RecordType;

/** The rows of one kind as the text of their file. */
final class FileText<F extends Fact> {
    /** A space at either end is lost by many who read a field without quotes. */
    private static final QuoteStrategy SPACE_AT_AN_END = new QuoteStrategy() {
        @Override
        public boolean quoteValue(int line, int field, String value) {
            return value.startsWith(" ") || value.endsWith(" ");
        }
    };

    private final RecordType<F> type;
    private final List<Entry<F>> rows;
    private final Facts facts;
    private final ReferenceTexts references;

    FileText(RecordType<F> type, Facts facts, ReferenceTexts references) {
        this.type = type;
        this.facts = facts;
        this.rows = new ArrayList<>(facts.of(type.kind()).all());
        this.rows.sort(Comparator.comparing(Entry::id));
        this.references = references;
    }

    int rows() {
        return rows.size();
    }

    /**
     * Writes the file.
     *
     * @throws IOException (or UncheckedIOException) if it cannot be written, or a text is no Unicode text
     */
    void write(OutputStream to) throws IOException {
        Writer text = new OutputStreamWriter(
                to,
                StandardCharsets.UTF_8
                        .newEncoder()
                        .onMalformedInput(CodingErrorAction.REPORT)
                        .onUnmappableCharacter(CodingErrorAction.REPORT));
        try (CsvWriter csv = CsvWriter.builder()
                .lineDelimiter(LineDelimiter.LF)
                .quoteStrategy(SPACE_AT_AN_END)
                .build(text)) {
            csv.writeRecord(Heading.of(type));
            for (Entry<F> row : rows) {
                csv.writeRecord(fields(row));
            }
        }
    }

    private List<String> fields(Entry<F> row) {
        List<String> fields = new ArrayList<>();
        fields.add(row.id().text());
        @Nullable
        Object[] values = type.components().stream()
                .map(component -> component.value(row.fact()))
                .toArray();
        for (int i = 0; i < values.length; i++) {
            Component component = type.components().get(i);
            Object value = values[i];
            Class<? extends Fact> target = component.refersTo();
            if (target != null && value instanceof Id<?> id) {
                fields.add(references.of(target, id.value()));
            } else {
                FigureText text = value instanceof Number && FigureTexts.has(type.kind(), component)
                        ? FigureTexts.of(type.kind(), component, type.components(), values, facts)
                        : null;
                fields.add(
                        text != null && value instanceof Number figure
                                ? text.of(figure.longValue())
                                : component.text(value));
            }
        }
        fields.add(row.inForce() ? "" : row.standing().code());
        fields.add(row.struckBecause() == null ? "" : row.struckBecause());
        return fields;
    }
}
