package witnessmark.wording;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Build;
import witnessmark.domain.Entry;
import witnessmark.domain.Facts;
import witnessmark.domain.Finding;
import witnessmark.domain.Part;
import witnessmark.domain.PlaceSide;
import witnessmark.study.result.StripLine;

/**
 * Words what was found: where, how it was marked and where on its part, and the whole of it, so that one can be told from another.
 * Every page, sheet and command says a finding in these words.
 */
public final class FindingWords {
    private final Texts texts;
    private final Measures measures;
    private final RecordWords records;
    private final PartPlaceWords places;

    public FindingWords(Texts texts, Measures measures) {
        this.texts = texts;
        this.measures = measures;
        this.records = new RecordWords(texts);
        this.places = new PartPlaceWords(texts);
    }

    /** {@code Big-end shell, upper}. */
    public String line(StripLine line) {
        String side = side(line);
        return side.isEmpty() ? place(line) : texts.get("strip.line.side", place(line), side);
    }

    /** {@code Big-end shell}. */
    public String place(StripLine line) {
        return records.label(records.word(line.place()));
    }

    /** {@code upper}; empty for the whole. */
    public String side(StripLine line) {
        return line.side() == PlaceSide.WHOLE
                ? ""
                : texts.get("strip." + line.side().name().toLowerCase(Locale.ROOT));
    }

    /** {@code Big-end shell, upper 3}; without a number it is the line alone. */
    public String position(StripLine line, @Nullable Integer number) {
        return number == null ? line(line) : texts.get("strip.position", line(line), measures.number(number));
    }

    /** The same of a finding; empty for one that has no place on the engine. */
    public Optional<String> position(Finding finding) {
        return Optional.ofNullable(StripLine.of(finding)).map(line -> position(line, finding.number()));
    }

    /** The same, or that it was seen. */
    public String lead(Finding finding) {
        return position(finding).orElseGet(() -> texts.get("cases.finding.none"));
    }

    /** {@code wiped, light, inlet side, front edge: upper shell of 3 wiped}. */
    public String words(Finding finding) {
        return withTyped(finding, true);
    }

    /** The same without how far it has gone, for where that stands beside it. */
    public String ungraded(Finding finding) {
        return withTyped(finding, false);
    }

    private String withTyped(Finding finding, boolean graded) {
        StripLine line = StripLine.of(finding);
        String spot = line == null ? finding.spot() : line.beyondSide(finding.spot());
        String marks = marks(finding, graded, spot);
        return finding.words().isBlank()
                ? marks
                : marks.isEmpty() ? finding.words() : texts.get("cases.finding", marks, finding.words());
    }

    /** All of it without anything that somebody typed; empty where that is all there is. */
    public String untyped(Finding finding) {
        return marks(finding, true, "");
    }

    private String marks(Finding finding, boolean graded, String spot) {
        List<String> said = new ArrayList<>();
        said.add(finding.mark() == null ? "" : records.word(finding.mark()));
        said.add(finding.how() == null || !graded ? "" : records.word(finding.how()));
        said.add(spot);
        said.add(places.of(finding).orElse(""));
        said.removeIf(String::isBlank);
        return said.isEmpty() ? "" : measures.row(said);
    }

    /** {@code Big-end shell, upper 3: wiped, light}: to be picked among others. */
    public String named(Finding finding) {
        return texts.get("cases.finding", lead(finding), words(finding));
    }

    /** Where and what, its day, and the part and who saw it, as far as they are written. */
    public String whole(Facts facts, Finding finding) {
        List<String> more = new ArrayList<>();
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

    /** The number of the build at which it was found; empty where it was found at none. */
    public String build(Facts facts, Entry<Finding> finding) {
        return finding.fact().build() == null
                ? ""
                : measures.number(
                        facts.of(Build.class).get(finding.fact().build()).number());
    }
}
