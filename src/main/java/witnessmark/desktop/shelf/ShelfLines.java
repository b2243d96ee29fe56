package witnessmark.desktop.shelf;

import java.util.List;

/**
 * The shelf in words.
 *
 * @param day the day looked at
 * @param needHand how many things need a hand
 * @param parts every part, what needs a hand first
 * @param stock every batch, what runs short first
 * @param counted whether a limit of any part counts something else than running time
 */
record ShelfLines(String day, int needHand, List<ShelfLine> parts, List<StockLine> stock, boolean counted) {
    ShelfLines {
        parts = List.copyOf(parts);
        stock = List.copyOf(stock);
    }

    /** The parts shown under a choice, in their order. */
    List<ShelfLine> under(Whereabout where) {
        return parts.stream().filter(part -> part.shownUnder().contains(where)).toList();
    }
}
