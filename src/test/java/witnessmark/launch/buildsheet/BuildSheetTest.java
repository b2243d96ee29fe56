package witnessmark.launch.buildsheet;

import static org.assertj.core.api.Assertions.assertThat;
import static witnessmark.launch.buildsheet.Sheets.build;
import static witnessmark.launch.buildsheet.Sheets.entry;
import static witnessmark.launch.buildsheet.Sheets.facts;
import static witnessmark.launch.buildsheet.Sheets.figure;
import static witnessmark.launch.buildsheet.Sheets.page;
import static witnessmark.launch.buildsheet.Sheets.sample;
import static witnessmark.launch.buildsheet.Sheets.view;
import static witnessmark.report.PdfText.solid;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import witnessmark.domain.Build;
import witnessmark.domain.Entry;
import witnessmark.domain.Fact;
import witnessmark.domain.Facts;
import witnessmark.domain.HowStood;
import witnessmark.domain.Id;
import witnessmark.domain.MeasureKind;
import witnessmark.domain.MeasurePlace;
import witnessmark.domain.Measurement;
import witnessmark.domain.PlacedAt;
import witnessmark.domain.Spot;
import witnessmark.domain.Standing;
import witnessmark.fit.result.Answer;
import witnessmark.fit.result.Check;
import witnessmark.logbook.View;
import witnessmark.logbook.measuring.BuildSheetFacts;
import witnessmark.logbook.measuring.Finding;
import witnessmark.logbook.measuring.SheetPage;
import witnessmark.logbook.measuring.SignBuildSheet;
import witnessmark.logbook.measuring.WriteBuildSheet;
import witnessmark.logbook.run.SampleBook;
import witnessmark.quantity.Moment;
import witnessmark.quantity.Temperature;
import witnessmark.report.PdfRows;
import witnessmark.report.PdfShapes;
import witnessmark.report.PdfText;
import witnessmark.sample.SampleViews;
import witnessmark.wording.FitWords;
import witnessmark.wording.Measures;
import witnessmark.wording.Texts;
import witnessmark.wording.Units;

/** A build sheet on paper, read back by a library that did not write it (Apache PDFBox). */
class BuildSheetTest {

    private final Texts texts = Texts.in(Locale.UK);
    private final Measures measures = new Measures(texts, Units.METRIC);
    private final FitWords fit = new FitWords(texts, measures);

    private byte[] pdf(View view, String engine, int number) {
        return new BuildSheetPaper(texts, measures)
                .apply(facts(view, engine, number))
                .bytes();
    }

    private PdfText read(View view, String engine, int number) {
        return PdfText.of(pdf(view, engine, number));
    }

    /** The rows of the season folder's table, which nothing of the program had a hand in: each is in its box, once. */
    @ParameterizedTest
    @ValueSource(strings = {"K05", "K03"})
    void every_figure_of_the_table_stands_in_its_box_once(String engine) throws IOException {
        Map<String, BigDecimal> table = new LinkedHashMap<>();
        Map<MeasureKind, Map<Integer, BigDecimal>> once = new LinkedHashMap<>();
        for (String line : Files.readAllLines(Path.of("sample-season", "measurements.csv"))) {
            String[] cells = unquoted(line);
            if (!cells[1].equals(engine + "/1")) {
                continue;
            }
            MeasureKind kind = java.util.Arrays.stream(MeasureKind.values())
                    .filter(each -> each.code().equals(cells[2]))
                    .findFirst()
                    .orElseThrow();
            BigDecimal value = new BigDecimal(cells[5].split("[ \u00b0]")[0].replace('\u2212', '-'));
            if (kind.placedAt() == PlacedAt.ENGINE) {
                int at = IntStream.range(0, kind.spots().size())
                        .filter(i -> kind.spots().get(i).code().equals(cells[4]))
                        .findFirst()
                        .orElse(0);
                once.computeIfAbsent(kind, any -> new java.util.TreeMap<>()).put(at, value);
            } else {
                table.put(kind.code() + "|" + cells[4] + "|" + cells[3], value);
            }
        }
        once.forEach((kind, values) -> {
            int at = 0;
            for (BigDecimal value : values.values()) {
                table.put(kind.code() + "|#" + at++, value);
            }
        });
        Map<String, List<BigDecimal>> printed =
                Printed.of(pdf(sample(), engine, 1)).figures();
        assertThat(table).hasSizeGreaterThan(100);
        assertThat(printed.keySet()).containsExactlyInAnyOrderElementsOf(table.keySet());
        table.forEach((place, value) -> assertThat(printed.get(place))
                .as(place)
                .usingElementComparator(BigDecimal::compareTo)
                .containsExactly(value));
    }

