package witnessmark.cost;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Currency;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import witnessmark.cost.result.CostBook;
import witnessmark.cost.result.IncidentCost;
import witnessmark.cost.result.KindCost;
import witnessmark.cost.result.Piece;
import witnessmark.cost.result.Place;
import witnessmark.cost.result.SeasonSpan;
import witnessmark.cost.result.Switches;
import witnessmark.domain.CostBasis;
import witnessmark.domain.CostCategory;
import witnessmark.domain.Entry;
import witnessmark.domain.Fact;
import witnessmark.domain.Facts;
import witnessmark.domain.FoundWhen;
import witnessmark.domain.Id;
import witnessmark.domain.Incident;
import witnessmark.domain.IncidentPart;
import witnessmark.domain.Part;
import witnessmark.domain.PartDesign;
import witnessmark.domain.PartHarm;
import witnessmark.domain.PartKind;
import witnessmark.domain.Severity;
import witnessmark.domain.Standing;
import witnessmark.ledger.AsOf;
import witnessmark.quantity.Moment;
import witnessmark.quantity.Money;

/** What went on each kind of part: sums done by hand, prices invented; and for anything, each piece in one kind. */
class KindCostsTest {
    private static final ZoneId ZONE = ZoneId.of("Europe/London");
    private static final LocalDate DAY = LocalDate.of(2026, 7, 8);
    private static final SeasonSpan SEASON =
            new SeasonSpan("2026", LocalDate.of(2026, 1, 1), LocalDate.of(2026, 12, 31), null);

    private static final Currency EUR = Currency.getInstance("EUR");

    private final List<Entry<?>> entries = new ArrayList<>();
    private final Id<Part> springs = part("S-1", PartKind.VALVE_SPRINGS);
    private final Id<Part> head = part("H-1", PartKind.HEAD);
    private final Id<Incident> dropped = incident("INC-1");

    /**
     * Springs for 272 while nothing broke. Then springs fail: 368 for new ones, 900 for a head, 501 of other costs. All of
     * it is 272 + 368 + 900 + 501 = 2 041; fuel of 60 names no part.
     */
    @Test
    void what_names_a_part_is_its_kind_s_and_what_else_a_failure_cost_is_of_the_kind_that_failed() {
        failed(dropped, springs);
        add(new CostDraft(DAY, "springs", euros(272)).of(springs).line());
        add(new CostDraft(DAY, "springs", euros(368))
                .of(springs)
                .because(dropped)
                .line());
        add(new CostDraft(DAY, "used head", euros(900))
                .of(head)
                .because(dropped)
                .line());
        add(new CostDraft(DAY, "strip and build", euros(501)).because(dropped).line());
        add(new CostDraft(DAY, "fuel", euros(60)).line());
        assertThat(kinds(Switches.USUAL))
                .extracting(
                        KindCost::kind, KindCost::sumDue, KindCost::sumBought, KindCost::sumRest, KindCost::together)
                .containsExactly(
                        tuple(PartKind.VALVE_SPRINGS, euros(272), euros(368), euros(501), euros(1_141)),
                        tuple(PartKind.HEAD, euros(0), euros(900), euros(0), euros(900)),
                        tuple(null, euros(60), euros(0), euros(0), euros(60)));
        failed(dropped, head);
        assertThat(kinds(Switches.USUAL).get(0).rest())
                .extracting(KindCost.Rest::amount)
                .as("of 501.00 half")
                .containsExactly(Money.parse("250.50 EUR"));
    }

    @Test
    void springs_due_anyway_did_not_fail_and_own_work_counts_where_it_is_asked_for() {
        add(new CostDraft(DAY, "springs at their limit", euros(272))
                .of(springs)
                .because(dropped)
                .spent(true, false)
                .line());
        add(new CostDraft(DAY, "springs changed", euros(84))
                .of(springs)
                .as(CostCategory.LABOUR, CostBasis.VALUED)
                .line());
        assertThat(kinds(Switches.USUAL)).extracting(KindCost::sumDue).containsExactly(euros(356));
        assertThat(kinds(new Switches(false, true, false, true, true)))
                .extracting(KindCost::sumDue)
                .containsExactly(euros(272));
        assertThat(kinds(new Switches(false, true, false, true, false))).isEmpty();
    }

