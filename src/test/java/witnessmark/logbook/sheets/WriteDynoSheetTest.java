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
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import witnessmark.domain.DynoPoint;
import witnessmark.domain.DynoSheet;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Run;
import witnessmark.domain.RunInStep;
import witnessmark.domain.Standing;
import witnessmark.logbook.Desk;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;
import witnessmark.quantity.Pressure;
import witnessmark.quantity.typed.DayOrder;
import witnessmark.sample.SampleBooks;
import witnessmark.store.TimeOrderedIds;

/** Dyno sheets written and corrected by hand on the sample. What is refused: common practice, no source. */
class WriteDynoSheetTest {
    private static final WriteDynoSheet FORM = new WriteDynoSheet();

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

    private Map<SheetField, String> filled() {
        Map<SheetField, String> typed = new HashMap<>(FORM.fresh(sheets.sight()));
        typed.put(WriteDynoSheet.PRESSURE, "29.1 inHg");
        typed.put(WriteDynoSheet.AIR, "22");
        typed.put(WriteDynoSheet.HUMIDITY, "45 %");
        typed.put(WriteDynoSheet.PULLS, "4000 171,0\n7800 186,6\n\n4000 170,5\n7800 186,2");
        return typed;
    }

    private List<ProblemKind> problems(Map<SheetField, String> typed) {
        return sheets.read(FORM, typed).problems().stream().map(Problem::kind).toList();
    }

    private Entry<DynoSheet> first() {
        Entry<Engine> engine = desk.view().facts().of(Engine.class).named("K03").orElseThrow();
        return desk.view()
                .facts()
                .of(DynoSheet.class)
                .inForce()
                .filter(sheet -> sheet.fact().baseline()
                        && desk.view()
                                .facts()
                                .of(Run.class)
                                .get(sheet.fact().run())
                                .engine()
                                .equals(engine.id()))
                .findFirst()
                .orElseThrow();
    }

    private List<Entry<DynoPoint>> points(Entry<DynoSheet> sheet) {
        return desk.view()
                .facts()
                .of(DynoPoint.class)
                .where(point -> point.sheet().equals(sheet.id()));
    }

    @Test
    void runs_without_a_sheet_are_offered_first_the_newest_of_them_at_the_top() {
        List<Choice> choices = FORM.choices(WriteDynoSheet.RUN, new SheetTyped(Map.of()), sheets.sight());

        assertThat(choices).hasSize(8); // dyno runs up to 8 July
        assertThat(sheets.sight()
                        .find(Run.class, choices.get(0).key())
                        .orElseThrow()
                        .fact()
                        .start()
                        .day())
                .isEqualTo(LocalDate.of(2026, 6, 26)); // K21, which has none
        assertThat(FORM.fresh(sheets.sight()))
                .containsEntry(WriteDynoSheet.RUN, choices.get(0).key());
    }

