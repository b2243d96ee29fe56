package witnessmark.logbook.sheets;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import witnessmark.domain.Concession;
import witnessmark.domain.EngineDesign;
import witnessmark.domain.Entry;
import witnessmark.domain.FaceHole;
import witnessmark.domain.FaceKind;
import witnessmark.domain.FaceLine;
import witnessmark.domain.FaceMark;
import witnessmark.domain.FaceMethod;
import witnessmark.domain.FaceOutline;
import witnessmark.domain.FacePoint;
import witnessmark.domain.Part;
import witnessmark.domain.SkimShadow;
import witnessmark.domain.Spot;
import witnessmark.domain.Standing;
import witnessmark.logbook.Desk;
import witnessmark.logbook.faces.FacePage;
import witnessmark.logbook.faces.LookLine;
import witnessmark.logbook.faces.SeeFaces;
import witnessmark.logbook.faces.SkimLine;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;
import witnessmark.quantity.typed.DayOrder;
import witnessmark.sample.SampleBooks;
import witnessmark.store.TimeOrderedIds;

/** Skims, looks at faces and outlines written down by hand on the sample. What is refused: common practice, no source. */
class FaceSheetsTest {
    @TempDir
    private Path folder;

    private Desk desk;
    private WriteSheet sheets;

    @BeforeEach
    void open() {
        desk = new SampleBooks(folder).open();
        sheets = new WriteSheet(desk, new TimeOrderedIds(), SheetUnits.metric(DayOrder.DAY_FIRST));
    }

    @AfterEach
    void close() {
        desk.logbook().close();
    }

    private String part(String mark) {
        return desk.view().facts().of(Part.class).named(mark).orElseThrow().id().text();
    }

    private FacePage page(String mark) {
        return SeeFaces.of(
                        desk.view(),
                        desk.view()
                                .facts()
                                .of(Part.class)
                                .named(mark)
                                .orElseThrow()
                                .id())
                .orElseThrow();
    }

    private List<ProblemKind> problems(LogSheet sheet, Map<SheetField, String> typed) {
        return sheets.read(sheet, typed).problems().stream().map(Problem::kind).toList();
    }

    private Map<SheetField, String> skim() {
        Map<SheetField, String> typed = new HashMap<>(Map.of(
                WriteSkim.PART,
                part("HD-05"),
                WriteSkim.WHEN,
                "6/7",
                WriteSkim.BY,
                "machinist G1",
                WriteSkim.RETIMED,
                "not said",
                WriteSkim.FRONT_EXHAUST,
                "117.71",
                WriteSkim.FRONT_INLET,
                "117.72",
                WriteSkim.LEFT,
                "117.51",
                WriteSkim.PASSES,
                "0.1 shadow between 2 and 3\n0.1 clean"));
        return typed;
    }

    @Test
    void a_skim_is_written_with_its_passes_and_bounds_the_low_place() {
        Map<SheetField, String> typed = skim();
        typed.put(WriteSkim.RA, "0.6");
        typed.put(WriteSkim.CHAMBER_BEFORE, "32.3");
        assertThat(problems(new WriteSkim(), typed)).isEmpty();
        assertThat(sheets.save(new WriteSkim(), typed, "back from the machinist")
                        .didWork())
                .isTrue();
        SkimLine line = page("HD-05").skims().get(0);
        assertThat(line.work().fact().removed().inMillimetres()).isEqualByComparingTo("0.2");
        assertThat(line.cleanUp().over().inMillimetres()).isEqualByComparingTo("0.1");
        assertThat(line.cleanUp().upTo().inMillimetres()).isEqualByComparingTo("0.2");
        assertThat(line.passes().get(0).shadow()).isEqualTo(SkimShadow.LEFT);
        assertThat(line.passes().get(0).where()).isEqualTo("between 2 and 3");
        assertThat(line.skim().fact().raNanometres()).isEqualTo(600);
        assertThat(page("HD-05").left().inMillimetres()).isEqualByComparingTo("0.11");
    }

