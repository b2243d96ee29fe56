package witnessmark.study.result;

import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Entry;
import witnessmark.domain.HowMarked;
import witnessmark.domain.Part;
import witnessmark.ledger.result.Life;

/**
 * One line of a strip report with its positions.
 *
 * @param line which place
 * @param opened whether the build laid it open
 * @param part the part that sat there when the engine was opened, or null when none did or nobody can tell which
 * @param run what that part had run by then, or null without one
 * @param whole what was found of all of it
 * @param cells its numbered positions, in their order; empty where nobody numbers it
 * @param pattern what stands out when they are looked at together
 */
public record StripRow(
        StripLine line,
        boolean opened,
        @Nullable Entry<Part> part,
        @Nullable Life run,
        StripCell whole,
        List<StripCell> cells,
        Pattern pattern) {
    /** What the positions of a line show together. */
    public enum Pattern {
        NONE,
        /** One is at least two steps worse than every other that was judged: something of that one. */
        ONE_ALONE,
        /** All were judged, all are marked, and none more than a step from another: something they share. */
        ALL_ALIKE
    }

    public StripRow {
        cells = List.copyOf(cells);
    }

    /** All of it first, then each position. */
    public StripCell cell(int column) {
        return column == 0 ? whole : cells.get(column - 1);
    }

    /** Whether anybody wrote down anything of it. */
    public boolean looked() {
        return !whole.found().isEmpty()
                || cells.stream().anyMatch(cell -> !cell.found().isEmpty());
    }

    /** The one that stands alone. */
    public Optional<StripCell> alone() {
        return pattern == Pattern.ONE_ALONE
                ? cells.stream()
                        .max(Comparator.comparingInt(
                                cell -> cell.how().map(HowMarked::ordinal).orElse(-1)))
                : Optional.empty();
    }

    /** How many of its positions were looked at; one where it has none and was looked at. */
    public int lookedAt() {
        if (cells.isEmpty() || !whole.found().isEmpty()) {
            return looked() ? positions() : 0;
        }
        return (int) cells.stream().filter(cell -> !cell.found().isEmpty()).count();
    }

    /** How many positions it has; one where nobody numbers them. */
    public int positions() {
        return Math.max(1, cells.size());
    }

    /** What somebody judged, of its positions. */
    public List<HowMarked> judged() {
        return cells.stream()
                .map(cell -> cell.how().orElse(null))
                .filter(Objects::nonNull)
                .toList();
    }
}
