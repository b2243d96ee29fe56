package witnessmark.logbook.sheets;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.EngineDesign;
import witnessmark.domain.Entry;
import witnessmark.domain.Id;
import witnessmark.domain.Limit;
import witnessmark.domain.LimitRank;

/**
 * What is set already for a line of the list, in engines of a design, from a day on.
 *
 * @param all every limit of that line, of any rank, that ends on that day or later, or never
 * @param design null for all designs
 */
record StandingLimit(
        List<Entry<Limit>> all,
        @Nullable Id<EngineDesign> design,
        @Nullable LimitRank rank,
        LocalDate from) {
    static StandingLimit of(
            SheetSight sight,
            ListedLimit listed,
            @Nullable Id<EngineDesign> design,
            @Nullable LimitRank rank,
            LocalDate from) {
        return new StandingLimit(
                sight.facts()
                        .of(Limit.class)
                        .where(limit -> (listed.is(limit, design) || listed.is(limit, null)) && !over(limit, from)),
                design,
                rank,
                from);
    }

    /** The one to be told of: for the design rather than for all, of the rank picked, else the strongest. */
    Optional<Limit> told() {
        return all.stream()
                .map(Entry::fact)
                .filter(limit -> !limit.validFrom().isAfter(from))
                .min(Comparator.comparing((Limit limit) -> limit.design() == null)
                        .thenComparing(limit -> limit.rank() != rank)
                        .thenComparing(Limit::rank));
    }

    /** Whether that very figure stands without an end. */
    boolean says(long amount) {
        return rivals().map(Entry::fact).anyMatch(limit -> isThat(limit, amount));
    }

    /** Those of that rank and design that a new figure takes the place of. */
    List<Entry<Limit>> replacedBy(long amount) {
        return rivals().filter(each -> !isThat(each.fact(), amount)).toList();
    }

    private Stream<Entry<Limit>> rivals() {
        return all.stream()
                .filter(each ->
                        each.fact().rank() == rank && Objects.equals(each.fact().design(), design));
    }

    private boolean isThat(Limit limit, long amount) {
        return limit.amount() == amount
                && limit.validTo() == null
                && !limit.validFrom().isAfter(from);
    }

    private static boolean over(Limit limit, LocalDate from) {
        return limit.validTo() != null && limit.validTo().isBefore(from);
    }
}
