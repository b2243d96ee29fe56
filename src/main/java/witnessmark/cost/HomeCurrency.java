package witnessmark.cost;

import java.util.Currency;
import java.util.Optional;
import witnessmark.domain.Entry;
import witnessmark.domain.Facts;
import witnessmark.domain.Team;

/** The currency a team counts in. */
public final class HomeCurrency {
    private static final Currency OTHERWISE = Currency.getInstance("EUR");

    private HomeCurrency() {}

    /** The team's own; the euro where the logbook names none that anybody pays in. */
    public static Currency of(Facts facts) {
        return facts.of(Team.class)
                .inForce()
                .map(Entry::fact)
                .flatMap(team -> named(team.currency()).stream())
                .findFirst()
                .orElse(OTHERWISE);
    }

    /** The currency with this code of ISO 4217, if anybody pays in it. */
    public static Optional<Currency> named(String code) {
        return Currency.getAvailableCurrencies().stream()
                .filter(currency -> currency.getCurrencyCode().equals(code) && currency.getDefaultFractionDigits() >= 0)
                .findFirst();
    }
}
