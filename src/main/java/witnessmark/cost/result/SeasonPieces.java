package witnessmark.cost.result;

import java.util.List;

/**
 * The pieces a season's figures are sums of.
 *
 * @param counted every piece that counts in it, owed to a failure or not
 * @param kept of its own lines, what is still to be used, or was used or lost in a later season
 * @param broughtIn of the counted ones, those of money that earlier seasons spent
 */
public record SeasonPieces(List<Piece> counted, List<Piece> kept, List<Piece> broughtIn) {
    public SeasonPieces {
        counted = List.copyOf(counted);
        kept = List.copyOf(kept);
        broughtIn = List.copyOf(broughtIn);
    }
}
