package witnessmark.desktop.faces;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import witnessmark.chart.LifeRows;
import witnessmark.desktop.form.SeamState;
import witnessmark.domain.Entry;
import witnessmark.domain.FaceMark;
import witnessmark.domain.Retimed;
import witnessmark.domain.Skim;
import witnessmark.fit.result.face.CleanUp;
import witnessmark.fit.result.face.Face;
import witnessmark.fit.result.face.LowPoint;
import witnessmark.fit.result.face.ZoneFinding;
import witnessmark.logbook.faces.FaceLife;
import witnessmark.logbook.faces.FacePage;
import witnessmark.logbook.faces.LookLine;
import witnessmark.logbook.faces.RunBetween;
import witnessmark.logbook.faces.SkimLine;
import witnessmark.quantity.Dimension;
import witnessmark.quantity.Length;
import witnessmark.wording.FaceWords;
import witnessmark.wording.MeasureWords;
import witnessmark.wording.Measures;
import witnessmark.wording.RecordWords;
import witnessmark.wording.SkimWords;
import witnessmark.wording.Texts;

/** Words everything beside and under a face map. The same answer always gives the same lines. */
public final class FaceLines {
    private final Texts texts;
    private final Measures measures;
    private final FaceWords faces;
    private final SkimWords skims;
    private final MeasureWords figures;
    private final RecordWords records;

    public FaceLines(Texts texts, Measures measures) {
        this.texts = texts;
        this.measures = measures;
        this.faces = new FaceWords(texts, measures);
        this.skims = new SkimWords(texts, measures);
        this.figures = new MeasureWords(texts, measures);
        this.records = new RecordWords(texts);
    }

    /** A low zone: its mark, its sentence, and what stands under it. */
    record ZoneLine(SeamState state, String word, String sentence, List<String> under) {
        ZoneLine {
            under = List.copyOf(under);
        }
    }

    List<ZoneLine> zones(LookLine look) {
        return look.findings().stream().map(this::zone).toList();
    }

    private ZoneLine zone(ZoneFinding finding) {
        SeamState state = switch (finding.state()) {
            case COMING_BACK -> SeamState.OVER;
            case NEW, STILL -> SeamState.DUE;
            case AGAIN, FIRST_LOOK -> SeamState.NOT_KNOWN;
        };
        List<String> under = new ArrayList<>(faces.comeback(finding.comeback()));
        if (!faces.cause(finding).isEmpty()) {
            under.add(faces.cause(finding));
        }
        return new ZoneLine(state, faces.state(finding.state()), faces.finding(finding), under);
    }

    /** A reading in the list beside the map; figures low above 0. */
    public record PointLine(int index, String place, String depth, String then, String change) {}

    public List<PointLine> points(Face face, LookLine look, @Nullable LookLine then) {
        List<PointLine> lines = new ArrayList<>();
        for (int i = 0; i < look.points().size(); i++) {
            var point = look.points().get(i).fact();
            LowPoint here = face.point(point.x(), point.y(), point.depth());
            Optional<LowPoint> before = then == null ? Optional.empty() : face.nearest(here, then.low());
            lines.add(new PointLine(
                    i,
                    records.label(faces.place(here.place())),
                    bare(point.depth()),
                    before.map(other -> bare(other.depth())).orElse(""),
                    before.map(other -> bare(new Length(
                                    point.depth().nanometres() - other.depth().nanometres())))
                            .orElse("")));
        }
        return lines;
    }

    public List<String> edges(LookLine look) {
        return look.lines().stream().map(line -> faces.line(line.fact())).toList();
    }

    public List<String> marks(@Nullable Face face, LookLine look) {
        return look.marks().stream().map(mark -> mark(face, mark.fact())).toList();
    }

    private String mark(@Nullable Face face, FaceMark mark) {
        String kind = records.label(records.word(mark.kind()));
        String place = face == null ? "" : faces.place(face.place(mark.x(), mark.y()));
        return mark.words().isBlank()
                ? texts.get("facemap.mark.line", kind, place)
                : texts.get("facemap.mark.line.words", kind, place, mark.words());
    }

