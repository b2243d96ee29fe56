package witnessmark.logbook.bank;

import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.BankLine;
import witnessmark.domain.BankMatch;
import witnessmark.domain.CostBasis;
import witnessmark.domain.CostLine;
import witnessmark.domain.Entry;
import witnessmark.domain.Facts;
import witnessmark.domain.Id;
import witnessmark.domain.IncomeLine;
import witnessmark.domain.Standing;
import witnessmark.ledger.AsOf;
import witnessmark.logbook.View;
import witnessmark.logbook.port.Ids;
import witnessmark.quantity.Money;

/**
 * Holds lines of statements against costs and income. A line is proposed for what has exactly its amount (a cost with its
 * tax), by the invoice or the name it carries, else by the nearest day; what fits two things equally well is proposed for
 * neither. Nothing is matched until somebody says so.
 */
public final class Reconcile {
    /** Days between a cost and its booking beyond which only a number or a name on the line ties them. */
    private static final int NEAR = 21;

    private static final int BY_INVOICE = 1_000;
    private static final int BY_NAME = 100;

    private final Facts facts;
    private final AsOf asOf;
    private final Map<Id<BankLine>, Money> matched = new HashMap<>();
    private final Map<Id<?>, Money> paid = new HashMap<>();

    private Reconcile(Facts facts, AsOf asOf) {
        this.facts = facts;
        this.asOf = asOf;
        facts.of(BankMatch.class).inForce().map(Entry::fact).forEach(match -> {
            matched.merge(match.bank(), match.amount(), Money::plus);
            Id<?> thing = match.cost() == null ? match.income() : match.cost();
            if (thing != null) {
                paid.merge(thing, match.amount(), Money::plus);
            }
        });
    }

    /** Everything up to the view's day. */
    public static Reconciled of(View view) {
        return of(view.facts(), view.ledger().asOf());
    }

    /** Everything up to a day. */
    static Reconciled of(Facts facts, AsOf asOf) {
        return new Reconcile(facts, asOf).all();
    }

    /** The match that a proposal makes, to be written when somebody agrees. */
    public static Optional<Entry<BankMatch>> agreed(Reconciled.Line line, Ids ids) {
        if (!line.proposed()) {
            return Optional.empty();
        }
        BankMatch match = new BankMatch(
                line.bank().id(),
                line.cost() == null ? null : line.cost().id(),
                line.cost() == null && line.earning() != null ? line.earning().id() : null,
                line.left());
        return Optional.of(new Entry<BankMatch>(ids.next(), match, Standing.IN_FORCE, null, 1));
    }

    /** A line of a statement as it stands once it is no business of the team, and why. */
    public static Entry<BankLine> aside(Reconciled.Line line, String because) {
        BankLine bank = line.bank().fact();
        return new Entry<>(
                line.bank().id(),
                new BankLine(
                        bank.account(),
                        bank.day(),
                        bank.amount(),
                        bank.text(),
                        bank.reference(),
                        bank.nth(),
                        bank.source(),
                        because),
                Standing.IN_FORCE,
                null,
                line.bank().rev() + 1);
    }

    private Reconciled all() {
        List<Reconciled.Line> lines = new ArrayList<>();
        Set<Id<?>> proposed = new HashSet<>();
        List<Entry<BankLine>> bank = facts.of(BankLine.class)
                .inForce()
                .filter(line -> !line.fact().day().isAfter(asOf.day()))
                .sorted(Comparator.comparing(line -> line.fact().day()))
                .toList();
        for (Entry<BankLine> line : bank) {
            Money left = line.fact().amount().minus(matched.getOrDefault(line.id(), none(line.fact())));
            boolean settled = left.isNone() || !line.fact().aside().isBlank();
            Entry<CostLine> cost = settled ? null : cost(line.fact(), left, proposed);
            Entry<IncomeLine> earning = settled || cost != null ? null : earning(line.fact(), left, proposed);
            if (cost != null) {
                proposed.add(cost.id());
            } else if (earning != null) {
                proposed.add(earning.id());
            }
            lines.add(new Reconciled.Line(line, left, cost, earning));
        }
        return new Reconciled(lines, unpaid(), unseen());
    }

