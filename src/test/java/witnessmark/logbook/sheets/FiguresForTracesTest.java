package witnessmark.logbook.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import witnessmark.domain.EngineDesign;
import witnessmark.domain.Entry;
import witnessmark.domain.Fact;
import witnessmark.domain.LoggerFigures;
import witnessmark.domain.PartKind;
import witnessmark.domain.RevExponent;
import witnessmark.logbook.Desk;
import witnessmark.logbook.tracing.BringInTrace;
import witnessmark.mechanics.RevDamage;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;
import witnessmark.quantity.EngineSpeed;
import witnessmark.quantity.typed.DayOrder;
import witnessmark.sample.SampleBooks;
import witnessmark.trace.result.TraceSetting;
import witnessmark.trace.result.TraceSettings;

/** What traces are worked out with, written down by hand for the sample's engines. */
class FiguresForTracesTest {
    @TempDir
    private Path folder;

    private Desk desk;
    private WriteSheet sheets;
    private Entry<EngineDesign> design;

    @BeforeEach
    void open() {
        desk = new SampleBooks(folder).untraced();
        sheets = new WriteSheet(desk, SampleBooks.ids(), SheetUnits.metric(DayOrder.DAY_FIRST));
        design =
                desk.view().facts().of(EngineDesign.class).inForce().findFirst().orElseThrow();
    }

    @AfterEach
    void close() {
        desk.logbook().close();
    }

    private Map<SheetField, String> figures() {
        Map<SheetField, String> typed = new HashMap<>();
        typed.put(WriteLoggerFigures.OF, design.id().text());
        typed.put(WriteLoggerFigures.SOURCE, "engine builder, January");
        return typed;
    }

    private Map<SheetField, String> wear() {
        Map<SheetField, String> typed = new HashMap<>();
        typed.put(WriteRevExponent.OF, design.id().text());
        typed.put(WriteRevExponent.KIND, PartKind.VALVE_SPRINGS.code());
        typed.put(WriteRevExponent.REFERENCE, "7500");
        typed.put(WriteRevExponent.EXPONENT, "6.5");
        typed.put(WriteRevExponent.SOURCE, "spring maker");
        return typed;
    }

    private <F extends Fact> F only(Class<F> kind) {
        List<Entry<F>> all = desk.view().facts().of(kind).inForce().toList();
        assertThat(all).hasSize(1);
        return all.get(0).fact();
    }

    private static SheetField field(LogSheet sheet, String key) {
        return sheet.fields().stream()
                .filter(each -> each.key().equals(key))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void a_trace_is_worked_out_with_what_is_written_and_the_rest_stays_as_usual() {
        Map<SheetField, String> typed = figures();
        typed.put(WriteLoggerFigures.RUNNING, "600");
        typed.put(WriteLoggerFigures.OIL_FLOOR, "10 psi");
        typed.put(WriteLoggerFigures.HOT_FOR, "90");
        sheets.save(new WriteLoggerFigures(), typed, "").orThrow();

        TraceSettings settings = new BringInTrace(desk, SampleBooks.ids())
                .settings(desk.view()
                        .facts()
                        .of(witnessmark.domain.Engine.class)
                        .inForce()
                        .filter(engine -> engine.fact().design().equals(design.id()))
                        .findFirst()
                        .orElseThrow()
                        .id());
        assertThat(settings.get(TraceSetting.RUNNING_FROM)).isEqualTo(600);
        // 6894.757293168 Pa to the psi (NIST SP 811)
        assertThat(settings.get(TraceSetting.OIL_FLOOR))
                .isCloseTo(0.68948, org.assertj.core.api.Assertions.within(1e-5));
        assertThat(settings.get(TraceSetting.HEAT_COUNTED_FOR)).isEqualTo(90);
        assertThat(settings.get(TraceSetting.LOADED_FROM)).isEqualTo(TraceSetting.LOADED_FROM.usual());
    }

    @Test
    void what_is_left_empty_stays_as_it_was_written_before() {
        Map<SheetField, String> typed = figures();
        typed.put(WriteLoggerFigures.RUNNING, "600");
        sheets.save(new WriteLoggerFigures(), typed, "").orThrow();
        typed.remove(WriteLoggerFigures.RUNNING);
        typed.remove(WriteLoggerFigures.SOURCE);
        typed.put(WriteLoggerFigures.HIGH_SPEED, "7000");
        sheets.save(new WriteLoggerFigures(), typed, "").orThrow();

        assertThat(only(LoggerFigures.class))
                .returns(new EngineSpeed(600), LoggerFigures::runningAbove)
                .returns(new EngineSpeed(7000), LoggerFigures::highSpeedAbove)
                .returns("engine builder, January", LoggerFigures::source);
    }

    @ParameterizedTest
    @CsvSource({
        "source, '', NEEDED",
        "running_above, 40000, OUT_OF_RANGE",
        "loaded_above, 400, OUT_OF_RANGE", // usual: it runs from 500 on
        "oil_floor, 6 bar, OUT_OF_RANGE",
        "oil_floor, 0, OUT_OF_RANGE",
        "cold_below, 75, OUT_OF_RANGE", // usual: warm above 70
        "hot_above, 30, OUT_OF_RANGE",
        "hot_for, 2 h, OUT_OF_RANGE",
        "oil_floor, slippery, CANNOT_READ",
    })
    void what_cannot_be_is_refused(String key, String text, ProblemKind kind) {
        WriteLoggerFigures sheet = new WriteLoggerFigures();
        Map<SheetField, String> typed = figures();
        typed.put(field(sheet, key), text);
        assertThat(sheets.read(sheet, typed).problems())
                .filteredOn(Problem::stops)
                .extracting(Problem::kind)
                .containsExactly(kind);
        assertThat(sheets.save(sheet, typed, "").didWork()).isFalse();
    }

    @Test
    void an_exponent_is_typed_or_comes_of_a_slope_and_is_written_once_for_a_kind_of_part() {
        sheets.save(new WriteRevExponent(), wear(), "").orThrow();
        assertThat(only(RevExponent.class)).returns(650, RevExponent::hundredths);

        Map<SheetField, String> typed = wear();
        typed.put(WriteRevExponent.EXPONENT, "");
        typed.put(WriteRevExponent.SLOPE, "5,2");
        sheets.save(new WriteRevExponent(), typed, "").orThrow();
        RevExponent now = only(RevExponent.class);
        assertThat(now.hundredths() / 100.0)
                .isEqualTo(RevDamage.ofSlope(7500, 5.2).exponent());
        assertThat(now.reference()).isEqualTo(new EngineSpeed(7500));
    }

    @ParameterizedTest
    @CsvSource({
        "source, '', NEEDED",
        "wear_exponent, '', NEEDED", // there is no usual one
        "wear_exponent, 0, OUT_OF_RANGE",
        "wear_exponent, 101, OUT_OF_RANGE",
        "wear_exponent, 6.505, CANNOT_READ",
        "wear_exponent, steep, CANNOT_READ",
        "wear_slope, 9, NOT_TOGETHER", // 1 + 2·9 is not 6.5
        "wear_reference, 0, OUT_OF_RANGE",
        "wear_reference, '', NEEDED",
        "part_kind, '', NEEDED",
    })
    void what_wears_nothing_is_refused(String key, String text, ProblemKind kind) {
        WriteRevExponent sheet = new WriteRevExponent();
        Map<SheetField, String> typed = wear();
        typed.put(field(sheet, key), text);
        assertThat(sheets.read(sheet, typed).problems())
                .filteredOn(Problem::stops)
                .extracting(Problem::kind)
                .containsExactly(kind);
    }
}