    public String flat(LookLine look) {
        return faces.flat(look.flat());
    }

    public String deeper(LookLine look) {
        return measures.row(List.of(faces.minimumZone(look.flat()), faces.finest(look.flat())).stream()
                .filter(line -> !line.isEmpty())
                .toList());
    }

    /** A skim as a row of the ledger. */
    public record SkimRow(String id, List<String> cells) {
        public SkimRow {
            cells = List.copyOf(cells);
        }

        /** What stands in a column, counted from 0. */
        public String cell(int column) {
            return cells.get(column);
        }
    }

    /** Headings of the ledger, in the order of the cells of a {@link SkimRow}. */
    public static final List<String> HEADINGS =
            List.of("day", "passes", "cleanup", "removed", "left", "off", "room", "ratio");

    public List<SkimRow> skims(FacePage page) {
        return page.skims().stream().map(this::skim).toList();
    }

    private SkimRow skim(SkimLine line) {
        return new SkimRow(
                line.work().id().text(),
                List.of(
                        measures.date(line.work().fact().at().day()),
                        skims.passes(line.passes()),
                        line.passes().isEmpty() ? "" : deep(line.cleanUp()),
                        bare(line.removed()),
                        bare(line.work().fact().left()),
                        bare(line.off()),
                        bare(line.left()),
                        line.effect() == null
                                ? ""
                                : arrow(
                                        skims.ratio(line.effect().ratioBefore()),
                                        skims.ratio(line.effect().ratioAfter()))));
    }

    /** How deep the deepest low place was, in as few words as a column takes. */
    private String deep(CleanUp low) {
        if (!low.seen()) {
            return texts.get("facemap.deep.unseen");
        }
        String over = bare(low.over());
        return low.upTo() == null
                ? texts.get("facemap.deep.over", over)
                : low.over().nanometres() == 0
                        ? texts.get("facemap.deep.upto", bare(low.upTo()))
                        : texts.get("facemap.deep.between", over, bare(low.upTo()));
    }

    /** What else was written down of a skim: corners before, finish, chamber, what was run since the one before. */
    private List<String> besides(SkimLine line) {
        List<String> said = new ArrayList<>();
        Entry<Skim> skim = line.skim();
        if (skim != null) {
            said.add(figure(
                    "before", measures.row(skim.fact().before().map(this::bare).toList())));
            said.add(figure("finish", finish(skim.fact())));
            said.add(figure(
                    "chamber",
                    arrow(
                            skims.chamber(skim.fact().chamberBefore()),
                            skims.chamber(skim.fact().chamberAfter()))));
        }
        RunBetween since = line.since();
        if (since != null) {
            said.add(texts.get(
                    since.cyclesKnown() ? "facemap.effect.since" : "facemap.effect.since.open",
                    hours(since.hours()),
                    since.cycles()));
        }
        said.removeIf(String::isEmpty);
        return said;
    }

    private String figure(String key, String figure) {
        return figure.isEmpty() ? "" : texts.get("facemap.effect." + key, figure);
    }

    private String finish(Skim skim) {
        return measures.row(List.of(skims.finish(skim.raNanometres()), skims.finish(skim.rzNanometres())).stream()
                .filter(figure -> !figure.isEmpty())
                .toList());
    }

    private String arrow(String before, String after) {
        return before.isEmpty() && after.isEmpty() ? "" : texts.get("facemap.arrow", before, after);
    }

