package witnessmark.launch.buildsheet;

import static org.assertj.core.api.Assertions.assertThat;
import static witnessmark.launch.buildsheet.Sheets.build;
import static witnessmark.launch.buildsheet.Sheets.entry;
import static witnessmark.launch.buildsheet.Sheets.facts;
import static witnessmark.launch.buildsheet.Sheets.figure;
import static witnessmark.launch.buildsheet.Sheets.page;
import static witnessmark.launch.buildsheet.Sheets.view;
import static witnessmark.report.PdfText.solid;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Stream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import witnessmark.domain.Build;
import witnessmark.domain.Concession;
import witnessmark.domain.Engine;
import witnessmark.domain.EngineDesign;
import witnessmark.domain.Entry;
import witnessmark.domain.Facts;
import witnessmark.domain.HowStood;
import witnessmark.domain.Id;
import witnessmark.domain.MeasureKind;
import witnessmark.domain.MeasurePlace;
import witnessmark.domain.Standing;
import witnessmark.logbook.View;
import witnessmark.logbook.measuring.SheetPage;
import witnessmark.logbook.run.SampleBook;
import witnessmark.report.BuildSheet;
import witnessmark.report.PdfRows;
import witnessmark.report.PdfShapes;
import witnessmark.report.PdfText;
import witnessmark.wording.FitWords;
import witnessmark.wording.Measures;
import witnessmark.wording.Texts;
import witnessmark.wording.Units;

/** However large an engine and long its words, a printed build sheet is whole (read back by Apache PDFBox). */
class BuildSheetLayoutTest {
    private static final double EDGE = 15;

    private final Texts texts = Texts.in(Locale.UK);
    private final Measures measures = new Measures(texts, Units.METRIC);
    private final FitWords fit = new FitWords(texts, measures);

    private byte[] pdf(View view, String engine, int number) {
        return new BuildSheetPaper(texts, measures)
                .apply(facts(view, engine, number))
                .bytes();
    }

