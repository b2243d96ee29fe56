package witnessmark.launch.stripsheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.EngineDesign;
import witnessmark.domain.Entry;
import witnessmark.domain.Finding;
import witnessmark.domain.HowMarked;
import witnessmark.domain.Incident;
import witnessmark.logbook.strip.StripSheetFacts;
import witnessmark.report.BuildSheet.ByHand;
import witnessmark.report.SeasonSheet.Cell;
import witnessmark.report.SeasonSheet.Column;
import witnessmark.report.SeasonSheet.Row;
import witnessmark.report.SeasonSheet.Section;
import witnessmark.report.SeasonSheet.Weight;
import witnessmark.report.StripSheet;
import witnessmark.report.StripSheet.Area;
import witnessmark.report.StripSheet.Found;
import witnessmark.report.StripSheet.Grade;
import witnessmark.report.StripSheet.Line;
import witnessmark.report.StripSheet.Spot;
import witnessmark.study.result.StripCell;
import witnessmark.study.result.StripLine;
import witnessmark.study.result.StripReport;
import witnessmark.study.result.StripRow;
import witnessmark.wording.FindingWords;
import witnessmark.wording.Measures;
import witnessmark.wording.PromptWords;
import witnessmark.wording.RecordWords;
import witnessmark.wording.StripWords;
import witnessmark.wording.Texts;

/** Words the report of a strip for its pages, as the measuring bench does. The same facts always give the same sheet. */
public final class StripSheetWords implements Function<StripSheetFacts, StripSheet> {
    private final Texts texts;
    private final Measures measures;
    private final RecordWords records;
    private final StripWords strips;
    private final FindingWords findings;
    private final PromptWords prompts;

    public StripSheetWords(Texts texts, Measures measures) {
        this.texts = texts;
        this.measures = measures;
        this.records = new RecordWords(texts);
        this.strips = new StripWords(texts, measures);
        this.findings = new FindingWords(texts, measures);
        this.prompts = new PromptWords(texts);
    }

    @Override
    public StripSheet apply(StripSheetFacts facts) {
        StripReport report = facts.page().report();
        String seen = seen(report).orElse("");
        List<Area> areas = areas(facts, seen.isEmpty());
        boolean open = spots(areas).anyMatch(spot -> spot.found().isEmpty());
        boolean before = spots(areas).anyMatch(spot -> !spot.before().isEmpty());
        return new StripSheet(
                texts.get("stripsheet.title", strips.title(report)),
                facts.facts()
                        .of(EngineDesign.class)
                        .get(report.engine().fact().design())
                        .name(),
                under(report, seen, open),
                facts.logbook(),
                texts.get("stripsheet.day", measures.date(facts.day())),
                texts.get("stripsheet.printed", measures.fullMoment(facts.printed())),
                facts.printed().instant(),
                texts.get("stripsheet.caution"),
                Stream.of(HowMarked.values())
                        .map(how -> new Grade(how, grade(how)))
                        .toList(),
                Stream.of("where", "how", "found", "before")
                        .limit(before ? 4 : 3)
                        .map(title -> texts.get("stripsheet.title." + title))
                        .toList(),
                areas,
                tables(facts),
                open ? texts.get("stripsheet.other") : "",
                open ? byHand() : null);
    }

    private static Stream<Spot> spots(List<Area> areas) {
        return areas.stream().flatMap(area -> area.lines().stream()).flatMap(line -> line.spots().stream());
    }

    private List<String> under(StripReport report, String seen, boolean open) {
        List<String> under = new ArrayList<>(strips.headline(report));
        under.add(seen);
        if (open) {
            under.add(texts.get("stripsheet.fill"));
        }
        boolean placed = report.all().anyMatch(finding -> finding.fact().aroundDegrees() != null);
        under.add(placed ? texts.get("stripsheet.places") : "");
        under.removeIf(String::isEmpty);
        return under;
    }

    /** Who looked and when, where that is the same of everything; else it stands beside each. */
    private Optional<String> seen(StripReport report) {
        List<String> all = report.all()
                .map(Entry::fact)
                .map(finding -> texts.get(
                        "stripsheet.seen",
                        finding.by(),
                        measures.date(finding.at().day())))
                .distinct()
                .toList();
        return all.size() == 1 ? Optional.of(all.get(0)) : Optional.empty();
    }

    private ByHand byHand() {
        return new ByHand(
                List.of(texts.get("stripsheet.hand.by"), texts.get("stripsheet.hand.day")),
                texts.get("stripsheet.hand.note"));
    }

