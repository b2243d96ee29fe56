package witnessmark.desktop.season;

import java.time.LocalDate;
import java.util.List;

/**
 * One failure as a row shows it.
 *
 * @param id the text form of the incident's identity
 * @param day when it happened, in words
 * @param at the same to sort by
 * @param name its mark and what it was
 * @param columns cash out, own labour, events missed, weekends spoiled
 * @param total what the switches take in
 * @param prevention what would have prevented it
 * @param cameOf the decisions it came of; empty for none
 * @param lines what it opens to
 */
record FailureLine(
        String id,
        String day,
        LocalDate at,
        String name,
        List<Amount> columns,
        Amount total,
        String prevention,
        String cameOf,
        List<CostRow> lines) {
    FailureLine {
        columns = List.copyOf(columns);
        lines = List.copyOf(lines);
    }

    Behind behind() {
        return new Behind(name, total, lines);
    }
}
