package witnessmark.launch.casesheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.UUID;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import witnessmark.domain.Entry;
import witnessmark.domain.Facts;
import witnessmark.domain.Id;
import witnessmark.domain.Incident;
import witnessmark.domain.Person;
import witnessmark.domain.Photo;
import witnessmark.domain.Standing;
import witnessmark.domain.Team;
import witnessmark.logbook.View;
import witnessmark.logbook.port.Paper;
import witnessmark.logbook.proof.CaseSeen;
import witnessmark.logbook.proof.SeeCase;
import witnessmark.logbook.sharing.CaseSheetFacts;
import witnessmark.logbook.sharing.TypedWords;
import witnessmark.logbook.sharing.Unnamed;
import witnessmark.logbook.sharing.WriteCaseSheet;
import witnessmark.picture.MadePictures;
import witnessmark.quantity.Moment;
import witnessmark.report.SeasonSheet;
import witnessmark.sample.SampleBooks;
import witnessmark.sample.SampleViews;
import witnessmark.wording.Measures;
import witnessmark.wording.NameLetters;
import witnessmark.wording.Texts;
import witnessmark.wording.Units;

/**
 * A case on paper, read back by a library that did not write it (Apache PDFBox). The names that must not stand there come from
 * the tables of the season folder, read here by hand.
 */
class CaseSheetTest {
    private static final Pattern MONEY = Pattern.compile("(?i)(€|£|\\$|\\bEUR\\b|\\beuros?\\b)|\\d\\s?(EUR|GBP)");

    private final Texts texts = Texts.in(Locale.UK);
    private final Measures measures = new Measures(texts, Units.METRIC);
    private final View view = SampleViews.end();

    private Paper paper(Entry<Incident> incident, boolean words, List<CaseSheetFacts.Picture> photos) {
        Moment printed = Moment.of(Instant.parse("2026-12-18T09:00:00Z"), view.zone());
        return new CaseSheetPaper(texts, measures)
                .apply(WriteCaseSheet.facts(
                                view, new WriteCaseSheet.Asked(incident.id(), words, true), photos, 0, printed)
                        .orElseThrow());
    }

    /** A column of a table of the season folder; its tables have no quoted line breaks in these columns. */
    private static List<String> column(String table, String heading) throws IOException {
        List<String> lines = Files.readAllLines(SampleBooks.FOLDER.resolve(table));
        int at = List.of(lines.get(0).split(",")).indexOf(heading);
        List<String> values = new ArrayList<>();
        for (String line : lines.subList(1, lines.size())) {
            String[] cells = line.split(",(?=(?:[^\"]*\"[^\"]*\")*[^\"]*$)", -1);
            if (cells.length > at && cells[at].length() > 2) {
                values.add(cells[at].replace("\"", ""));
            }
        }
        return values;
    }

    private static String text(Paper paper) throws IOException {
        try (PDDocument pdf = Loader.loadPDF(paper.bytes())) {
            assertThat(pdf.getDocumentInformation().getAuthor()).doesNotContain("Racing");
            return new PDFTextStripper().getText(pdf).replaceAll("\\s+", " ");
        }
    }

