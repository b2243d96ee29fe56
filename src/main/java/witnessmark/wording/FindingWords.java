package witnessmark.wording;

import java.util.ArrayList;
import java.util.List;
import witnessmark.domain.Facts;
import witnessmark.domain.Finding;
import witnessmark.domain.Part;

/** Words what was found: where, how it was marked, and the whole of it, so that one can be told from another. */
public final class FindingWords {
    private final Texts texts;
    private final Measures measures;
    private final RecordWords records;

    public FindingWords(Texts texts, Measures measures) {
        this.texts = texts;
        this.measures = measures;
        this.records = new RecordWords(texts);
    }

    /** {@code Back of a shell 3}. */
    public String lead(Finding finding) {
        List<String> where = new ArrayList<>();
        if (finding.place() != null) {
            where.add(records.label(records.word(finding.place())));
        }
        if (finding.number() != null) {
            where.add(Integer.toString(finding.number()));
        }
        return where.isEmpty() ? texts.get("cases.finding.none") : String.join(" ", where);
    }

    /** {@code fretted, heavy: fretted brown and black}. */
    public String words(Finding finding) {
        List<String> marks = new ArrayList<>();
        if (finding.mark() != null) {
            marks.add(records.word(finding.mark()));
        }
        if (finding.how() != null) {
            marks.add(records.word(finding.how()));
        }
        if (marks.isEmpty()) {
            return finding.words();
        }
        return finding.words().isBlank()
                ? measures.row(marks)
                : texts.get("cases.finding", measures.row(marks), finding.words());
    }

    /** Both, its day, and the spot, the part and who saw it, as far as they are written. */
    public String whole(Facts facts, Finding finding) {
        List<String> more = new ArrayList<>();
        more.add(finding.spot());
        more.add(
                finding.part() == null
                        ? ""
                        : facts.of(Part.class).get(finding.part()).mark());
        more.add(finding.by());
        more.removeIf(String::isEmpty);
        return texts.get(
                "cases.finding.whole",
                lead(finding),
                words(finding),
                measures.shortDate(finding.at().day()),
                measures.row(more));
    }
}
