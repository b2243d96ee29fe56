package witnessmark.logbook.shelf;

import java.time.LocalDate;
import java.util.List;

/**
 * Every part and all stock as of a day.
 *
 * @param day the day looked at
 * @param readOnly whether the day is an earlier one
 * @param parts what needs a hand first, then what stands worst, then by mark
 * @param stock what runs short first, then by design and batch
 */
public record Shelf(LocalDate day, boolean readOnly, List<ShelfPart> parts, List<StockRow> stock) {
    public Shelf {
        parts = List.copyOf(parts);
        stock = List.copyOf(stock);
    }

    /** How many things need a hand: parts that nobody decided about or that are late, designs that run short. */
    public int needHand() {
        long parts =
                this.parts.stream().filter(part -> part.where().needsHand()).count();
        return Math.toIntExact(parts + SeeShelf.shortDesigns(stock.stream().map(StockRow::level)));
    }
}