    @ParameterizedTest
    @ValueSource(booleans = {true, false})
    void no_name_customer_place_or_money_of_the_sample_is_on_any_of_its_cases(boolean words) throws IOException {
        List<String> names = new ArrayList<>();
        names.addAll(column("people.csv", "name"));
        names.addAll(column("team.csv", "name"));
        names.addAll(column("engines.csv", "owner"));
        names.addAll(column("events.csv", "circuit"));
        names.addAll(column("costs.csv", "supplier"));
        names.addAll(column("costs.csv", "customer"));
        names.addAll(column("out-with-others.csv", "sent_to"));
        names.addAll(column("events.csv", "name"));
        names.addAll(column("parts.csv", "supplier"));
        names.addAll(column("stock.csv", "supplier"));
        assertThat(names).as("the tables were read").hasSizeGreaterThan(12).contains("Team engineer", "customer C1");
        List<Entry<Incident>> all = view.facts().of(Incident.class).inForce().toList();
        assertThat(all).hasSize(9);
        for (Entry<Incident> incident : all) {
            Paper paper = paper(incident, words, List.of());
            if (words) {
                Files.write(
                        Files.createDirectories(Path.of("target", "pictures"))
                                .resolve("case-" + incident.fact().mark() + ".pdf"),
                        paper.bytes());
            }
            String text = text(paper);
            assertThat(text).contains("Case " + incident.fact().mark(), "no inspection");
            for (String name : names) {
                assertThat(Pattern.compile("(?i)(?<![\\p{L}\\p{N}])" + Pattern.quote(name) + "(?![\\p{L}\\p{N}])")
                                .matcher(text)
                                .find())
                        .as("%s on %s: %s", name, incident.fact().mark(), text)
                        .isFalse();
            }
            assertThat(MONEY.matcher(text).find()).as(text).isFalse();
        }
    }

    @Test
    void what_was_typed_stands_there_only_when_it_is_wanted() throws IOException {
        Entry<Incident> incident =
                view.facts().of(Incident.class).named("INC-05").orElseThrow();
        assertThat(text(paper(incident, false, List.of())))
                .doesNotContain("Big end of 3", "fretted, cooler")
                .doesNotContain("bore gauge in all four", "cooler cut open")
                .contains("Evidence", "Causes", "F1");
        assertThat(text(paper(incident, true, List.of())))
                .contains("Big end of 3", "then a knock", "bore gauge in all four housings", "cooler cut open");
    }

    /** What a cause is called and how it stands is what the sheet is about: it is on it without a tick. */
    @Test
    void causes_stand_there_by_name_with_how_they_stand_whatever_else_is_left_out() throws IOException {
        Entry<Incident> incident =
                view.facts().of(Incident.class).named("INC-05").orElseThrow();
        assertThat(text(paper(incident, false, List.of())))
                .contains(
                        "housing of rod 3 lost its grip main, seen, 8 Sep",
                        "oil surge once more ruled out, seen, 25 Jun")
                .contains("Tests that decide", "late: was due 1 Jul", "but what causes are called");
    }

    /** A test may be made, due or late: its day says which, and no column is left empty where its words are. */
    @Test
    void when_a_test_is_due_does_not_stand_under_made() throws IOException {
        Entry<Incident> incident =
                view.facts().of(Incident.class).named("INC-05").orElseThrow();
        for (boolean words : new boolean[] {false, true}) {
            CaseSheetFacts facts = WriteCaseSheet.facts(
                            view,
                            new WriteCaseSheet.Asked(incident.id(), words, false),
                            List.of(),
                            0,
                            Moment.of(Instant.parse("2026-12-18T09:00:00Z"), view.zone()))
                    .orElseThrow();
            List<SeasonSheet.Section> tables =
                    new CaseSheetWords(texts, measures).apply(facts).tables();
            SeasonSheet.Section tests = tables.stream()
                    .filter(table -> table.heading().equals("Tests that decide"))
                    .findFirst()
                    .orElseThrow();
            assertThat(tests.columns())
                    .extracting(SeasonSheet.Column::title)
                    .containsExactlyElementsOf(
                            words ? List.of("On which cause", "What", "When") : List.of("On which cause", "When"));
            assertThat(tables).filteredOn(table -> table.columns().size() > 1).allSatisfy(table -> {
                for (int at = 1; at < table.columns().size(); at++) {
                    int column = at;
                    assertThat(table.columns().get(at).title()).isNotBlank();
                    assertThat(table.rows())
                            .allMatch(
                                    row -> row.cells().size() == table.columns().size())
                            .anyMatch(row -> !row.cells().get(column).lines().isEmpty());
                }
            });
        }
    }