    /** Against plain sums: failures the switches take in, racing, and own work where it counts; no piece is in two. */
    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void of_anything_the_kinds_are_together_all_that_is_counted_each_piece_once(long seed) {
        Random random = new Random(seed);
        anything(random);
        Switches switches = new Switches(
                random.nextBoolean(), true, random.nextBoolean(), random.nextBoolean(), random.nextBoolean());
        CostBook book = book();
        long counted = book.pieces().stream()
                .filter(piece -> piece.place().ofFailure() && switches.takes(piece)
                        || piece.place() == Place.RUNNING
                        || piece.place() == Place.OWN_WORK && switches.labour())
                .mapToLong(piece -> piece.amount().minor())
                .sum();
        List<KindCost> kinds = kinds(switches);
        assertThat(kinds.stream().mapToLong(kind -> kind.together().minor()).sum())
                .as("seed %d", seed)
                .isEqualTo(counted);
        Set<Piece> seen = new HashSet<>();
        for (KindCost kind : kinds) {
            List<Piece> pieces = new ArrayList<>(kind.due());
            pieces.addAll(kind.bought());
            assertThat(pieces).as("seed %d", seed).allMatch(seen::add);
            kind.rest().stream()
                    .filter(KindCost.Rest::all)
                    .forEach(rest ->
                            assertThat(rest.pieces()).as("seed %d", seed).allMatch(seen::add));
        }
    }

    private void anything(Random random) {
        List<Id<Part>> parts = List.of(springs, head, part("C-1", PartKind.CRANK), part("S-2", PartKind.VALVE_SPRINGS));
        List<Id<Incident>> incidents = List.of(dropped, incident("INC-2"), incident("INC-3"));
        for (Id<Incident> incident : incidents) {
            for (int k = random.nextInt(3); k > 0; k--) {
                failed(incident, parts.get(random.nextInt(parts.size())));
            }
        }
        for (int i = 0; i < 60; i++) {
            CostDraft draft = new CostDraft(DAY.minusDays(i), "cost " + i, new Money(1 + random.nextInt(99_999), EUR))
                    .as(CostCategory.PARTS, random.nextInt(3) == 0 ? CostBasis.VALUED : CostBasis.CASH)
                    .spent(random.nextInt(4) == 0, random.nextInt(4) == 0);
            if (random.nextBoolean()) {
                draft.of(parts.get(random.nextInt(parts.size())));
            }
            if (random.nextBoolean()) {
                draft.because(incidents.get(random.nextInt(incidents.size())));
            }
            add(draft.line());
        }
    }

    private List<KindCost> kinds(Switches switches) {
        Facts facts = Facts.none().with(entries);
        CostBook book = book();
        List<IncidentCost> failures = Failures.all(facts, book, new AsOf(DAY, ZONE), piece -> SEASON.has(piece.day()));
        return KindCosts.of(facts, book, SEASON, failures, switches);
    }

    private CostBook book() {
        return Costs.asOf(Facts.none().with(entries), new AsOf(DAY, ZONE));
    }

    private Id<Part> part(String mark, PartKind kind) {
        Id<PartDesign> design = add(new PartDesign("design " + mark, kind, "", "", false, false, "", null));
        return add(new Part(mark, design, "", "", null, null, null, null, null, null, ""));
    }

    private void failed(Id<Incident> incident, Id<Part> part) {
        add(new IncidentPart(incident, part, "", PartHarm.FAILED, null, false, null, ""));
    }

    private Id<Incident> incident(String mark) {
        return add(new Incident(
                mark,
                "broke",
                Moment.of(DAY.minusDays(90).atTime(11, 0), ZONE),
                FoundWhen.ON_A_RUN,
                null,
                null,
                null,
                null,
                Severity.RETIRED,
                "",
                null,
                "",
                null,
                "",
                "",
                ""));
    }

    private static Money euros(long units) {
        return Money.parse(units + ".00 EUR");
    }

    private <F extends Fact> Id<F> add(F fact) {
        Id<F> id = new Id<>(UUID.randomUUID());
        entries.add(new Entry<>(id, fact, Standing.IN_FORCE, null, 1));
        return id;
    }
}
