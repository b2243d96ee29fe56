package witnessmark.cost;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import witnessmark.cost.result.LostLife;
import witnessmark.domain.CostLine;
import witnessmark.domain.Entry;
import witnessmark.domain.Facts;
import witnessmark.domain.Id;
import witnessmark.domain.Incident;
import witnessmark.domain.IncidentPart;
import witnessmark.domain.Part;
import witnessmark.quantity.Money;
import witnessmark.quantity.RunningTime;

/** Splits what parts of an incident cost by the life they had run: price times life not used, out of the price. */
public final class LifeLost {
    private LifeLost() {}

    /** For every cost of the incident that is the price of a part it names. */
    public static List<LostLife> of(Facts facts, Id<Incident> incident) {
        Currency home = HomeCurrency.of(facts);
        List<LostLife> all = new ArrayList<>();
        for (Entry<CostLine> line : facts.of(CostLine.class).where(cost -> incident.equals(cost.incident()))) {
            Id<Part> part = line.fact().part();
            Optional<Money> price = Costs.home(line.fact().paid(), line.fact().rate(), home);
            if (part != null && price.isPresent()) {
                named(facts, incident, part).ifPresent(named -> all.add(split(line.id(), price.get(), named)));
            }
        }
        return all;
    }

    private static Optional<IncidentPart> named(Facts facts, Id<Incident> incident, Id<Part> part) {
        return facts
                .of(IncidentPart.class)
                .where(named ->
                        named.incident().equals(incident) && named.part().equals(part))
                .stream()
                .map(Entry::fact)
                .findFirst();
    }

    private static LostLife split(Id<CostLine> line, Money price, IncidentPart named) {
        RunningTime ran = named.atLeast() ? null : named.ran();
        Money used = used(price, ran, named.limit());
        return new LostLife(
                line, named.part(), price, ran, named.limit(), used, used == null ? null : price.minus(used));
    }

    /** The price times life used over limit, at most the price; null where either is not known. */
    static @Nullable Money used(Money price, @Nullable RunningTime ran, @Nullable RunningTime limit) {
        if (ran == null || limit == null || limit.millis() == 0) {
            return null;
        }
        BigDecimal share = BigDecimal.valueOf(Math.min(ran.millis(), limit.millis()));
        return new Money(
                BigDecimal.valueOf(price.minor())
                        .multiply(share)
                        .divide(BigDecimal.valueOf(limit.millis()), 0, RoundingMode.HALF_UP)
                        .longValueExact(),
                price.currency());
    }
}