    /** What the window shows as going in any case, and nothing else that was typed, is on a sheet without a tick. */
    @Test
    void without_words_a_sheet_holds_what_was_typed_only_where_it_was_shown_as_going_in_any_case() throws IOException {
        Unnamed unnamed = new Unnamed(view.facts(), new NameLetters(texts)::of);
        int shown = 0;
        for (Entry<Incident> incident :
                view.facts().of(Incident.class).inForce().toList()) {
            String text = text(paper(incident, false, List.of())).replace(" ", "");
            List<String> always = bare(unnamed, TypedWords.always(view, incident));
            List<String> wanted = bare(unnamed, TypedWords.of(view, incident));
            assertThat(text).contains(always);
            assertThat(wanted).doesNotContainAnyElementsOf(always);
            assertThat(wanted).filteredOn(typed -> typed.length() > 20).noneMatch(text::contains);
            shown += always.size();
        }
        assertThat(shown).isGreaterThan(9);
    }

    private static List<String> bare(Unnamed unnamed, List<String> typed) {
        return typed.stream()
                .map(each -> unnamed.of(each).replaceAll("\\s+", ""))
                .toList();
    }

    @Test
    void with_words_each_reason_of_a_weighing_stands_beside_its_finding() throws IOException {
        Entry<Incident> incident =
                view.facts().of(Incident.class).named("INC-05").orElseThrow();
        CaseSeen seen = SeeCase.of(view, incident);
        Unnamed unnamed = new Unnamed(view.facts(), new NameLetters(texts)::of);
        List<String> reasons = seen.evidence().weighed().values().stream()
                .map(each -> each.fact().why())
                .filter(why -> !why.isBlank())
                .map(why -> unnamed.of(why).replaceAll("\\s+", " "))
                .toList();
        assertThat(reasons).hasSizeGreaterThan(1);
        String with = text(paper(incident, true, List.of()));
        String without = text(paper(incident, false, List.of()));
        assertThat(reasons).allSatisfy(why -> {
            assertThat(with.replace(" ", "")).contains(":" + why.replace(" ", ""));
            assertThat(without.replace(" ", "")).doesNotContain(why.replace(" ", ""));
        });
    }

    @Test
    void a_photo_stands_there_with_its_words_and_the_same_case_gives_the_same_bytes() throws IOException {
        Entry<Incident> incident =
                view.facts().of(Incident.class).named("INC-05").orElseThrow();
        Moment at = incident.fact().at();
        Photo photo = new Photo(
                "a.jpg",
                "0".repeat(64),
                1,
                "image/jpeg",
                3,
                2,
                null,
                incident.id(),
                null,
                null,
                null,
                null,
                null,
                "shell of 3, held by Crew chief",
                at,
                "Crew chief");
        List<CaseSheetFacts.Picture> photos =
                List.of(new CaseSheetFacts.Picture(photo, MadePictures.bytes("jpg", 300, 200, 1)));
        Paper paper = paper(incident, true, photos);
        assertThat(text(paper)).contains("shell of 3, held by person");
        assertThat(new String(paper.bytes(), StandardCharsets.ISO_8859_1)).contains("/DCTDecode");
        assertThat(paper(incident, true, photos).bytes()).isEqualTo(paper.bytes());
    }

    /** Common practice, no source: amounts as people write them. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "paid 3 975.00 EUR",
                "paid €40",
                "cost £1,200.50 in all",
                "about 300 euros",
                "EUR 5",
                "12 pounds sterling",
                "paid 1 200 SEK",
                "¥5000",
                "it came to 4 000 kr",
                "kr 4 000"
            })
    void amounts_are_taken_out_of_words(String typed) {
        assertThat(counted(view.facts()).of(typed)).contains("MONEY").doesNotContainPattern("\\d");
    }

    /** Pounds of force and of weight: the units of the imperial system; common practice, no source. */
    @ParameterizedTest
    @ValueSource(strings = {"seat load down to 45 pounds", "pulled to 60 pounds feet", "a pound lighter", "took 5 L"})
    void what_is_no_money_stays(String typed) {
        assertThat(counted(view.facts()).of(typed)).isEqualTo(typed);
    }

