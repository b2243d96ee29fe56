package witnessmark.logbook.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
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
import witnessmark.domain.Entry;
import witnessmark.domain.Fastener;
import witnessmark.domain.PartDesign;
import witnessmark.logbook.Desk;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;
import witnessmark.quantity.Length;
import witnessmark.quantity.typed.DayOrder;
import witnessmark.sample.SampleBooks;
import witnessmark.store.TimeOrderedIds;

/** What fasteners are, written down by hand on the sample's studs. */
class WriteFastenerTest {
    @TempDir
    private Path folder;

    private Desk desk;
    private WriteSheet sheets;
    private final WriteFastener sheet = new WriteFastener();

    @BeforeEach
    void open() {
        desk = new SampleBooks(folder).open();
        sheets = new WriteSheet(desk, new TimeOrderedIds(), SheetUnits.metric(DayOrder.DAY_FIRST));
    }

    @AfterEach
    void close() {
        desk.logbook().close();
    }

    private Map<SheetField, String> filled() {
        Map<SheetField, String> typed = new HashMap<>();
        typed.put(
                WriteFastener.OF,
                desk.view()
                        .facts()
                        .of(PartDesign.class)
                        .named("head studs M11")
                        .orElseThrow()
                        .id()
                        .text());
        return typed;
    }

    private Fastener studs() {
        String of = filled().get(WriteFastener.OF);
        List<Fastener> found = desk.view()
                .facts()
                .of(Fastener.class)
                .inForce()
                .map(Entry::fact)
                .filter(fastener -> fastener.design().text().equals(of))
                .toList();
        assertThat(found).hasSize(1);
        return found.get(0);
    }

    private List<ProblemKind> problems(Map<SheetField, String> typed) {
        return sheets.read(sheet, typed).problems().stream()
                .filter(Problem::stops)
                .map(Problem::kind)
                .toList();
    }

    @Test
    void what_is_typed_is_put_right_and_what_is_left_empty_stays() {
        Fastener before = studs();
        Map<SheetField, String> typed = filled();
        typed.put(WriteFastener.NUT_FACTOR, "0,155");
        typed.put(WriteFastener.PROOF, "16500 lbf");
        typed.put(WriteFastener.SHANK, "0.375 in");

        assertThat(problems(typed)).isEmpty();
        assertThat(sheets.save(sheet, typed, "maker wrote again").didWork()).isTrue();

        assertThat(studs().nutFactor()).isEqualTo(new BigDecimal("0.155"));
        assertThat(studs().proofNewtons()).isEqualTo(73_396); // 4.4482216152605 N to the pound-force (NIST SP 811)
        assertThat(studs().stretchedDiameter()).isEqualTo(Length.ofMillimetres(new BigDecimal("9.525")));
        assertThat(studs())
                .returns(before.count(), Fastener::count)
                .returns(before.diameter(), Fastener::diameter)
                .returns(before.lubricant(), Fastener::lubricant)
                .returns(before.chosenFor(), Fastener::chosenFor)
                .returns(before.source(), Fastener::source);
    }

    @ParameterizedTest
    @CsvSource({
        "nut_factor, 1.6, OUT_OF_RANGE",
        "nut_factor, greasy, CANNOT_READ",
        "diameter, 0, NEEDED",
        "fastener_count, 0, OUT_OF_RANGE",
        "proof_load, -3, OUT_OF_RANGE",
        "chosen_for, 0 bar, NEEDED",
        "modulus, 207000, OUT_OF_RANGE",
    })
    void what_cannot_be_is_refused_beside_its_field(String key, String text, String kind) {
        Map<SheetField, String> typed = filled();
        SheetField field = sheet.groups().stream()
                .flatMap(group -> group.rows().stream())
                .flatMap(List::stream)
                .filter(each -> each.key().equals(key))
                .findFirst()
                .orElseThrow();
        typed.put(field, text);
        assertThat(problems(typed)).hasSize(1);
        assertThat(problems(typed).get(0).name()).contains(kind);
    }
}