    /**
     * What a skim did, pass by pass and to the engine.
     *
     * @param work which skim, by the identity of its work; the last where there is no such
     */
    public List<String> effect(FacePage page, String work) {
        if (page.skims().isEmpty()) {
            return List.of();
        }
        SkimLine line = page.skims().stream()
                .filter(each -> each.work().id().text().equals(work))
                .findFirst()
                .orElse(page.skims().get(0));
        List<String> lines = new ArrayList<>();
        lines.add(texts.get(
                "facemap.effect", measures.date(line.work().fact().at().day())));
        lines.addAll(skims.eachPass(line.passes()));
        if (!line.passes().isEmpty()) {
            lines.add(records.label(skims.cleanUp(line.cleanUp())));
        }
        if (!besides(line).isEmpty()) {
            lines.add(records.label(measures.row(besides(line))));
        }
        if (line.effect() != null) {
            lines.addAll(skims.effect(
                    line.effect(),
                    line.skim() == null ? Retimed.NOT_SAID : line.skim().fact().retimed()));
        }
        return lines;
    }

    /** What is left, and what was run since the last skim. */
    public List<String> standing(FacePage page) {
        List<String> lines = new ArrayList<>();
        RunBetween since = page.since();
        String hours = hours(since.hours());
        lines.add(
                page.skims().isEmpty()
                        ? texts.get("facemap.since.none", hours)
                        : since.cyclesKnown()
                                ? texts.get("facemap.since", hours, since.cycles())
                                : texts.get("facemap.since.open", hours));
        lines.add(records.label(skims.left(page.left(), page.limits().least())));
        return lines;
    }

    /** Every head and block side by side. */
    LifeRows strips(List<FaceLife> lives) {
        double longest =
                Math.max(1, lives.stream().mapToDouble(FaceLife::total).max().orElse(1));
        double step = step(longest);
        List<LifeRows.Tick> ticks = new ArrayList<>();
        for (double at = 0; at <= longest * 1.02; at += step) {
            ticks.add(new LifeRows.Tick(at, texts.get("facemap.strips.hours", measures.number(Math.round(at)))));
        }
        return new LifeRows(
                longest * 1.02, ticks, lives.stream().map(this::strip).toList());
    }

    private static double step(double longest) {
        double power = Math.pow(10, Math.floor(Math.log10(longest / 5)));
        for (double digit : new double[] {1, 2, 5}) {
            if (longest / (digit * power) <= 6) {
                return Math.max(1, digit * power);
            }
        }
        return Math.max(1, 10 * power);
    }

    private LifeRows.Row strip(FaceLife life) {
        FacePage page = life.page();
        boolean none = life.skims().isEmpty();
        String since = hours(page.since().hours());
        String kind = records.word(page.kind());
        return new LifeRows.Row(
                page.engine() == null
                        ? texts.get("facemap.choice", page.part().fact().mark(), kind)
                        : texts.get(
                                "facemap.choice.engine",
                                page.part().fact().mark(),
                                kind,
                                page.engine().fact().number()),
                life.total(),
                life.since(),
                life.skims().stream()
                        .map(skim -> new LifeRows.Seam(skim.hours(), ""))
                        .toList(),
                life.incidents().stream()
                        .map(incident -> new LifeRows.Seam(
                                incident.hours(), incident.what().fact().title()))
                        .toList(),
                texts.get(none ? "facemap.strips.beside.none" : "facemap.strips.beside", since),
                texts.get(
                        none ? "facemap.strips.row.none" : "facemap.strips.row",
                        page.part().fact().mark(),
                        kind,
                        hours(life.total()),
                        life.incidents().size(),
                        skims.left(page.left(), page.limits().least()),
                        since,
                        life.skims().size()),
                page.part().id().text());
    }

    String stripWords(List<FaceLife> lives) {
        return lives.isEmpty()
                ? ""
                : texts.get(
                        "facemap.strips.words",
                        lives.size(),
                        lives.get(0).page().part().fact().mark(),
                        hours(lives.get(0).page().since().hours()));
    }

    private String hours(double hours) {
        return measures.number(BigDecimal.valueOf(hours), 2);
    }

    private String bare(@Nullable Length length) {
        return length == null ? "" : figures.bare(Dimension.LENGTH, length.nanometres());
    }
}