    private static String[] unquoted(String line) {
        List<String> cells = new ArrayList<>();
        StringBuilder cell = new StringBuilder();
        boolean quoted = false;
        for (char letter : (line + ",").toCharArray()) {
            if (letter == '"') {
                quoted = !quoted;
            } else if (letter == ',' && !quoted) {
                cells.add(cell.toString());
                cell.setLength(0);
            } else {
                cell.append(letter);
            }
        }
        return cells.toArray(String[]::new);
    }

    /** Added up from the paper, to the last digit; a ratio is that of its two volumes (Heywood 1988, equation 2.1). */
    @ParameterizedTest
    @ValueSource(strings = {"K05", "K03", "K06"})
    void each_column_adds_up_line_by_line(String engine) {
        Printed printed = Printed.of(pdf(sample(), engine, 1));
        assertThat(printed.wrong()).isEmpty();
        long adding = Finding.all(page(sample(), engine, 1)).stream()
                .map(Finding::shown)
                .filter(shown ->
                        shown != null && shown.value() != null && shown.terms().size() > 1)
                .count();
        assertThat(printed.columns()).isEqualTo((int) adding).isGreaterThan(10);
    }

    /** K05 as if all of it had been measured on a day of 27 °C: its block is of iron, its pistons of aluminium. */
    @Test
    void a_size_read_on_a_hot_day_is_shown_as_read_and_at_twenty_and_the_column_still_adds_up() {
        Facts cold = SampleBook.facts();
        Facts hot = cold.with(cold.of(Measurement.class).all().stream()
                .map(entry -> new Entry<>(
                        entry.id(), at(entry.fact(), "27"), entry.standing(), entry.struckBecause(), entry.rev() + 1))
                .toList());
        byte[] pdf = pdf(Sheets.view(hot), "K05", 1);
        assertThat(PdfText.of(pdf).solid())
                .contains(solid("less piston diameter, cylinder 3, as read at 27 °C, measured"))
                .contains(solid(
                        "to 20 °C, where sizes are given, aluminium 21.5, steel gauge 11.5 µm/m·°C, usual values"));
        assertThat(Printed.of(pdf).wrong()).isEmpty();
        Check wall = page(Sheets.view(hot), "K05", 1)
                .answer(MeasureKind.PISTON_TO_WALL)
                .orElseThrow()
                .checks()
                .get(0);
        Check before = page(sample(), "K05", 1)
                .answer(MeasureKind.PISTON_TO_WALL)
                .orElseThrow()
                .checks()
                .get(0);
        assertThat(wall.value()).isEqualTo(before.value() + 6_000); // 85.131 × (21.5 − 11.5) × 7 in a million
    }

    private static Measurement at(Measurement figure, String celsius) {
        return new Measurement(
                figure.build(),
                figure.kind(),
                figure.number(),
                figure.spot(),
                figure.value(),
                figure.typed(),
                figure.at(),
                figure.tool(),
                Temperature.ofCelsius(new BigDecimal(celsius)),
                figure.stood(),
                figure.inUse(),
                figure.by(),
                figure.note());
    }

    /** What the bench says of a kind is what the paper says, the worst first. */
    @ParameterizedTest
    @ValueSource(strings = {"K05", "K03"})
    void it_says_what_the_bench_says_in_the_same_order(String engine) {
        SheetPage page = page(sample(), engine, 1);
        String all = read(sample(), engine, 1).solid();
        int before = all.indexOf(solid("How it stands"));
        assertThat(before).isPositive();
        for (Finding finding : Finding.all(page)) {
            Answer answer = finding.answer();
            int at = all.indexOf(solid(fit.answer(answer)), before);
            assertThat(at).as(fit.answer(answer)).isGreaterThan(before);
            before = at;
        }
        assertThat(all).contains(solid(fit.headline(page.counts())));
    }

