package witnessmark.launch.seasonsheet;

import static org.assertj.core.api.Assertions.assertThat;
import static witnessmark.report.PdfText.solid;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import witnessmark.cost.CostGenerator;
import witnessmark.cost.result.BarsBy;
import witnessmark.cost.result.Piece;
import witnessmark.cost.result.Switches;
import witnessmark.desktop.testing.GoldenText;
import witnessmark.domain.Facts;
import witnessmark.logbook.View;
import witnessmark.logbook.money.SeasonAsked;
import witnessmark.logbook.money.SeasonSheetFacts;
import witnessmark.logbook.money.SeeSeason;
import witnessmark.quantity.Moment;
import witnessmark.report.PdfRows;
import witnessmark.report.PdfText;
import witnessmark.report.SeasonSheet;
import witnessmark.sample.SampleViews;
import witnessmark.wording.Measures;
import witnessmark.wording.Texts;
import witnessmark.wording.Units;

/** A season on paper, read back by a library that did not write it (Apache PDFBox) and added up line by line. */
class SeasonSheetTest {
    private static final Instant PRINTED = Instant.parse("2026-12-18T18:00:00Z");
    private static final View END = SampleViews.end();
    private static final LocalDate SUMMER = LocalDate.of(2027, 6, 30);

    private final Texts texts = Texts.in(Locale.UK);
    private final Measures measures = new Measures(texts, Units.METRIC);

    private static SeasonSheetFacts facts(View view, SeasonAsked asked) {
        return SeeSeason.sheet(view, asked, "Marrowgate Racing", Moment.of(PRINTED, SampleViews.ZONE));
    }

    private byte[] pdf(View view, SeasonAsked asked) {
        return new SeasonSheetPaper(texts, measures).apply(facts(view, asked)).bytes();
    }

    private PdfRows printed(View view, SeasonAsked asked) {
        return PdfRows.of(pdf(view, asked));
    }

    private static SeasonAsked season(String name, Switches switches) {
        return new SeasonAsked(name, switches, BarsBy.INCIDENT);
    }

    private static BigDecimal figure(PdfRows printed, String row) {
        return PdfRows.figure(printed.row(row).get(1)).orElseThrow();
    }

    @Test
    void it_is_the_page_it_was() {
        SeasonSheet sheet = new SeasonSheetWords(texts, measures).apply(facts(END, SeasonAsked.USUAL));
        GoldenText.check("season_sheet", SheetText.of(sheet));
    }

