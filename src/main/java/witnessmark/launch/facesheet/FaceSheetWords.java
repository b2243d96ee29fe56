package witnessmark.launch.facesheet;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.function.Function;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import witnessmark.chart.FaceShading;
import witnessmark.desktop.faces.FaceLines;
import witnessmark.desktop.faces.FaceTurn;
import witnessmark.desktop.faces.MapWords;
import witnessmark.domain.FacePoint;
import witnessmark.domain.PartKind;
import witnessmark.fit.result.face.Face;
import witnessmark.fit.result.face.ZoneFinding;
import witnessmark.ledger.result.MarkState;
import witnessmark.logbook.faces.FacePage;
import witnessmark.logbook.faces.FaceSheetFacts;
import witnessmark.logbook.faces.LookLine;
import witnessmark.quantity.Length;
import witnessmark.report.BuildSheet.Answer;
import witnessmark.report.BuildSheet.Group;
import witnessmark.report.FaceSheet;
import witnessmark.report.SeasonSheet.Cell;
import witnessmark.report.SeasonSheet.Column;
import witnessmark.report.SeasonSheet.Row;
import witnessmark.report.SeasonSheet.Section;
import witnessmark.report.SeasonSheet.Weight;
import witnessmark.wording.FaceWords;
import witnessmark.wording.Measures;
import witnessmark.wording.RecordWords;
import witnessmark.wording.Texts;

/** Words a face for its pages, as the measuring bench does. The same facts always give the same sheet. */
public final class FaceSheetWords implements Function<FaceSheetFacts, FaceSheet> {
    private final Texts texts;
    private final Measures measures;
    private final RecordWords records;
    private final FaceWords faces;
    private final MapWords maps;
    private final FaceLines lines;

    public FaceSheetWords(Texts texts, Measures measures) {
        this.texts = texts;
        this.measures = measures;
        this.records = new RecordWords(texts);
        this.faces = new FaceWords(texts, measures);
        this.maps = new MapWords(texts, measures);
        this.lines = new FaceLines(texts, measures);
    }

    @Override
    public FaceSheet apply(FaceSheetFacts facts) {
        FacePage page = facts.page();
        LookLine look = facts.look();
        return new FaceSheet(
                texts.get(
                        "facesheet.title",
                        records.word(page.kind()),
                        page.part().fact().mark()),
                board(page),
                under(facts),
                facts.logbook(),
                texts.get("facesheet.day", measures.date(facts.day())),
                texts.get("facesheet.printed", measures.fullMoment(facts.printed())),
                facts.printed().instant(),
                texts.get("faces.caution"),
                drawing(facts),
                look == null || look.findings().isEmpty()
                        ? null
                        : new Group(
                                texts.get("facemap.zones"),
                                look.findings().stream().map(this::zone).toList()),
                tables(facts),
                lines.effect(page, ""));
    }

    private String board(FacePage page) {
        String design = page.design() == null ? "" : page.design().fact().name();
        return page.engine() == null
                ? design
                : texts.get("facesheet.board", page.engine().fact().number(), design);
    }

    private List<String> under(FaceSheetFacts facts) {
        FacePage page = facts.page();
        LookLine look = facts.look();
        LookLine over = facts.over();
        List<String> under = new ArrayList<>();
        under.add(maps.title(page, look, over));
        if (look != null) {
            under.add(maps.note(page, look));
        }
        if (over != null) {
            under.add(texts.get("facesheet.over", laidOver(over)));
        }
        if (page.face() == null) {
            under.add(texts.get("facemap.no_outline"));
        }
        if (page.kind() != PartKind.HEAD_GASKET) {
            under.addAll(lines.standing(page));
        }
        return under;
    }

    private String laidOver(LookLine over) {
        return measures.row(List.of(
                records.word(over.look().fact().face()),
                measures.date(over.look().fact().at().day()),
                records.word(over.look().fact().method())));
    }