    @Test
    void passes_that_do_not_sum_and_a_thickness_that_contradicts_them_are_found() {
        Map<SheetField, String> typed = skim();
        typed.put(WriteSkim.REMOVED, "0.15");
        assertThat(problems(new WriteSkim(), typed)).contains(ProblemKind.PASSES_NOT_REMOVED);
        typed = skim();
        typed.put(WriteSkim.LEFT, "117.60");
        assertThat(problems(new WriteSkim(), typed)).containsExactly(ProblemKind.SKIM_NOT_AS_THICKNESS);
        typed = skim();
        typed.put(WriteSkim.PASSES, "a little");
        assertThat(problems(new WriteSkim(), typed)).containsExactly(ProblemKind.CANNOT_READ);
    }

    @Test
    void under_the_least_thickness_somebody_has_to_accept_it() {
        Map<SheetField, String> typed = skim();
        typed.put(WriteSkim.PASSES, "0.2 shadow at 4\n0.15 clean");
        typed.put(WriteSkim.LEFT, "117.36");
        assertThat(problems(new WriteSkim(), typed)).containsExactly(ProblemKind.BELOW_LEAST_THICKNESS);
        typed.put(WriteSkim.ACCEPTED, "last race of this head, builder asked");
        assertThat(problems(new WriteSkim(), typed)).isEmpty();
        assertThat(sheets.save(new WriteSkim(), typed, "").didWork()).isTrue();
        assertThat(page("HD-05").left().inMillimetres()).isEqualByComparingTo("-0.04");
        assertThat(desk.view()
                        .facts()
                        .of(Concession.class)
                        .where(each -> each.why().startsWith("last race of this head")))
                .singleElement()
                .satisfies(
                        each -> assertThat(each.fact().what()).contains("HD-05").contains("117.36"));
    }

    private Map<SheetField, String> look(String found) {
        return new HashMap<>(Map.of(
                LookAtFace.PART,
                part("HD-06"),
                LookAtFace.FACE,
                FaceKind.HEAD.code(),
                LookAtFace.WHEN,
                "7/7",
                LookAtFace.METHOD,
                FaceMethod.PLATE_AND_DIAL.code(),
                LookAtFace.FINEST,
                "0.01",
                LookAtFace.COUNTED,
                LookAtFace.FROM_INLET,
                LookAtFace.BY,
                "Crew chief",
                LookAtFace.FOUND,
                found));
    }

    @Test
    void readings_lines_and_marks_are_written_a_line_for_each() {
        Map<SheetField, String> typed = look("206, 148, -0.03\n65;20;0,01 proud\nexhaust side 0.03 not 0.04\n"
                + "between 2 and 3 not 0.03\ngas track 206 112: black\nlow area 347 150 40x30 0.05\n"
                + "unsealed patch (180 120, 230 120, 205 160): no print\n\n");
        assertThat(problems(new LookAtFace(), typed)).isEmpty();
        assertThat(sheets.save(new LookAtFace(), typed, "").didWork()).isTrue();
        LookLine look = page("HD-06").looks().get(0);
        assertThat(look.points())
                .extracting(point -> point.fact().depth().text())
                .containsExactly("0.03", "-0.01");
        assertThat(look.lines())
                .extracting(
                        line -> line.fact().line(), line -> line.fact().goes().text())
                .containsExactly(tuple(Spot.EXHAUST_SIDE, "0.03"), tuple(Spot.BETWEEN_BORES, "0"));
        assertThat(look.marks()).hasSize(3);
        assertThat(look.marks().get(2).fact().corners().all()).hasSize(3);
        assertThat(look.low()).hasSize(3);
    }

