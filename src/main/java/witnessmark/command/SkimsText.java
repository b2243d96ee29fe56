package witnessmark.command;

import java.math.BigDecimal;
import java.util.List;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Entry;
import witnessmark.domain.FaceLine;
import witnessmark.domain.PartKind;
import witnessmark.domain.Retimed;
import witnessmark.domain.Skim;
import witnessmark.fit.result.face.ZoneFinding;
import witnessmark.logbook.faces.FacePage;
import witnessmark.logbook.faces.LookLine;
import witnessmark.logbook.faces.RunBetween;
import witnessmark.logbook.faces.SkimLine;
import witnessmark.quantity.Dimension;
import witnessmark.quantity.Length;
import witnessmark.wording.FaceWords;
import witnessmark.wording.MeasureWords;
import witnessmark.wording.SkimWords;

/** Skims and low zones on a terminal. */
final class SkimsText {
    private static final String ROW = "  %-12s %-22s %7s %8s %6s %6s %-15s %-15s %s";

    private final Tools tools;
    private final FaceWords faces;
    private final SkimWords skims;
    private final MeasureWords figures;

    SkimsText(Tools tools) {
        this.tools = tools;
        this.faces = new FaceWords(tools.texts(), tools.measures());
        this.skims = new SkimWords(tools.texts(), tools.measures());
        this.figures = new MeasureWords(tools.texts(), tools.measures());
    }

    /** @param all whether looks and effects are told too */
    void print(Consumer<String> out, List<FacePage> pages, boolean all) {
        for (FacePage page : pages) {
            out.accept(heading(page));
            if (!page.skims().isEmpty()) {
                out.accept(row(
                        List.of("day", "passes", "removed", "left", "off", "room", "chamber", "ratio", "finish")
                                .stream()
                                .map(key -> tools.texts().get("command.skims.column." + key))
                                .toList()));
                page.skims().forEach(line -> skim(out, line, all));
            }
            if (all) {
                page.looks().forEach(look -> look(out, look));
            }
            page.lastMeasured().ifPresent(look -> look.findings().forEach(finding -> finding(out, finding, all)));
        }
        out.accept("");
        out.accept(tools.texts().get("faces.caution"));
    }

    private String heading(FacePage page) {
        RunBetween since = page.since();
        return tools.texts()
                .get(
                        page.skims().isEmpty() ? "command.skims.heading.none" : "command.skims.heading",
                        page.part().fact().mark(),
                        tools.words().word(page.kind()),
                        page.engine() == null ? 0 : 1,
                        page.engine() == null ? "" : page.engine().fact().number(),
                        tools.measures().number(BigDecimal.valueOf(since.hours()), 2),
                        since.cycles(),
                        since.cyclesKnown() ? 0 : 1,
                        page.kind() == PartKind.HEAD_GASKET ? 1 : 0,
                        skims.left(page.left(), page.limits().least()));
    }

    private static String row(List<String> cells) {
        return ROW.formatted(cells.toArray()).stripTrailing();
    }

    private void skim(Consumer<String> out, SkimLine line, boolean all) {
        Entry<Skim> skim = line.skim();
        out.accept(row(List.of(
                line.work().fact().at().day().toString(),
                skims.passes(line.passes()),
                bare(line.removed()),
                bare(line.work().fact().left()),
                bare(line.off()),
                bare(line.left()),
                arrow(
                        skim == null ? "" : skims.chamber(skim.fact().chamberBefore()),
                        skim == null ? "" : skims.chamber(skim.fact().chamberAfter())),
                arrow(
                        line.effect() == null ? "" : skims.ratio(line.effect().ratioBefore()),
                        line.effect() == null ? "" : skims.ratio(line.effect().ratioAfter())),
                skim == null
                        ? ""
                        : tools.measures()
                                .row(List.of(
                                        skims.finish(skim.fact().raNanometres()),
                                        skims.finish(skim.fact().rzNanometres()))))));
        if (all) {
            skims.eachPass(line.passes()).forEach(pass -> out.accept("      " + pass));
            out.accept("      " + skims.cleanUp(line.cleanUp()));
            if (line.effect() != null) {
                skims.effect(
                                line.effect(),
                                skim == null ? Retimed.NOT_SAID : skim.fact().retimed())
                        .forEach(effect -> out.accept("      " + effect));
            }
        }
    }

    private String arrow(String before, String after) {
        return before.isEmpty() && after.isEmpty() ? "" : tools.texts().get("command.skims.arrow", before, after);
    }

    private String bare(@Nullable Length length) {
        return length == null ? "" : figures.bare(Dimension.LENGTH, length.nanometres());
    }

    private void look(Consumer<String> out, LookLine look) {
        out.accept("  "
                + tools.texts()
                        .get(
                                "command.skims.look",
                                look.look().fact().at().day().toString(),
                                tools.words().word(look.look().fact().method()),
                                look.points().size(),
                                look.marks().size()));
        if (look.flat().leastSquares() != null) {
            out.accept("      " + faces.flat(look.flat()));
            out.accept("      " + faces.minimumZone(look.flat()));
        }
        look.lines().stream()
                .map(Entry::fact)
                .filter(line -> goes(line))
                .forEach(line -> out.accept("      " + faces.line(line)));
        look.marks()
                .forEach(mark -> out.accept("      "
                        + tools.measures()
                                .row(List.of(
                                        tools.words().word(mark.fact().kind()),
                                        mark.fact().words()))));
    }

    private static boolean goes(FaceLine line) {
        return line.goes().nanometres() > 0;
    }

    private void finding(Consumer<String> out, ZoneFinding finding, boolean all) {
        out.accept("  " + faces.finding(finding));
        if (all) {
            faces.comeback(finding.comeback()).forEach(line -> out.accept("      " + line));
        }
    }
}
