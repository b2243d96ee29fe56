package witnessmark.wording;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.Set;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import witnessmark.cost.result.IncidentCost;
import witnessmark.cost.result.Piece;
import witnessmark.cost.result.Place;
import witnessmark.cost.result.SeasonCost;
import witnessmark.cost.result.SeasonSpan;
import witnessmark.cost.result.Span;
import witnessmark.cost.result.Switches;
import witnessmark.domain.Decision;
import witnessmark.domain.Facts;
import witnessmark.domain.FoundWhen;
import witnessmark.domain.Id;
import witnessmark.domain.Incident;
import witnessmark.domain.Severity;
import witnessmark.quantity.Moment;
import witnessmark.quantity.Money;
import witnessmark.quantity.RunningTime;

/** Whether a sentence on a season, the row of a failure and a decision that led to it say the same; common sense, no source. */
class SeasonWordsTest {
    private static final Currency EUR = Currency.getInstance("EUR");
    private static final Texts TEXTS = Texts.in(Locale.UK);
    private static final Measures MEASURES = new Measures(TEXTS, Units.METRIC);
    private static final SeasonWords WORDS = new SeasonWords(TEXTS, MEASURES);
    private static final MoneyWords MONEY = new MoneyWords(TEXTS, MEASURES);
    private static final Id<Incident> INCIDENT = new Id<>(new UUID(1, 2));
    private static final String LEFT_OUT = "All that is written of what failures cost is left out here.";

    /** All cash is spent either way, or was due anyway, and such is switched off. */
    @ParameterizedTest
    @CsvSource({"true, false, false, true", "false, true, true, false", "true, true, false, false"})
    void cash_that_the_switches_leave_out_is_left_out_in_the_sentence_the_row_and_the_decision(
            boolean allocated, boolean planned, boolean withAllocated, boolean withPlanned) {
        IncidentCost cost = cost(List.of(piece(Place.CASH, 120_000, planned, allocated)));
        Switches switches = new Switches(true, true, true, withAllocated, withPlanned);
        assertThat(finding(cost, switches)).startsWith(LEFT_OUT);
        assertThat(MONEY.together(cost, switches)).isEqualTo("left out");
        assertThat(MONEY.whole(cost, switches)).isEqualTo("all that is written is left out");
        assertThat(MONEY.in(Place.CASH, cost, switches)).isEqualTo("left out");
        assertThat(decision(cost, switches)).contains("all that is written of its cost is left out here");
        assertThat(WORDS.notes(List.of(cost), new Span(cost.total(switches), euros(120_000)), switches, season()))
                .noneMatch(note -> note.startsWith("Total"));
        assertThat(finding(cost, Switches.ALL)).startsWith("Failures took 1\u2009200.00 EUR;");
        assertThat(MONEY.in(Place.CASH, cost, Switches.ALL)).isEqualTo("1\u2009200.00");
    }

    /** Bought and given back whole. */
    @Test
    void what_is_counted_and_comes_to_nothing_is_0_everywhere() {
        IncidentCost cost =
                cost(List.of(piece(Place.CASH, 50_000, false, false), piece(Place.CASH, -50_000, false, false)));
        assertThat(finding(cost, Switches.USUAL)).isEqualTo("Failures took 0.00 EUR; 999.00 EUR was spent in all.");
        assertThat(MONEY.together(cost, Switches.USUAL)).isEqualTo("0.00");
        assertThat(decision(cost, Switches.USUAL)).contains("cost 0.00 EUR");
    }

    @Test
    void where_nothing_is_written_no_failure_has_cost_anything() {
        assertThat(finding(cost(List.of()), Switches.ALL)).startsWith("No failure has cost anything yet.");
    }

    /** Of any pieces and any switches, held against the rule written out here by hand. */
    @Test
    void they_never_contradict_each_other() {
        long seed = 160_612;
        Random random = new Random(seed);
        Place[] places = {Place.CASH, Place.LABOUR, Place.MISSED, Place.SPOILED};
        int left = 0;
        for (int at = 0; at < 4_000; at++) {
            List<Piece> pieces = new ArrayList<>();
            for (int n = random.nextInt(4); n >= 0; n--) {
                long minor = List.of(0L, 70_00L, -70_00L, 1L).get(random.nextInt(4));
                pieces.add(piece(places[random.nextInt(4)], minor, random.nextBoolean(), random.nextBoolean()));
            }
            Switches switches = new Switches(
                    random.nextBoolean(),
                    random.nextBoolean(),
                    random.nextBoolean(),
                    random.nextBoolean(),
                    random.nextBoolean());
            long sum = 0;
            boolean any = false;
            for (Piece piece : pieces) {
                boolean column = piece.place() == Place.CASH
                        || piece.place() == Place.LABOUR && switches.labour()
                        || piece.place() == Place.MISSED && switches.missed()
                        || piece.place() == Place.SPOILED && switches.spoiled();
                if (column
                        && (switches.allocated() || !piece.allocated())
                        && (switches.planned() || !piece.planned())) {
                    sum += piece.amount().minor();
                    any = true;
                }
            }
            String amount = MEASURES.money(euros(sum));
            IncidentCost cost = cost(pieces);
            String about = "seed " + seed + ", no. " + at + ": " + switches + " " + pieces;
            assertThat(finding(cost, switches)).as(about).startsWith(any ? "Failures took " + amount : LEFT_OUT);
            assertThat(MONEY.whole(cost, switches))
                    .as(about)
                    .isEqualTo(any ? amount : "all that is written is left out");
            assertThat(decision(cost, switches)).as(about).contains(any ? "cost " + amount : "is left out here");
            left += any ? 0 : 1;
        }
        assertThat(left).as("both are seen").isBetween(400, 3_600);
    }

    private static String finding(IncidentCost cost, Switches switches) {
        return WORDS.finding(List.of(cost), switches, season(), List.of(), Facts.none());
    }

    private static String decision(IncidentCost cost, Switches switches) {
        Moment asked = Moment.of(Instant.parse("2026-05-01T09:00:00Z"), ZoneOffset.UTC);
        Decision decision = new Decision(
                "D-1", "Run on?", asked, null, null, null, null, "", "", asked, "", "", "", null, INCIDENT, "");
        Incident led = new Incident(
                "INC-1",
                "Shell",
                asked,
                FoundWhen.ON_A_RUN,
                null,
                null,
                null,
                null,
                Severity.LOST_RUN,
                "",
                null,
                "",
                null,
                "",
                "",
                "");
        return new DecisionWords(TEXTS, MEASURES).cameOf(decision, led, cost, switches);
    }

    private static Piece piece(Place place, long minor, boolean planned, boolean allocated) {
        LocalDate day = LocalDate.of(2026, 5, 3);
        return new Piece(new Id<>(new UUID(1, 1)), place, day, euros(minor), null, null, INCIDENT, planned, allocated);
    }

    private static IncidentCost cost(List<Piece> pieces) {
        return new IncidentCost(INCIDENT, EUR, pieces, Set.of());
    }

    private static Money euros(long minor) {
        return new Money(minor, EUR);
    }

    /** Its sums of failures are those of nothing: the sentence goes by the pieces. */
    private static SeasonCost season() {
        Money none = Money.none(EUR);
        return new SeasonCost(
                new SeasonSpan("2026", LocalDate.of(2026, 1, 1), LocalDate.of(2026, 12, 31), null),
                none,
                euros(99_900),
                none,
                none,
                none,
                none,
                none,
                none,
                none,
                none,
                none,
                none,
                RunningTime.NONE,
                null,
                List.of());
    }
}
