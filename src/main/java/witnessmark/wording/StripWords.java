package witnessmark.wording;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Facts;
import witnessmark.domain.Finding;
import witnessmark.domain.HowMarked;
import witnessmark.study.result.StripCell;
import witnessmark.study.result.StripLine;
import witnessmark.study.result.StripReport;
import witnessmark.study.result.StripRow;

/** Words what was found when an engine was opened. */
public final class StripWords {
    private final Texts texts;
    private final Measures measures;
    private final FindingWords findings;
    private final LifeWords lives;

    public StripWords(Texts texts, Measures measures) {
        this.texts = texts;
        this.measures = measures;
        this.findings = new FindingWords(texts, measures);
        this.lives = new LifeWords(texts, measures);
    }

    /** {@code K05, build 3}. */
    public String title(StripReport report) {
        return texts.get(
                "strip.title",
                report.engine().fact().number(),
                measures.number(report.build().fact().number()));
    }

    /** {@code Big-end shell, upper}. */
    public String line(StripLine line) {
        return findings.line(line);
    }

    /** {@code Rods, crank and shells}. */
    public String area(StripLine.Area area) {
        return texts.get("strip.area." + code(area));
    }

    private static String code(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT);
    }

    /** When it was opened and at what, how much was looked at, what is marked, and what got worse. */
    public List<String> headline(StripReport report) {
        List<String> said = new ArrayList<>();
        said.add(texts.get(
                "strip.opened", measures.date(report.build().fact().opened().day()), lives.life(report.run())));
        said.add(texts.get("strip.looked", report.lookedAt(), report.places()));
        if (report.all().findAny().isPresent()) {
            List<String> marked = report.from(HowMarked.CLEAR).stream()
                    .map(finding -> findings.position(finding.fact())
                            .orElse(finding.fact().words()))
                    .distinct()
                    .toList();
            said.add(
                    marked.isEmpty()
                            ? texts.get("strip.marked.none")
                            : texts.get("strip.marked", measures.row(marked)));
        }
        if (report.worse() > 0) {
            said.add(texts.get("strip.worse", report.worse()));
        }
        return said;
    }

    /** {@code Big-end shell, upper 3}; without a number it is the line alone. */
    public String position(StripLine line, @Nullable Integer number) {
        return findings.position(line, number);
    }

    /** What was found there the last time somebody looked, and at which build; empty where nobody did. */
    public Optional<String> before(Facts facts, StripCell cell) {
        return cell.worstBefore()
                .map(finding ->
                        texts.get("strip.before", findings.build(facts, finding), findings.words(finding.fact())));
    }

    /** The part that sat there and what it had run by then; empty where nobody can tell. */
    public Optional<String> part(StripRow row) {
        return part(row, "strip.part");
    }

    /** The same where it stands in a table. */
    public Optional<String> partBriefly(StripRow row) {
        return part(row, "strip.part.brief");
    }

    private Optional<String> part(StripRow row, String key) {
        return row.part() == null || row.run() == null
                ? Optional.empty()
                : Optional.of(texts.get(key, row.part().fact().mark(), lives.life(row.run())));
    }

    /** What stands out when the positions of a line are looked at together; empty for nothing. */
    public Optional<String> pattern(StripRow row) {
        return pattern(row, "strip.alone", "strip.alike");
    }

    /** The same in two words. */
    public Optional<String> brief(StripRow row) {
        return pattern(row, "strip.alone.brief", "strip.alike.brief");
    }

    private Optional<String> pattern(StripRow row, String alone, String alike) {
        return switch (row.pattern()) {
            case NONE -> Optional.empty();
            case ALL_ALIKE -> Optional.of(texts.get(alike));
            case ONE_ALONE ->
                row.alone()
                        .map(StripCell::number)
                        .filter(Objects::nonNull)
                        .map(number -> texts.get(alone, measures.number(number)));
        };
    }

    /** What was found at no place on the engine. */
    public String nowhere(Finding finding) {
        return texts.get("strip.nowhere", findings.words(finding));
    }

    /** Which position of a line: its number, or all of them. */
    public String number(StripCell cell) {
        return cell.number() == null ? texts.get("strip.all") : measures.number(cell.number());
    }
}