    /** Codes of ISO 4217; the sign is the one of the locale data of Unicode (CLDR). */
    @ParameterizedTest
    @ValueSource(strings = {"paid 700 ZAR", "paid R700", "paid R 700"})
    void the_currency_of_the_team_is_money_too(String typed) {
        Entry<Team> team = view.facts().of(Team.class).all().get(0);
        Team was = team.fact();
        Team moved =
                new Team(was.name(), was.zone(), "ZAR", was.runningAbove(), was.loadedAbove(), was.highSpeedAbove());
        Facts facts = view.facts()
                .with(List.of(new Entry<>(team.id(), moved, team.standing(), team.struckBecause(), team.rev())));
        assertThat(counted(facts).of(typed)).isEqualTo("paid MONEY");
        assertThat(counted(facts).of("pulled 5 R")).as("no amount").isEqualTo("pulled 5 R");
    }

    @ParameterizedTest
    @CsvSource({
        "parts.csv,supplier",
        "stock.csv,supplier",
        "part-designs.csv,maker",
        "makers-notices.csv,maker",
        "income.csv,from",
        "seals.csv,owner",
        "dyno-sheets.csv,operator",
        "dyno-sheets.csv,dyno",
        "notices-told.csv,who",
        "calibrations.csv,by",
        "works.csv,by",
        "proofs-seen.csv,by",
        "told-running.csv,told_by",
        "events.csv,name"
    })
    void whoever_stands_in_the_tables_of_the_season_is_a_letter_in_words(String table, String heading)
            throws IOException {
        Unnamed unnamed = counted(view.facts());
        assertThat(column(table, heading)).isNotEmpty();
        for (String name : column(table, heading)) {
            if (!name.equals("Orrow")) { // an engine design bears it, and designs stay
                assertThat(unnamed.of("bolts of " + name + " let go")).as(name).matches("bolts of [A-Z]+ let go");
            }
        }
        assertThat(unnamed.of("as in any Orrow 18-16")).isEqualTo("as in any Orrow 18-16");
    }

    @Test
    void a_first_name_or_a_surname_alone_is_the_person_and_a_role_is_a_word() {
        Facts facts = view.facts()
                .with(List.of(
                        person(1, "Ada Brook", "mechanic"),
                        person(2, "Lee O'Hara-Finch", "driver"),
                        person(3, "Chief Mechanic", "mechanic, chief")));
        Unnamed unnamed = counted(facts);
        String ada = unnamed.of("Ada Brook");
        assertThat(ada).startsWith("PERSON");
        assertThat(unnamed.of("Ada heard it, ADA too; brook looked"))
                .isEqualTo(ada + " heard it, " + ada + " too; " + ada + " looked");
        assertThat(unnamed.of("O'Hara-Finch lifted")).isEqualTo(unnamed.of("Lee O'Hara-Finch") + " lifted");
        assertThat(unnamed.of("the mechanic heard the engine; the brooks ran"))
                .isEqualTo("the mechanic heard the engine; the brooks ran");
    }

    private static Entry<Person> person(long number, String name, String role) {
        return new Entry<>(new Id<>(new UUID(7, number)), new Person(name, role), Standing.IN_FORCE, null, 1);
    }

    private static Unnamed counted(Facts facts) {
        return new Unnamed(facts, (who, letter) -> who + letter);
    }

    @Test
    void the_same_name_has_the_same_letter_and_figures_stay() {
        Unnamed unnamed = new Unnamed(view.facts(), (who, letter) -> who + " " + letter);
        String first = unnamed.of("Crew chief told driver 1");
        assertThat(first).doesNotContainIgnoringCase("crew chief", "driver 1");
        assertThat(unnamed.of("crew CHIEF told Driver 1")).isEqualTo(first);
        assertThat(unnamed.of("9340 rpm for 0.42 s at 5.72 h")).isEqualTo("9340 rpm for 0.42 s at 5.72 h");
    }
}
