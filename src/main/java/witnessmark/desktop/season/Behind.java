package witnessmark.desktop.season;

import java.util.List;

/**
 * A figure that opens to its lines.
 *
 * @param name what it stands for
 * @param amount all of it
 * @param lines they are together that amount, to the minor unit
 */
record Behind(String name, Amount amount, List<CostRow> lines) {
    Behind {
        lines = List.copyOf(lines);
    }
}
