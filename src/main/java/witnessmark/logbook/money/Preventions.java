package witnessmark.logbook.money;

import java.math.BigDecimal;
import java.util.Currency;
import java.util.List;
import org.jspecify.annotations.Nullable;
import witnessmark.cost.SeasonTotals;
import witnessmark.cost.Work;
import witnessmark.domain.Entry;
import witnessmark.domain.Facts;
import witnessmark.domain.Id;
import witnessmark.domain.Incident;
import witnessmark.domain.Prevention;
import witnessmark.domain.RateKind;
import witnessmark.ledger.AsOf;
import witnessmark.quantity.Money;
import witnessmark.quantity.RunningTime;

/** What it would have taken to keep incidents from happening. */
final class Preventions {
    private final Facts facts;
    private final Currency home;
    private final @Nullable Money hour;

    Preventions(Facts facts, Currency home, AsOf asOf) {
        this.facts = facts;
        this.home = home;
        this.hour = SeasonTotals.rate(facts, RateKind.OWN_LABOUR, asOf.day())
                .map(rate -> rate.amount())
                .orElse(null);
    }

    List<Entry<Prevention>> of(Id<Incident> incident) {
        return facts.of(Prevention.class).where(each -> each.incident().equals(incident));
    }

    Failure.Kept together(Id<Incident> incident) {
        Money money = Money.none(home);
        int minutes = 0;
        boolean complete = true;
        List<Entry<Prevention>> all = of(incident);
        for (Entry<Prevention> each : all) {
            Money price = each.fact().money();
            Integer takes = each.fact().minutes();
            boolean known = price != null && price.currency().equals(home);
            money = known && price != null ? money.plus(price) : money;
            minutes += takes == null ? 0 : takes;
            complete &= known && takes != null;
        }
        Money labour = hour == null ? null : Work.valued(hour, RunningTime.ofMinutes(BigDecimal.valueOf(minutes)));
        return new Failure.Kept(all.size(), money, minutes, labour, complete);
    }
}