    /** In the order in which an engine comes apart: an area to which that comes back is there again. */
    private List<Area> areas(StripSheetFacts facts, boolean each) {
        List<Area> areas = new ArrayList<>();
        List<Line> lines = new ArrayList<>();
        List<StripRow> rows = facts.page().report().rows();
        for (int i = 0; i < rows.size(); i++) {
            StripLine.Area area = rows.get(i).line().area();
            lines.add(line(facts, rows.get(i), each));
            if (i == rows.size() - 1 || rows.get(i + 1).line().area() != area) {
                areas.add(new Area(strips.area(area), lines));
                lines = new ArrayList<>();
            }
        }
        return areas;
    }

    private Line line(StripSheetFacts facts, StripRow row, boolean each) {
        List<String> notes = new ArrayList<>();
        strips.part(row).ifPresent(notes::add);
        if (row.whole().found().isEmpty() && !row.cells().isEmpty()) {
            before(facts, row.whole()).ifPresent(notes::add);
        }
        strips.pattern(row).ifPresent(notes::add);
        return new Line(
                strips.line(row.line()),
                notes,
                cells(row).map(cell -> spot(facts, row, cell, each)).toList());
    }

    /** What was looked at, and of what lies open what was not; of a place without its side nothing else, it lies open with its sides. */
    private static Stream<StripCell> cells(StripRow row) {
        boolean whole = !row.whole().found().isEmpty();
        return Stream.concat(
                whole || row.cells().isEmpty() ? Stream.of(row.whole()) : Stream.of(),
                row.cells().stream().filter(cell -> !cell.found().isEmpty() || row.opened() && !whole));
    }

    private Spot spot(StripSheetFacts facts, StripRow row, StripCell cell, boolean each) {
        return new Spot(
                cell.number() != null
                        ? measures.number(cell.number())
                        : row.cells().isEmpty() ? "" : texts.get("stripsheet.all"),
                cell.found().stream()
                        .map(finding -> found(facts, finding, each))
                        .toList(),
                before(facts, cell)
                        .map(said -> cell.worse() ? texts.get("stripsheet.worse", said) : said)
                        .orElse(""),
                cell.worse());
    }

    private Optional<String> before(StripSheetFacts facts, StripCell cell) {
        return cell.worstBefore()
                .map(was ->
                        texts.get("stripsheet.before", findings.build(facts.facts(), was), findings.words(was.fact())));
    }

    private Found found(StripSheetFacts facts, Entry<Finding> finding, boolean each) {
        Finding seen = finding.fact();
        return new Found(seen.how(), grade(seen.how()), findings.ungraded(seen), beside(facts, finding, each));
    }

    private List<String> beside(StripSheetFacts facts, Entry<Finding> finding, boolean each) {
        Finding seen = finding.fact();
        List<String> beside = new ArrayList<>();
        if (seen.incident() != null) {
            beside.add(texts.get(
                    "stripsheet.evidence",
                    facts.facts().of(Incident.class).get(seen.incident()).mark()));
        }
        if (each) {
            beside.add(measures.row(List.of(measures.shortDate(seen.at().day()), seen.by())));
        }
        long photos = facts.page().photos().getOrDefault(finding.id(), 0L);
        if (photos > 0) {
            beside.add(texts.get("stripsheet.photos", photos));
        }
        return beside.isEmpty() ? List.of() : List.of(measures.row(beside));
    }

    private String grade(@Nullable HowMarked how) {
        return how == null
                ? texts.get("stripsheet.not_judged")
                : texts.get("stripsheet.grade", measures.number(how.ordinal()), records.word(how));
    }

    private List<Section> tables(StripSheetFacts facts) {
        List<Section> tables = new ArrayList<>();
        StripReport report = facts.page().report();
        if (!report.elsewhere().isEmpty()) {
            tables.add(new Section(
                    texts.get("stripsheet.elsewhere"),
                    List.of(Column.words("", 3), Column.words("", 1)),
                    report.elsewhere().stream()
                            .map(finding -> row(
                                    Cell.of(findings.words(finding.fact())), new Cell(beside(facts, finding, true), 0)))
                            .toList(),
                    List.of()));
        }
        List<Row> asked = report.asked().entrySet().stream()
                .map(mode -> row(
                        Cell.of(prompts.name(mode.getKey())),
                        new Cell(positions(mode.getValue()), 0),
                        new Cell(prompts.ask(mode.getKey()), 0)))
                .toList();
        if (!asked.isEmpty()) {
            tables.add(new Section(
                    texts.get("stripsheet.asked"),
                    List.of(
                            Column.name(texts.get("stripsheet.asked.mode"), 3),
                            Column.words(texts.get("stripsheet.asked.shown"), 3),
                            Column.words(texts.get("stripsheet.asked.ask"), 5)),
                    asked,
                    List.of()));
        }
        return tables;
    }

    private List<String> positions(List<Entry<Finding>> shown) {
        return shown.stream()
                .map(finding -> findings.lead(finding.fact()))
                .distinct()
                .toList();
    }

    private static Row row(Cell... cells) {
        return new Row(Weight.LINE, List.of(cells));
    }
}
