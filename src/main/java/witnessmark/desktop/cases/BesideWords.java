package witnessmark.desktop.cases;

import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import witnessmark.chart.FaceMap;
import witnessmark.desktop.faces.FaceTurn;
import witnessmark.desktop.faces.MapWords;
import witnessmark.domain.Entry;
import witnessmark.domain.FaceKind;
import witnessmark.domain.FaceMark;
import witnessmark.domain.Id;
import witnessmark.domain.Incident;
import witnessmark.fit.result.face.Face;
import witnessmark.fit.result.face.LowZone;
import witnessmark.logbook.View;
import witnessmark.logbook.proof.CaseLinks;
import witnessmark.logbook.proof.MarksOfCases;
import witnessmark.logbook.proof.SeeCases;
import witnessmark.logbook.proof.SeeMarks;
import witnessmark.quantity.Length;
import witnessmark.study.result.Aspect;
import witnessmark.study.result.InCommon;
import witnessmark.wording.CaseWords;
import witnessmark.wording.FaceWords;
import witnessmark.wording.Measures;
import witnessmark.wording.RecordWords;
import witnessmark.wording.Texts;

/** Words two incidents beside each other, and lays their marks on one face. */
final class BesideWords {
    private static final double MILLIMETRE = 1_000_000;

    private final Texts texts;
    private final Measures measures;
    private final CaseWords cases;
    private final FaceWords faces;
    private final RecordWords records;
    private final MapWords maps;

    BesideWords(Texts texts, Measures measures) {
        this.texts = texts;
        this.measures = measures;
        this.cases = new CaseWords(texts, measures);
        this.faces = new FaceWords(texts, measures);
        this.records = new RecordWords(texts);
        this.maps = new MapWords(texts, measures);
    }

    /** Those it can be laid beside. */
    List<BesideLines.Other> others(View view, Entry<Incident> incident) {
        return CaseLinks.of(view, incident).stream()
                .map(other -> new BesideLines.Other(
                        other.incident().id().text(),
                        texts.get(
                                other.linked() ? "cases.beside.linked" : "incidents.name",
                                other.incident().fact().mark(),
                                other.incident().fact().title()),
                        other.linked()))
                .toList();
    }

    /** @throws IllegalArgumentException if both are the same */
    BesideLines lines(View view, String one, String other) {
        Entry<Incident> mine = entry(view, one);
        Entry<Incident> theirs = entry(view, other);
        InCommon common = SeeCases.common(view, List.of(mine, theirs));
        List<BesideLines.Group> groups = new ArrayList<>();
        groups.add(group(texts.get("cases.beside.both"), common.shared()));
        groups.add(only(mine, common));
        groups.add(only(theirs, common));
        String joined = CaseLinks.of(view, mine).stream()
                .filter(each -> each.incident().id().equals(theirs.id()) && each.linked())
                .findFirst()
                .map(each -> each.why().isEmpty()
                        ? texts.get("cases.beside.again")
                        : texts.get("cases.beside.joined", each.why()))
                .orElse("");
        MarksOfCases marks = SeeMarks.of(view, List.of(mine, theirs));
        List<String> said = marks(marks);
        Face face = marks.severally() ? marks.face() : null;
        String legend = texts.get(
                "cases.beside.legend", mine.fact().mark(), theirs.fact().mark());
        return new BesideLines(
                joined,
                groups.stream().filter(each -> !each.rows().isEmpty()).toList(),
                face == null ? null : map(face, marks, legend, said),
                face != null && FaceTurn.AS_IT_LIES.exhaustBelow(face.outline(), FaceKind.HEAD),
                legend,
                said);
    }

    private static Entry<Incident> entry(View view, String id) {
        return view.facts().of(Incident.class).find(Id.parse(id)).orElseThrow();
    }

    private BesideLines.Group only(Entry<Incident> of, InCommon common) {
        return group(texts.get("cases.beside.only", of.fact().mark()), common.onlyIn(of));
    }

    private BesideLines.Group group(String title, List<InCommon.Alike> all) {
        Map<Aspect, List<String>> things = new LinkedHashMap<>();
        all.forEach(alike -> things.computeIfAbsent(alike.aspect(), none -> new ArrayList<>())
                .add(alike.what()));
        List<BesideLines.Row> rows = new ArrayList<>();
        things.forEach((aspect, what) ->
                rows.add(new BesideLines.Row(records.label(cases.aspect(aspect)), measures.row(what))));
        return new BesideLines.Group(title, rows);
    }

    private List<String> marks(MarksOfCases marks) {
        List<String> said = new ArrayList<>();
        Face face = marks.face();
        for (MarksOfCases.OfCase of : marks.cases()) {
            for (MarksOfCases.Marked marked : of.marks()) {
                said.add(texts.get(
                        "cases.beside.mark",
                        of.incident().fact().mark(),
                        what(marked),
                        face == null ? "" : place(face, marked),
                        marked.part().fact().mark(),
                        measures.shortDate(marked.look().fact().at().day())));
            }
        }
        return said;
    }

    private String place(Face face, MarksOfCases.Marked marked) {
        FaceMark mark = marked.mark();
        LowZone low = marked.low();
        if (mark != null) {
            return faces.place(face.place(mark.x(), mark.y()));
        }
        return low == null
                ? ""
                : faces.place(face.place(low.deepest().x(), low.deepest().y()));
    }

    private String what(MarksOfCases.Marked marked) {
        FaceMark mark = marked.mark();
        LowZone low = marked.low();
        if (low != null) {
            return texts.get("cases.beside.low", measures.length(low.deepest().depth()));
        }
        return mark == null ? "" : records.word(mark.kind());
    }

    private FaceMap map(Face face, MarksOfCases marks, String legend, List<String> said) {
        List<FaceMap.Area> areas = new ArrayList<>();
        for (int i = 0; i < marks.cases().size(); i++) {
            for (MarksOfCases.Marked marked : marks.cases().get(i).marks()) {
                FaceMap.Area area = area(marked, i);
                if (area != null) {
                    areas.add(area);
                }
            }
        }
        // what is hatched goes under what is a point
        areas.sort(
                Comparator.comparing(area -> area.along() == 0 && area.corners().isEmpty()));
        return maps.with(face, areas, texts.get("cases.beside.told", legend, String.join(" ", said)));
    }

    private FaceMap.@Nullable Area area(MarksOfCases.Marked marked, int which) {
        FaceMark mark = marked.mark();
        LowZone low = marked.low();
        String word = what(marked);
        if (mark != null) {
            return new FaceMap.Area(
                    sign(which),
                    mm(mark.x()),
                    mm(mark.y()),
                    mark.along() == null ? 0 : mm(mark.along()),
                    mark.across() == null ? 0 : mm(mark.across()),
                    mark.corners().all().stream()
                            .map(corner -> new double[] {mm(corner.x()), mm(corner.y())})
                            .toList(),
                    word,
                    false);
        }
        return low == null
                ? null
                : new FaceMap.Area(
                        sign(which), mm(low.deepest().x()), mm(low.deepest().y()), 0, 0, List.of(), word, false);
    }

    /** A ring for the one in view, a square standing on its corner for the other: both are seen where they lie on each other. */
    private static Shape sign(int which) {
        if (which == 0) {
            return new Ellipse2D.Double(-1.5, -1.5, 3, 3);
        }
        Path2D path = new Path2D.Double();
        path.moveTo(0, -1);
        path.lineTo(1, 0);
        path.lineTo(0, 1);
        path.lineTo(-1, 0);
        path.closePath();
        return path;
    }

    private static double mm(Length length) {
        return length.nanometres() / MILLIMETRE;
    }
}