    /** Eight cylinders, figures of any size, and words that nobody can break well. */
    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3})
    void however_long_words_are_and_many_cylinders_nothing_is_cut_off(long seed) {
        View view = eight(seed);
        byte[] pdf = pdf(view, "K05", 3);
        PdfShapes shapes = PdfShapes.of(pdf);
        assertThat(shapes.pages()).as("seed %d", seed).hasSizeGreaterThan(6).allSatisfy(paper -> {
            assertThat(paper.getWidth()).isEqualTo(PDRectangle.A4.getWidth(), within());
            assertThat(paper.getHeight()).isEqualTo(PDRectangle.A4.getHeight(), within());
        });
        assertThat(shapes.broken(EDGE)).as("seed %d", seed).isEmpty();
        Printed printed = Printed.of(pdf);
        assertThat(printed.wrong()).as("seed %d", seed).isEmpty();
        assertThat(PdfText.of(pdf).pages().stream().filter(page -> page.contains("Second pair of eyes")))
                .as("where it is signed by hand, what that means")
                .singleElement()
                .satisfies(page -> assertThat(solid(page)).contains(solid(texts.get("buildsheet.hand.note"))));
        String all = PdfText.of(pdf).solid();
        SheetPage page = page(view, "K05", 3);
        page.answers().forEach(answer -> assertThat(all).contains(solid(fit.answer(answer))));
        page.contradictions().forEach(found -> assertThat(all).contains(solid(fit.contradiction(found))));
        page.accepted()
                .forEach(each -> assertThat(all)
                        .contains(solid(each.fact().why()), solid(each.fact().by())));
        page.figures()
                .forEach(each -> assertThat(all).contains(solid(each.fact().note())));
        assertThat(all).contains(solid(page.design().name()));
        List<String> whole = PdfRows.of(pdf).all().stream()
                .flatMap(List::stream)
                .map(String::strip)
                .toList();
        assertThat(whole)
                .as("seed %d: a figure is in one piece", seed)
                .containsAll(cells(new BuildSheetWords(texts, measures).apply(facts(view, "K05", 3))));
    }

    /** Figures in boxes that have no word behind them. */
    private static List<String> cells(BuildSheet sheet) {
        Stream<BuildSheet.Step> workedOut =
                Optional.ofNullable(sheet.stands()).map(BuildSheet.Stands::workedOut).stream();
        return Stream.concat(sheet.steps().stream(), workedOut)
                .flatMap(step -> step.blocks().stream())
                .flatMap(block -> block.kinds().stream())
                .flatMap(kind -> kind.lines().stream())
                .flatMap(line -> line.cells().stream())
                .map(BuildSheet.Cell::words)
                .filter(words -> !words.isEmpty() && !words.contains(" "))
                .toList();
    }

    private static org.assertj.core.data.Offset<Float> within() {
        return org.assertj.core.data.Offset.offset(1f);
    }

    private static View eight(long seed) {
        Random random = new Random(seed);
        Facts facts = SampleBook.facts();
        Entry<Build> build = build(view(facts), "K05", 3);
        Entry<Engine> engine =
                facts.of(Engine.class).find(build.fact().engine()).orElseThrow();
        EngineDesign design = facts.of(EngineDesign.class).get(engine.fact().design());
        String endless = "Donaudampfschifffahrtsgesellschaftskapitaensmuetzenabzeichen".repeat(2);
        EngineDesign larger = new EngineDesign(
                "Orrow 36-32 with " + endless,
                8,
                "V8, iron block",
                design.bore(),
                design.stroke(),
                design.rodLength(),
                null,
                null,
                design.redLine(),
                design.overRevAbove(),
                "",
                9);
        Facts eight = facts.with(List.of(new Entry<>(engine.fact().design(), larger, Standing.IN_FORCE, null, 2)));
        List<Entry<?>> more = new ArrayList<>();
        for (MeasurePlace place : page(view(eight), "K05", 3).order()) {
            long value = random.nextInt(10) < 7
                    ? random.nextLong(-2_000_000, 90_000_000)
                    : random.nextLong(-1_000_000_000, 1_000_000_000);
            more.add(entry(figure(
                    build.id(),
                    place,
                    value,
                    true,
                    HowStood.values()[random.nextInt(HowStood.values().length)],
                    random.nextInt(20) == 0 ? "a note that goes on " + "and on ".repeat(40) + endless : "")));
        }
        for (MeasureKind kind : List.of(MeasureKind.CROWN_TO_HEAD, MeasureKind.BORE_TAPER)) {
            more.add(entry(new Concession(
                    engine.id(),
                    null,
                    build.id(),
                    null,
                    build.fact().opened(),
                    "all of it",
                    "as it was " + "time and again ".repeat(20) + endless,
                    "Crew chief " + endless,
                    kind,
                    null)));
        }
        return view(eight.with(more));
    }

    /** Twelve stand in two rows: eight, and four below. */
    @Test
    void more_cylinders_than_stand_beside_each_other_go_on_below() {
        Facts facts = SampleBook.facts();
        Id<EngineDesign> id =
                facts.of(Engine.class).named("K05").orElseThrow().fact().design();
        EngineDesign four = facts.of(EngineDesign.class).get(id);
        EngineDesign twelve = new EngineDesign(four.name(), 12, "V12", null, null, null, null, null, null, null, "", 7);
        View view = view(facts.with(List.of(new Entry<>(id, twelve, Standing.IN_FORCE, null, 2))));
        BuildSheet sheet = new BuildSheetWords(texts, measures).apply(facts(view, "K05", 3));
        List<Integer> columns = sheet.steps().stream()
                .flatMap(step -> step.blocks().stream())
                .filter(block -> block.counted().equals("by cylinder"))
                .map(block -> block.columns().size())
                .distinct()
                .toList();
        assertThat(columns).containsExactly(8, 4);
        long boxes = sheet.steps().stream()
                .flatMap(step -> step.blocks().stream())
                .flatMap(block -> block.kinds().stream())
                .flatMap(kind -> kind.lines().stream())
                .flatMap(line -> line.cells().stream())
                .filter(cell -> cell.look() == BuildSheet.Look.TO_WRITE)
                .count();
        assertThat(boxes).isEqualTo(page(view, "K05", 3).order().size());
    }
}