    private FaceSheet.@Nullable Drawing drawing(FaceSheetFacts facts) {
        Face face = facts.page().face();
        if (face == null) {
            return null;
        }
        LookLine look = facts.look();
        var kind = look == null
                ? FacePage.face(facts.page().kind())
                : look.look().fact().face();
        var map = maps.model(facts.page(), face, look, facts.over(), List.of());
        List<String> legend = new ArrayList<>();
        legend.add(
                map.shading() == null
                        ? records.label(texts.get("facemap.legend.none"))
                        : texts.get(
                                "facesheet.legend",
                                measures.length(Length.ofMillimetres(BigDecimal.valueOf(FaceShading.LOW)))));
        if (map.before() != null) {
            legend.add(texts.get(
                    "facesheet.legend.before",
                    measures.date(Objects.requireNonNull(facts.over())
                            .look()
                            .fact()
                            .at()
                            .day())));
        }
        return new FaceSheet.Drawing(
                map,
                FaceTurn.AS_IT_LIES.exhaustBelow(face.outline(), kind),
                FaceTurn.AS_IT_LIES.frontLeft(),
                String.join(". ", legend),
                maps.turn(kind, FaceTurn.AS_IT_LIES));
    }

    private Answer zone(ZoneFinding finding) {
        MarkState state = switch (finding.state()) {
            case COMING_BACK -> MarkState.OVER;
            case NEW, STILL -> MarkState.DUE;
            case AGAIN, FIRST_LOOK -> MarkState.NOT_KNOWN;
        };
        List<String> beside = new ArrayList<>(faces.comeback(finding.comeback()));
        beside.add(faces.cause(finding));
        beside.removeIf(String::isEmpty);
        return new Answer(
                state, faces.state(finding.state()), faces.finding(finding), List.of(), beside, "", List.of(), "");
    }

    private List<Section> tables(FaceSheetFacts facts) {
        List<Section> tables = new ArrayList<>();
        LookLine look = facts.look();
        Face face = facts.page().face();
        if (look != null) {
            if (face != null && !look.points().isEmpty()) {
                tables.add(points(face, look, facts.over()));
            }
            said("facemap.edges", lines.edges(look), tables);
            said("facemap.marks", lines.marks(face, look), tables);
        }
        if (facts.page().kind() != PartKind.HEAD_GASKET) {
            tables.add(skims(facts.page()));
        }
        return tables;
    }

    private Section points(Face face, LookLine look, @Nullable LookLine over) {
        boolean held = over != null && !over.low().isEmpty();
        List<Column> columns = new ArrayList<>(List.of(
                Column.name(texts.get("facemap.points.place"), 1),
                Column.figure(texts.get("facesheet.points.x")),
                Column.figure(texts.get("facesheet.points.y")),
                Column.figure(texts.get("facemap.points.depth"))));
        if (held) {
            columns.add(Column.figure(texts.get("facemap.points.then")));
            columns.add(Column.figure(texts.get("facemap.points.change")));
        }
        List<Row> rows = lines.points(face, look, over).stream()
                .map(line -> {
                    FacePoint point = look.points().get(line.index()).fact();
                    List<Cell> cells = new ArrayList<>(List.of(
                            Cell.of(line.place()),
                            Cell.of(whole(point.x())),
                            Cell.of(whole(point.y())),
                            Cell.of(line.depth())));
                    if (held) {
                        cells.add(Cell.of(line.then()));
                        cells.add(Cell.of(line.change()));
                    }
                    return new Row(Weight.LINE, cells);
                })
                .toList();
        return new Section(texts.get("facemap.points"), columns, rows, List.of(lines.flat(look), lines.deeper(look)));
    }

    private String whole(Length length) {
        return measures.number(length.inMillimetres(), 0);
    }

    private void said(String heading, List<String> said, List<Section> tables) {
        if (!said.isEmpty()) {
            tables.add(new Section(
                    texts.get(heading),
                    List.of(Column.words("", 1)),
                    said.stream()
                            .map(line -> new Row(Weight.LINE, List.of(Cell.of(line))))
                            .toList(),
                    List.of()));
        }
    }

    private Section skims(FacePage page) {
        List<Column> columns = FaceLines.HEADINGS.stream()
                .map(heading -> column(heading, texts.get("facemap.skims." + heading)))
                .toList();
        return new Section(
                texts.get("facemap.skims"),
                columns,
                lines.skims(page).stream()
                        .map(row -> new Row(
                                Weight.LINE,
                                IntStream.range(0, columns.size())
                                        .mapToObj(at -> Cell.of(row.cell(at)))
                                        .toList()))
                        .toList(),
                page.skims().isEmpty() ? List.of(texts.get("facemap.skims.none")) : List.of());
    }

    private static Column column(String heading, String title) {
        return switch (heading.toLowerCase(Locale.ROOT)) {
            case "day", "ratio" -> Column.mark(title);
            case "passes", "cleanup" -> Column.words(title, 1);
            default -> Column.figure(title);
        };
    }
}
