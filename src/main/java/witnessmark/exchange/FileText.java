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
import witnessmark.domain.Entry;
import witnessmark.domain.Fact;
import witnessmark.domain.Facts;
import witnessmark.domain.Id;
import witnessmark.domain.image.Component;
import witnessmark.domain.image.FigureUnits;
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
        for (Component component : type.components()) {
            fields.add(field(row.fact(), component));
        }
        fields.add(row.inForce() ? "" : row.standing().code());
        fields.add(row.struckBecause() == null ? "" : row.struckBecause());
        return fields;
    }

    private String field(F fact, Component component) {
        Object value = component.value(fact);
        Class<? extends Fact> target = component.refersTo();
        if (target != null && value instanceof Id<?> id) {
            return references.of(target, id.value());
        }
        FigureText written = value instanceof Number && FigureUnits.has(type.kind(), component)
                ? FigureTexts.of(type, component, each -> each.value(fact), facts)
                : null;
        return written != null && value instanceof Number figure
                ? written.of(figure.longValue())
                : component.text(value);
    }
}
