package witnessmark.desktop.shelf;

import java.util.Locale;
import java.util.function.Predicate;
import witnessmark.ledger.result.Where;
import witnessmark.logbook.shelf.ShelfPart;

/** Which parts are shown, by where they are. A part may belong to several. */
enum Whereabout {
    EVERYWHERE(part -> true),
    NEEDS_HAND(part -> part.where().needsHand()),
    FITTED(part -> part.where().state() == Where.State.FITTED),
    ON_SHELF(part -> part.where().state() == Where.State.SPARE),
    WITH_OTHERS(part -> part.where().away() != null && !part.gone()),
    ASIDE(part -> part.where().undecided()),
    BORROWED(part -> part.where().borrowed()),
    GONE(ShelfPart::gone);

    private final Predicate<ShelfPart> holds;

    Whereabout(Predicate<ShelfPart> holds) {
        this.holds = holds;
    }

    boolean holds(ShelfPart part) {
        return holds.test(part);
    }

    /** The key of its words, with the number of parts for {0}. */
    String key() {
        return "shelf.show." + name().toLowerCase(Locale.ROOT);
    }

    /** The key of the sentence that stands where there is none. */
    String noneKey() {
        return "shelf.none." + name().toLowerCase(Locale.ROOT);
    }
}
