package witnessmark.cost.result;

import java.util.Currency;
import java.util.List;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Id;
import witnessmark.domain.Incident;
import witnessmark.domain.PartKind;
import witnessmark.quantity.Money;

/**
 * All that went on one kind of part, failed or not. Each piece is in one kind and in one of the three.
 *
 * @param kind which kind, or null for what names no kind of part
 * @param home the currency of its amounts
 * @param due bought or worked on when nothing of it had failed, or due anyway
 * @param bought because of a failure, of whatever part
 * @param rest what failures of this kind cost besides parts that are named
 */
public record KindCost(@Nullable PartKind kind, Currency home, List<Piece> due, List<Piece> bought, List<Rest> rest) {
    public KindCost {
        due = List.copyOf(due);
        bought = List.copyOf(bought);
        rest = List.copyOf(rest);
    }

    /**
     * What a failure cost besides the parts that are named, or a share of it where parts of several kinds failed.
     *
     * @param incident which failure
     * @param pieces what the whole is the sum of
     * @param whole all of that
     * @param amount how much of it is this kind's
     */
    public record Rest(Id<Incident> incident, List<Piece> pieces, Money whole, Money amount) {
        public Rest {
            pieces = List.copyOf(pieces);
        }

        /** Whether all of it is this kind's. */
        public boolean all() {
            return amount.equals(whole);
        }
    }

    public Money sumDue() {
        return sum(due);
    }

    public Money sumBought() {
        return sum(bought);
    }

    public Money sumRest() {
        return rest.stream().map(Rest::amount).reduce(Money.none(home), Money::plus);
    }

    /** All three. */
    public Money together() {
        return sumDue().plus(sumBought()).plus(sumRest());
    }

    private Money sum(List<Piece> pieces) {
        return pieces.stream().map(Piece::amount).reduce(Money.none(home), Money::plus);
    }
}
