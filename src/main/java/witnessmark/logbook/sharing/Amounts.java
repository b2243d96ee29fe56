package witnessmark.logbook.sharing;

import java.util.Arrays;
import java.util.Currency;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import witnessmark.domain.CostLine;
import witnessmark.domain.Facts;
import witnessmark.domain.Team;

/**
 * Finds amounts of money in a text: a figure beside the code or the sign of a usual currency, or of one the logbook is kept in.
 * Pounds alone are none: they may be of a force or a weight.
 */
final class Amounts {
    private static final String USUAL = "[€£$¥₩₹₺₽₴]|EUR|GBP|USD|CHF|SEK|NOK|DKK|JPY|PLN|CZK|AUD|CAD|NZD|kr|zł|Kč|"
            + "euros?|dollars?|pounds?\\s+sterling|quid";
    private static final String FIGURE = "\\d(?:[\\d.,\\u00A0\\u202F ]*\\d)?";

    private final Pattern any;

    Amounts(Facts facts) {
        Set<String> own = new LinkedHashSet<>();
        Stream.concat(
                        facts.of(Team.class).all().stream()
                                .map(team -> Currency.getInstance(team.fact().currency())),
                        facts.of(CostLine.class).all().stream()
                                .map(line -> line.fact().paid().currency()))
                .distinct()
                .forEach(currency -> own.addAll(written(currency)));
        String before = among(own, sign -> true);
        // a lone letter behind a figure is as well a unit: 5 L
        String behind = among(own, sign -> !sign.matches("\\p{L}"));
        this.any = Pattern.compile(
                "(?<!\\p{L})" + before + "\\s?" + FIGURE + "|" + FIGURE + "\\s?" + behind + "(?!\\p{L})");
    }

    private static String among(Set<String> own, Predicate<String> taken) {
        return own.stream()
                        .filter(taken)
                        .map(Pattern::quote)
                        .collect(Collectors.joining("|", "(?:", own.stream().anyMatch(taken) ? "|" : ""))
                + "(?i:" + USUAL + "))";
    }

    /** Its code of ISO 4217 and the signs of the countries that pay in it. */
    private static List<String> written(Currency currency) {
        return Stream.concat(
                        Stream.of(currency.getCurrencyCode()),
                        Arrays.stream(Locale.getAvailableLocales())
                                .filter(locale -> paysIn(locale, currency))
                                .map(currency::getSymbol))
                .distinct()
                .toList();
    }

    private static boolean paysIn(Locale locale, Currency currency) {
        try {
            return locale.getCountry().length() == 2 && currency.equals(Currency.getInstance(locale));
        } catch (IllegalArgumentException none) {
            return false; // a country no longer there, or none of ISO 3166
        }
    }

    /** The text with these words in place of every amount. */
    String without(String text, String words) {
        return any.matcher(text).replaceAll(Matcher.quoteReplacement(words));
    }
}
