package witnessmark.store;

import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Entry;
import witnessmark.domain.Fact;
import witnessmark.domain.Facts;
import witnessmark.domain.Fitment;
import witnessmark.domain.Id;
import witnessmark.domain.Part;
import witnessmark.domain.Quarantine;
import witnessmark.domain.Scrapping;
import witnessmark.domain.SentOut;
import witnessmark.domain.StockMove;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;
import witnessmark.quantity.Moment;

/** What the guards of quarantine, away, scrap and shelf refuse, as the problem people know. */
final class AsideRefusals {
    private final Facts facts;
    private final Names names;

    AsideRefusals(Facts facts, Names names) {
        this.facts = facts;
        this.names = names;
    }

    /** The problem behind a code, or null when it is of another guard or the entry in the way is not found. */
    @Nullable
    Problem of(Entry<?> entry, String code) {
        Fact refused = entry.fact();
        return switch (code) {
            case "PART_IN_QUARANTINE", "PART_AWAY", "PART_SCRAPPED" ->
                refused instanceof Fitment fitment ? fitted(fitment, code) : null;
            case "PART_STILL_FITTED" -> stillFitted(refused);
            case "STOCK_BELOW_NOTHING" -> refused instanceof StockMove move ? below(entry, move) : null;
            default -> null;
        };
    }

    private @Nullable Problem fitted(Fitment wanted, String code) {
        String part = names.part(wanted.part());
        if (code.equals("PART_IN_QUARANTINE")) {
            Quarantine aside = first(
                    Quarantine.class,
                    each -> each.part().equals(wanted.part())
                            && Moment.overlap(each.from(), each.to(), wanted.from(), wanted.to()));
            return aside == null ? null : Problem.of(ProblemKind.PART_IN_QUARANTINE, part, aside.from(), aside.why());
        }
        if (code.equals("PART_AWAY")) {
            SentOut away = first(
                    SentOut.class,
                    each -> wanted.part().equals(each.part())
                            && Moment.overlap(each.from(), each.back(), wanted.from(), wanted.to()));
            return away == null ? null : Problem.of(ProblemKind.PART_AWAY, part, away.sentTo(), away.from());
        }
        Scrapping scrapped = first(Scrapping.class, each -> each.part().equals(wanted.part()));
        return scrapped == null ? null : Problem.of(ProblemKind.PART_SCRAPPED, part, scrapped.at());
    }

    private @Nullable Problem stillFitted(Fact refused) {
        if (refused instanceof Quarantine aside) {
            return stillFitted(aside.part(), aside.from(), aside.to());
        }
        if (refused instanceof SentOut sent && sent.part() != null) {
            return stillFitted(sent.part(), sent.from(), sent.back());
        }
        return refused instanceof Scrapping scrapped ? stillFitted(scrapped.part(), scrapped.at(), null) : null;
    }

    private @Nullable Problem stillFitted(Id<Part> part, Moment from, @Nullable Moment to) {
        Fitment there = first(
                Fitment.class, each -> each.part().equals(part) && Moment.overlap(each.from(), each.to(), from, to));
        return there == null
                ? null
                : Problem.of(
                        ProblemKind.PART_STILL_FITTED,
                        names.part(part),
                        names.place(there),
                        there.from().isBefore(from) ? from : there.from());
    }

    private Problem below(Entry<?> entry, StockMove move) {
        int held = facts.of(StockMove.class).where(each -> each.stock().equals(move.stock())).stream()
                .filter(each -> !each.id().value().equals(entry.id().value()))
                .mapToInt(each -> each.fact().change())
                .sum();
        return Problem.of(ProblemKind.STOCK_BELOW_NOTHING, names.batch(move.stock()), held, -move.change());
    }

    private <F extends Fact> @Nullable F first(Class<F> kind, Predicate<F> asked) {
        return facts.of(kind).where(asked).stream().map(Entry::fact).findFirst().orElse(null);
    }
}