    @Test
    void a_sheet_is_written_with_its_points_and_steps() {
        Map<SheetField, String> typed = filled();
        typed.put(WriteDynoSheet.DYNO, "engine DYNO 1");
        typed.put(WriteDynoSheet.STEPS, "10 min 3000 rpm 30 % cam bedded in\n5 min");
        sheets.save(FORM, typed, "by hand").orThrow();

        Entry<DynoSheet> written = desk.view()
                .facts()
                .of(DynoSheet.class)
                .inForce()
                .filter(sheet -> sheet.fact().run().text().equals(typed.get(WriteDynoSheet.RUN)))
                .findFirst()
                .orElseThrow();
        assertThat(written.fact().dyno()).as("one dyno, however it is typed").isEqualTo("Engine dyno 1");
        assertThat(written.fact().pressure()).isEqualTo(new Pressure(98_544)); // 29.1 times 3 386.389
        assertThat(written.fact().humidityPermille()).isEqualTo(450);
        assertThat(points(written)).hasSize(4);
        assertThat(desk.view()
                        .facts()
                        .of(RunInStep.class)
                        .where(step -> step.run().equals(written.fact().run())))
                .hasSize(2);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "dyno_pulls | '' | NEEDED | true",
                "dyno_pulls | pull 1 | NEEDED | true",
                "dyno_pulls | 4000 171 | DYNO_ONE_SPEED | false",
                "dyno_pulls | 4000 171#4000 172 | DYNO_SPEED_TWICE | true",
                "dyno_pulls | 4000 10000 | DYNO_OUT_OF_RANGE | true",
                "dyno_pulls | 171 4000 | DYNO_OUT_OF_RANGE | true",
                "run_in_steps | 10 hours | DYNO_LINE_UNREAD | true",
                "run_in_steps | 40 h 2000 rpm | LONGER_THAN_RUN | true",
                "air_pressure | 745 | TWO_READINGS | true",
                "air_pressure | thick | CANNOT_READ | true",
                "air_pressure | 20 kPa | OUT_OF_RANGE | true",
                "air_temperature | 90 | OUT_OF_RANGE | true",
                "humidity | 145 | CANNOT_READ | true",
                "dyno_sweep | fast | CANNOT_READ | true",
                "dyno | '' | NEEDED | true",
            })
    void what_cannot_be_is_said_beside_its_field(String field, String text, ProblemKind kind, boolean stops) {
        Map<SheetField, String> typed = filled();
        typed.put(OwnLogbook.field(FORM, field), text.replace('#', '\n'));
        SheetReading reading = sheets.read(FORM, typed);

        assertThat(reading.of(OwnLogbook.field(FORM, field)).problem()).isNotNull();
        assertThat(reading.of(OwnLogbook.field(FORM, field)).problem().kind()).isEqualTo(kind);
        assertThat(reading.stops()).isEqualTo(stops);
    }

    @Test
    void a_factor_is_asked_for_only_where_the_dyno_corrects_and_doubted_beyond_the_standards() {
        Map<SheetField, String> typed = filled();
        assertThat(sheets.read(FORM, typed).asked()).doesNotContain(WriteDynoSheet.FACTOR);
        typed.put(WriteDynoSheet.FIGURES, "corrected");
        typed.put(WriteDynoSheet.FACTOR, "1.082");
        assertThat(sheets.read(FORM, typed).asked()).contains(WriteDynoSheet.FACTOR);
        assertThat(problems(typed)).containsExactly(ProblemKind.DYNO_FACTOR_BEYOND);
        assertThat(sheets.read(FORM, typed).stops()).isFalse();
        typed.put(WriteDynoSheet.CORRECTION, "none");
        assertThat(problems(typed)).contains(ProblemKind.NEEDED);
    }

    @Test
    void opened_again_it_shows_its_lines_and_amends_only_what_differs() {
        Entry<DynoSheet> sheet = first();
        WrittenSheet<DynoSheet> written = sheets.open(sheet, List.of(FORM), LocalDate::toString);
        Map<SheetField, String> typed = new HashMap<>(written.texts());
        assertThat(written.read(typed).entries()).as("nothing touched").isEmpty();
        String lines = typed.get(WriteDynoSheet.PULLS);
        assertThat(lines).startsWith("rpm; N·m; lambda; oil bar; oil °C; water °C; exhaust 1 °C;");
        DynoPoint was = points(sheet).get(0).fact();
        String torque = lines.lines()
                .filter(line -> line.startsWith(was.speed().rpm() + ";"))
                .findFirst()
                .orElseThrow();
        typed.put(WriteDynoSheet.PULLS, lines.replace(torque, torque.replaceFirst("; [0-9.]+;", "; 175.5;")));

        SheetReading reading = written.read(typed);
        assertThat(reading.problems().stream().filter(Problem::stops)).isEmpty();
        assertThat(reading.entries()).hasSize(1);
        written.save(typed, "misread").orThrow();
        assertThat(points(sheet)).hasSize(30);
        assertThat(points(sheet).stream().filter(point -> point.fact().torqueMillinewtonMetres() == 175_500))
                .hasSize(1);
        assertThat(desk.view().facts().of(DynoSheet.class).find(sheet.id())).contains(sheet);
        desk.undo().orThrow();
        assertThat(points(sheet).stream().map(Entry::fact)).contains(was);
    }

    @Test
    void a_line_taken_out_is_struck_out_with_the_reason_that_is_asked_for() {
        Entry<DynoSheet> sheet = first();
        WrittenSheet<DynoSheet> written = sheets.open(sheet, List.of(FORM), LocalDate::toString);
        Map<SheetField, String> typed = new HashMap<>(written.texts());
        String lines = typed.get(WriteDynoSheet.PULLS);
        typed.put(WriteDynoSheet.PULLS, lines.substring(0, lines.lastIndexOf('\n')));

        assertThat(written.read(typed).stopped()).containsExactly(CorrectSheet.BECAUSE);
        typed.put(CorrectSheet.BECAUSE, "valve float on that point");
        written.save(typed, "without the last point").orThrow();

        assertThat(points(sheet)).hasSize(29);
        assertThat(desk.view().facts().of(DynoPoint.class).all().stream()
                        .filter(point -> point.standing() == Standing.STRUCK_OUT))
                .singleElement()
                .satisfies(point -> assertThat(point.struckBecause()).isEqualTo("valve float on that point"));
    }
}