    @ParameterizedTest
    @CsvSource({
        "206 190 0.08, OFF_THE_FACE",
        "low area 500 20 0.05, OFF_THE_FACE",
        "'unsealed patch (400 120, 430 120, 405 160)', OFF_THE_FACE",
        "206 148 0.085, FINER_THAN_TOOL",
        "exhaust side 0.02 not 0.04, FEELER_TOO_FINE",
        "exhaust side not 0.02, FEELER_TOO_FINE",
        "exhaust side 0.06 not 0.05, STOPS_BEFORE_IT_GOES",
        "a bit low in the middle, FACE_LINE_UNREAD",
        "206 148, FACE_LINE_UNREAD",
        "gas track somewhere, FACE_LINE_UNREAD",
        "'unsealed patch (180 120, 230 120)', FACE_LINE_UNREAD",
    })
    void what_cannot_be_is_refused_with_its_line(String found, ProblemKind kind) {
        assertThat(problems(new LookAtFace(), look("65 20 0\n" + found))).containsExactly(kind);
    }

    /** In May the zone lay at 206, 148: the same counted from the exhaust edge is 28. */
    @Test
    void what_may_be_the_wrong_way_up_is_asked_and_counted_from_the_exhaust_edge_it_is_turned() {
        Map<SheetField, String> typed = look("206 28 0.05");
        assertThat(problems(new LookAtFace(), typed)).containsExactly(ProblemKind.PERHAPS_MIRRORED);
        assertThat(sheets.read(new LookAtFace(), typed).problems()).noneMatch(Problem::stops);
        typed.put(LookAtFace.COUNTED, LookAtFace.FROM_EXHAUST);
        assertThat(problems(new LookAtFace(), typed)).isEmpty();
        sheets.save(new LookAtFace(), typed, "");
        assertThat(desk.view().facts().of(FacePoint.class).all())
                .last()
                .satisfies(point -> assertThat(point.fact().y().text()).isEqualTo("148"));
    }

    @Test
    void an_outline_is_shown_and_put_right() {
        String design = desk.view()
                .facts()
                .of(EngineDesign.class)
                .named("Orrow 18-16")
                .orElseThrow()
                .id()
                .text();
        WriteOutline sheet = new WriteOutline();
        Map<SheetField, String> typed =
                new HashMap<>(sheets.fresh(sheet, LocalDate::toString).texts());
        assertThat(typed.get(WriteOutline.OF)).isEqualTo(design);
        assertThat(typed.get(WriteOutline.HOLES)).startsWith("bore 1 65 88 85.2\n");
        String holes = typed.get(WriteOutline.HOLES).replace("bore 1 65 88 85.2", "bore 1 66 88 85.2");
        typed.put(WriteOutline.HOLES, holes.substring(0, holes.lastIndexOf('\n')));
        assertThat(problems(sheet, typed)).isEmpty();
        assertThat(sheets.save(sheet, typed, "").didWork()).isTrue();
        assertThat(desk.view().facts().of(FaceOutline.class).all()).hasSize(1);
        List<Entry<FaceHole>> now = desk.view().facts().of(FaceHole.class).all();
        assertThat(now.get(0).fact().x().text()).isEqualTo("66");
        assertThat(now)
                .filteredOn(hole -> hole.standing() == Standing.STRUCK_OUT)
                .hasSize(1);
        typed.put(WriteOutline.HOLES, "bore 65 88 85.2");
        assertThat(problems(sheet, typed)).containsExactly(ProblemKind.CANNOT_READ);
        typed.put(WriteOutline.HOLES, "bore 1 465 88 85.2");
        assertThat(problems(sheet, typed)).containsExactly(ProblemKind.OFF_THE_FACE);
    }

    @Test
    void a_gasket_has_two_faces_and_a_head_one() {
        Map<SheetField, String> typed = look("gas track 206 112");
        typed.put(LookAtFace.FACE, FaceKind.GASKET_TO_HEAD.code());
        assertThat(problems(new LookAtFace(), typed)).contains(ProblemKind.NEEDED);
        typed.put(LookAtFace.PART, part("HG-06b"));
        assertThat(problems(new LookAtFace(), typed)).isEmpty();
        assertThat(FaceLine.LINES).hasSize(7);
        assertThat(desk.view().facts().of(FaceMark.class).all()).isNotEmpty();
    }
}
