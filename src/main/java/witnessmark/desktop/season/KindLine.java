package witnessmark.desktop.season;

import java.util.List;

/**
 * All that went on a kind of part.
 *
 * @param name which kind
 * @param due bought or worked on when nothing of it had failed, or due anyway
 * @param bought because of a failure
 * @param rest what failures of it cost besides
 * @param together all three
 * @param behind what it opens to
 */
record KindLine(String name, Amount due, Amount bought, Amount rest, Amount together, Behind behind) {
    /** The three in the order of their columns. */
    List<Amount> columns() {
        return List.of(due, bought, rest);
    }
}
