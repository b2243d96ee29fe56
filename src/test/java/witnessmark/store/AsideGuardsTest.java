package witnessmark.store;

import static org.assertj.core.api.Assertions.assertThat;
import static witnessmark.store.Garage.fitment;
import static witnessmark.store.Garage.hour;
import static witnessmark.store.Garage.hourOrOpen;
import static witnessmark.store.Garage.made;
import static witnessmark.store.Garage.struck;

import java.nio.file.Path;
import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import witnessmark.domain.Entry;
import witnessmark.domain.Quarantine;
import witnessmark.domain.Scrapping;
import witnessmark.domain.SentOut;
import witnessmark.domain.StockBatch;
import witnessmark.domain.StockMove;
import witnessmark.domain.StockMoveKind;
import witnessmark.logbook.port.Logbook;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;

/** A part that is put aside, away or scrapped is in no engine, and a shelf holds no less than nothing. */
class AsideGuardsTest {
    private static final Garage GARAGE = new Garage();

    @TempDir
    private Path folder;

    private Logbook logbook;

    @BeforeEach
    void open() {
        logbook = new TestLogbooks(folder).create();
        TestLogbooks.write(logbook, GARAGE.all()).orThrow();
    }

    @AfterEach
    void close() {
        logbook.close();
    }

    @Test
    void a_part_in_quarantine_is_not_fitted() {
        write(made(quarantine(2, 6)));
        assertThat(refusal(made(fitment(GARAGE.r1, GARAGE.e1, GARAGE.rods, 5, -1))))
                .isEqualTo(Problem.of(ProblemKind.PART_IN_QUARANTINE, "R1", hour(2), "cracked"));
        write(made(fitment(GARAGE.r1, GARAGE.e1, GARAGE.rods, 6, -1)));
    }

    @Test
    void one_member_of_a_set_in_quarantine_leaves_the_set_where_it_is() {
        write(made(new Quarantine(GARAGE.r1.id(), "rod 2", hour(2), "marks", "Ann", null, "", "")));
        write(made(fitment(GARAGE.r1, GARAGE.e1, GARAGE.rods, 5, -1)));
    }

    @Test
    void what_is_away_is_not_fitted() {
        write(made(sent(3, -1)));
        assertThat(refusal(made(fitment(GARAGE.r1, GARAGE.e1, GARAGE.rods, 5, 7))))
                .isEqualTo(Problem.of(ProblemKind.PART_AWAY, "R1", "the grinder", hour(3)));
        write(made(fitment(GARAGE.r1, GARAGE.e1, GARAGE.rods, 1, 3)));
    }

    @Test
    void a_scrapped_part_is_not_fitted_again() {
        write(made(fitment(GARAGE.r1, GARAGE.e1, GARAGE.rods, 1, 3)));
        write(made(new Scrapping(GARAGE.r1.id(), "", hour(3), "bent", "Ann")));
        assertThat(refusal(made(fitment(GARAGE.r1, GARAGE.e1, GARAGE.rods, 5, -1))))
                .isEqualTo(Problem.of(ProblemKind.PART_SCRAPPED, "R1", hour(3)));
    }

    @Test
    void a_fitted_part_is_neither_put_aside_nor_sent_nor_scrapped() {
        write(made(fitment(GARAGE.r1, GARAGE.e1, GARAGE.rods, 1, -1)));
        Problem stillThere = Problem.of(ProblemKind.PART_STILL_FITTED, "R1", "E1", hour(4));
        assertThat(refusal(made(quarantine(4, -1)))).isEqualTo(stillThere);
        assertThat(refusal(made(sent(4, -1)))).isEqualTo(stillThere);
        assertThat(refusal(made(new Scrapping(GARAGE.r1.id(), "", hour(4), "bent", "Ann"))))
                .isEqualTo(stillThere);
    }

    @Test
    void a_shelf_holds_no_less_than_nothing() {
        Entry<StockBatch> gaskets = made(new StockBatch(GARAGE.gasketDesign.id(), "G7", "", null, "drawer 3", 2, ""));
        Entry<StockMove> bought = made(move(gaskets, 3));
        write(gaskets);
        write(bought);
        write(made(move(gaskets, -2)));
        String name = GARAGE.gasketDesign.fact().name() + " G7";
        assertThat(refusal(made(move(gaskets, -2)))).isEqualTo(Problem.of(ProblemKind.STOCK_BELOW_NOTHING, name, 1, 2));
        assertThat(refusal(struck(bought)).kind()).isEqualTo(ProblemKind.STOCK_BELOW_NOTHING);
        write(made(move(gaskets, -1)));
    }

    static LongStream seeds() {
        return LongStream.range(0, 30);
    }

    /** The guards allow exactly what a walk hour by hour allows. */
    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void no_hour_has_a_part_in_two_states(long seed) {
        Random random = new Random(seed);
        boolean[] fitted = new boolean[24];
        boolean[] aside = new boolean[24];
        for (int i = 0; i < 8; i++) {
            int from = random.nextInt(20);
            int to = random.nextInt(4) == 0 ? -1 : from + 1 + random.nextInt(23 - from);
            boolean fits = random.nextBoolean();
            boolean free = true;
            for (int hour = from; hour < (to < 0 ? 24 : to); hour++) {
                free &= !fitted[hour] && !(fits && aside[hour]);
            }
            Entry<?> entry = fits
                    ? made(fitment(GARAGE.r1, GARAGE.e1, GARAGE.rods, from, to))
                    : random.nextBoolean() ? made(quarantine(from, to)) : made(sent(from, to));
            assertThat(TestLogbooks.write(logbook, entry).problems().isEmpty()).isEqualTo(free);
            for (int hour = from; free && hour < (to < 0 ? 24 : to); hour++) {
                (fits ? fitted : aside)[hour] = true;
            }
        }
    }

    private static Quarantine quarantine(int from, int to) {
        return new Quarantine(GARAGE.r1.id(), "", hour(from), "cracked", "Ann", hourOrOpen(to), "", "");
    }

    private static SentOut sent(int from, int to) {
        return new SentOut(
                GARAGE.r1.id(),
                null,
                null,
                null,
                "the grinder",
                "grind",
                "",
                hour(from),
                null,
                hourOrOpen(to),
                "",
                "Ann",
                "");
    }

    private static StockMove move(Entry<StockBatch> stock, int change) {
        return new StockMove(
                stock.id(),
                hour(1),
                change,
                change > 0 ? StockMoveKind.BOUGHT : StockMoveKind.USED,
                null,
                null,
                "Ann",
                "");
    }

    private void write(Entry<?> entry) {
        TestLogbooks.write(logbook, entry).orThrow();
    }

    private Problem refusal(Entry<?> entry) {
        return TestLogbooks.write(logbook, entry).problems().get(0);
    }
}
