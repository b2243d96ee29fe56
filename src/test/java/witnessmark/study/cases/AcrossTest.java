package witnessmark.study.cases;

import static org.assertj.core.api.Assertions.assertThat;
import static witnessmark.ledger.Story.asOf;
import static witnessmark.ledger.Story.at;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import witnessmark.domain.Engine;
import witnessmark.domain.EngineDesign;
import witnessmark.domain.FoundWhen;
import witnessmark.domain.Id;
import witnessmark.domain.Incident;
import witnessmark.domain.IncidentPart;
import witnessmark.domain.Joint;
import witnessmark.domain.JointMethod;
import witnessmark.domain.Part;
import witnessmark.domain.PartDesign;
import witnessmark.domain.PartHarm;
import witnessmark.domain.PartKind;
import witnessmark.domain.Position;
import witnessmark.domain.Severity;
import witnessmark.domain.Tool;
import witnessmark.domain.ToolKind;
import witnessmark.ledger.LifeLedger;
import witnessmark.ledger.Story;
import witnessmark.quantity.RunningTime;
import witnessmark.study.result.Aspect;
import witnessmark.study.result.ReadAcross;

/** Which other engines carry what failed. */
class AcrossTest {
    private final Story story = new Story();
    private final Id<EngineDesign> design = story.design("Four");
    private final Id<Position> position = story.position(design, PartKind.ROD_BOLTS, "rod bolts", 1, true);
    private final Id<PartDesign> bolts = story.partDesign("bolts M9", PartKind.ROD_BOLTS, false);
    private final Id<Engine> failed = story.engine("A1", design);
    private final Id<Engine> other = story.engine("A2", design);
    private final Id<Tool> wrench = story.add(new Tool("W2", ToolKind.TORQUE_WRENCH, "", null, ""));
    private Id<Incident> incident = Id.parse("01976c2e-0000-7000-8000-000000000001");

    @BeforeEach
    void breaks() {
        Id<Part> broke = part("RB-1", failed, "B7");
        incident = story.add(new Incident(
                "I1",
                "bolt broke",
                at("2026-03-01T12:00Z[UTC]"),
                FoundWhen.AT_A_CHECK,
                null,
                null,
                null,
                failed,
                Severity.LOST_TIME,
                "",
                null,
                "",
                null,
                "",
                "",
                ""));
        story.add(new IncidentPart(incident, broke, "", PartHarm.FAILED, null, false, null, ""));
    }

    private Id<Part> part(String mark, Id<Engine> engine, String batch) {
        Id<Part> part = story.add(new Part(mark, bolts, batch, "", null, null, null, null, null, null, ""));
        story.fit(part, engine, position, at("2026-01-01T12:00Z[UTC]"), null);
        return part;
    }

    private void tightened(Id<Engine> engine, String day, @Nullable Id<Tool> tool) {
        story.add(new Joint(
                engine,
                null,
                PartKind.ROD_BOLTS,
                "all",
                "",
                JointMethod.TORQUE,
                "60 N·m",
                "",
                tool,
                at(day + "T13:00Z[UTC]"),
                true,
                "Chief",
                ""));
    }

    private List<ReadAcross> across() {
        return new Across(LifeLedger.of(story.facts(), asOf("2026-03-02")))
                .of(story.facts().of(Incident.class).find(incident).orElseThrow());
    }

    @Test
    void a_part_of_the_batch_that_failed_is_named_by_its_batch_with_what_it_has_run() {
        part("RB-2", other, "B7");
        story.run(other, null, at("2026-02-01T12:00Z[UTC]"), 90);

        assertThat(across()).singleElement().satisfies(each -> {
            assertThat(each.aspect()).isEqualTo(Aspect.BATCH);
            assertThat(each.what()).isEqualTo("B7");
            assertThat(each.parts()).extracting(part -> part.fact().mark()).containsExactly("RB-2");
            assertThat(each.ran()).isEqualTo(new RunningTime(90 * 60_000));
        });
    }

    @Test
    void a_part_of_the_design_alone_is_named_by_its_design() {
        part("RB-2", other, "");

        assertThat(across()).extracting(ReadAcross::aspect).containsExactly(Aspect.DESIGN);
    }

    @Test
    void the_tool_of_the_fasteners_that_failed_is_looked_for_in_what_it_tightened_last() {
        tightened(failed, "2026-01-02", wrench);
        tightened(other, "2026-01-10", wrench);
        story.run(other, null, at("2026-01-09T12:00Z[UTC]"), 30);
        story.run(other, null, at("2026-02-01T12:00Z[UTC]"), 60);

        assertThat(across()).singleElement().satisfies(each -> {
            assertThat(each.aspect()).isEqualTo(Aspect.TOOL);
            assertThat(each.what()).isEqualTo("W2");
            assertThat(each.ran()).as("since it was used").isEqualTo(new RunningTime(60 * 60_000));
        });
    }

    @Test
    void what_was_tightened_again_with_another_tool_is_left_alone() {
        tightened(failed, "2026-01-02", wrench);
        tightened(other, "2026-01-10", wrench);
        tightened(other, "2026-01-20", null);

        assertThat(across()).isEmpty();
    }

    @Test
    void a_part_taken_off_is_no_longer_carried() {
        Id<Part> part = story.add(new Part("RB-2", bolts, "B7", "", null, null, null, null, null, null, ""));
        story.fit(part, other, position, at("2026-01-01T12:00Z[UTC]"), at("2026-02-01T12:00Z[UTC]"));

        assertThat(across()).isEmpty();
    }
}
