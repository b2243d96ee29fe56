package witnessmark.logbook.measuring;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.LocalDate;
import java.util.EnumSet;
import org.junit.jupiter.api.Test;
import witnessmark.domain.Build;
import witnessmark.domain.Engine;
import witnessmark.domain.EngineDesign;
import witnessmark.domain.Id;
import witnessmark.domain.PartKind;
import witnessmark.domain.Zone;
import witnessmark.ledger.Story;
import witnessmark.logbook.View;
import witnessmark.quantity.Moment;
import witnessmark.sample.SampleViews;

/** A build sheet with a head gasket of which nobody said what it is made like. */
class GasketNotSaidTest {
    @Test
    void it_is_put_together_all_the_same() {
        Story story = new Story();
        Id<EngineDesign> design = story.design("four");
        Id<Engine> engine = story.engine("B3", design);
        Moment march = Moment.of(Instant.parse("2026-03-01T08:00:00Z"), SampleViews.ZONE);
        story.fit(
                story.part("HG-1", story.partDesign("gasket", PartKind.HEAD_GASKET, true)),
                engine,
                story.position(design, PartKind.HEAD_GASKET, "head gasket", 1, true),
                march,
                null);
        Id<Build> build = story.add(new Build(engine, 1, EnumSet.of(Zone.HEAD), march, null, "", ""));
        View view = SampleViews.on(story.facts(), LocalDate.of(2026, 3, 10));
        assertThat(SeeBuildSheet.of(view, build)).isPresent();
    }
}
