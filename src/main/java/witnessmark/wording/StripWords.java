package witnessmark.wording;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Entry;
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
    private final RecordWords records;
    private final LifeWords lives;

    public StripWords(Texts texts, Measures measures) {
        this.texts = texts;
        this.measures = measures;
        this.records = new RecordWords(texts);
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
        String place = records.label(records.word(line.place()));
        return line.side() == StripLine.Side.WHOLE
                ? place
                : texts.get("strip.line.side", place, texts.get("strip." + code(line.side())));
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
                    .map(finding -> position(finding.fact()))
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

    /** {@code Big-end shell, upper 3}. */
    public String position(Finding finding) {
        StripLine line = StripLine.of(finding);
        return line == null ? finding.words() : position(line, finding.number());
    }

    /** The same of a position; without a number it is the line alone. */
    public String position(StripLine line, @Nullable Integer number) {
        return number == null ? line(line) : texts.get("strip.position", line(line), measures.number(number));
    }

    /** {@code wiped, light, near the parting line: upper shell of 3 wiped}. */
    public String found(Finding finding) {
        StripLine line = StripLine.of(finding);
        List<String> said = new ArrayList<>();
        said.add(finding.mark() == null ? "" : records.word(finding.mark()));
        said.add(finding.how() == null ? "" : records.word(finding.how()));
        said.add(line == null ? finding.spot() : line.beyondSide(finding.spot()));
        Integer around = finding.aroundDegrees();
        Integer out = finding.outPercent();
        said.add(
                around == null || out == null
                        ? ""
                        : texts.get("strip.place", measures.number(around), measures.number(out)));
        said.removeIf(String::isBlank);
        String marks = measures.row(said);
        return finding.words().isBlank()
                ? marks
                : said.isEmpty() ? finding.words() : texts.get("strip.finding", marks, finding.words());
    }

    /** What was found there the last time somebody looked, and at which build; empty where nobody did. */
    public Optional<String> before(StripCell cell, BuildNumbers builds) {
        return cell.worstBefore().map(finding -> texts.get("strip.before", builds.of(finding), found(finding.fact())));
    }

    /** Says of which build a finding is. */
    @FunctionalInterface
    public interface BuildNumbers {
        String of(Entry<Finding> finding);
    }

    /** The part that sat there and what it had run by then; empty where nobody can tell. */
    public Optional<String> part(StripRow row) {
        return row.part() == null || row.run() == null
                ? Optional.empty()
                : Optional.of(texts.get("strip.part", row.part().fact().mark(), lives.life(row.run())));
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
        return texts.get("strip.nowhere", found(finding));
    }

    /** Which position of a line: its number, or all of them. */
    public String number(StripCell cell) {
        return cell.number() == null ? texts.get("strip.all") : measures.number(cell.number());
    }
}
