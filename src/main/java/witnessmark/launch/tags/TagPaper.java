package witnessmark.launch.tags;

import java.util.List;
import java.util.function.Function;
import witnessmark.domain.EngineDesign;
import witnessmark.domain.Part;
import witnessmark.logbook.port.Paper;
import witnessmark.logbook.sharing.TagFacts;
import witnessmark.report.Pdf;
import witnessmark.report.TagSheet;
import witnessmark.report.TagSheet.Line;
import witnessmark.report.TagSheetPdf;
import witnessmark.wording.LifeWords;
import witnessmark.wording.Measures;
import witnessmark.wording.RecordWords;
import witnessmark.wording.Texts;

/** Words tags and lays them out on pages. */
public final class TagPaper implements Function<TagFacts, Paper> {
    private final Texts texts;
    private final Measures measures;
    private final RecordWords records;
    private final LifeWords lives;
    private final TagSheetPdf pages;

    /** Words them in the language and units of the measures. */
    public TagPaper(Texts texts, Measures measures) {
        this.texts = texts;
        this.measures = measures;
        this.records = new RecordWords(texts);
        this.lives = new LifeWords(texts, measures);
        this.pages = new TagSheetPdf(texts);
    }

    @Override
    public Paper apply(TagFacts facts) {
        Pdf pdf = pages.of(sheet(facts));
        return new Paper(pdf.bytes(), pdf.pages());
    }

    private TagSheet sheet(TagFacts facts) {
        String engine = facts.engine().fact().number();
        return new TagSheet(
                texts.get("tags.title", engine),
                texts.get("tags.board", facts.tags().size()),
                facts.logbook(),
                texts.get("tags.day", measures.date(facts.view().day())),
                texts.get("tags.printed", measures.fullMoment(facts.printed())),
                facts.printed().instant(),
                texts.get("tags.caution"),
                facts.tags().stream().map(tag -> tag(facts, engine, tag)).toList());
    }

    /** Its position, and what kind of part it is where that says more. */
    private String what(TagFacts.Tag tag) {
        String position = tag.position().name();
        String kind = records.word(tag.design().kind());
        return kind.equalsIgnoreCase(position) ? position : measures.row(List.of(position, kind));
    }

    private TagSheet.Tag tag(TagFacts facts, String engine, TagFacts.Tag tag) {
        Part part = tag.part().fact();
        String design = facts.view()
                .facts()
                .of(EngineDesign.class)
                .get(facts.engine().fact().design())
                .name();
        return new TagSheet.Tag(
                engine,
                part.mark(),
                measures.row(List.of(records.label(what(tag)), design)),
                List.of(
                        new Line(texts.get("tags.cylinder"), ""),
                        new Line(texts.get("tags.way"), ""),
                        new Line(
                                texts.get("tags.off"),
                                tag.off() == null ? "" : measures.date(tag.off().day())),
                        new Line(texts.get("tags.ran"), lives.life(tag.life())),
                        new Line(
                                texts.get("tags.incident"),
                                facts.incident() == null
                                        ? ""
                                        : facts.incident().fact().mark()),
                        new Line(texts.get("tags.by"), "")),
                texts.get("tags.foot"));
    }
}
