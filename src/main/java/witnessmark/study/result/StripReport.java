package witnessmark.study.result;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import witnessmark.domain.Build;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Finding;
import witnessmark.domain.HowMarked;
import witnessmark.domain.PlaceSide;
import witnessmark.ledger.result.Life;

/**
 * What was found when an engine was opened, place by place.
 *
 * @param engine which engine
 * @param build the build it was opened for
 * @param run what the engine had run by then, since its bottom end was closed last
 * @param rows what can be looked at, and what was; in the order in which an engine comes apart
 * @param elsewhere what was found at no place on the engine, the earliest first
 * @param numbers how many positions a line may have at most
 */
public record StripReport(
        Entry<Engine> engine,
        Entry<Build> build,
        Life run,
        List<StripRow> rows,
        List<Entry<Finding>> elsewhere,
        int numbers) {
    public StripReport {
        rows = List.copyOf(rows);
        elsewhere = List.copyOf(elsewhere);
    }

    /** How many positions the build laid open. */
    public int places() {
        return rows.stream()
                .filter(StripRow::opened)
                .mapToInt(StripRow::positions)
                .sum();
    }

    /** How many positions were looked at; what was written of a place without its side is one of them. */
    public int lookedAt() {
        return rows.stream()
                .filter(row -> row.opened() || row.line().side() == PlaceSide.WHOLE)
                .mapToInt(StripRow::lookedAt)
                .sum();
    }

    /** What has gone that far or further, line by line. */
    public List<Entry<Finding>> from(HowMarked how) {
        return all().filter(finding ->
                        finding.fact().how() != null && finding.fact().how().compareTo(how) >= 0)
                .toList();
    }

    /** Everything that was found at this strip, line by line, then what has no place. */
    public Stream<Entry<Finding>> all() {
        return Stream.concat(
                rows.stream()
                        .flatMap(row -> Stream.concat(Stream.of(row.whole()), row.cells().stream()))
                        .flatMap(cell -> cell.found().stream()),
                elsewhere.stream());
    }

    /** What the trade asks about once such marks are seen, each with those that show it, line by line. */
    public Map<FailureMode, List<Entry<Finding>>> asked() {
        Map<FailureMode, List<Entry<Finding>>> asked = new EnumMap<>(FailureMode.class);
        for (FailureMode mode : FailureMode.values()) {
            List<Entry<Finding>> shown =
                    all().filter(finding -> mode.shownBy(finding.fact())).toList();
            if (!shown.isEmpty()) {
                asked.put(mode, shown);
            }
        }
        return asked;
    }

    /** Positions that have gone further than at the strip before. */
    public long worse() {
        return rows.stream()
                .flatMap(row -> Stream.concat(Stream.of(row.whole()), row.cells().stream()))
                .filter(StripCell::worse)
                .count();
    }
}