    /** K05, build 1: 0.99 on two anti-thrust sides, accepted by the crew chief with his reason. */
    @Test
    void what_is_outside_stands_first_with_why_and_by_whom_it_is_accepted() {
        PdfText read = read(sample(), "K05", 1);
        String all = read.solid();
        assertThat(solid(read.pages().get(0)))
                .contains(solid("Build sheet of K05, build 1"), solid("Orrow 18-16"))
                .contains(solid("Nothing left open, 2 accepted as they are, 16 accepted unmeasured"))
                .contains(solid("Opened Wed 14 Jan 2026, closed Fri 30 Jan 2026"))
                .contains(solid("Signed Fri 30 Jan 2026 by Crew chief, second pair of eyes Team engineer"));
        assertThat(all)
                .contains(solid("Accepted as it is: steel rods, pistons fitted tight; read twice; looked at again at"
                        + " the next strip; Crew chief"))
                .contains(solid("Lacks big-end housing ovality (1, 2, 3, 4)"))
                .contains(solid("Taken pushed down, DB1, dial gauge, 20.5 °C, Crew chief, 29 Jan"));
        assertThat(all.indexOf(solid("Accepted as it is, 4"))).isLessThan(all.indexOf(solid("Inside, 27")));
        for (String page : read.pages()) {
            assertThat(solid(page)).contains(solid(texts.get("fit.caution.computed")));
            assertThat(solid(page)).contains(solid(texts.get("fit.caution.fasteners")));
        }
        assertThat(all).doesNotContain(solid(texts.get("buildsheet.hand.note")));
        assertThat(String.join(" ", read.pages()).toLowerCase(Locale.ROOT))
                .doesNotContain("may run", "fit to run", "ready to run", "good to go");
        assertThat(read.allEmbedded()).isTrue();
    }

    /** The row K05/1, bore, cylinder 1, bottom across of the table: 85.21 mm, typed 85.210. */
    @Test
    void a_figure_keeps_the_zeros_it_was_typed_with() {
        assertThat(PdfRows.of(pdf(sample(), "K05", 1)).row("bottom, across").get(1))
                .isEqualTo("85.210");
    }

    /** K05, build 3, in pieces: a box for every place the bench asks for, with what each may be beside it. */
    @Test
    void an_empty_build_prints_empty_boxes_with_their_limits() {
        SheetPage page = page(sample(), "K05", 3);
        byte[] pdf = pdf(sample(), "K05", 3);
        long boxes = PdfShapes.of(pdf).boxes().stream()
                .flatMap(List::stream)
                .filter(box -> box.getHeight() >= 16 && box.getWidth() > 30 && box.getWidth() < 80)
                .count();
        assertThat(boxes).isEqualTo(page.order().size()).isGreaterThan(100);
        assertThat(Printed.of(pdf).figures()).isEmpty();
        String all = PdfText.of(pdf).solid();
        page.order()
                .forEach(place -> assertThat(all)
                        .contains(solid(fit.bounds(place.kind(), page.bounds(place))))
                        .containsIgnoringCase(solid(place.kind().code())));
        assertThat(all)
                .contains(solid("Nothing is measured yet"), solid("still open"), solid("Not signed"))
                .contains(
                        solid("proud or down"),
                        solid("How it stood"),
                        solid("Measured by"),
                        solid("Second pair of eyes"))
                .contains(solid(texts.get("fit.caution.computed")))
                .doesNotContain(solid("How it stands"));
    }

    @Test
    void a_figure_measured_again_is_listed_and_what_was_taken_otherwise_is_named() {
        Facts facts = SampleBook.facts();
        Id<Build> build = build(view(facts), "K05", 3).id();
        MeasurePlace one = new MeasurePlace(MeasureKind.PISTON_MASS, 1, null);
        MeasurePlace two = new MeasurePlace(MeasureKind.PISTON_MASS, 2, null);
        View view = view(facts.with(List.of(
                entry(figure(build, one, 318_400_000, true, HowStood.BARE, "")),
                entry(figure(build, one, 319_900_000, false, HowStood.BARE, "")),
                entry(figure(build, two, 318_000_000, true, HowStood.HOT, "weighed with its pin")))));
        SheetPage page = page(view, "K05", 3);
        String shown = fit.figure(MeasureKind.PISTON_MASS, 319_900_000);
        String all = read(view, "K05", 3).solid();
        assertThat(page.figures()).hasSize(3);
        assertThat(all)
                .contains(solid("Measured more than once: cylinder 1: " + shown + ", 1 Jul, Crew chief"))
                .contains(solid("cylinder 1: Taken bare, Crew chief, 1 Jul"))
                .contains(solid("cylinder 2: Taken hot, Crew chief, 1 Jul"))
                .contains(solid("cylinder 2: weighed with its pin"));
    }

