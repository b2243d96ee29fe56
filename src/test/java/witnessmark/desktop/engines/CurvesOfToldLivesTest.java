package witnessmark.desktop.engines;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.UUID;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import witnessmark.chart.Chart;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Facts;
import witnessmark.domain.Id;
import witnessmark.domain.PriorKind;
import witnessmark.domain.PriorLife;
import witnessmark.domain.Standing;
import witnessmark.ledger.AsOf;
import witnessmark.ledger.LifeLedger;
import witnessmark.logbook.Desk;
import witnessmark.logbook.View;
import witnessmark.logbook.engines.SeeEngine;
import witnessmark.quantity.Counter;
import witnessmark.quantity.Moment;
import witnessmark.wording.Measures;
import witnessmark.wording.Texts;
import witnessmark.wording.Units;

/**
 * What the curves say of a life that somebody only told of. K21 of the invented sample season was told to have run 8 to
 * 14 h in its owner's hands and ran half an hour since; K03 was rebuilt on 28 January and timed from then on.
 */
class CurvesOfToldLivesTest {
    private static final LocalDate DAY = LocalDate.of(2026, 7, 8);
    private static final Texts TEXTS = Texts.in(Locale.UK);

    @TempDir
    static Path folder;

    private static Facts sample = Facts.none();

    @BeforeAll
    static void read() {
        Desk desk = EnginesWindow.sample(folder);
        sample = desk.logbook().facts();
        desk.logbook().close();
    }

    @Test
    void a_life_told_in_one_figure_is_about() {
        assertThat(rows(stated("K22", PriorKind.TOLD, LocalDate.of(2025, 1, 1)), "K22")
                        .get(0))
                .containsExactly("K22", "Wed 1 Jan 2025", "life carried in", "about 9.00 h");
    }

    @Test
    void a_life_that_is_only_known_in_part_is_a_least() {
        assertThat(rows(stated("K22", PriorKind.UNKNOWN, LocalDate.of(2025, 1, 1)), "K22")
                        .get(0))
                .endsWith("at least 9.00 h");
    }

    @Test
    void running_told_with_a_range_keeps_it() {
        assertThat(rows(sample, "K21"))
                .anySatisfy(row -> assertThat(row).containsSequence("told running", "8 to 14 h"));
    }

    @Test
    void a_rebuild_begins_a_count_that_is_known_whatever_was_told_before_it() {
        List<List<String>> rows = rows(stated("K03", PriorKind.TOLD, LocalDate.of(2025, 1, 1)), "K03");
        int rebuilt = rows.stream().map(row -> row.get(2)).toList().indexOf("build 1");
        assertThat(rows.get(0).get(3)).isEqualTo("about 9.00 h");
        assertThat(rows.subList(rebuilt, rows.size()))
                .isNotEmpty()
                .allSatisfy(row -> assertThat(row.get(3)).matches("[0-9.]+ h"));
    }

    /** Nobody can say how much of it came after the rebuild; the curve leaves it out and says that it is a least. */
    @Test
    void a_life_stated_after_the_rebuild_makes_what_follows_a_least() {
        List<List<String>> rows = rows(stated("K03", PriorKind.KNOWN, LocalDate.of(2026, 3, 1)), "K03");
        assertThat(rows.get(0)).endsWith("0.00 h");
        assertThat(rows.subList(1, rows.size()))
                .isNotEmpty()
                .allSatisfy(row -> assertThat(row.get(3)).startsWith("at least "));
    }

    private static Facts stated(String engine, PriorKind kind, LocalDate day) {
        long nine = 9 * 3_600_000L;
        Id<Engine> id = sample.of(Engine.class).named(engine).orElseThrow().id();
        PriorLife life = new PriorLife(
                null, id, Counter.RUNNING, kind, nine, nine, nine, Moment.endOf(day, Desk.zoneOf(sample)), "");
        return sample.with(List.of(new Entry<>(new Id<>(new UUID(7, 7)), life, Standing.IN_FORCE, null, 1)));
    }

    private static List<List<String>> rows(Facts facts, String engine) {
        var zone = Desk.zoneOf(facts);
        View view = new View(facts, DAY, zone, LifeLedger.of(facts, new AsOf(DAY, zone)), false);
        String id = facts.of(Engine.class).named(engine).orElseThrow().id().text();
        Chart chart = new CurvesModel(TEXTS, new Measures(TEXTS, Units.METRIC))
                .chart(SeeEngine.all(view), id, CurvesModel.Which.ENGINES)
                .orElseThrow();
        return chart.table().rows().stream()
                .filter(row -> row.get(0).equals(engine))
                .toList();
    }
}
