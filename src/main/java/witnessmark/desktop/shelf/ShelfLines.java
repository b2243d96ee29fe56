package witnessmark.desktop.shelf;

import java.util.List;
import java.util.Map;

/**
 * The shelf in words.
 *
 * @param day the day looked at
 * @param needHand how many things need a hand
 * @param parts every part, what needs a hand first
 * @param under the parts shown under each choice, in the same order
 * @param stock every batch, what runs short first
 * @param counted whether a limit of any part counts something else than running time
 */
record ShelfLines(
        String day,
        int needHand,
        List<ShelfLine> parts,
        Map<Whereabout, List<ShelfLine>> under,
        List<StockLine> stock,
        boolean counted) {
    /** Before anything was read. */
    static final ShelfLines NONE = new ShelfLines("", 0, List.of(), Map.of(), List.of(), false);

    ShelfLines {
        parts = List.copyOf(parts);
        under = Map.copyOf(under);
        stock = List.copyOf(stock);
    }

    /** The parts shown under a choice, in their order. */
    List<ShelfLine> under(Whereabout where) {
        return under.getOrDefault(where, List.of());
    }
}