    private static Money none(BankLine line) {
        return Money.none(line.amount().currency());
    }

    private @Nullable Entry<CostLine> cost(BankLine line, Money left, Set<Id<?>> proposed) {
        return best(
                facts
                        .of(CostLine.class)
                        .where(cost -> cost.basis() != CostBasis.VALUED
                                && (open(cost, left)
                                        || left.minor() > 0 && cost.recovered().equals(left)))
                        .stream()
                        .filter(cost -> !proposed.contains(cost.id()) && !settled(cost, left))
                        .toList(),
                cost -> score(line, cost.day().toEpochDay(), cost.invoice(), cost.supplier() + " " + cost.what()));
    }

    private static boolean open(CostLine cost, Money left) {
        return due(cost).negated().equals(left);
    }

    /** What an invoice says: the cost with its tax. */
    private static Money due(CostLine cost) {
        return cost.tax() == null ? cost.paid() : cost.paid().plus(cost.tax());
    }

    /** Whether a cost has already been paid, or paid back, by that much. */
    private boolean settled(Entry<CostLine> cost, Money left) {
        Money sum = paid.get(cost.id());
        return sum != null
                && (left.minor() < 0
                        ? sum.minor() <= left.minor()
                        : !sum.equals(due(cost.fact()).negated()));
    }

    private @Nullable Entry<IncomeLine> earning(BankLine line, Money left, Set<Id<?>> proposed) {
        return best(
                facts.of(IncomeLine.class).where(income -> income.amount().equals(left)).stream()
                        .filter(income -> !proposed.contains(income.id()) && !paid.containsKey(income.id()))
                        .toList(),
                income -> score(line, income.day().toEpochDay(), "", income.from() + " " + income.what()));
    }

    /** The one that fits best; null where none is near enough, or two fit equally well. */
    private static <F extends witnessmark.domain.Fact> @Nullable Entry<F> best(
            List<Entry<F>> all, java.util.function.ToIntFunction<F> score) {
        int most = -NEAR - 1;
        Entry<F> best = null;
        boolean twice = false;
        for (Entry<F> each : all) {
            int now = score.applyAsInt(each.fact());
            if (now > most) {
                most = now;
                best = each;
                twice = false;
            } else if (now == most) {
                twice = true;
            }
        }
        return twice ? null : best;
    }

    private static int score(BankLine line, long day, String invoice, String names) {
        int score = (int)
                -Math.min(9_999, Math.abs(ChronoUnit.DAYS.between(java.time.LocalDate.ofEpochDay(day), line.day())));
        String text = (line.text() + " " + line.reference()).toLowerCase(Locale.ROOT);
        if (invoice.length() >= 3 && text.contains(invoice.toLowerCase(Locale.ROOT))) {
            score += BY_INVOICE;
        }
        for (String word : names.toLowerCase(Locale.ROOT).split("[^\\p{L}\\p{N}]+")) {
            if (word.length() >= 4 && text.contains(word)) {
                return score + BY_NAME;
            }
        }
        return score;
    }

    private List<Entry<CostLine>> unpaid() {
        return facts
                .of(CostLine.class)
                .where(cost -> cost.basis() == CostBasis.CASH
                        && !cost.paid().isNone()
                        && !cost.day().isAfter(asOf.day()))
                .stream()
                .filter(cost -> !paid.containsKey(cost.id()))
                .sorted(Comparator.comparing(cost -> cost.fact().day()))
                .toList();
    }

    private List<Entry<IncomeLine>> unseen() {
        return facts.of(IncomeLine.class).where(income -> !income.day().isAfter(asOf.day())).stream()
                .filter(income -> !paid.containsKey(income.id()))
                .sorted(Comparator.comparing(income -> income.fact().day()))
                .toList();
    }
}
