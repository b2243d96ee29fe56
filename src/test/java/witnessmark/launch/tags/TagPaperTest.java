package witnessmark.launch.tags;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static witnessmark.ledger.Story.at;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import witnessmark.domain.Engine;
import witnessmark.domain.EngineDesign;
import witnessmark.domain.Id;
import witnessmark.domain.Part;
import witnessmark.domain.PartKind;
import witnessmark.domain.Position;
import witnessmark.domain.Zone;
import witnessmark.ledger.Story;
import witnessmark.logbook.View;
import witnessmark.logbook.port.Paper;
import witnessmark.logbook.sharing.TagFacts;
import witnessmark.logbook.sharing.WriteTags;
import witnessmark.quantity.Moment;
import witnessmark.sample.SampleViews;
import witnessmark.wording.Measures;
import witnessmark.wording.Texts;
import witnessmark.wording.Units;

/**
 * Tags on paper, read back by a library that did not write them (Apache PDFBox). What a tag says is in the trade handbook:
 * engine serial, part serial, cylinder, orientation, date, hours.
 */
class TagPaperTest {
    private final Texts texts = Texts.in(Locale.UK);
    private final Measures measures = new Measures(texts, Units.METRIC);
    private final View apart = SampleViews.on(SampleViews.opening().facts(), LocalDate.of(2026, 6, 18));

    private TagFacts facts(View view, String engine) {
        Id<Engine> id =
                view.facts().of(Engine.class).named(engine).orElseThrow().id();
        Moment printed = Moment.of(Instant.parse("2026-07-08T09:00:00Z"), view.zone());
        return WriteTags.facts(view, id, "Marrowgate Racing", printed).orElseThrow();
    }

    @Test
    void each_part_of_an_engine_that_failed_has_a_tag_with_what_the_handbook_asks_for() throws IOException {
        TagFacts facts = facts(apart, "K05");
        Paper paper = new TagPaper(texts, measures).apply(facts);
        Files.write(Files.createDirectories(Path.of("target", "pictures")).resolve("tags-k05.pdf"), paper.bytes());

        assertThat(paper.pages()).isEqualTo((facts.tags().size() + 7) / 8);
        String text;
        try (PDDocument pdf = Loader.loadPDF(paper.bytes())) {
            text = new PDFTextStripper().getText(pdf).replaceAll("\\s+", " ");
        }
        assertThat(facts.tags()).hasSizeGreaterThan(5);
        for (TagFacts.Tag tag : facts.tags()) {
            assertThat(text).contains("K05 " + tag.part().fact().mark());
        }
        assertThat(text).contains("INC-05", "Which way round", "Cylinder", "Came off on", "Had run by then");
        assertThat(text).contains("not washed, not wiped, not turned");
        assertThat(new TagPaper(texts, measures).apply(facts).bytes())
                .as("the same tags")
                .isEqualTo(paper.bytes());
    }

    @Test
    void no_part_has_two_tags_and_what_came_off_comes_first() {
        for (String engine : List.of("K03", "K05", "K06")) {
            TagFacts facts = facts(apart, engine);
            assertThat(facts.tags().stream().map(tag -> tag.part().id())).doesNotHaveDuplicates();
            assertThat(facts.tags().stream().map(tag -> tag.off() == null)).isSorted();
        }
    }

    @Test
    void without_an_engine_in_view_it_is_that_of_the_open_incident() {
        assertThat(WriteTags.usual(apart))
                .contains(apart.facts()
                        .of(Engine.class)
                        .named("K05")
                        .orElseThrow()
                        .id());
    }

    /** Rods run 2 h, come off for good of an engine that is still apart, and run 4 h more in another. */
    @Test
    void what_a_part_ran_elsewhere_since_it_came_off_is_not_on_its_tag() {
        Story story = new Story();
        Id<EngineDesign> design = story.design("D");
        Id<Engine> apart = story.engine("E1", design);
        Id<Engine> other = story.engine("E2", design);
        Id<Position> seat = story.position(design, PartKind.RODS, "rods", 1, true);
        Id<Part> rods = story.part("R", story.partDesign("rods", PartKind.RODS, false));
        Id<Part> stays = story.part("S", story.partDesign("rods two", PartKind.RODS, false));
        Id<Position> second = story.position(design, PartKind.RODS, "rods two", 2, true);
        story.build(apart, 1, Set.of(Zone.BOTTOM_END), at("2026-05-02T08:00:00Z"), null);
        story.fit(rods, apart, seat, at("2026-03-01T08:00:00Z"), at("2026-05-03T12:00:00Z"));
        story.fit(stays, apart, second, at("2026-03-01T08:00:00Z"), null);
        story.fit(rods, other, seat, at("2026-05-03T13:00:00Z"), null);
        story.run(apart, null, at("2026-04-01T10:00:00Z"), 120);
        story.run(other, null, at("2026-05-03T15:00:00Z"), 60); // the same day
        story.run(other, null, at("2026-05-10T10:00:00Z"), 180);

        View view = SampleViews.on(story.facts(), LocalDate.of(2026, 5, 20));
        TagFacts facts =
                WriteTags.facts(view, apart, "L", at("2026-05-20T10:00:00Z")).orElseThrow();

        assertThat(facts.tags())
                .extracting(tag -> tag.part().fact().mark(), tag -> tag.life().total())
                .containsExactly(
                        tuple("R", Story.minutes(120).millis()),
                        tuple("S", Story.minutes(120).millis()));
    }
}
