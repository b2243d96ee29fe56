package witnessmark.logbook.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import witnessmark.domain.EngineDesign;
import witnessmark.domain.Entry;
import witnessmark.domain.LimitRank;
import witnessmark.domain.MeasureKind;
import witnessmark.domain.SizeLimit;
import witnessmark.domain.Spot;
import witnessmark.logbook.Desk;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;
import witnessmark.quantity.typed.DayOrder;
import witnessmark.sample.SampleBooks;
import witnessmark.store.TimeOrderedIds;

/** Limits of sizes set by hand on the sample's engine design. */
class SetSizeLimitTest {
    @TempDir
    private Path folder;

    private Desk desk;
    private WriteSheet sheets;
    private final SetSizeLimit sheet = new SetSizeLimit();

    @BeforeEach
    void open() {
        desk = new SampleBooks(folder).open();
        sheets = new WriteSheet(desk, new TimeOrderedIds(), SheetUnits.metric(DayOrder.DAY_FIRST));
    }

    @AfterEach
    void close() {
        desk.logbook().close();
    }

    private Map<SheetField, String> filled(MeasureKind kind, String least, String most) {
        Map<SheetField, String> typed = new HashMap<>();
        typed.put(SetSizeLimit.KIND, kind.code());
        typed.put(
                SetSizeLimit.OF,
                desk.view()
                        .facts()
                        .of(EngineDesign.class)
                        .inForce()
                        .findFirst()
                        .orElseThrow()
                        .id()
                        .text());
        typed.put(SetSizeLimit.AT_LEAST, least);
        typed.put(SetSizeLimit.AT_MOST, most);
        typed.put(SetSizeLimit.RANK, LimitRank.OWN.code());
        typed.put(SetSizeLimit.SOURCE, "after the marks");
        typed.put(SetSizeLimit.FROM, "2026-07-01");
        return typed;
    }

    private List<ProblemKind> problems(Map<SheetField, String> typed) {
        return sheets.read(sheet, typed).problems().stream()
                .filter(Problem::stops)
                .map(Problem::kind)
                .toList();
    }

    private List<SizeLimit> own(MeasureKind kind) {
        return desk.view()
                .facts()
                .of(SizeLimit.class)
                .inForce()
                .map(Entry::fact)
                .filter(limit -> limit.kind() == kind && limit.rank() == LimitRank.OWN)
                .toList();
    }

    @Test
    void a_limit_is_kept_in_whole_parts_whatever_unit_it_was_typed_in() {
        sheets.save(sheet, filled(MeasureKind.CROWN_TO_HEAD, "40 thou", ""), "set")
                .orThrow();
        assertThat(own(MeasureKind.CROWN_TO_HEAD)).singleElement().satisfies(limit -> {
            assertThat(limit.atLeast()).isEqualTo(1_016_000);
            assertThat(limit.atMost()).isNull();
            assertThat(limit.spot()).isNull();
        });
    }

    @Test
    void a_later_one_of_that_rank_ends_the_one_before_and_one_of_the_same_day_puts_it_right() {
        sheets.save(sheet, filled(MeasureKind.CROWN_TO_HEAD, "1.02", ""), "set").orThrow();
        sheets.save(sheet, filled(MeasureKind.CROWN_TO_HEAD, "1.03", ""), "set").orThrow();
        assertThat(own(MeasureKind.CROWN_TO_HEAD))
                .singleElement()
                .satisfies(limit -> assertThat(limit.atLeast()).isEqualTo(1_030_000));
        Map<SheetField, String> later = filled(MeasureKind.CROWN_TO_HEAD, "1.05", "");
        later.put(SetSizeLimit.FROM, "2026-07-08");
        sheets.save(sheet, later, "set").orThrow();
        assertThat(own(MeasureKind.CROWN_TO_HEAD))
                .extracting(SizeLimit::validTo)
                .containsExactly(LocalDate.of(2026, 7, 7), null);
        assertThat(problems(filled(MeasureKind.CROWN_TO_HEAD, "1.01", ""))).contains(ProblemKind.EARLIER_THAN);
    }

    @Test
    void what_makes_no_sense_is_refused_beside_its_field() {
        assertThat(problems(filled(MeasureKind.CRANK_END_FLOAT, "", ""))).containsExactly(ProblemKind.NEEDED);
        assertThat(problems(filled(MeasureKind.CRANK_END_FLOAT, "0.3", "0.2")))
                .containsExactly(ProblemKind.SAYS_OTHERWISE);
        assertThat(problems(filled(MeasureKind.CRANK_END_FLOAT, "", "tight"))).containsExactly(ProblemKind.CANNOT_READ);
        assertThat(problems(filled(MeasureKind.CHAMBER_VOLUME, "", "3 mm"))).containsExactly(ProblemKind.CANNOT_READ);
        Map<SheetField, String> aim = filled(MeasureKind.CRANK_END_FLOAT, "", "0.2");
        aim.put(SetSizeLimit.AIM_LEAST, "0.25");
        assertThat(problems(aim)).containsExactly(ProblemKind.SAYS_OTHERWISE);
        Map<SheetField, String> nobody = filled(MeasureKind.CRANK_END_FLOAT, "", "0.2");
        nobody.put(SetSizeLimit.SOURCE, "");
        nobody.put(SetSizeLimit.OF, "");
        assertThat(problems(nobody)).containsExactlyInAnyOrder(ProblemKind.NEEDED, ProblemKind.NEEDED);
    }

    @Test
    void a_spot_is_asked_only_where_there_are_some() {
        SheetTyped crank = new SheetTyped(filled(MeasureKind.CRANK_END_FLOAT, "", "0.2"));
        SheetTyped gasket = new SheetTyped(filled(MeasureKind.GASKET_BORE, "", "88"));
        assertThat(sheet.asks(SetSizeLimit.SPOT, crank, sheets.sight())).isFalse();
        assertThat(sheet.asks(SetSizeLimit.SPOT, gasket, sheets.sight())).isTrue();
        Map<SheetField, String> free = filled(MeasureKind.GASKET_BORE, "87", "");
        free.put(SetSizeLimit.SPOT, Spot.FREE.code());
        sheets.save(sheet, free, "set").orThrow();
        assertThat(own(MeasureKind.GASKET_BORE))
                .singleElement()
                .satisfies(limit -> assertThat(limit.spot()).isEqualTo(Spot.FREE));
    }
}