    @Test
    void what_cannot_be_stands_under_the_answer_on_the_first_page() {
        Facts facts = SampleBook.facts();
        Id<Build> build = build(view(facts), "K05", 3).id();
        MeasureKind piston = MeasureKind.PISTON;
        MeasurePlace bore = new MeasurePlace(MeasureKind.BORE, 1, Spot.TOP_ACROSS);
        View view = view(facts.with(List.of(
                entry(figure(build, bore, 85_210_000, true, HowStood.BARE, "")),
                entry(figure(build, new MeasurePlace(piston, 1, null), 99_000_000, true, HowStood.BARE, "")))));
        SheetPage page = page(view, "K05", 3);
        assertThat(page.contradictions()).isNotEmpty();
        assertThat(solid(read(view, "K05", 3).pages().get(0)))
                .contains(solid(fit.contradiction(page.contradictions().get(0))));
    }

    @Test
    void a_signed_sheet_says_who_signed_and_what_stood_then_where_it_differs_now() {
        Facts facts = SampleBook.facts();
        SheetPage before = page(view(facts), "K05", 1);
        Moment at = Moment.of(Instant.parse("2026-07-02T12:00:00Z"), SampleViews.ZONE);
        List<Entry<?>> signing = new SignBuildSheet(BuildSheetTest::id)
                .entries(before, at, "Crew chief", "Team engineer", "looked at twice");
        Facts signed = facts.with(signing);
        String then = read(view(signed), "K05", 1).solid();
        assertThat(then)
                .contains(solid("Signed Thu 2 Jul 2026 by Crew chief, second pair of eyes Team engineer"))
                .contains(solid("looked at twice"))
                .contains(solid("All stands as it stood when it was signed."))
                .doesNotContain(solid(texts.get("buildsheet.hand.note")));

        Entry<Measurement> deck = before.figures().stream()
                .filter(each -> each.fact().kind() == MeasureKind.DECK_CLEARANCE
                        && Objects.equals(each.fact().number(), 1))
                .min(Comparator.comparing(each -> each.fact().value()))
                .orElseThrow();
        Measurement fact = deck.fact();
        Facts changed = signed.with(List.of(new Entry<>(
                deck.id(),
                figure(fact.build(), fact.place(), 400_000, true, HowStood.PUSHED_DOWN, ""),
                Standing.IN_FORCE,
                null,
                2)));
        String now = read(view(changed), "K05", 1).solid();
        assertThat(now)
                .contains(solid("What stood when it was signed, where it stands otherwise now"))
                .contains(solid("Crown to head, cylinder 1, anti-thrust side 0.99 mm, outside, not under 1.00 mm"
                        + " 1.25 mm, inside, not under 1.00 mm"))
                .doesNotContain(solid("All stands as it stood"));
    }

    private static <F extends Fact> Id<F> id() {
        return new Id<>(UUID.randomUUID());
    }

    @Test
    void the_same_sheet_at_the_same_moment_is_the_same_file() {
        assertThat(pdf(sample(), "K05", 1)).isEqualTo(pdf(sample(), "K05", 1));
    }

    @Test
    void a_day_before_the_build_has_no_such_sheet() {
        @Nullable
        BuildSheetFacts none = WriteBuildSheet.facts(
                        SampleViews.on(SampleBook.facts(), java.time.LocalDate.of(2026, 1, 2)),
                        build(sample(), "K05", 1).id(),
                        "Marrowgate Racing",
                        Sheets.PRINTED)
                .orElse(null);
        assertThat(none).isNull();
    }
}