    /** Table 14.19 of the sample's design, to the cent: cash, own labour, events missed, together. */
    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "INC-01,16.00,33.60,0.00,49.60",
        "INC-02,1208.00,1092.00,0.00,2300.00",
        "INC-03,297.00,588.00,0.00,885.00",
        "INC-04,1073.00,1008.00,0.00,2081.00",
        "INC-05,5642.00,2436.00,0.00,8078.00",
        "INC-06,4379.00,2604.00,1037.00,8020.00",
        "INC-07,762.00,252.00,0.00,1014.00",
        "INC-08,50.00,105.00,0.00,155.00",
        "INC-09,721.00,336.00,0.00,1057.00",
        "Together,14148.00,8454.60,1037.00,23639.60",
    })
    void a_failure_is_printed_with_the_columns_of_the_table_and_its_lines_add_up_to_each(
            String mark, String cash, String labour, String missed, String together) {
        PdfRows printed = printed(END, SeasonAsked.USUAL);
        List<String> row = printed.pages().get(0).stream()
                .filter(cells -> String.join(" ", cells).contains(mark)
                        && PdfRows.figure(cells.get(cells.size() - 1)).isPresent())
                .findFirst()
                .orElseThrow();
        assertThat(row.subList(row.size() - 4, row.size()).stream()
                        .map(cell -> PdfRows.figure(cell).orElseThrow())
                        .toList())
                .containsExactly(
                        new BigDecimal(cash), new BigDecimal(labour), new BigDecimal(missed), new BigDecimal(together));
        AddedUp added = AddedUp.of(printed);
        if (mark.equals("Together")) {
            assertThat(added.failures()).isEqualByComparingTo(together);
        } else {
            String letter = row.get(0);
            assertThat(added.sum(letter, "Cash out")).isEqualByComparingTo(cash);
            assertThat(added.sum(letter, "Own labour")).isEqualByComparingTo(labour);
            assertThat(added.sum(letter, "Events missed")).isEqualByComparingTo(missed);
            assertThat(added.total(letter)).isEqualByComparingTo(together);
        }
    }

    /** Spent less kept, with what was brought in, is what failures and racing took; and the lines say the same. */
    @Test
    void the_season_adds_up_on_the_first_page_and_by_its_lines() {
        PdfRows printed = printed(END, SeasonAsked.USUAL);
        AddedUp added = AddedUp.of(printed);
        assertThat(figure(printed, "Spent")).isEqualByComparingTo("62138.00");
        assertThat(figure(printed, "Planned")).isEqualByComparingTo("51236.00").isEqualByComparingTo(added.total("F"));
        assertThat(figure(printed, "Came in")).isEqualByComparingTo(added.total("G"));
        assertThat(figure(printed, "on racing when nothing broke")).isEqualByComparingTo(added.total("B"));
        assertThat(figure(printed, "Other own work, no money moved")).isEqualByComparingTo(added.total("C"));
        assertThat(figure(printed, "less what is kept for later").negate()).isEqualByComparingTo(added.total("D"));
        adds(printed);
    }

    private static void adds(PdfRows printed) {
        BigDecimal used = figure(printed, "Spent")
                .add(figure(printed, "less what is kept for later"))
                .add(figure(printed, "with what earlier seasons had kept"));
        BigDecimal took = figure(printed, "on failures, in cash")
                .add(figure(printed, "on events missed"))
                .add(figure(printed, "on weekends spoiled"))
                .add(figure(printed, "on racing when nothing broke"));
        assertThat(used)
                .isEqualByComparingTo(took)
                .isEqualByComparingTo(figure(printed, "What this season used"))
                .isEqualByComparingTo(figure(printed, "All of that"));
    }

    /** The same sum by hand as for the command line: 22 632.00 without labour and the truck, with spoiled weekends. */
    @Test
    void what_the_choices_leave_out_is_said_and_stands_apart_from_the_total() {
        PdfRows printed = printed(END, season("2026", new Switches(false, true, true, false, true)));
        AddedUp added = AddedUp.of(printed);
        assertThat(added.failures()).isEqualByComparingTo("22632.00");
        assertThat(String.join(
                        "",
                        printed.pages().get(0).stream().flatMap(List::stream).toList()))
                .contains("own labour left out", "spoiled weekends counted", "own labour 8\u2009454.60")
                .doesNotContain("Left out of INC");
        assertThat(added.sum("A1", "Left out of INC-06 by the choices on page 1")
                        .add(added.sum("A2", "Left out of INC-06 by the choices on page 1")))
                .isPositive();
    }

    @Test
    void what_the_pages_are_asked_for_is_on_them() {
        PdfText read = PdfText.of(pdf(END, SeasonAsked.USUAL));
        String all = read.solid();
        assertThat(read.allEmbedded()).isTrue();
        assertThat(all)
                .contains(solid("As of Fri 18 Dec 2026"), solid("All amounts in EUR"))
                .contains(solid("own labour counted, missed events counted, spoiled weekends left out"))
                .contains(solid("an hour of own labour"), solid("42.00 EUR"), solid("140.00 EUR"))
                .contains(solid("by cause"), solid("by part that failed"), solid("by car"), solid("by engine"))
                .contains(solid("not added to anything"), solid("Each price is counted already"))
                .contains(solid("wrong: INC-06, cost 8 020.00 EUR"), solid("renew 272.00 EUR and 6.0 h"))
                .contains(solid("spring set renewed at 12 h: 272.00 and 6.00 h"), solid("price not known"))
                .contains(solid("as reported on Sat 20 Dec 2025"), solid(texts.get("seasonsheet.caution")));
    }

    /** The shells of April: 84 ran 6.08 of 20 h, so that 25.52 was used and 58.48 lost; the rods have no limit. */
    @Test
    void life_lost_is_a_split_and_says_where_none_can_be_made() {
        PdfRows printed = printed(END, SeasonAsked.USUAL);
        assertThat(printed.row("BE-05a")).endsWith("84.00", "6.08 h", "20.00 h", "25.52", "58.48");
        assertThat(printed.row("RS-05")).endsWith("not known", "not known", "not known");
        assertThat(String.join(" ", printed.all().stream().flatMap(List::stream).toList()))
                .contains("RS-05: no limit is written down");
    }

    /** Springs by hand: 272 and 272 while nothing failed, 368 at a failure, and 6 064 that their own failure cost besides. */
    @Test
    void what_went_on_a_kind_of_part_is_printed_and_its_lines_add_up_to_it() {
        PdfRows printed = printed(END, SeasonAsked.USUAL);
        List<String> springs = printed.all().stream()
                .filter(row -> row.size() == 5 && row.get(0).equals("Valve springs"))
                .findFirst()
                .orElseThrow();
        assertThat(springs.subList(1, 5).stream()
                        .map(cell -> PdfRows.figure(cell).orElseThrow())
                        .toList())
                .containsExactly(
                        new BigDecimal("544.00"),
                        new BigDecimal("368.00"),
                        new BigDecimal("6064.00"),
                        new BigDecimal("6976.00"));
        AddedUp added = AddedUp.of(printed);
        assertThat(added.sum("H", "Valve springs")).isEqualByComparingTo("6976.00");
        List<String> none = printed.all().stream()
                .filter(row -> row.get(0).equals("No kind of part named"))
                .findFirst()
                .orElseThrow();
        assertThat(added.total("H")
                        .add(PdfRows.figure(none.get(none.size() - 1)).orElseThrow()))
                .as("failures, racing with the weekends they spoiled, and own work: each once")
                .isEqualByComparingTo(added.failures()
                        .add(figure(printed, "on weekends spoiled"))
                        .add(added.total("B"))
                        .add(added.total("C")));
    }

    /** The same sums by hand as on the screen of that evening: 4 × 520 to ask back, 272 + 252 to charge. */
    @Test
    void money_still_to_be_settled_is_listed_and_summed_up_as_on_the_screen() {
        PdfRows printed = printed(SampleViews.opening(), SeasonAsked.USUAL);
        List<List<String>> rows = printed.all().stream()
                .dropWhile(row -> !row.get(0).equals("Money still to be settled"))
                .skip(2)
                .limit(9)
                .toList();
        assertThat(rows.subList(0, 6))
                .extracting(row -> row.get(row.size() - 1))
                .containsExactly("520.00", "520.00", "520.00", "520.00", "272.00", "252.00");
        assertThat(rows.subList(6, 9))
                .extracting(row -> row.get(0) + " " + row.get(1).replace("\u2009", " "))
                .containsExactly("To be asked back 2 080.00", "To be charged 524.00", "Together 2 604.00");
    }

    /** However long a season is, each cost is on its pages, each sum is that of its lines, and headings go with them. */
    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void a_long_season_of_anything_goes_over_pages_without_a_lost_line(long seed) {
        View view = SampleViews.on(new CostGenerator(seed, 500).facts(), SUMMER);
        SeasonAsked asked = season("2026", Switches.USUAL);
        PdfRows printed = printed(view, asked);
        AddedUp added = AddedUp.of(printed);
        SeasonSheetFacts facts = facts(view, asked);

        assertThat(printed.pages()).as("seed %d", seed).hasSizeGreaterThan(8);
        int costs = (int) Stream.of(facts.pieces().counted(), facts.pieces().kept())
                .flatMap(List::stream)
                .map(Piece::line)
                .distinct()
                .count();
        assertThat(added.numbers())
                .as("seed %d", seed)
                .containsExactlyElementsOf(
                        IntStream.rangeClosed(1, costs).boxed().toList());
        assertThat(added.failures())
                .as("seed %d", seed)
                .isEqualByComparingTo(facts.page().total().units());
        assertThat(added.total("E"))
                .isEqualByComparingTo(facts.page().cost().broughtIn().units());
        adds(printed);
        for (int page = 1; page <= printed.pages().size(); page++) {
            String last = printed.pages().get(page - 1).stream()
                    .map(cells -> String.join(" ", cells))
                    .collect(Collectors.joining("\n"));
            assertThat(last).contains("Page " + page + " of " + printed.pages().size());
        }
    }

    /** ISO 4217: the yen has no minor unit, the euro two decimals, the Kuwaiti dinar three. */
    @ParameterizedTest(name = "{0}")
    @CsvSource({"JPY,0", "EUR,2", "KWD,3"})
    void amounts_have_the_decimals_of_their_currency(String code, int decimals) {
        long seed = 1;
        View view = SampleViews.on(new CostGenerator(seed, 60).facts(), SUMMER);
        while (!facts(view, SeasonAsked.USUAL)
                .page()
                .total()
                .currency()
                .getCurrencyCode()
                .equals(code)) {
            seed++;
            view = SampleViews.on(new CostGenerator(seed, 60).facts(), SUMMER);
        }
        for (String year : List.of("2026", "2027")) {
            PdfRows printed = printed(view, season(year, new Switches(true, true, true, true, true)));
            AddedUp.of(printed);
            adds(printed);
            List<BigDecimal> figures = new ArrayList<>();
            for (String row : List.of("Planned", "Spent", "on racing when nothing broke", "All of that")) {
                figures.add(figure(printed, row));
            }
            assertThat(figures).as("seed %d", seed).allMatch(each -> each.scale() == decimals);
            assertThat(String.join(" ", printed.pages().get(0).get(0))).endsWith(code);
        }
    }

    @Test
    void what_has_no_rate_is_listed_and_in_no_total() {
        View view = SampleViews.on(new CostGenerator(1, 60).facts(), SUMMER);
        SeasonSheetFacts facts = facts(view, season("2026", Switches.USUAL));
        assertThat(facts.page().cost().noRate()).isNotEmpty();
        PdfText read = PdfText.of(pdf(view, season("2026", Switches.USUAL)));
        assertThat(read.solid()).contains(solid("In no total, as no rate of the day is written down"));
        facts.page()
                .cost()
                .noRate()
                .forEach(missing -> assertThat(read.solid()).contains(solid(measures.money(missing))));
    }

    @Test
    void an_empty_season_says_what_is_missing() {
        PdfText read = PdfText.of(pdf(SampleViews.on(Facts.none(), SampleViews.WINTER), SeasonAsked.USUAL));
        assertThat(read.solid())
                .contains(solid("Nothing of money is written down"))
                .contains(solid("No cost is written down for this season"))
                .contains(solid("No failure is written down for this season"))
                .contains(solid("No budget is written down for this season"))
                .contains(solid("No income is written down for this season"))
                .contains(solid("No rate for own labour is written down"))
                .doesNotContain(solid("Every line behind the figures"));
        assertThat(read.pages()).hasSize(1);
    }

    @Test
    void the_same_season_at_the_same_moment_is_the_same_file() {
        assertThat(pdf(END, SeasonAsked.USUAL)).isEqualTo(pdf(END, SeasonAsked.USUAL));
    }
}
